/**
 * Which wrap wins: {@link org.snugsheet.office.sheets.whichwrapwins.WhichWrapWins} with the readings of up to eight groups, the page with the
 * ranking, and the bars for the wall.
 */
@NullMarked
package org.snugsheet.office.sheets.whichwrapwins;

import org.jspecify.annotations.NullMarked;
