package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/** The estimate of a jar whose readings rounding alone explains: its 95 % limits reach to the curves through all bars of half a mark. */
class RoundingUncertaintyTest {

    private static final Graduation DEGREE = Graduation.of(1, Scale.CELSIUS);
    private static final Surroundings ICE = Surroundings.meltingIce();

    /** Jars that fall by just about a mark from reading to reading, rounded and without noise; every two minutes, in ice. */
    static List<double[]> jars() {
        return List.of(
                // here the fastest curve is the one that is farther off, and then the slowest
                new double[] {36, 35, 34, 33, 32, 31, 30, 29, 28, 27, 26, 25},
                new double[] {36, 35, 34, 32, 31, 30, 29, 28});
    }

    @ParameterizedTest
    @MethodSource("jars")
    void theLimitsReachToEveryCurveThroughTheBars(double... read) {
        CoolingFit fit = fit(read);
        double slowest = 0;
        double fastest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < read.length; i++) {
            for (int j = i + 1; j < read.length; j++) {
                slowest = Math.max(slowest, Math.log((read[i] - 0.5) / (read[j] + 0.5)) / (2 * (j - i)));
                fastest = Math.min(fastest, Math.log((read[i] + 0.5) / (read[j] - 0.5)) / (2 * (j - i)));
            }
        }
        assertTrue(slowest < fastest, "a curve goes through all bars");
        double rate = fit.constant().perMinute();
        double reach = Math.max(rate - slowest, fastest - rate);
        Estimate estimate = fit.conservativeEstimate();

        double student = new TDistribution(read.length - 2).inverseCumulativeProbability(0.975);
        double raised = 60 * fit.errors().raisedOf(StandardErrors.RATE);
        assertTrue(reach / student > raised, "the bars reach farther than the errors of single readings do");
        assertEquals(reach / student, estimate.standardError(), 1e-6 * raised);
        // Another jar shares the whole range; rounding is known beforehand, so by the normal quantile.
        assertTrue(reach / 1.959964 > 60 * fit.errors().sharedOf(StandardErrors.RATE));
        assertEquals(reach / 1.959964, estimate.sharedError(), 1e-5 * raised);
        assertEquals(rate, estimate.value(), 0);
    }

    /** At the surroundings in the end: any fast curve goes through, and only the slow side says how far the constant may be off. */
    @Test
    void whereAnySpeedIsPossibleTheSlowSideCounts() {
        double[] read = {40, 0.5, 0};
        CoolingFit fit = fit(read);
        double slowest = Math.log(39.5 / 1) / 2;
        double reach = fit.constant().perMinute() - slowest;

        assertEquals(
                Double.POSITIVE_INFINITY,
                RoundingUncertainty.reachable(fit).orElseThrow().high());
        assertTrue(reach > 0);
        assertEquals(
                Math.max(reach / 1.959964, 60 * fit.errors().sharedOf(StandardErrors.RATE)),
                fit.conservativeEstimate().sharedError(),
                1e-6 * reach);
    }

    private static CoolingFit fit(double... celsius) {
        List<Entry> minutes = new ArrayList<>();
        List<Entry> temperatures = new ArrayList<>();
        for (int i = 0; i < celsius.length; i++) {
            minutes.add(Entry.of(2 * i));
            temperatures.add(Entry.of(celsius[i]));
        }
        return CoolingFit.of(Readings.ofMinutes(minutes, temperatures, Scale.CELSIUS), ICE, DEGREE);
    }
}
