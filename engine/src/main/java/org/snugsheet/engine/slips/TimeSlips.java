package org.snugsheet.engine.slips;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Problem;

/**
 * Minutes skipped or repeated, so that all times from there on are off, or a single wrong time.
 *
 * <p>A class reads at regular times. Where the times jump by whole steps, either a reading was left out on purpose or the
 * minutes were miscounted; the readings tell which, since the jar went on cooling regardless of the clock.
 */
final class TimeSlips implements SlipDetector {

    private static final double SKIPPED = RARE - 1;
    private static final double ALONE = RARE - 1;
    private static final double AN_HOUR = 1;
    private static final double SAME = 0.02;
    private static final int MOST_STEPS = 4;

    @Override
    public Stream<SlipHypothesis> hypotheses(Column column, RobustFit robust) {
        double step = stepPerRow(column);
        if (!(step > 0)) {
            return Stream.of();
        }
        List<SlipHypothesis> hypotheses = new ArrayList<>();
        for (int i = 1; i < column.size(); i++) {
            double excess = excess(column, i, step);
            boolean regular = Math.abs(excess) < SAME;
            if (i == column.size() - 1 && isAnHourLate(column, i, step)) {
                hypotheses.add(alone(column, i, due(column, i, step), AN_HOUR));
            }
            if (isWhole(excess)) {
                hypotheses.add(skipped(column, i, -Math.rint(excess) * step));
            }
            if (!regular && i < column.size() - 1) {
                double next = column.at(i - 1).minute()
                        + step * (column.at(i + 1).row() - column.at(i - 1).row());
                if (Math.abs(column.at(i + 1).minute() - next) < SAME * step) {
                    hypotheses.add(alone(column, i, due(column, i, step), ALONE));
                }
            }
        }
        return hypotheses.stream();
    }

    /** The hour is the part of a clock time most easily mistyped, and no class waits an hour for its last reading. */
    private static boolean isAnHourLate(Column column, int i, double step) {
        return Math.abs(column.at(i).minute() - due(column, i, step) - 60) < SAME * step;
    }

    /** Whether the times skip a few whole steps just before a row, given the usual {@linkplain #stepPerRow step}. */
    static boolean skipsWholeSteps(Column column, int i, double step) {
        return step > 0 && isWhole(excess(column, i, step));
    }

    /** By how many steps a reading came later than it was due. */
    private static double excess(Column column, int i, double step) {
        return (column.at(i).minute() - due(column, i, step)) / step;
    }

    private static boolean isWhole(double excess) {
        double whole = Math.rint(excess);
        return whole >= 1 && whole <= MOST_STEPS && Math.abs(excess - whole) < SAME;
    }

    /** The hypotheses that correct the first time that is not later than the one before it. */
    static List<SlipHypothesis> notLater(Column column, int i) {
        double step = stepPerRow(column);
        List<SlipHypothesis> hypotheses = new ArrayList<>();
        if (step > 0) {
            Line line = column.at(i);
            double due = due(column, i, step);
            hypotheses.add(SlipHypothesis.ofColumn(
                    SlipKind.MINUTES_REPEATED,
                    Finding.atRow(line.row(), Problem.ROW_MINUTES_REPEATED, line.clock(), due),
                    column.withAllFrom(i, l -> l.withMinute(l.minute() + due - line.minute())),
                    SKIPPED));
            if (i == column.size() - 1 || due < column.at(i + 1).minute()) {
                hypotheses.add(alone(column, i, due, ALONE));
            }
            double from = i > 1 ? column.at(i - 2).minute() : Double.NEGATIVE_INFINITY;
            double earlier = i > 1 ? due(column, i - 1, step) : line.minute() - step;
            if (from < earlier && earlier < line.minute()) {
                hypotheses.add(alone(column, i - 1, earlier, ALONE + 1));
            }
        }
        Column without = column.without(i);
        hypotheses.add(SlipHypothesis.ofColumn(
                SlipKind.TIME_WRONG,
                Finding.atRow(
                        column.at(i).row(),
                        Problem.TIME_NOT_LATER,
                        column.at(i).clock(),
                        column.at(i - 1).clock()),
                without,
                RARE + 8));
        return hypotheses;
    }

    private static SlipHypothesis skipped(Column column, int i, double shift) {
        Line line = column.at(i);
        return SlipHypothesis.ofColumn(
                SlipKind.MINUTES_SKIPPED,
                Finding.atRow(line.row(), Problem.ROW_MINUTES_SKIPPED, line.clock(), line.minute() + shift),
                column.withAllFrom(i, l -> l.withMinute(l.minute() + shift)),
                SKIPPED);
    }

    private static SlipHypothesis alone(Column column, int i, double due, double cost) {
        Line line = column.at(i);
        return SlipHypothesis.ofColumn(
                SlipKind.TIME_WRONG,
                Finding.atRow(line.row(), Problem.ROW_TIME_WRONG, line.clock(), due),
                column.with(i, l -> l.withMinute(due)),
                cost);
    }

    /** When a reading was due, counted from the one before it; a blank row between them counts. */
    private static double due(Column column, int i, double step) {
        Line before = column.at(i - 1);
        return before.minute() + step * (column.at(i).row() - before.row());
    }

    /** The usual time from one row to the next. */
    static double stepPerRow(Column column) {
        double[] steps = new double[column.size()];
        int count = 0;
        for (int i = 1; i < column.size(); i++) {
            double step = (column.at(i).minute() - column.at(i - 1).minute())
                    / (column.at(i).row() - column.at(i - 1).row());
            if (step > 0) {
                steps[count++] = step;
            }
        }
        return Medians.of(steps, count);
    }
}
