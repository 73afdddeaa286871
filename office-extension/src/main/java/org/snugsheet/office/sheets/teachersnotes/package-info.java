/**
 * The teacher’s notes: {@link org.snugsheet.office.sheets.teachersnotes.TeachersNotes}.
 */
@NullMarked
package org.snugsheet.office.sheets.teachersnotes;

import org.jspecify.annotations.NullMarked;
