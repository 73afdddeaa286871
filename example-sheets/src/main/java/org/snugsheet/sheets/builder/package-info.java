/**
 * What all worked sheets share, so that they look and behave alike: cell styles, input cells, named ranges, charts, print
 * set-up, protection.
 *
 * <p>A {@link org.snugsheet.sheets.builder.Book} is a document being filled in a running office, a
 * {@link org.snugsheet.sheets.builder.Page} one of its sheets; every other public class here does one thing to a page. Which
 * cells stand where, and what they say, is none of this package’s business: that is in {@link org.snugsheet.sheets}.
 *
 * <p>Everything goes through the office (UNO), nothing is written into files by hand. Call it within
 * {@link org.snugsheet.office.harness.Office#call}, which keeps the time limit and turns what UNO throws into one exception.
 *
 * <p>This package uses UNO and the office harness, and nothing else of this project.
 */
@NullMarked
package org.snugsheet.sheets.builder;

import org.jspecify.annotations.NullMarked;
