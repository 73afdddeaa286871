package org.snugsheet.engine.slips;

import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

/**
 * The mean of the readings from a certain row on, and their scatter about it.
 *
 * @param celsius the mean in °C
 * @param scatter the variance about it in K²
 */
record Level(double celsius, double scatter) {

    /**
     * Readings whose variance about their mean is more than this multiple of the expected variance do change. A level halfway
     * between two marks is read sometimes as one and sometimes as the other, which triples the variance of rounding.
     */
    private static final double MOST_SCATTER = 4;

    /** The lowest that can be shown: a column taken to be on another scale may lie below absolute zero. */
    private static final double COLDEST = -273;

    /** The level of at least two readings. */
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

    /** Whether the readings scatter no more than those of a thermometer at a constant temperature. */
    boolean isAtRest(Sample sample) {
        return scatter <= MOST_SCATTER * sample.expected();
    }

    /** The mean to a tenth of a degree, for a message. */
    double shown(Scale scale) {
        return Decimals.rounded(new Temperature(Math.max(celsius, COLDEST)).in(scale), 1);
    }
}
