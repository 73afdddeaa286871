package org.snugsheet.engine.slips;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Trouble;

/** A reading with two neighbouring digits swapped (43 for 34), or without its decimal comma (415 for 41,5). */
final class DigitSlips implements Suspicion {

    private static final double SWAPPED = 5;
    private static final double COMMA = 3;

    @Override
    public Stream<Story> stories(Column column, Clues clues) {
        return IntStream.range(0, column.size())
                .filter(clues::isMisread)
                .boxed()
                .flatMap(i -> of(column, i).stream());
    }

    private static List<Story> of(Column column, int i) {
        Line line = column.at(i);
        List<Story> stories = new ArrayList<>();
        for (double meant : swapped(line.typed())) {
            stories.add(Story.ofReading(
                    SlipKind.DIGITS_SWAPPED,
                    Finding.atRow(line.row(), Trouble.ROW_DIGITS_SWAPPED, line.typed(), meant),
                    column.with(i, l -> l.withTyped(meant)),
                    SWAPPED,
                    i));
        }
        if (line.typed() == Math.rint(line.typed()) && Math.abs(line.typed()) >= 100) {
            for (double divisor : new double[] {10, 100}) {
                double meant = line.typed() / divisor;
                stories.add(Story.ofReading(
                        SlipKind.COMMA_LOST,
                        Finding.atRow(line.row(), Trouble.ROW_COMMA_LOST, line.typed(), meant),
                        column.with(i, l -> l.withTyped(meant)),
                        COMMA,
                        i));
            }
        }
        return stories;
    }

    /** All numbers that two swapped neighbouring digits may have been; a comma stays where it is. */
    static Set<Double> swapped(double typed) {
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
