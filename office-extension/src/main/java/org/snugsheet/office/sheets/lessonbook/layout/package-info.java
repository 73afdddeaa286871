/**
 * What all pages of the lesson book share: how large it is, the names of its cells, where each part is on the page behind. It uses no other
 * package of the book.
 */
@NullMarked
package org.snugsheet.office.sheets.lessonbook.layout;

import org.jspecify.annotations.NullMarked;
