package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
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
}
