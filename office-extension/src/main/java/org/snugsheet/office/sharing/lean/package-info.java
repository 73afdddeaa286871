/**
 * Finished files made smaller: what says the same in fewer letters. Nothing here knows the office; it works on the parts of an .xlsx as the
 * office writes them (ECMA-376, part 1, 18.3), and leaves alone what it does not know.
 */
@NullMarked
package org.snugsheet.office.sharing.lean;

import org.jspecify.annotations.NullMarked;
