/**
 * The sheet to begin with, {@link org.snugsheet.office.sheets.firstfiveminutes.FirstFiveMinutes}: from one jar’s readings to how fast it cooled.
 */
@NullMarked
package org.snugsheet.office.sheets.firstfiveminutes;

import org.jspecify.annotations.NullMarked;
