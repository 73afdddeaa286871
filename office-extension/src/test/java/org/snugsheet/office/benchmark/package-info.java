/**
 * How fast the functions are from a cell: beside a function that does nothing, in one office and in one run.
 *
 * <p>{@link org.snugsheet.office.benchmark.RateBenchmark} is the program; the rest is a small extension of its own with one
 * function, {@link org.snugsheet.office.benchmark.Idle}, which is installed beside ours and is never shipped. It is made
 * from its declaration in the same way as ours is.
 */
@NullMarked
package org.snugsheet.office.benchmark;

import org.jspecify.annotations.NullMarked;
