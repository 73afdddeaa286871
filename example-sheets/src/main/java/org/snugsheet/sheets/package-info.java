/**
 * The worked sheets for teachers, one class each, and {@link org.snugsheet.sheets.BuildSheets}, the program that builds them
 * in a real office.
 *
 * <p>A sheet says which cells stand where and what they say; how they look is in {@link org.snugsheet.office.page}.
 * Readings in the sheets are invented: the engine’s own physics, a thermometer that is a little off, a fixed seed.
 *
 * <p>This package uses the engine, the pages, the builder and the office harness.
 */
@NullMarked
package org.snugsheet.sheets;

import org.jspecify.annotations.NullMarked;
