/**
 * Physical quantities as immutable values, and the table of units.
 *
 * <p>A <em>temperature</em> is a point on a scale; a <em>temperature difference</em> is a distance between two points. They
 * are two types, because conversion shifts the first by 32 but never the second, and because two temperatures cannot be
 * added.
 *
 * <p>Internally values are in SI units. Temperatures are in degrees Celsius, an SI unit, so that 20 °C stays exactly 20,
 * which a conversion to 293.15 K and back would not ensure. Every {@code of} refuses NaN, infinity and impossible values
 * (colder than absolute zero, a negative resistance) with a {@link org.snugsheet.engine.InvalidInputException}; so every
 * value that exists is valid.
 *
 * <p>Source of every factor: NIST Special Publication 811 (2008), Appendix B.8; each row of
 * {@link org.snugsheet.engine.quantity.Unit} that comes from elsewhere says so.
 *
 * <p>This package uses only {@link org.snugsheet.engine}.
 */
package org.snugsheet.engine.quantity;
