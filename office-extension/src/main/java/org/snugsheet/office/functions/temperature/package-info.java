/**
 * TEMP: scales and units.
 *
 * <p>Each interface holds its functions once: the declaration and, as a default method, the answer. Beside them are the texts of
 * arguments that only these functions have, the cells that several of them read, the tables they answer with, and their phrases.
 *
 * <p>This package uses {@link org.snugsheet.office.functions.shared} and what that uses, and no other family.
 */
@NullMarked
package org.snugsheet.office.functions.temperature;

import org.jspecify.annotations.NullMarked;
