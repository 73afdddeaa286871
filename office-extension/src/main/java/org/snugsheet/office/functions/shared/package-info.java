/**
 * What several families of functions share: texts of arguments, citations, and cells read into jars and layers.
 *
 * <p>This package uses {@link org.snugsheet.office.cells}, {@link org.snugsheet.office.declare},
 * {@link org.snugsheet.office.words} and the engine.
 */
@NullMarked
package org.snugsheet.office.functions.shared;

import org.jspecify.annotations.NullMarked;
