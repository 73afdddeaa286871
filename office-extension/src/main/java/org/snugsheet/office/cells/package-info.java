/**
 * Cell values to engine types and back.
 *
 * <p>What the office hands over is looked at here and only here: a blank cell in a range is an empty text, an option
 * left out is void, a blank cell given for an option is 0 and counts as left out. Refusals of the engine become the
 * exceptions the office shows as cell errors: Err:502 for input that cannot be used, Err:523 when no curve settles.
 *
 * <p>This package uses the engine and the office’s exceptions.
 */
@NullMarked
package org.snugsheet.office.cells;

import org.jspecify.annotations.NullMarked;
