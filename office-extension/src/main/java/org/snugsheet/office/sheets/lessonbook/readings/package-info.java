/**
 * Readings: what the groups read, and what the checks say of it.
 */
@NullMarked
package org.snugsheet.office.sheets.lessonbook.readings;

import org.jspecify.annotations.NullMarked;
