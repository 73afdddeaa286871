/**
 * The menu of Calc.
 *
 * <p>A {@link org.snugsheet.office.menu.MenuItem} is one line of it, with its words and its address; the office’s configuration is
 * written from these lines. {@link org.snugsheet.office.menu.MenuHandler} is what the office calls when somebody chooses one. What
 * is done then is in other packages, such as {@link org.snugsheet.office.sharing}.
 */
@NullMarked
package org.snugsheet.office.menu;

import org.jspecify.annotations.NullMarked;
