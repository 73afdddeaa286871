/**
 * What all worked sheets need beside {@link org.snugsheet.office.page}, which fills their pages: the document as a whole, how it
 * opens, charts of bars, and drawings.
 *
 * <p>A {@link org.snugsheet.office.sheets.builder.Book} is a document being filled in a running office, a
 * {@link org.snugsheet.office.sheets.builder.WorkedSheet} is what fills it. This package does not know which cells a sheet has, or what they
 * say.
 *
 * <p>Nearly everything goes through the office (UNO). This package uses UNO and the pages of the office extension.
 */
@NullMarked
package org.snugsheet.office.sheets.builder;

import org.jspecify.annotations.NullMarked;
