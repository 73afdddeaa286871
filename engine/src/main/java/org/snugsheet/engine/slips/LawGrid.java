package org.snugsheet.engine.slips;

import java.util.Arrays;

/**
 * A law at the trial rates of a sample, from which each search for its best rate starts. It is searched again and again with other
 * readings trusted, and these values stay the same.
 */
final class LawGrid {

    private static final double SLOWEST = 0.004;
    private static final double FASTEST = 40;
    private static final int TRIALS = 22;
    private static final double RATIO = Math.pow(FASTEST / SLOWEST, 1.0 / (TRIALS - 1));

    /** A first stage that ends before the second reading could explain any first reading. */
    private static final double TOO_FAST = 2.5;

    private final Sample sample;
    private final Law law;
    private final double[] logRates;
    private final double[] rates;
    private final LawValues[] values;

    private LawGrid(Sample sample, LawGrid known) {
        this.sample = sample;
        this.law = known.law;
        this.logRates = known.logRates;
        this.rates = known.rates;
        this.values = known.values;
    }

    private LawGrid(Sample sample, Law law, double[] logRates) {
        this.sample = sample;
        this.law = law;
        this.logRates = logRates;
        this.rates = Arrays.stream(logRates).map(Math::exp).toArray();
        this.values =
                Arrays.stream(rates).mapToObj(rate -> law.at(sample, rate)).toArray(LawValues[]::new);
    }

    static LawGrid of(Sample sample, Law law) {
        double[] logRates = new double[TRIALS];
        int count = 0;
        for (int i = 0; i < TRIALS; i++) {
            double logRate = Math.log(SLOWEST * Math.pow(RATIO, i) / sample.span);
            if (!isTooFast(sample, law, Math.exp(logRate))) {
                logRates[count++] = logRate;
            }
        }
        return new LawGrid(sample, law, Arrays.copyOf(logRates, count));
    }

    /** The same values for {@linkplain Sample#hasSameLaws other temperatures}. */
    LawGrid with(Sample other) {
        return new LawGrid(other, this);
    }

    /** Whether a law makes no sense at a rate. */
    static boolean isTooFast(Sample sample, Law law, double rate) {
        return law.hasTwoStages() && law.faster() * rate * sample.minutes[1] > TOO_FAST;
    }

    /** By how much the logarithms of neighboring rates differ. */
    static double width() {
        return Math.log(RATIO);
    }

    /** The logarithm of the slowest rate of all. */
    static double slowest(Sample sample) {
        return Math.log(SLOWEST / sample.span);
    }

    Sample sample() {
        return sample;
    }

    Law law() {
        return law;
    }

    /** The logarithms of the rates at which the law makes sense, rising. */
    double[] logRates() {
        return logRates;
    }

    /** The law at any rate; known already at those of the grid. */
    LawValues at(double rate) {
        int known = Arrays.binarySearch(rates, rate);
        return known >= 0 ? values[known] : law.at(sample, rate);
    }
}
