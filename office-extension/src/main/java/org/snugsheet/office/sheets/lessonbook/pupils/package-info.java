/**
 * Papers for each group, to be filled by hand: with pictures for those who do not read yet, with numbers for the others.
 */
@NullMarked
package org.snugsheet.office.sheets.lessonbook.pupils;

import org.jspecify.annotations.NullMarked;
