/**
 * One block for the readings of all groups, with checks beside it:
 * {@link org.snugsheet.sheets.typeyourreadings.TypeYourReadings}.
 */
@NullMarked
package org.snugsheet.sheets.typeyourreadings;

import org.jspecify.annotations.NullMarked;
