/**
 * Insulation: materials, layers, and the wraps that layers make.
 *
 * <p>A {@link org.snugsheet.engine.insulation.Layer} has a thickness and a conductivity.
 * {@link org.snugsheet.engine.insulation.Layers} lie on top of each other, counted from the inside out, independent of the
 * shape beneath. A {@link org.snugsheet.engine.insulation.Wrap} gives them that shape; the flat one adds resistances in
 * series (ISO 6946:2017, 6.7.1), the round one as on a pipe (ISO 12241:2008). A gap of air is an
 * {@link org.snugsheet.engine.insulation.AirGap}; {@link org.snugsheet.engine.insulation.Thickness} computes how thick a
 * layer must be. An exception about a layer names its number.
 *
 * <p>{@link org.snugsheet.engine.insulation.Materials} finds a material by any usual name. The figures are in
 * {@code materials.csv} beside it, one row for each material and condition, with sources; its head says how they were merged
 * from the published ones, and a test repeats the calculation. A new material is a new row there (and the figures it comes
 * from in {@code conductivity-more.csv} beside the tests). A name in another language is one more name in the index.
 *
 * <p>This package uses {@link org.snugsheet.engine}, {@link org.snugsheet.engine.quantity} and the data files of {@code
 * org.snugsheet.engine.table}, nothing else.
 */
package org.snugsheet.engine.insulation;
