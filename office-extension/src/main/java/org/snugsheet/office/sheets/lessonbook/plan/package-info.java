/**
 * Plan: what to bring, what to do at which minute, what to expect and whether the wraps can be told apart.
 */
@NullMarked
package org.snugsheet.office.sheets.lessonbook.plan;

import org.jspecify.annotations.NullMarked;
