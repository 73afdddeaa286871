/**
 * Explains the formula of a cell: what each of our functions in it does, what it was given, and, if it refused, why and what
 * to do.
 *
 * <p>{@link org.snugsheet.office.explaining.Explanation} writes the text. The formula is taken apart by the office’s own parser
 * ({@link org.snugsheet.office.explaining.FormulaCalls}), each argument is looked up where it stands or worked out in a hidden
 * copy ({@link org.snugsheet.office.explaining.Givens}), and the call is made once more in Java
 * ({@link org.snugsheet.office.explaining.Rerun}), for the office keeps the error of a refusal but loses its sentence. The
 * user’s document is never changed.
 *
 * <p>This package uses the declarations, the families’ classes and the office’s interfaces.
 */
@NullMarked
package org.snugsheet.office.explaining;

import org.jspecify.annotations.NullMarked;
