package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.comparison.StudentT;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/** Properties of readings that are known to half a mark, by hand and by a trial of many rates. */
class BoundedRoundingLimitsTest {

    private static final Graduation DEGREE = Graduation.of(1, Scale.CELSIUS);

    /** By hand: from 39.5…40.5 to 29.5…30.5 in a minute, so the slope lies between ln(39.5/30.5) and ln(40.5/29.5). */
    @Test
    void twoBarsSetTheSteepestAndTheGentlestCurve() {
        Interval rates = rates(0, 40, 30);

        assertEquals(Math.log(39.5 / 30.5), 60 * rates.low(), 1e-7);
        assertEquals(Math.log(40.5 / 29.5), 60 * rates.high(), 1e-7);
    }

    @Test
    void aColdJarInWarmSurroundingsIsTheSameTurnedOver() {
        Interval warm = rates(20, 60, 50, 43);
        Readings cold = readings(-20, -10, -3);

        Interval rates = BoundedRoundingLimits.rates(cold, 20, -1, DEGREE).orElseThrow();
        assertEquals(warm.low(), rates.low(), 1e-12);
        assertEquals(warm.high(), rates.high(), 1e-12);
    }

    @Test
    void readingsThatNoCurveGoesThroughLeaveNone() {
        assertTrue(
                BoundedRoundingLimits.rates(readings(40, 30, 29), 0, 1, DEGREE).isEmpty());
        assertTrue(
                BoundedRoundingLimits.rates(readings(40, 30, -1), 0, 1, DEGREE).isEmpty(), "below the surroundings");
    }

    @Test
    void aJarAtItsSurroundingsMayHaveGotThereAtAnySpeed() {
        assertEquals(Double.POSITIVE_INFINITY, rates(0, 40, 0).high());
    }

    /** The slow way: a row of trial rates, for each of which every bar says between which limits the start must lie. */
    @Test
    void theLimitsAreThoseOfATrialOfManyRates() {
        SplittableRandom random = new SplittableRandom(5);
        int some = 0;
        for (int run = 0; run < 200; run++) {
            double[] celsius = new double[5];
            for (int i = 0; i < celsius.length; i++) {
                celsius[i] = Math.rint(36 * Math.exp(-0.2 * i) + 0.3 * random.nextGaussian());
            }
            Interval found = BoundedRoundingLimits.rates(readings(celsius), 0, 1, DEGREE)
                    .orElseGet(() -> new Interval(Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY));
            for (double perMinute = 0.15; perMinute < 0.25; perMinute += 0.0005) {
                double rate = perMinute / 60;
                boolean nearAnEdge = Math.min(Math.abs(rate - found.low()), Math.abs(rate - found.high())) < 1e-9;
                if (!nearAnEdge) {
                    assertEquals(isPossible(celsius, perMinute), found.contains(rate), found + " " + perMinute);
                }
            }
            some += Double.isFinite(found.low()) ? 1 : 0;
        }
        assertTrue(some > 50 && some < 200, "some of each: " + some);
    }

    private static boolean isPossible(double[] celsius, double perMinute) {
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int i = 0; i < celsius.length; i++) {
            low = Math.max(low, (celsius[i] - 0.5) * Math.exp(perMinute * i));
            high = Math.min(high, (celsius[i] + 0.5) * Math.exp(perMinute * i));
        }
        return low <= high;
    }

    /**
     * Twelve readings to half a degree Fahrenheit of a jar with a half-time of 300 minutes fall by about a mark each: without
     * noise, what errors that go together add to {@code ± t·s} is not enough, and the limits of the bars hold the truth.
     */
    @Test
    void aJarThatFallsByOneMarkFromReadingToReadingIsHeldToo() {
        Coverage lesson = new Coverage(12, 0.5, Scale.FAHRENHEIT, 300, 0);
        SplittableRandom random = new SplittableRandom(11);
        double truth = Math.log(2) / (300 * 60);
        int runs = 500;
        int without = 0;
        int with = 0;
        for (int run = 0; run < runs; run++) {
            Coverage.Jar jar = Coverage.Jar.of(lesson, random);
            CoolingFit fit = CoolingFit.of(jar.readings(), new Surroundings.Constant(jar.room(), true), lesson.grain());
            double reach = StudentT.quantile(0.95, fit.degreesOfFreedom())
                    * fit.errors().raisedOf(StandardErrors.RATE);
            without += Math.abs(fit.constant().perSecond() - truth) <= reach ? 1 : 0;
            with += fit.intervals(0.95).rate().contains(truth) ? 1 : 0;
        }
        assertTrue(without < 0.92 * runs, "held without: " + without);
        assertEquals(runs, with);
    }

    /** Readings that scatter more than rounding does are no matter of bars. */
    @Test
    void withNoiseTheLimitsAreThoseOfTheResiduals() {
        Readings readings = readings(40, 31, 27, 18, 17, 11);
        CoolingFit fit = CoolingFit.of(readings, Surroundings.meltingIce(), DEGREE);

        assertFalse(RoundingUncertainty.reachable(fit).isPresent());
        assertEquals(60 * fit.errors().raisedOf(StandardErrors.RATE), error(fit), 1e-15);
    }

    private static double error(CoolingFit fit) {
        return fit.conservativeEstimate().standardError();
    }

    private static Interval rates(double surroundings, double... celsius) {
        return BoundedRoundingLimits.rates(readings(celsius), surroundings, 1, DEGREE)
                .orElseThrow();
    }

    private static Readings readings(double... celsius) {
        List<Entry> minutes = new ArrayList<>();
        List<Entry> temperatures = new ArrayList<>();
        for (int i = 0; i < celsius.length; i++) {
            minutes.add(Entry.of(i));
            temperatures.add(Entry.of(celsius[i]));
        }
        return Readings.ofMinutes(minutes, temperatures, Scale.CELSIUS);
    }
}
