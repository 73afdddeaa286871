/**
 * Fills pages of a document so that they look and behave alike: cell styles, input cells, named ranges, charts, print set-up,
 * protection.
 *
 * <p>A {@link org.snugsheet.office.page.Page} is one sheet being filled; every other public class here does one thing to a page.
 * This package does not decide which cells a page has or what they say. The menu of Calc uses it in somebody’s document,
 * the worked sheets in documents of their own.
 *
 * <p>Everything goes through the office (UNO), nothing is written into files by hand. This package uses UNO and nothing more of
 * this project.
 */
@NullMarked
package org.snugsheet.office.page;

import org.jspecify.annotations.NullMarked;
