/**
 * Physical quantities as immutable values, and the table of units.
 *
 * <p>A <em>temperature</em> is a point on a scale; a <em>temperature difference</em> is a distance between two points.
 * They are two types, because the first is shifted by 32 when it changes scale and the second never is, and because two
 * temperatures cannot be added.
 *
 * <p>Values are SI inside. Temperatures are held in degrees Celsius, a unit of the SI: so 20 °C stays 20 exactly, which a
 * trip through 293.15 K would not allow. Every {@code of} refuses NaN, infinity and what nature does not have (colder than
 * absolute zero, a resistance below zero) with a {@link org.snugsheet.engine.InvalidInputException}; a value that exists is a good one.
 *
 * <p>Source of every factor: NIST Special Publication 811 (2008), Appendix B.8; each row of
 * {@link org.snugsheet.engine.quantity.Unit} that comes from elsewhere says so.
 *
 * <p>This package uses nothing but {@link org.snugsheet.engine}.
 */
package org.snugsheet.engine.quantity;
