/**
 * Answers, for the teacher: who wins, how sure it is, each jar by itself.
 */
@NullMarked
package org.snugsheet.office.sheets.lessonbook.answers;

import org.jspecify.annotations.NullMarked;
