package org.snugsheet.engine.slips;

/**
 * Which readings to trust at first, so that a few wild ones cannot drag the curve along.
 *
 * <p>Curves through one reading (through two, if the law has two shapes) at a row of trial rates are tried, and the one taken
 * whose residuals have the smallest median: up to half of the readings may be wild (P. J. Rousseeuw, Least median of squares
 * regression, J. Am. Stat. Assoc. 79, 871–880, 1984). Readings near it are trusted.
 */
final class RobustStart {

    private static final int TRIALS = 14;
    private static final double SLOWEST = 0.01;
    private static final double FASTEST = 16;
    private static final int MOST_STARTS = 12;
    private static final double NEAR = 3.5;

    /** The median of the sizes of normal residuals is 0.6745 of their standard deviation. */
    private static final double DEVIATION_PER_MEDIAN = 1 / 0.6745;

    private final Sample sample;
    private final Law law;
    private final double[] offset;
    private final double[] first;
    private final double[] second;
    private final double[] sizes;
    private double leastMedian = Double.POSITIVE_INFINITY;
    private double[] bestSizes;

    private RobustStart(Sample sample, Law law) {
        this.sample = sample;
        this.law = law;
        int n = sample.size();
        offset = new double[n];
        first = new double[n];
        second = new double[n];
        sizes = new double[n];
        bestSizes = new double[n];
    }

    static boolean[] of(Sample sample, Law law) {
        return new RobustStart(sample, law).trusted();
    }

    private boolean[] trusted() {
        int n = sample.size();
        int stride = Math.max(1, n / MOST_STARTS);
        for (int trial = 0; trial < TRIALS; trial++) {
            double share = trial / (TRIALS - 1.0);
            double rate = SLOWEST * Math.pow(FASTEST / SLOWEST, share) / sample.span;
            law.evaluate(sample, rate, offset, first, second);
            for (int i = 0; i < n; i += stride) {
                if (law.shapes() == 1) {
                    tried(amplitude(i, 0), 0);
                } else {
                    for (int j = i + stride; j < n; j += stride) {
                        throughTwo(i, j);
                    }
                }
            }
        }
        double deviation = Math.max(leastMedian * DEVIATION_PER_MEDIAN, Math.sqrt(sample.expected()));
        boolean[] trusted = new boolean[n];
        for (int i = 0; i < n; i++) {
            trusted[i] = bestSizes[i] <= NEAR * deviation;
        }
        return trusted;
    }

    private double amplitude(int i, double level) {
        return (sample.celsius[i] - offset[i] - level * second[i]) / first[i];
    }

    private void throughTwo(int i, int j) {
        double determinant = first[i] * second[j] - first[j] * second[i];
        if (Math.abs(determinant) > 1e-6) {
            double yi = sample.celsius[i] - offset[i];
            double yj = sample.celsius[j] - offset[j];
            tried((yi * second[j] - yj * second[i]) / determinant, (first[i] * yj - first[j] * yi) / determinant);
        }
    }

    private void tried(double amplitude, double level) {
        for (int i = 0; i < sizes.length; i++) {
            double fitted = offset[i] + amplitude * first[i] + level * second[i];
            sizes[i] = Math.abs(sample.celsius[i] - fitted);
        }
        double median = Medians.of(sizes, sizes.length);
        if (median < leastMedian) {
            leastMedian = median;
            bestSizes = sizes.clone();
        }
    }
}
