/**
 * The worked sheets: documents that the menu opens and that a release brings along as files, filled by the same code. Each has a
 * package of its own below this one; {@link org.snugsheet.office.sheets.WorkedSheets} lists them.
 *
 * <p>A sheet says which cells are where and what they say; how they look is in {@link org.snugsheet.office.page}. What all sheets need
 * of a document is in {@link org.snugsheet.office.sheets.builder}, what several of them share in
 * {@link org.snugsheet.office.sheets.shared}, and all about typed readings in {@link org.snugsheet.office.sheets.readings}. Readings in
 * the sheets are invented: the engine’s own physics, a thermometer that is a little off, the same random
 * numbers every time.
 */
@NullMarked
package org.snugsheet.office.sheets;

import org.jspecify.annotations.NullMarked;
