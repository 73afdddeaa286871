package org.snugsheet.engine.fairness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Mark;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/** Jars that truly cool by free convection, read without noise: the bias foretold against the one that Newton’s fits show. */
class FairTestTest {

    /** {@code θ = A·(1 + b·A^¼·t/4)^(−4)}, the solution of θ′ = −b·θ^1.25. */
    @ParameterizedTest
    @CsvSource({"40, 30, 5, 5, 30, 30", "40, 40, 5, 12, 30, 30", "40, 40, 5, 5, 20, 45", "42, 36, 2, 6, 25, 35"})
    void the_bias_foretold_is_the_bias_found(
            double start, double otherStart, double around, double otherAround, double minutes, double otherMinutes) {
        CoolingFit first = fit(start, around, minutes);
        CoolingFit second = fit(otherStart, otherAround, otherMinutes);
        double found = first.constant().perMinute() / second.constant().perMinute();
        double foretold = FairTest.of(first, second, List.of()).stream()
                .mapToDouble(FairTest.Difference::factor)
                .reduce(1, (a, b) -> a * b);
        assertEquals(found, foretold, 0.15 * Math.abs(found - 1) + 0.004);
    }

    @Test
    void jars_alike_make_a_fair_test() {
        CoolingFit jar = fit(40, 5, 30);
        Volume half = Volume.of(250, Unit.MILLILITRE);
        for (FairTest.Difference difference : FairTest.of(jar, jar, List.of(half, half))) {
            assertEquals(0, difference.percent(), 1e-9);
            assertFalse(difference.matters());
        }
    }

    /** Twice the water in a jar of the same shape cools 2^(1/3), 26 %, slower. */
    @Test
    void more_water_cools_slower_by_its_cube_root() {
        CoolingFit jar = fit(40, 5, 30);
        FairTest.Difference volume = FairTest.of(
                        jar, jar, List.of(Volume.of(200, Unit.MILLILITRE), Volume.of(400, Unit.MILLILITRE)))
                .get(3);
        assertEquals(100 * (Math.cbrt(2) - 1), volume.percent(), 1e-9);
        assertTrue(volume.matters());
    }

    private static CoolingFit fit(double start, double around, double minutes) {
        List<Entry> times = new ArrayList<>();
        List<Entry> readings = new ArrayList<>();
        double above = start - around;
        for (int i = 0; i <= 10; i++) {
            double t = minutes * i / 10;
            times.add(Entry.of(t));
            readings.add(Entry.of(around + above * Math.pow(1 + 0.02 * Math.pow(above, 0.25) * t / 4, -4)));
        }
        return CoolingFit.of(
                Readings.ofMinutes(times, readings, Scale.CELSIUS),
                new Surroundings.Constant(new Temperature(around)),
                Mark.of(0.1, Scale.CELSIUS));
    }
}
