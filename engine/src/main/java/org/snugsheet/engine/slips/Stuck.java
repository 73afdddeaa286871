package org.snugsheet.engine.slips;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Problem;

/** From a certain row on the readings do not change: the thermometer is out of the water or stuck. */
final class Stuck implements SlipDetector {

    private static final int LEAST_BEFORE = 3;
    private static final int LEAST = 3;
    private static final double COST = RARE;

    @Override
    public Stream<SlipHypothesis> hypotheses(Column column, RobustFit robust) {
        int n = column.size();
        Line last = column.at(n - 1);
        if (last.stuck()) {
            return Stream.of();
        }
        Sample sample = robust.sample();
        return IntStream.rangeClosed(LEAST_BEFORE, n - LEAST)
                .filter(i -> column.at(i).part() == last.part())
                .filter(i -> stays(sample, i))
                .mapToObj(i -> of(column, i, Level.of(sample, i)));
    }

    /** Whether there are enough readings from a row on, all near one level. */
    static boolean stays(Sample sample, int from) {
        return sample.size() - from >= LEAST && Level.of(sample, from).isAtRest(sample);
    }

    private static SlipHypothesis of(Column column, int i, Level level) {
        Column parted = column.withAllFrom(i, line -> line.withStuckPart(line.part() + 1));
        int first = comesFromBefore(column, i) ? i + 1 : i;
        return SlipHypothesis.ofColumn(
                SlipKind.STUCK,
                Finding.atRow(
                        column.at(first).row(),
                        Problem.STUCK_FROM_ROW,
                        level.shown(column.scale()),
                        column.scale().symbol()),
                parted,
                COST);
    }

    /** Whether the first of the equal readings still follows from those before it, so that only its repeats are wrong. */
    private static boolean comesFromBefore(Column column, int i) {
        double step = column.at(i).celsius() - column.at(i - 1).celsius();
        if (step == 0) {
            return false;
        }
        double before = (column.at(i - 1).celsius() - column.at(i - 2).celsius())
                / (column.at(i - 1).minute() - column.at(i - 2).minute())
                * (column.at(i).minute() - column.at(i - 1).minute());
        return Math.abs(step - before) <= column.mark().graduation().kelvins() / 2 + Math.abs(before) / 4;
    }
}
