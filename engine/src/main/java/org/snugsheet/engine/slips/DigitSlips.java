package org.snugsheet.engine.slips;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Problem;

/**
 * A reading with two neighboring digits swapped (43 for 34), its decimal point lost or misplaced (415 or 4.15 for 41.5), a
 * wrong sign, or ten degrees off because the wrong number on the thermometer was read.
 */
final class DigitSlips implements SlipDetector {

    private static final double SWAPPED = 5;
    private static final double COMMA = 3;
    private static final double SIGN = 4;
    private static final double TENS = 7;

    @Override
    public Stream<SlipHypothesis> hypotheses(Column column, RobustFit robust) {
        return IntStream.range(0, column.size())
                .filter(i -> robust.isMisread(i) && !column.at(i).corrected())
                .boxed()
                .flatMap(i -> of(column, i).stream());
    }

    private static List<SlipHypothesis> of(Column column, int i) {
        Line line = column.at(i);
        List<SlipHypothesis> hypotheses = new ArrayList<>();
        for (double meant : swapped(line.typed())) {
            hypotheses.add(SlipHypothesis.ofReading(
                    SlipKind.DIGITS_SWAPPED,
                    Finding.atRow(line.row(), Problem.ROW_DIGITS_SWAPPED, line.typed(), meant),
                    column.with(i, l -> l.withTyped(meant)),
                    SWAPPED,
                    i));
        }
        double typed = line.typed();
        if (typed == Math.rint(typed) && Math.abs(typed) >= 100) {
            hypotheses.add(other(column, i, SlipKind.COMMA_LOST, Problem.ROW_COMMA_LOST, typed / 10, COMMA));
            hypotheses.add(other(column, i, SlipKind.COMMA_LOST, Problem.ROW_COMMA_LOST, typed / 100, COMMA));
        }
        if (typed != Math.rint(typed) && Math.abs(typed) < 10) {
            hypotheses.add(other(column, i, SlipKind.COMMA_LOST, Problem.ROW_COMMA_LOST, typed * 10, COMMA));
        }
        if (typed != 0) {
            hypotheses.add(other(column, i, SlipKind.SIGN_WRONG, Problem.ROW_SIGN_WRONG, -typed, SIGN));
        }
        for (double tens : new double[] {-10, 10}) {
            hypotheses.add(other(column, i, SlipKind.TENS_MISREAD, Problem.ROW_TENS_MISREAD, typed + tens, TENS));
        }
        return hypotheses;
    }

    private static SlipHypothesis other(
            Column column, int i, SlipKind kind, Problem problem, double number, double cost) {
        Line line = column.at(i);
        double meant = Decimals.rounded(number, 6);
        return SlipHypothesis.ofReading(
                kind,
                Finding.atRow(line.row(), problem, line.typed(), meant),
                column.with(i, l -> l.withTyped(meant)),
                cost,
                i);
    }

    /** Above this, a double cannot hold every digit of a number, and nobody types so many. */
    private static final double MOST_TYPED = 1e15;

    /** All numbers that may have been meant if two neighboring digits were swapped; the decimal point stays in place. */
    static Set<Double> swapped(double typed) {
        if (!(Math.abs(typed) < MOST_TYPED)) {
            return Set.of();
        }
        String digits = BigDecimal.valueOf(Math.abs(typed)).stripTrailingZeros().toPlainString();
        // 4 is what is left of 40 with its digits swapped, and 41 of 14.0 is not: only whole numbers get a leading
        // zero.
        String padded = digits.length() == 1 ? "0" + digits : digits;
        Set<Double> meant = new LinkedHashSet<>();
        int before = -1;
        for (int i = 0; i < padded.length(); i++) {
            if (padded.charAt(i) == '.') {
                continue;
            }
            if (before >= 0 && padded.charAt(before) != padded.charAt(i)) {
                char[] swapped = padded.toCharArray();
                char kept = swapped[before];
                swapped[before] = swapped[i];
                swapped[i] = kept;
                meant.add(Math.signum(typed == 0 ? 1 : typed) * Double.parseDouble(new String(swapped)));
            }
            before = i;
        }
        return meant;
    }
}
