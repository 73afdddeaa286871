/**
 * The page behind the others: what was understood of Start and Readings, each jar worked out, the ranking, the curves. All other pages read
 * what is here, by the names of {@link org.snugsheet.office.sheets.lessonbook.layout.Names}.
 */
@NullMarked
package org.snugsheet.office.sheets.lessonbook.behind;

import org.jspecify.annotations.NullMarked;
