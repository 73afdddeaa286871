package org.snugsheet.engine.slips;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Trouble;

/** The jar was stirred or moved: from one reading on all lie higher or lower, and cool on from there. */
final class Steps implements Suspicion {

    private static final int LEAST = 2;
    private static final double COST = RARE;

    @Override
    public Stream<Story> stories(Column column, Clues clues) {
        int n = column.size();
        return IntStream.rangeClosed(LEAST, n - LEAST)
                .filter(i -> column.at(i).part() == column.at(i - 1).part())
                .filter(i -> stretch(column, i) >= LEAST)
                .mapToObj(i -> of(column, i));
    }

    /** How many readings at least are left on either side within the same part. */
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

    private static Story of(Column column, int i) {
        Column parted = column.withAllFrom(i, line -> line.withPart(line.part() + 1));
        return Story.ofColumn(
                SlipKind.STIRRED_OR_MOVED, Finding.atRow(column.at(i).row(), Trouble.ROW_JUMP), parted, COST);
    }
}
