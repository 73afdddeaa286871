/**
 * Wall, for everybody: one sentence, large bars, and the same bars to color by hand. It shows what is worked out for the answers.
 */
@NullMarked
package org.snugsheet.office.sheets.lessonbook.wall;

import org.jspecify.annotations.NullMarked;
