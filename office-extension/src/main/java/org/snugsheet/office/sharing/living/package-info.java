/**
 * Copies that go on working: calls of our functions turned into steps that every spreadsheet program can do, in cells of a page that
 * names each step. Nothing here knows the office; the formulas are in the notation of its interfaces.
 */
@NullMarked
package org.snugsheet.office.sharing.living;

import org.jspecify.annotations.NullMarked;
