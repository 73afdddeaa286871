/**
 * Clothing of people and coverings of animals, and how much of it they need in the cold.
 *
 * <p>{@link org.snugsheet.engine.clothing.Garments} finds a garment by any usual name in {@code garments.csv}, which names
 * the source of each figure; an {@link org.snugsheet.engine.clothing.Outfit} is several of them worn together. {@link
 * org.snugsheet.engine.clothing.RequiredClothing} is the heat balance of a person outdoors. {@link
 * org.snugsheet.engine.clothing.Covering} is the fur, wool, feathers or blubber of an animal.
 *
 * <p>All standards used here apply to adults. Children lose heat faster, and every display of these numbers must say so.
 *
 * <p>This package uses {@link org.snugsheet.engine}, {@link org.snugsheet.engine.quantity}, {@link
 * org.snugsheet.engine.insulation}, the data files of {@code org.snugsheet.engine.table} and the root finders of Commons
 * Math.
 */
package org.snugsheet.engine.clothing;
