package org.snugsheet.engine.slips;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Problem;

/** The jar was stirred or moved: from a certain reading on, all lie higher or lower and cool from there. */
final class Steps implements SlipDetector {

    private static final int LEAST = 2;
    private static final double COST = RARE;

    /**
     * Where the times skip whole steps just here, miscounted minutes explain both the times and the jump. A jar that is
     * stirred in the very row where a reading was left out is as rare as such rows: one in 25 (common practice, no source).
     */
    private static final double BESIDE_A_GAP = 2 * Math.log(25);

    /**
     * A jar that was stirred goes on cooling; constant readings point to the thermometer, five to one (common practice, no
     * source).
     */
    private static final double WITHOUT_COOLING = 2 * Math.log(5);

    @Override
    public Stream<SlipHypothesis> hypotheses(Column column, RobustFit robust) {
        int n = column.size();
        double step = TimeSlips.stepPerRow(column);
        return IntStream.rangeClosed(LEAST, n - LEAST)
                .filter(i -> column.at(i).part() == column.at(i - 1).part()
                        && !column.at(i).stuck())
                .filter(i -> stretch(column, i) >= LEAST)
                .mapToObj(i -> of(column, i, step, robust.sample()));
    }

    /** The smaller of the numbers of readings before and after a row within the same part. */
    private static int stretch(Column column, int i) {
        int part = column.at(i).part();
        int before = 0;
        int after = 0;
        for (int j = 0; j < column.size(); j++) {
            if (column.at(j).part() == part) {
                before += j < i ? 1 : 0;
                after += j < i ? 0 : 1;
            }
        }
        return Math.min(before, after);
    }

    private static SlipHypothesis of(Column column, int i, double step, Sample sample) {
        Column parted = column.withAllFrom(i, line -> line.withPart(line.part() + 1));
        double cost = COST
                + (TimeSlips.skipsWholeSteps(column, i, step) ? BESIDE_A_GAP : 0)
                + (Stuck.stays(sample, i) ? WITHOUT_COOLING : 0);
        return SlipHypothesis.ofColumn(
                SlipKind.STIRRED_OR_MOVED, Finding.atRow(column.at(i).row(), Problem.ROW_JUMP), parted, cost);
    }
}
