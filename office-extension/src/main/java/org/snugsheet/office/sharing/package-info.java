/**
 * A copy of a sheet for colleagues without this extension, and the way back.
 *
 * <p>{@link org.snugsheet.office.sharing.ShareCopy} puts the value in the place of each Snugsheet formula and keeps the formula
 * three times: as a note on its cell, on a page that says what each one means, and in the properties of the document ({@link
 * org.snugsheet.office.sharing.KeptFormulas}), from which {@link org.snugsheet.office.sharing.BringBack} restores it. Formulas of
 * the office itself, charts and all the rest stay as they are.
 *
 * <p>This package works on documents through the office’s interfaces, in the office or from outside it. It uses the
 * declarations of the functions to know which formulas are Snugsheet’s.
 */
@NullMarked
package org.snugsheet.office.sharing;

import org.jspecify.annotations.NullMarked;
