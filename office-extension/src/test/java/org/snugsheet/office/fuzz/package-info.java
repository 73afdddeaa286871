/**
 * Random calls of all cell functions in plain Java, as the office makes them but without one: whatever cells hold, a function answers
 * or refuses in words.
 *
 * <p>{@link org.snugsheet.office.fuzz.FuzzTest} draws them, some thousands in each build and a million with {@code
 * -Dfuzz.calls=1000000}; {@link org.snugsheet.office.fuzz.FuzzCasesTest} keeps what once failed.
 */
@NullMarked
package org.snugsheet.office.fuzz;

import org.jspecify.annotations.NullMarked;
