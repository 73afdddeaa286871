package org.snugsheet.engine.slips;

import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

/**
 * The mean that readings from one on stay near, and how they scatter about it.
 *
 * @param celsius the mean in °C
 * @param scatter the variance about it in K²
 */
record Level(double celsius, double scatter) {

    /**
     * Readings that scatter more about their mean, in variances expected of one, do change. A level between two marks is read now
     * as the one and now as the other, which scatters three times as much as rounding does on the whole.
     */
    private static final double MOST_SCATTER = 4;

    /** The lowest that can be shown: a column taken to be on another scale may lie below absolute zero. */
    private static final double COLDEST = -273;

    /** Of at least two readings. */
    static Level of(Sample sample, int from) {
        int n = sample.size() - from;
        double sum = 0;
        for (int i = from; i < sample.size(); i++) {
            sum += sample.celsius[i];
        }
        double mean = sum / n;
        double squares = 0;
        for (int i = from; i < sample.size(); i++) {
            double off = sample.celsius[i] - mean;
            squares += off * off;
        }
        return new Level(mean, squares / (n - 1));
    }

    /** Whether the readings scatter no more than those of a thermometer at rest. */
    boolean isAtRest(Sample sample) {
        return scatter <= MOST_SCATTER * sample.expected();
    }

    /** The mean to a tenth of a degree, for a sentence. */
    double shown(Scale scale) {
        return Math.rint(new Temperature(Math.max(celsius, COLDEST)).in(scale) * 10) / 10;
    }
}
