/**
 * The windows in which the user is asked and told: a form of labelled fields, a text to read, and the office’s own message box.
 *
 * <p>All can be used by keyboard alone: each label has a letter that leads to its field, fields follow each other from top to
 * bottom, Enter accepts and Escape gives up. Sizes are in the office’s units for dialogs, a quarter of a letter’s breadth and an
 * eighth of its height, so that windows grow with the letters.
 *
 * <p>This package uses the office’s interfaces and the languages.
 */
@NullMarked
package org.snugsheet.office.dialog;

import org.jspecify.annotations.NullMarked;
