package org.snugsheet.engine.jar;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.quantity.HeatCapacity;

/**
 * The thermal resistance that follows from cooling constants.
 *
 * <p>A jar of heat capacity C with the surface A cools with {@code k = A/(R·C)} (Incropera and DeWitt, Fundamentals of Heat
 * and Mass Transfer, section 5.1), hence {@code R = A/(k·C)}. Between a wrapped and a bare jar the films on the surfaces, and
 * the jar’s own wall, cancel: {@code R = A/C·(1/k₂ − 1/k₁)}, as far as they are the same on both. The heat through lid and
 * base bypasses the wrap, so their conductance L is subtracted first: {@code R = A/(k·C − L)}. Errors are propagated by JCGM
 * 100:2008, 5.1.2: {@code s(1/k) = s(k)/k²}.
 */
public final class MeasuredResistance {

    private MeasuredResistance() {}

    /**
     * From one jar: everything between the water and its surroundings.
     *
     * @param perSecond its cooling constant, 1/s
     * @param capacity of water and vessel
     * @param squareMeters the surface that the heat crosses
     * @return the resistance in m²·K/W with its error
     * @throws InvalidInputException if the jar does not cool
     */
    public static Estimate ofOneJar(Estimate perSecond, HeatCapacity capacity, double squareMeters) {
        return ofOneJar(perSecond, capacity, squareMeters, 0);
    }

    /**
     * From one jar that also loses heat elsewhere: {@code R = A/(k·C − L)}, {@code s(R) = A·C·s(k)/(k·C − L)²}.
     *
     * @param perSecond its cooling constant, 1/s
     * @param capacity of water and vessel
     * @param squareMeters the surface of interest
     * @param elsewhere the conductance L of everything else, such as {@link HeatFlow#ofEnds()}, W/K
     * @return the resistance in m²·K/W with its error
     * @throws InvalidInputException if the jar does not cool, or loses no more than the heat that goes elsewhere
     */
    public static Estimate ofOneJar(Estimate perSecond, HeatCapacity capacity, double squareMeters, double elsewhere) {
        if (!(elsewhere >= 0)) {
            throw InvalidInputException.of(Problem.NEGATIVE, QuantityName.LEAK_OF_THE_JAR, elsewhere);
        }
        double held = capacity.joulesPerKelvin();
        double conductance = cooling(perSecond) * held - elsewhere;
        if (!(conductance > 0)) {
            throw InvalidInputException.of(Problem.ALL_GOES_ELSEWHERE, cooling(perSecond) * held, elsewhere);
        }
        return new Estimate(
                squareMeters / conductance,
                squareMeters * held * perSecond.standardError() / (conductance * conductance),
                perSecond.degreesOfFreedom());
    }

    /**
     * From a bare and a wrapped jar, otherwise alike and wrapped all over: the wrap alone.
     *
     * @param bare the cooling constant of the bare jar, 1/s
     * @param wrapped that of the wrapped jar, 1/s
     * @param capacity of water and vessel, of either jar
     * @param squareMeters the surface that is wrapped
     * @return the resistance in m²·K/W with its error; negative if the wrapped jar cooled faster
     * @throws InvalidInputException if either jar does not cool
     */
    public static Estimate ofTheWrap(Estimate bare, Estimate wrapped, HeatCapacity capacity, double squareMeters) {
        return ofTheWrap(bare, wrapped, capacity, squareMeters, 0);
    }

    /**
     * From a bare and a wrapped jar, otherwise alike: the wrap alone.
     *
     * @param bare the cooling constant of the bare jar, 1/s
     * @param wrapped that of the wrapped jar, 1/s
     * @param capacity of water and vessel, of either jar
     * @param squareMeters the surface that is wrapped
     * @param elsewhere the conductance of what is not wrapped, of either jar, W/K; zero if all of it is
     * @return the resistance in m²·K/W with its error; negative if the wrapped jar cooled faster
     * @throws InvalidInputException if either jar does not cool, or loses no more than the heat that goes elsewhere
     */
    public static Estimate ofTheWrap(
            Estimate bare, Estimate wrapped, HeatCapacity capacity, double squareMeters, double elsewhere) {
        Estimate all = ofOneJar(wrapped, capacity, squareMeters, elsewhere);
        Estimate without = ofOneJar(bare, capacity, squareMeters, elsewhere);
        return new Estimate(
                all.value() - without.value(),
                Math.hypot(all.standardError(), without.standardError()),
                degreesOfFreedom(all, without));
    }

    /** The formula of Welch and Satterthwaite (JCGM 100:2008, G.4.1). */
    private static double degreesOfFreedom(Estimate one, Estimate other) {
        double error = Math.hypot(one.standardError(), other.standardError());
        double terms = Math.pow(one.standardError() / error, 4) / one.degreesOfFreedom()
                + Math.pow(other.standardError() / error, 4) / other.degreesOfFreedom();
        return error == 0 ? Double.POSITIVE_INFINITY : 1 / terms;
    }

    private static double cooling(Estimate perSecond) {
        if (!(perSecond.value() > 0)) {
            throw InvalidInputException.of(Problem.RATE_TELLS_NO_RESISTANCE);
        }
        return perSecond.value();
    }
}
