package org.snugsheet.engine.comparison;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Holm’s step-down procedure: many tests at once, with no more false claims than a single test would make.
 *
 * <p>S. Holm, A simple sequentially rejective multiple test procedure, Scandinavian Journal of Statistics 6 (1979), 65–70. Of
 * k p values the smallest counts k times, the next k − 1 times, and so on, none less than the one before and none more than
 * 1. Those that then stay below the level are claimed. The tests need not be independent.
 */
final class Holm {

    private Holm() {}

    /** The adjusted p values, in the order of those given. */
    static double[] adjusted(double[] p) {
        Integer[] rising = new Integer[p.length];
        Arrays.setAll(rising, i -> i);
        Arrays.sort(rising, Comparator.comparingDouble(i -> p[i]));
        double[] adjusted = new double[p.length];
        double before = 0;
        for (int i = 0; i < p.length; i++) {
            before = Math.min(1, Math.max(before, (p.length - i) * p[rising[i]]));
            adjusted[rising[i]] = before;
        }
        return adjusted;
    }
}
