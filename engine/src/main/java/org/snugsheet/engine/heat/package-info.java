/**
 * Amounts of heat: what a jar of water gives off, and the final temperature of bodies that exchange heat.
 *
 * <p>A {@link org.snugsheet.engine.heat.Body} has one temperature throughout. {@link org.snugsheet.engine.heat.WaterBody} is
 * a volume of water with the vessel it stands in, {@link org.snugsheet.engine.heat.DryBody} an empty vessel or a stone;
 * {@link org.snugsheet.engine.heat.Mixing} finds the common final temperature of several.
 * {@link org.snugsheet.engine.heat.VesselMaterial} lists specific heats, with sources. Heat is in joules. The heat of
 * evaporation is not included: cover the jars.
 *
 * <p>How fast heat is lost needs a cooling constant: see {@code HeatLoss} in {@code org.snugsheet.engine.cooling}.
 *
 * <p>This package uses {@link org.snugsheet.engine}, {@link org.snugsheet.engine.quantity} and {@link
 * org.snugsheet.engine.water}, nothing else.
 */
package org.snugsheet.engine.heat;
