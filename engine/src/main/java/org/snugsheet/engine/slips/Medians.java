package org.snugsheet.engine.slips;

import java.util.Arrays;

/** The median, which a single slip cannot move far. */
final class Medians {

    private Medians() {}

    /** The lower median of the first {@code count} numbers; zero if there are none. */
    static double of(double[] numbers, int count) {
        if (count == 0) {
            return 0;
        }
        double[] sorted = Arrays.copyOf(numbers, count);
        Arrays.sort(sorted);
        return sorted[rank(count)];
    }

    /** How many numbers are below the lower median of so many, if no two are equal. */
    static int rank(int count) {
        return (count - 1) / 2;
    }
}
