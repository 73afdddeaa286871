/**
 * Plan the lesson: {@link org.snugsheet.sheets.planthelesson.PlanTheLesson} and the page to print and take along.
 */
@NullMarked
package org.snugsheet.sheets.planthelesson;

import org.jspecify.annotations.NullMarked;
