package org.snugsheet.engine.slips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.stat.StatUtils;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Graduation;

/** Where a jar may have been stirred or a thermometer may have stuck, from a row on, and what it costs to say so. */
class FromARowOnTest {

    private static final double[] PLAIN = {41, 35, 31, 27, 23, 21, 18, 17, 15};

    /** One slip in 150 columns, as twice the logarithm of the odds; see {@link SlipDetector#RARE}. */
    private static final double RARE = 10;

    /** Two readings on either side are the fewest. */
    @Test
    void aJumpHasTwoReadingsOnEitherSide() {
        assertEquals(List.of(3, 4, 5, 6, 7, 8), List.copyOf(jumps(column(PLAIN)).keySet()));
        // With a jump before row 5 already, of the two parts.
        Column parted = column(PLAIN).withAllFrom(4, line -> line.withPart(1));
        assertEquals(List.of(3, 7, 8), List.copyOf(jumps(parted).keySet()));
        // And none among readings that stick.
        Column stuck = column(PLAIN).withAllFrom(4, line -> line.withStuckPart(1));
        assertEquals(List.of(3), List.copyOf(jumps(stuck).keySet()));
    }

    /**
     * Where times skip a step, miscounted minutes are the likelier reason, by the odds of a row left out, 25 to one; where readings stay
     * where they are, a thermometer that sticks is, five to one (both common practice, no source).
     */
    @Test
    void aJumpCostsMoreWhereSomethingElseExplainsIt() {
        assertEquals(RARE, cost(column(PLAIN), 5), 1e-12);
        Column late = column(PLAIN).withAllFrom(4, line -> line.withMinute(line.minute() + 5));
        assertEquals(RARE + 2 * Math.log(25), cost(late, 5), 1e-12);
        assertEquals(RARE, cost(late, 6), 1e-12);
        Column level = column(41, 35, 31, 27, 20, 20, 20, 20, 20);
        assertEquals(RARE + 2 * Math.log(5), cost(level, 5), 1e-12);
        assertEquals(RARE, cost(level, 3), 1e-12);
    }

    private static double cost(Column column, int row) {
        return jumps(column).getOrDefault(row, Double.NaN);
    }

    private static Map<Integer, Double> jumps(Column column) {
        Map<Integer, Double> costs = new TreeMap<>();
        new Steps()
                .hypotheses(column, RobustFit.byOneLaw(column, Law.NEWTON))
                .forEach(hypothesis -> costs.put(hypothesis.finding().row().orElse(0), hypothesis.cost()));
        return costs;
    }

    @Test
    void readingsThatGoOnFallingDoNotStick() {
        assertEquals(List.of(), stuckRows(column(PLAIN)));
        // Rows 4 to 7 alike, or the last rows alike but in two parts of the column.
        Column level = column(41, 35, 31, 25, 25, 25, 25);
        assertEquals(List.of(3, 4), stuckRows(level));
        assertEquals(List.of(), stuckRows(level.withAllFrom(5, line -> line.withPart(1))));
    }

    /**
     * 36 32 30: after steps of 4, one of 2 is less by more than half a mark and a quarter of a step, so the first 30 is wrong as well; one
     * of 3 is not.
     */
    @Test
    void theFirstOfTheReadingsThatStickMayStillBeRight() {
        assertEquals(4, firstStuck(column(40, 36, 32, 30, 30, 30, 30)));
        assertEquals(5, firstStuck(column(40, 36, 32, 29, 29, 29, 29)));
    }

    private static int firstStuck(Column column) {
        return new Stuck()
                .hypotheses(column, RobustFit.byOneLaw(column, Law.NEWTON))
                .findFirst()
                .orElseThrow()
                .finding()
                .row()
                .orElse(0);
    }

    /** From which indices on all readings belong to the new part. */
    private static List<Integer> stuckRows(Column column) {
        return new Stuck()
                .hypotheses(column, RobustFit.byOneLaw(column, Law.NEWTON))
                .map(hypothesis -> (int) hypothesis.corrected().lines().stream()
                        .filter(line -> !line.stuck())
                        .count())
                .toList();
    }

    /** Mean and variance by Commons Math. */
    @Test
    void aLevelIsTheMeanOfWhatFollows() {
        Level level = Level.of(Sample.of(column(PLAIN)), 5);
        double[] rest = Arrays.copyOfRange(PLAIN, 5, 9);

        assertEquals(StatUtils.mean(rest), level.celsius(), 1e-12);
        assertEquals(StatUtils.variance(rest), level.scatter(), 1e-12);
        assertFalse(level.isAtRest(Sample.of(column(PLAIN))));
    }

    private static Column column(double... celsius) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < celsius.length; i++) {
            lines.add(new Line(i + 1, 5 * i, 5 * i, celsius[i], Scale.CELSIUS, 6, 0, false, false));
        }
        return new Column(lines, Graduation.of(1, Scale.CELSIUS), Scale.CELSIUS);
    }
}
