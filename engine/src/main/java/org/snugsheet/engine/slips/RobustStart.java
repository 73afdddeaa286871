package org.snugsheet.engine.slips;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

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
    static boolean[] of(LawGrids grids, Law law, double rate) {
        Sample sample = grids.sample();
        List<LawValues> starts = grids.starts(law);
        double likely = Math.log(rate * sample.span / SLOWEST) / Math.log(FASTEST / SLOWEST) * (TRIALS - 1);
        Nearest there = new Nearest(sample, Double.POSITIVE_INFINITY);
        there.through(law, starts.get((int) Math.max(0, Math.min(TRIALS - 1, Math.rint(likely)))));
        Nearest nearest = new Nearest(sample, Math.nextUp(there.median));
        for (LawValues values : starts) {
            nearest.through(law, values);
        }
        return nearest.trusted();
    }

    /** The rates that are tried, k per minute. */
    static DoubleStream rates(Sample sample) {
        return IntStream.range(0, TRIALS)
                .mapToDouble(trial -> SLOWEST * Math.pow(FASTEST / SLOWEST, trial / (TRIALS - 1.0)) / sample.span);
    }

    /** The nearest of the curves that were tried. */
    private static final class Nearest {

        private final Sample sample;
        private final double[] sizes;

        // Of the curves through the reading that is tried; kept for all of them.
        private final double[] distance;
        private final double[] turn;

        private double[] best;
        private double median;

        /** With the median that a curve must fall short of. */
        Nearest(Sample sample, double median) {
            this.sample = sample;
            this.median = median;
            this.sizes = new double[sample.size()];
            this.distance = new double[sample.size()];
            this.turn = new double[sample.size()];
            this.best = new double[sample.size()];
        }

        void through(Law law, LawValues values) {
            int n = sample.size();
            int stride = Math.max(1, n / MOST_STARTS);
            for (int i = 0; i < n; i += stride) {
                passThrough(values, i);
                if (law.shapes() == 1) {
                    attempt(0);
                } else {
                    for (int j = i + stride; j < n; j += stride) {
                        if (Math.abs(values.first()[i] * turn[j]) > PARALLEL) {
                            attempt(distance[j] / turn[j]);
                        }
                    }
                }
            }
        }

        /** The curves through one reading differ by their level B only: how far each reading is from that with B = 0, and ∂T/∂B there. */
        private void passThrough(LawValues values, int i) {
            double[] offset = values.offset();
            double[] first = values.first();
            double[] second = values.second();
            double above = sample.celsius[i] - offset[i];
            for (int k = 0; k < distance.length; k++) {
                double share = first[k] / first[i];
                distance[k] = sample.celsius[k] - offset[k] - share * above;
                turn[k] = second[k] - share * second[i];
            }
        }

        private void attempt(double level) {
            // This loop runs more often than any other of the search.
            double[] away = distance;
            double[] turned = turn;
            double[] found = sizes;
            double nearest = median;
            int n = found.length;
            int farAllowed = n - 1 - Medians.rank(n);
            for (int k = 0; k < n; k++) {
                double size = Math.abs(away[k] - level * turned[k]);
                found[k] = size;
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
