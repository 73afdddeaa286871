/**
 * The declared cell functions: for each family an annotated interface, which is the only declaration, and a thin class that
 * reads the cells, calls the engine once and answers.
 *
 * <p>Names of services and methods are stored in people’s files and never change. A new function is a method in the
 * interface, its line in the class, and nothing else here.
 *
 * <p>This package uses {@link org.snugsheet.office.cells}, {@link org.snugsheet.office.declare} and the engine.
 */
@NullMarked
package org.snugsheet.office.functions;

import org.jspecify.annotations.NullMarked;
