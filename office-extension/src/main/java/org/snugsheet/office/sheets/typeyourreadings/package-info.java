/**
 * One block for the readings of all groups, with checks beside it:
 * {@link org.snugsheet.office.sheets.typeyourreadings.TypeYourReadings}.
 */
@NullMarked
package org.snugsheet.office.sheets.typeyourreadings;

import org.jspecify.annotations.NullMarked;
