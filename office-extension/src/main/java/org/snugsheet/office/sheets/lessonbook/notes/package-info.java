/**
 * Notes: what to say and ask, step by step through the lesson.
 */
@NullMarked
package org.snugsheet.office.sheets.lessonbook.notes;

import org.jspecify.annotations.NullMarked;
