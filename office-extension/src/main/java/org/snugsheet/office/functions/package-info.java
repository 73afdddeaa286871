/**
 * The index of all cell functions, and the services that the office makes of them.
 *
 * <p>Where a function is: {@code COOL.VERDICT}, say, in {@link org.snugsheet.office.functions.cooling}, in one of the interfaces there.
 * An interface holds each of its functions once, as a default method: the annotations declare it, the body reads the cells, calls the
 * engine once and answers. A class such as {@link org.snugsheet.office.functions.CoolFunctions} only puts the interfaces of a family
 * together to one service.
 *
 * <ul>
 *   <li>{@link org.snugsheet.office.functions.temperature} – {@code TEMP}: scales and units
 *   <li>{@link org.snugsheet.office.functions.cooling} – {@code COOL}: cooling curves
 *   <li>{@link org.snugsheet.office.functions.wrap} – {@code WRAP}: layers and R-values
 *   <li>{@link org.snugsheet.office.functions.cold} – {@code COLD}: winter weather, clothing and animal coverings
 *   <li>{@link org.snugsheet.office.functions.plan} – {@code PLAN}: before the lesson
 *   <li>{@link org.snugsheet.office.functions.check} – {@code CHECK}: words about readings
 *   <li>{@link org.snugsheet.office.functions.shared} – texts of arguments, citations, and cells that several families read
 * </ul>
 *
 * <p>Files store the names of services and methods: they never change.
 */
@NullMarked
package org.snugsheet.office.functions;

import org.jspecify.annotations.NullMarked;
