/**
 * {@link org.snugsheet.sheets.BuildSheets}, the program that builds the worked sheets for teachers in a real office. Each sheet has a
 * package of its own below this one.
 *
 * <p>A sheet says which cells are where and what they say; how they look is in {@link org.snugsheet.office.page}. What all sheets need
 * of a document is in {@link org.snugsheet.sheets.builder}, what several of them share in {@link org.snugsheet.sheets.shared}, and all
 * about typed readings in {@link org.snugsheet.sheets.readings}. Readings in the sheets are invented: the engine’s own physics, a
 * thermometer that is a little off, the same random numbers every time.
 *
 * <p>Only this package starts an office; the sheets fill any document they are given.
 */
@NullMarked
package org.snugsheet.sheets;

import org.jspecify.annotations.NullMarked;
