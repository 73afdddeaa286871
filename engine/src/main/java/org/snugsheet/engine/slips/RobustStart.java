package org.snugsheet.engine.slips;

/**
 * Which readings to trust at first, so that a few wild ones cannot drag the curve along.
 *
 * <p>Curves through one reading (through two, if the law has two shapes) are tried at several rates, and the one whose
 * residuals have the smallest median is taken: up to half of the readings may be wild (P. J. Rousseeuw, Least median of
 * squares regression, J. Am. Stat. Assoc. 79, 871–880, 1984). Readings near it are trusted.
 */
final class RobustStart {

    private static final int TRIALS = 14;
    private static final double SLOWEST = 0.01;
    private static final double FASTEST = 16;
    private static final int MOST_STARTS = 12;
    private static final double NEAR = 3.5;

    /** Two readings with such similar shapes do not determine a curve. */
    private static final double PARALLEL = 1e-6;

    /** The median of the absolute values of normal residuals is 0.6745 of their standard deviation. */
    private static final double DEVIATION_PER_MEDIAN = 1 / 0.6745;

    private RobustStart() {}

    static boolean[] of(Sample sample, Law law) {
        int n = sample.size();
        int stride = Math.max(1, n / MOST_STARTS);
        Trial best = new Trial(Double.POSITIVE_INFINITY, new double[n]);
        for (int trial = 0; trial < TRIALS; trial++) {
            double share = trial / (TRIALS - 1.0);
            LawValues values = law.at(sample, SLOWEST * Math.pow(FASTEST / SLOWEST, share) / sample.span);
            for (int i = 0; i < n; i += stride) {
                if (law.shapes() == 1) {
                    best = best.orNearer(throughOne(sample, values, i));
                } else {
                    for (int j = i + stride; j < n; j += stride) {
                        best = best.orNearer(throughTwo(sample, values, i, j));
                    }
                }
            }
        }
        double deviation = Math.max(best.median() * DEVIATION_PER_MEDIAN, Math.sqrt(sample.expected()));
        boolean[] trusted = new boolean[n];
        for (int i = 0; i < n; i++) {
            trusted[i] = best.sizes()[i] <= NEAR * deviation;
        }
        return trusted;
    }

    /**
     * A curve that was tried.
     *
     * @param median the median of the absolute residuals
     * @param sizes the absolute residuals
     */
    @SuppressWarnings("ArrayRecordComponent") // never leaves this class and is never compared
    private record Trial(double median, double[] sizes) {

        static Trial of(Sample sample, LawValues values, double amplitude, double level) {
            double[] sizes = new double[sample.size()];
            for (int i = 0; i < sizes.length; i++) {
                double fitted = values.offset()[i] + amplitude * values.first()[i] + level * values.second()[i];
                sizes[i] = Math.abs(sample.celsius[i] - fitted);
            }
            return new Trial(Medians.of(sizes, sizes.length), sizes);
        }

        /** The result for two readings that do not determine a curve. */
        static Trial none() {
            return new Trial(Double.POSITIVE_INFINITY, new double[0]);
        }

        Trial orNearer(Trial other) {
            return other.median < median ? other : this;
        }
    }

    private static Trial throughOne(Sample sample, LawValues values, int i) {
        return Trial.of(sample, values, (sample.celsius[i] - values.offset()[i]) / values.first()[i], 0);
    }

    private static Trial throughTwo(Sample sample, LawValues values, int i, int j) {
        double[] first = values.first();
        double[] second = values.second();
        double determinant = first[i] * second[j] - first[j] * second[i];
        if (Math.abs(determinant) <= PARALLEL) {
            return Trial.none();
        }
        double yi = sample.celsius[i] - values.offset()[i];
        double yj = sample.celsius[j] - values.offset()[j];
        return Trial.of(
                sample,
                values,
                (yi * second[j] - yj * second[i]) / determinant,
                (first[i] * yj - first[j] * yi) / determinant);
    }
}
