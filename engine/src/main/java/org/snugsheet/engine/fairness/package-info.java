/**
 * Whether two jars make a fair test, and by how much each difference between them would bias the ratio of their rates.
 *
 * <p>Begin at {@link org.snugsheet.engine.fairness.FairTest}. This package uses {@link org.snugsheet.engine.quantity}, {@link
 * org.snugsheet.engine.reading}, {@link org.snugsheet.engine.heat}, {@link org.snugsheet.engine.comparison}, {@link
 * org.snugsheet.engine.cooling} and {@link org.snugsheet.engine.jar}.
 */
package org.snugsheet.engine.fairness;
