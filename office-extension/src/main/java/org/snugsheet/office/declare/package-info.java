/**
 * How a cell function is declared: once, on an interface, as a default method that also answers.
 *
 * <p>An interface with {@link org.snugsheet.office.declare.Family} holds the functions of one family; each method carries
 * {@link org.snugsheet.office.declare.CellFunction} and each parameter {@link org.snugsheet.office.declare.Argument}. From
 * that come the office’s type information ({@link org.snugsheet.office.declare.UnoTypes}), its registration, the function
 * wizard’s texts and the function reference, so none of them can drift.
 *
 * <p>Parameters have one of three Java types, and the type decides what the office tells of a blank cell:
 *
 * <ul>
 *   <li>{@code Object[][]}: a column of readings. A blank inside a range arrives as an empty text.
 *   <li>{@code String[][]}: what may be a single cell and may not be taken for zero, such as the surroundings. A lone blank
 *       cell arrives as an empty text here, but as 0 in every other form; a number arrives written out to 15 digits.
 *   <li>{@code Object}: an option that may be left out. A blank cell given for it arrives as 0 and counts as left out.
 * </ul>
 *
 * <p>This package uses the office’s type descriptions and nothing else.
 */
@NullMarked
package org.snugsheet.office.declare;

import org.jspecify.annotations.NullMarked;
