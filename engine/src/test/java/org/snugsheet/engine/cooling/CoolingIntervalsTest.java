package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Reading;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

class CoolingIntervalsTest {

    private static final Surroundings ROOM = Surroundings.constant(new Temperature(5));

    /** Student’s t of 0.975 for 3 degrees of freedom is 3.182 (any table). */
    @Test
    void withManyReadingsTheProfileIsTheLinearInterval() {
        CoolingFit fit = fit(1, 60, 0.02, 0.1, ROOM, 0.1);
        Interval rate = fit.intervals(0.95).rate();
        double half = 2.0017 * fit.constantError().perSecond(); // t of 0.975 for 58, from memory of the tables

        assertEquals(fit.constant().perSecond() - half, rate.low(), 0.01 * half);
        assertEquals(fit.constant().perSecond() + half, rate.high(), 0.01 * half);
    }

    @Test
    void theLimitsOfTheHalfTimeAreThoseOfTheRate() {
        CoolingFit fit = fit(2, 8, 0.02, 0.5, ROOM, 1);
        CoolingIntervals intervals = fit.intervals(0.95);

        assertEquals(Math.log(2) / intervals.rate().high(), intervals.halfTime().low(), 1e-6);
        assertEquals(Math.log(2) / intervals.rate().low(), intervals.halfTime().high(), 1e-6);
        assertTrue(intervals.halfTime().contains(fit.halfTime()));
        assertTrue(intervals.start().contains(fit.start().celsius()));
    }

    @Test
    void aVesselThatHardlyCoolsHasAHalfTimeLongerThanItsLowerLimit() {
        CoolingFit fit = CoolingFit.of(
                Readings.ofMinutes(
                        List.of(Entry.of(0), Entry.of(5), Entry.of(10), Entry.of(15)),
                        List.of(Entry.of(40), Entry.of(40), Entry.of(40), Entry.of(39)),
                        Scale.CELSIUS),
                ROOM,
                Graduation.usual(Scale.CELSIUS));
        CoolingIntervals intervals = fit.intervals(0.95);

        assertEquals(0, intervals.rate().low());
        assertTrue(intervals.rate().high() > fit.constant().perSecond());
        assertEquals(Double.POSITIVE_INFINITY, intervals.halfTime().high());
        assertTrue(intervals.halfTime().low() > 0);
    }

    @Test
    void surroundingsThatReadingsHardlyTellHaveNoLowerLimit() {
        CoolingFit fit = fit(4, 6, 0.01, 0.5, new Surroundings.Unknown(), 1);
        Interval surroundings = fit.intervals(0.95).surroundings();

        assertEquals(Double.NEGATIVE_INFINITY, surroundings.low());
        assertTrue(surroundings.high() < 40);
        Interval given = fit(4, 8, 0.01, 0.3, ROOM, 1).intervals(0.95).surroundings();
        assertEquals(new Interval(4.5, 5.5), given, "read to a mark of 1 °C, and no farther off than half of that");
    }

    /**
     * The truth lies within 95 % limits 95 times of 100. With 1500 runs the share is within 0.938 and 0.962 but once in
     * about thirty; the seeds are fixed. A plain normal interval for 6 readings would hold it less than 90 times.
     */
    @Test
    @Tag("simulation")
    void theTruthLiesWithinTheLimitsAsOftenAsPromised() {
        int runs = 1500;
        int rate = 0;
        int level = 0;
        for (int run = 0; run < runs; run++) {
            CoolingIntervals given = fit(100 + run, 6, 0.03, 0.5, ROOM, 0.1).intervals(0.95);
            rate += given.rate().contains(0.03 / 60) ? 1 : 0;
            CoolingIntervals fitted = fit(9000 + run, 12, 0.05, 0.3, new Surroundings.Unknown(), 0.1)
                    .intervals(0.95);
            level += fitted.surroundings().contains(5) ? 1 : 0;
        }
        assertEquals(0.95, rate / (double) runs, 0.015);
        assertEquals(0.95, level / (double) runs, 0.015);
    }

