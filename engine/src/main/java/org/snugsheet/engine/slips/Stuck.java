package org.snugsheet.engine.slips;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.quantity.Temperature;

/** From one row on the readings stay where they are: the thermometer hangs out of the water, or does not move any more. */
final class Stuck implements Suspicion {

    private static final int LEAST_BEFORE = 3;
    private static final int LEAST = 3;
    private static final double COST = RARE;

    @Override
    public Stream<Story> stories(Column column, Clues clues) {
        int n = column.size();
        int last = n == 0 ? 0 : column.at(n - 1).part();
        if (n == 0 || column.at(n - 1).stuck()) {
            return Stream.of();
        }
        return IntStream.rangeClosed(LEAST_BEFORE, n - LEAST)
                .filter(i -> column.at(i).part() == last)
                .filter(i -> stays(column, i))
                .mapToObj(i -> of(column, i));
    }

    /** Whether the readings from one on scatter about their mean no more than those of a thermometer at rest. */
    static boolean stays(Column column, int from) {
        if (column.size() - from < LEAST) {
            return false;
        }
        double squares = 0;
        double mean = mean(column, from);
        for (int i = from; i < column.size(); i++) {
            double off = column.at(i).celsius() - mean;
            squares += off * off;
        }
        double scatter = squares / (column.size() - from - 1);
        return scatter <= ConstantColumn.MOST_SCATTER * Sample.of(column).expected();
    }

    private static double mean(Column column, int from) {
        return column.lines().subList(from, column.size()).stream()
                .mapToDouble(Line::celsius)
                .average()
                .orElseThrow();
    }

    private static Story of(Column column, int i) {
        Column parted = column.withAllFrom(i, line -> line.withStuckPart(line.part() + 1));
        double level = new Temperature(Math.max(mean(column, i), -273)).in(column.scale());
        int first = comesFromBefore(column, i) ? i + 1 : i;
        return Story.ofColumn(
                SlipKind.STUCK,
                Finding.atRow(
                        column.at(first).row(),
                        Trouble.STUCK_FROM_ROW,
                        Math.rint(level * 10) / 10,
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
