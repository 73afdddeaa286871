/**
 * What the office’s interfaces make long-winded in Java, for every package that works on a document.
 *
 * <p>This package uses the office’s interfaces and no other package of this project.
 */
@NullMarked
package org.snugsheet.office.uno;

import org.jspecify.annotations.NullMarked;
