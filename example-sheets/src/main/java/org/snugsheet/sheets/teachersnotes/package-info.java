/**
 * The teacher’s notes: {@link org.snugsheet.sheets.teachersnotes.TeachersNotes}.
 */
@NullMarked
package org.snugsheet.sheets.teachersnotes;

import org.jspecify.annotations.NullMarked;
