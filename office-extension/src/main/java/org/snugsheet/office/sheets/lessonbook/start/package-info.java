/**
 * Start: the boxes of the lesson and the list of jars. With Readings it is the only page that is typed on.
 */
@NullMarked
package org.snugsheet.office.sheets.lessonbook.start;

import org.jspecify.annotations.NullMarked;
