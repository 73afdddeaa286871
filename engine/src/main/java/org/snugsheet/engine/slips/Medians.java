package org.snugsheet.engine.slips;

import java.util.Arrays;

/** The median, which a single slip cannot move far. */
final class Medians {

    private Medians() {}

    /** The lower median of the first {@code count} numbers; zero if there are none. What is no number counts as larger than all. */
    static double of(double[] numbers, int count) {
        if (count == 0) {
            return 0;
        }
        double[] some = Arrays.copyOf(numbers, count);
        for (int i = 0; i < count; i++) {
            some[i] = Double.isNaN(some[i]) ? Double.POSITIVE_INFINITY : some[i];
        }
        return selected(some, rank(count));
    }

    /**
     * The number that would stand at a rank if all were sorted, without sorting all (C. A. R. Hoare, Algorithm 65: Find, Commun. ACM 4
     * (1961), 321–322). Changes their order.
     */
    private static double selected(double[] numbers, int rank) {
        int from = 0;
        int to = numbers.length - 1;
        while (from < to) {
            double pivot = numbers[rank];
            int low = from;
            int high = to;
            while (low <= high) {
                while (numbers[low] < pivot) {
                    low++;
                }
                while (pivot < numbers[high]) {
                    high--;
                }
                if (low <= high) {
                    double swapped = numbers[low];
                    numbers[low++] = numbers[high];
                    numbers[high--] = swapped;
                }
            }
            int below = high < rank ? low : from;
            to = rank < low ? high : to;
            from = below;
        }
        return numbers[rank];
    }

    /** How many numbers are below the lower median of so many, if no two are equal. */
    static int rank(int count) {
        return (count - 1) / 2;
    }
}
