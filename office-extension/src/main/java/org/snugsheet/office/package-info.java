/**
 * The engine as cell functions of LibreOffice Calc.
 *
 * <p>A value travels one short way: cell → {@link org.snugsheet.office.cells} (read once into engine types) → one engine call
 * → a number or text back to the cell. A refusal of the engine travels the same way back and becomes a cell error; its
 * sentence is what the CHECK functions say. No function here holds physics.
 *
 * <ul>
 *   <li>{@link org.snugsheet.office.declare} – the annotations that declare a function, and the declaration as a value
 *   <li>{@link org.snugsheet.office.cells} – cell values to engine types and back
 *   <li>{@link org.snugsheet.office.functions} – the cell functions: their index, and a package for each family
 *   <li>{@link org.snugsheet.office.menu} – the menu of Calc, and what the office calls when a line is chosen
 *   <li>{@link org.snugsheet.office.dialog} – windows that ask and tell
 *   <li>{@link org.snugsheet.office.explaining} – what the formula of a cell does, was given, and why it refuses
 *   <li>{@link org.snugsheet.office.drawing} – cooling curves of a block of readings
 *   <li>{@link org.snugsheet.office.sharing} – a copy for colleagues without this extension, and the way back
 *   <li>{@link org.snugsheet.office.page} – what fills a page: styles, input cells, charts, print set-up
 *   <li>{@link org.snugsheet.office.words} – the languages that people are spoken to in
 *   <li>{@link org.snugsheet.office.uno} – shorthand for the office’s interfaces
 *   <li>{@link org.snugsheet.office.packaging} – writes what describes the functions to the office; used by the build only
 * </ul>
 */
@NullMarked
package org.snugsheet.office;

import org.jspecify.annotations.NullMarked;