    private static CoolingFit fit(
            long seed, int n, double perMinute, double noise, Surroundings surroundings, double mark) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Entry> minutes = new ArrayList<>();
        List<Entry> celsius = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double time = 60.0 * i / n;
            double read = 5 + 35 * Math.exp(-perMinute * time) + noise * random.nextGaussian();
            minutes.add(Entry.of(time));
            celsius.add(Entry.of(mark * Math.rint(read / mark)));
        }
        // The law by itself: what others leave open is tested by LawDoubtTest.
        return CoolingModel.newton(surroundings)
                .fit(Readings.ofMinutes(minutes, celsius, Scale.CELSIUS), Graduation.of(mark, Scale.CELSIUS));
    }

    /**
     * The limits of the rate are where the sum of squares has grown by {@code s²·t²}, with Student’s 2.776 for 4 degrees of freedom (any
     * table). With the surroundings known exactly the curve of each rate is a straight regression, written out here.
     */
    @Test
    void theLimitsOfTheRateAreThoseOfTheProfile() {
        Surroundings exact = new Surroundings.Constant(new Temperature(5), true);
        CoolingFit fit = fit(11, 6, 0.02, 2, exact, 0.01);
        Interval rate = fit.intervals(0.95).rate();
        double allowed = fit.sumOfSquares() * (1 + 2.776 * 2.776 / 4);

        assertEquals(allowed, sumOfSquares(fit, rate.low()), 2e-3 * allowed);
        assertEquals(allowed, sumOfSquares(fit, rate.high()), 2e-3 * allowed);
        assertTrue(rate.high() - fit.constant().perSecond()
                > 1.01 * (fit.constant().perSecond() - rate.low()));
    }

    private static double sumOfSquares(CoolingFit fit, double rate) {
        double shapes = 0;
        double together = 0;
        double squares = 0;
        for (Reading reading : fit.readings().all()) {
            double shape = Math.exp(-rate * reading.seconds());
            double difference = reading.temperature().celsius() - 5;
            shapes += shape * shape;
            together += shape * difference;
            squares += difference * difference;
        }
        return squares - together * together / shapes;
    }

    /** And those of fitted surroundings: at the limits Newton’s law in just these surroundings fits as badly (2.306 for 8 degrees). */
    @Test
    void theLimitsOfFittedSurroundingsAreThoseOfTheProfile() {
        CoolingFit fit = fit(12, 11, 0.06, 0.4, new Surroundings.Unknown(), 0.01);
        Interval level = fit.intervals(0.95).surroundings();
        double allowed = fit.sumOfSquares() * (1 + 2.306 * 2.306 / 8);

        for (double celsius : new double[] {level.low(), level.high()}) {
            CoolingFit there = CoolingFit.of(
                    fit.readings(),
                    new Surroundings.Constant(new Temperature(celsius), true),
                    Graduation.of(0.01, Scale.CELSIUS));
            assertEquals(allowed, there.sumOfSquares(), 2e-3 * allowed);
        }
    }

    /** What the rounding of the surroundings does to the rate comes on top, by its slope: u = a/√12, 1.96 of it (JCGM 100, 5.1.2). */
    @Test
    void theRoundingOfTheSurroundingsComesOnTop() {
        CoolingFit read = fit(13, 12, 0.03, 0.4, ROOM, 0.5);
        CoolingFit exact = fit(13, 12, 0.03, 0.4, new Surroundings.Constant(new Temperature(5), true), 0.5);
        double h = 0.01;
        CoolingFit warmer = fit(13, 12, 0.03, 0.4, Surroundings.constant(new Temperature(5 + h)), 0.5);
        CoolingFit colder = fit(13, 12, 0.03, 0.4, Surroundings.constant(new Temperature(5 - h)), 0.5);
        double slope = (warmer.constant().perSecond() - colder.constant().perSecond()) / (2 * h);
        double common = 1.96 * slope * 0.5 / Math.sqrt(12);
        double rate = read.constant().perSecond();
        Interval own = exact.intervals(0.95).rate();
        Interval all = read.intervals(0.95).rate();

        // To first order: a shift of the surroundings turns the curve a little.
        assertEquals(Math.hypot(rate - own.low(), common), rate - all.low(), 0.02 * (rate - all.low()));
        assertEquals(Math.hypot(own.high() - rate, common), all.high() - rate, 0.02 * (all.high() - rate));
        assertTrue(all.high() - rate > 1.05 * (own.high() - rate));
    }

    /** Amid many readings the limits of the curve are t standard errors of it; long after them only the surroundings are left. */
    @Test
    void theLimitsOfTheCurve() {
        CoolingFit fit = fit(14, 12, 0.05, 0.4, ROOM, 0.5);
        CoolingFit exact = fit(14, 12, 0.05, 0.4, new Surroundings.Constant(new Temperature(5), true), 0.5);

        Interval late = fit.intervals(0.95).at(100_000);
        assertEquals(5 - 1.96 * 0.5 / Math.sqrt(12), late.low(), 1e-3);
        assertEquals(5 + 1.96 * 0.5 / Math.sqrt(12), late.high(), 1e-3);
        Interval middle = exact.intervals(0.95).at(1200);
        // Student’s t for 10 degrees of freedom is 2.228 (any table); noise has scattered most of the rounding.
        double half = 2.228 * exact.errorAt(1200).kelvins();
        assertEquals(exact.at(1200).celsius() - half, middle.low(), 0.05 * half);
        assertEquals(exact.at(1200).celsius() + half, middle.high(), 0.05 * half);
    }
}
