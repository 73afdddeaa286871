/**
 * What all worked sheets share beside {@link org.snugsheet.office.page}, which fills their pages: the document as a whole, how it
 * opens, and charts of bars.
 *
 * <p>A {@link org.snugsheet.sheets.builder.Book} is a document being filled in a running office. Which cells stand where, and
 * what they say, is none of this package’s business: that is in {@link org.snugsheet.sheets}.
 *
 * <p>Nearly everything goes through the office (UNO). Call it within {@link org.snugsheet.office.harness.Office#call}, which keeps
 * the time limit and turns what UNO throws into one exception.
 *
 * <p>This package uses UNO, the pages of the office extension and the office harness.
 */
@NullMarked
package org.snugsheet.sheets.builder;

import org.jspecify.annotations.NullMarked;
