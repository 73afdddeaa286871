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

    /**
     * The readings to trust at first.
     *
     * @param rate where a good curve is likely. It decides nothing: what comes near there lets other curves be given up sooner
     */
    static boolean[] of(Sample sample, Law law, double rate) {
        double likely = Math.log(rate * sample.span / SLOWEST) / Math.log(FASTEST / SLOWEST) * (TRIALS - 1);
        Nearest there = new Nearest(sample, Double.POSITIVE_INFINITY);
        there.through(law, (int) Math.max(0, Math.min(TRIALS - 1, Math.rint(likely))));
        Nearest nearest = new Nearest(sample, Math.nextUp(there.median));
        for (int trial = 0; trial < TRIALS; trial++) {
            nearest.through(law, trial);
        }
        return nearest.trusted();
    }

    /** The nearest of the curves that were tried. */
    private static final class Nearest {

        private final Sample sample;
        private final double[] sizes;
        private double[] best;
        private double median;

        /** With the median that a curve must fall short of. */
        Nearest(Sample sample, double median) {
            this.sample = sample;
            this.median = median;
            this.sizes = new double[sample.size()];
            this.best = new double[sample.size()];
        }

        void through(Law law, int trial) {
            int n = sample.size();
            int stride = Math.max(1, n / MOST_STARTS);
            double share = trial / (TRIALS - 1.0);
            LawValues values = law.at(sample, SLOWEST * Math.pow(FASTEST / SLOWEST, share) / sample.span);
            for (int i = 0; i < n; i += stride) {
                if (law.shapes() == 1) {
                    throughOne(values, i);
                } else {
                    for (int j = i + stride; j < n; j += stride) {
                        throughTwo(values, i, j);
                    }
                }
            }
        }

        private void throughOne(LawValues values, int i) {
            attempt(values, (sample.celsius[i] - values.offset()[i]) / values.first()[i], 0);
        }

        private void throughTwo(LawValues values, int i, int j) {
            double[] first = values.first();
            double[] second = values.second();
            double determinant = first[i] * second[j] - first[j] * second[i];
            if (Math.abs(determinant) <= PARALLEL) {
                return;
            }
            double yi = sample.celsius[i] - values.offset()[i];
            double yj = sample.celsius[j] - values.offset()[j];
            attempt(
                    values,
                    (yi * second[j] - yj * second[i]) / determinant,
                    (first[i] * yj - first[j] * yi) / determinant);
        }

        private void attempt(LawValues values, double amplitude, double level) {
            // This loop runs more often than any other of the search.
            double[] offset = values.offset();
            double[] first = values.first();
            double[] second = values.second();
            double[] celsius = sample.celsius;
            double[] found = sizes;
            double nearest = median;
            int n = found.length;
            int farAllowed = n - 1 - Medians.rank(n);
            for (int i = 0; i < n; i++) {
                double size = Math.abs(celsius[i] - (offset[i] + amplitude * first[i] + level * second[i]));
                found[i] = size;
                if (!(size < nearest) && --farAllowed < 0) {
                    // Too few can still be nearer: most curves are given up halfway, and none of these is sorted.
                    return;
                }
            }
            best = sizes.clone();
            median = Medians.of(sizes, sizes.length);
        }

        boolean[] trusted() {
            double deviation = Math.max(median * DEVIATION_PER_MEDIAN, Math.sqrt(sample.expected()));
            boolean[] trusted = new boolean[best.length];
            for (int i = 0; i < trusted.length; i++) {
                trusted[i] = best[i] <= NEAR * deviation;
            }
            return trusted;
        }
    }
}
