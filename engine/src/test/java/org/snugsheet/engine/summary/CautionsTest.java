package org.snugsheet.engine.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.slips.Slip;

/** What the whole column shows, in jars invented by closed formulas. */
class CautionsTest {

    private static final int JARS = 400;

    /** A jar of 40 °C that cools by 5 % a minute towards 12 °C, beside which somebody typed 5. */
    @Test
    void readingsThatBendTowardsAnotherLevelAreTold() {
        List<Finding> found = cautions(0.1, "5", jar(13, 12, 0, 0, new Random(1)));

        assertEquals(List.of(Problem.BENDS_ELSEWHERE), problems(found));
        assertTrue(
                found.get(0)
                        .sentence()
                        .startsWith(
                                "These readings bend towards 12 °C, not towards the 5 °C typed for the surroundings."),
                found.get(0).sentence());
        assertEquals(List.of(), cautions(0.1, "12", jar(13, 12, 0, 0, new Random(1))));
        assertEquals(List.of(), cautions(0.1, "fit", jar(13, 12, 0, 0, new Random(1))));
    }

    /** Nobody has to read the temperature of melting ice: it is not the thermometer of the room that is wrong there. */
    @Test
    void meltingIceIsWhatItIs() {
        double[] seen = jar(13, 2, 0, 0, new Random(1));
        assertEquals(List.of(Problem.BENDS_ELSEWHERE), problems(cautions(0.1, "0", seen)));
        assertEquals(List.of(Problem.READINGS_WANDER), problems(cautions(0.1, "melting ice", seen)));
    }

    /** Noise of 0.3 K: the criterion speaks a few times in a hundred by chance, and of a room that drifts as the readings show it. */
    @ParameterizedTest
    @Tag("simulation")
    @CsvSource({"13, 0, 0, 0.04", "9, 0, 0, 0.04", "13, 6, 0.8, 1", "13, 2, 0.2, 1"})
    void aRoomThatDriftsIsToldWhereTheReadingsShowIt(int count, double warms, double least, double most) {
        Random random = new Random(7);
        assertShare(least, most, () -> jar(count, 5, warms, 0.3, random));
    }

    /** θ = A·(1 + k·t/4)^(−4): a jar in still air slows down by itself, and its surroundings were typed well. */
    @Test
    @Tag("simulation")
    void aJarInStillAirIsNotTakenForARoomThatDrifts() {
        Random random = new Random(8);
        assertShare(0, 0.04, () -> {
            double[] seen = new double[13];
            for (int i = 0; i < seen.length; i++) {
                double truth = 5 + 35 * Math.pow(1 + 0.05 * 5 * i / 4, -4) + 0.3 * random.nextGaussian();
                seen[i] = Math.rint(10 * truth) / 10;
            }
            return seen;
        });
    }

    private static void assertShare(double least, double most, Supplier<double[]> jar) {
        int told = 0;
        for (int i = 0; i < JARS; i++) {
            TypedJar typed = typed(0.1, "5", jar.get());
            // The search for slips, after which this may not be told, takes most of the time.
            told += mayBeTold(typed) && problems(cautions(typed)).contains(Problem.BENDS_ELSEWHERE) ? 1 : 0;
        }
        double share = (double) told / JARS;
        assertTrue(least <= share && share <= most, "told: " + share);
    }

    /** A jar that was read to 2, 1 and 0.5 degrees on thermometers with finer marks. */
    @ParameterizedTest
    @CsvSource({"1, 2", "0.1, 1", "0.1, 0.5", "0.5, 1"})
    void readingsThatKeepToCoarserMarksAreTold(double mark, double coarser) {
        List<Finding> found = cautions(mark, "5", rounded(coarser));
        assertEquals(List.of(Problem.COARSER_THAN_MARK), problems(found));
        assertTrue(
                found.get(0)
                        .sentence()
                        .startsWith("All readings are multiples of " + (coarser == 0.5 ? "0.5" : Math.round(coarser))
                                + " °C, but the mark"),
                found.get(0).sentence());
        assertEquals(List.of(), cautions(coarser, "5", rounded(coarser)));
    }

    /** Five even readings can be chance, once in 32; and one odd reading among many clears them. */
    @Test
    void aFewEvenReadingsAreChance() {
        double[] five = Arrays.copyOf(rounded(2), 5);
        assertEquals(List.of(), cautions(1, "5", five));
        double[] one = rounded(2);
        one[3] += 1;
        assertEquals(List.of(), cautions(1, "5", one));
    }

    private static double[] rounded(double mark) {
        double[] seen = new double[13];
        for (int i = 0; i < seen.length; i++) {
            seen[i] = mark * Math.rint((5 + 35 * Math.exp(-0.03 * 5 * i)) / mark);
        }
        return seen;
    }

    /** Every fifth minute, of a jar of 40 °C with 0.05 per minute whose surroundings warm evenly by some degrees meanwhile. */
    private static double[] jar(int count, double around, double warms, double noise, Random random) {
        double rate = 0.05;
        double slope = warms / (5 * (count - 1));
        double[] seen = new double[count];
        for (int i = 0; i < count; i++) {
            double t = 5 * i;
            double truth = around
                    + slope * t
                    - slope / rate
                    + (40 - around + slope / rate) * Math.exp(-rate * t)
                    + noise * random.nextGaussian();
            seen[i] = Math.rint(10 * truth) / 10;
        }
        return seen;
    }

    private static TypedJar typed(double mark, String around, double[] seen) {
        List<Entry> minutes = new ArrayList<>();
        List<Entry> temperatures = new ArrayList<>();
        for (int i = 0; i < seen.length; i++) {
            minutes.add(Entry.of(5.0 * i));
            temperatures.add(Entry.of(seen[i]));
        }
        return new TypedJar(
                Optional.empty(),
                minutes,
                temperatures,
                List.of(Entry.of(around)),
                Graduation.of(mark, Scale.CELSIUS),
                Scale.CELSIUS);
    }

    private static boolean mayBeTold(TypedJar jar) {
        return JarFit.of(jar)
                .fit()
                .found()
                .map(fit -> problems(Cautions.of(jar, fit)).contains(Problem.BENDS_ELSEWHERE))
                .orElse(false);
    }

    private static List<Finding> cautions(double mark, String around, double[] seen) {
        return cautions(typed(mark, around, seen));
    }

    private static List<Finding> cautions(TypedJar jar) {
        return JarSummary.of(jar).findings().stream().map(Slip::finding).toList();
    }

    private static List<Problem> problems(List<Finding> findings) {
        return findings.stream().map(Finding::problem).toList();
    }
}
