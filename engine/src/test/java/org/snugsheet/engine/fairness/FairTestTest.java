package org.snugsheet.engine.fairness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.jar.Lid;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/** Jars that truly cool by free convection, read without noise: the bias foretold against the one that Newton’s fits show. */
class FairTestTest {

    /** {@code θ = A·(1 + b·A^¼·t/4)^(−4)}, the solution of θ′ = −b·θ^1.25. */
    @ParameterizedTest
    @CsvSource({"40, 30, 5, 5, 30, 30", "40, 40, 5, 12, 30, 30", "40, 40, 5, 5, 20, 45", "42, 36, 2, 6, 25, 35"})
    void theBiasForetoldIsTheBiasFound(
            double start, double otherStart, double around, double otherAround, double minutes, double otherMinutes) {
        CoolingFit first = fit(start, around, minutes);
        CoolingFit second = fit(otherStart, otherAround, otherMinutes);
        double found = first.constant().perMinute() / second.constant().perMinute();
        double foretold = FairTest.of(first, second, List.of(), List.of()).stream()
                .mapToDouble(FairTest.Difference::factor)
                .reduce(1, (a, b) -> a * b);
        assertEquals(found, foretold, 0.15 * Math.abs(found - 1) + 0.004);
    }

    @Test
    void jarsAlikeMakeAFairTest() {
        CoolingFit jar = fit(40, 5, 30);
        Volume half = Volume.of(250, Unit.MILLILITER);
        for (FairTest.Difference difference : FairTest.of(jar, jar, List.of(half, half), List.of(Lid.BARE, Lid.BARE))) {
            assertEquals(0, difference.percent(), 1e-9);
            assertFalse(difference.matters());
        }
    }

    /** Twice the water in a jar of the same shape cools 2^(1/3), 26 %, slower. */
    @Test
    void moreWaterCoolsSlowerByItsCubeRoot() {
        CoolingFit jar = fit(40, 5, 30);
        FairTest.Difference volume = FairTest.of(
                        jar, jar, List.of(Volume.of(200, Unit.MILLILITER), Volume.of(400, Unit.MILLILITER)), List.of())
                .get(3);
        assertEquals(100 * (Math.cbrt(2) - 1), volume.percent(), 1e-9);
        assertTrue(volume.matters());
    }

    /**
     * By hand, for 250 ml at 32 °C in 10 °C: the lids let through 2.995 W open, 1.093 W bare and 0.287 W under R 0.2 (a sum from
     * the textbook’s tables, see LidTest). A jar read at 0.02 per minute loses 0.02/60·1039·22 = 7.62 W (C of 250 ml at
     * 32 °C: 0.9950 · 0.25 · 4178 = 1039 J/K). Open beside bare: (7.62 + 0.951)/(7.62 − 0.951); bare beside covered: (7.62 +
     * 0.403)/(7.62 − 0.403).
     */
    @Test
    void lidsBiasTheRatioByWhatGoesThroughThem() {
        CoolingFit jar = newton(0.02, 10);
        FairTest.Difference open = lids(jar, Lid.OPEN, Lid.BARE);
        assertEquals(100 * (8.571 / 6.669 - 1), open.percent(), 1);
        assertEquals(2.995, open.first(), 0.06);
        assertEquals(1.093, open.second(), 0.02);
        assertTrue(open.matters());
        FairTest.Difference covered = lids(jar, Lid.BARE, new Lid.Closed(new ThermalResistance(0.2)));
        assertEquals(100 * (8.023 / 7.217 - 1), covered.percent(), 0.3);
        assertEquals(
                open.percent(),
                FairTest.percentIfOneStoodOpen(jar, jar, List.of(QUARTER, QUARTER))
                        .orElseThrow(),
                1e-9);
        assertEquals(
                open.percent(),
                FairTest.percentIfOneStoodOpen(jar, jar, List.of()).orElseThrow(),
                1e-9,
                "a jar nobody measured is taken for 250 ml");
    }

    @Test
    void theBetterTheWrapTheMoreTheLidMatters() {
        double poor = lids(newton(0.03, 10), Lid.OPEN, Lid.BARE).percent();
        double good = lids(newton(0.01, 10), Lid.OPEN, Lid.BARE).percent();
        assertTrue(good > 1.5 * poor, good + " and " + poor);
    }

    @Test
    void jarsAtRestAreNoFairTest() {
        CoolingFit still = still();
        InvalidInputException refusal =
                assertThrows(InvalidInputException.class, () -> FairTest.of(still, still, List.of(), List.of()));
        assertEquals(Problem.BOTH_HARDLY_COOL, refusal.finding().problem());
    }

    private static CoolingFit still() {
        return CoolingFit.of(
                Readings.ofMinutes(
                        Stream.of(0.0, 5.0, 10.0, 15.0, 20.0).map(Entry::of).toList(),
                        Stream.of(20.0, 20.0, 20.0, 20.0, 20.0).map(Entry::of).toList(),
                        Scale.CELSIUS),
                Surroundings.constant(new Temperature(5)),
                Graduation.of(1, Scale.CELSIUS));
    }

    private static final Volume QUARTER = Volume.of(250, Unit.MILLILITER);

    private static FairTest.Difference lids(CoolingFit jar, Lid first, Lid second) {
        return FairTest.of(jar, jar, List.of(QUARTER, QUARTER), List.of(first, second))
                .get(4);
    }

    /** A jar that follows Newton’s law from 30 K above its surroundings to 14 K, so that 22 K lies in the middle. */
    private static CoolingFit newton(double rate, double around) {
        List<Entry> times = new ArrayList<>();
        List<Entry> readings = new ArrayList<>();
        double start = 30;
        double minutes = Math.log(start / 14) / rate;
        for (int i = 0; i <= 10; i++) {
            double t = minutes * i / 10;
            times.add(Entry.of(t));
            readings.add(Entry.of(around + start * Math.exp(-rate * t)));
        }
        return CoolingFit.of(
                Readings.ofMinutes(times, readings, Scale.CELSIUS),
                Surroundings.constant(new Temperature(around)),
                Graduation.of(0.1, Scale.CELSIUS));
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
                Surroundings.constant(new Temperature(around)),
                Graduation.of(0.1, Scale.CELSIUS));
    }
}
