package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.comparison.ReplicateGroup;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/** What rounding does to several readings at once, compared with rounding done by hand at every phase between two marks. */
class ReadingErrorsTest {

    private static final Graduation DEGREE = Graduation.of(1, Scale.CELSIUS);
    private static final int PHASES = 10_000;
    private static final int COUNT = 12;

    /** Four readings of one temperature are rounded alike: their mean errs as one does, a²/12 and not a quarter of it. */
    @Test
    void readingsOfOneTemperatureTellNoMoreThanOne() {
        double[] mean = {0.25, 0.25, 0.25, 0.25};
        ReadingErrors errors = ReadingErrors.of(new double[] {20.2, 20.2, 23.2, 19.2}, 0, DEGREE);

        assertEquals(1.0 / 48, errors.varianceOf(mean), 1e-15);
        assertEquals(4, errors.inflationOf(mean), 1e-12);
        assertEquals(1.0 / 12, errors.sharedVarianceOf(mean), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.05, 0.1, 0.15, 0.2})
    void temperaturesNearlyAWholeNumberOfMarksApartErrTogether(double beyond) {
        double together = 0;
        for (int phase = 0; phase < PHASES; phase++) {
            double one = 20 + (phase + 0.5) / PHASES;
            together += error(one) * error(one + 3 + beyond) / PHASES;
        }
        ReadingErrors errors = ReadingErrors.of(new double[] {20, 23 + beyond}, 0, DEGREE);

        // of the sum of two: each of them, and twice what they have together
        assertEquals(2.0 / 12 + 2 * together, errors.sharedVarianceOf(new double[] {1, 1}), 1e-6);
    }

    private static double error(double celsius) {
        return Math.rint(celsius) - celsius;
    }

    /**
     * A jar that falls by about a mark from reading to reading: rounded at every phase, its cooling constant is off by more than if each
     * reading erred on its own, and another jar of the same temperatures by just as much.
     */
    @Test
    void theRateErrsAsRoundingAtEveryPhaseMakesIt() {
        CoolingFit fit = fit(ReadingErrorsTest::truth);
        double[] influence = fit.solution().influence()[1];
        double squares = 0;
        double own = 0;
        for (int phase = 0; phase < PHASES; phase++) {
            double off = 0;
            for (int i = 0; i < COUNT; i++) {
                off += influence[i] * error(truth(i) + (double) phase / PHASES);
            }
            squares += off * off / PHASES;
        }
        for (double weight : influence) {
            own += weight * weight / 12;
        }
        double byHand = Math.sqrt(squares);
        assertTrue(byHand > 1.2 * Math.sqrt(own), "rounding repeats itself: " + byHand / Math.sqrt(own));

        double raised = fit.errors().raisedOf(StandardErrors.RATE);
        double shared = fit.errors().sharedOf(StandardErrors.RATE);
        assertEquals(Math.sqrt(own), fit.errors().ownOf(StandardErrors.RATE), 1e-3 * Math.sqrt(own));
        // Only errors that go together are counted, none that cancel or that are a whole wave apart: 0.87 of it.
        assertEquals(0.87, raised / byHand, 0.1);
        assertEquals(0.87, shared / byHand, 0.1);
        assertTrue(60 * raised <= fit.conservativeEstimate().standardError() * (1 + 1e-12));
    }

    /** Where no curve goes through all bars, jars read to the same numbers still share what noise has not scattered. */
    @Test
    void jarsOfTheSameReadingsShareTheirRounding() {
        CoolingFit fit = fit(i -> Math.rint(truth(i)) + (i == 5 ? 1 : 0));
        assertFalse(RoundingUncertainty.reachable(fit).isPresent());

        double shared = fit.conservativeEstimate().sharedError();
        double own = fit.estimate().standardError();
        assertTrue(shared > 0.1 * own, shared + " of " + own);
        double six = new ReplicateGroup(Collections.nCopies(6, fit.conservativeEstimate()))
                .estimate()
                .interval(0.95)
                .high();
        assertTrue(six - fit.constant().perMinute() >= 1.95 * shared, "six jars tell no more than their marks do");
    }

    /** A jar in ice that falls by about a mark each time. */
    private static double truth(int i) {
        return 40 * Math.exp(-0.026775 * i);
    }

    private static CoolingFit fit(IntToDoubleFunction readings) {
        List<Entry> minutes = new ArrayList<>();
        List<Entry> celsius = new ArrayList<>();
        for (int i = 0; i < COUNT; i++) {
            minutes.add(Entry.of(2 * i));
            celsius.add(Entry.of(readings.applyAsDouble(i)));
        }
        return CoolingFit.of(Readings.ofMinutes(minutes, celsius, Scale.CELSIUS), Surroundings.meltingIce(), DEGREE);
    }
}
