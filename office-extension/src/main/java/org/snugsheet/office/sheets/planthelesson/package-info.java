/**
 * Plan the lesson: {@link org.snugsheet.office.sheets.planthelesson.PlanTheLesson} and the page to print and take along.
 */
@NullMarked
package org.snugsheet.office.sheets.planthelesson;

import org.jspecify.annotations.NullMarked;
