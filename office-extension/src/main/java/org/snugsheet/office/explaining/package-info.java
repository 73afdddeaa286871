/**
 * Explains the formula of a cell: what each Snugsheet function in it does, what it was given, and, if it refused, why and what
 * to do.
 *
 * <p>{@link org.snugsheet.office.explaining.Explanation} writes the text. The formula is taken apart by the office’s own parser
 * ({@link org.snugsheet.office.explaining.FormulaCalls}), each argument is looked up in its cell or worked out in a hidden
 * copy ({@link org.snugsheet.office.explaining.ArgumentValues}), and the call is made once more in Java
 * ({@link org.snugsheet.office.explaining.CallReplay}), for the office keeps the error of a refusal but loses its sentence. Nothing
 * of that changes the user’s document. {@link org.snugsheet.office.explaining.Meaning} says what a number means.
 *
 * <p>{@link org.snugsheet.office.explaining.WholeTable} is the only one here that changes anything: it puts the whole table of a
 * formula into the sheet.
 *
 * <p>This package uses the declarations, the families’ classes and the office’s interfaces.
 */
@NullMarked
package org.snugsheet.office.explaining;

import org.jspecify.annotations.NullMarked;
