package org.snugsheet.engine.slips;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * What the best law says of a column: how well it fits, and which readings cannot be its own.
 *
 * <p>The noise of the readings is not known, and few readings tell little of it. So it is taken for what a hand-held thermometer
 * usually has, with the weight of {@value #PRIOR_READINGS} readings (the scaled inverse χ² prior; A. Gelman and others, Bayesian
 * Data Analysis, 3rd edition 2013, section 3.2), and never for less than the rounding. A reading stands out by {@code λ =
 * ν·ln(1 + t²/ν)}, twice the logarithm of the likelihood ratio of Student’s t, with t its distance from the curve through the
 * others in standard errors (Cook and Weisberg, Residuals and Influence in Regression, 1982, section 2.2).
 *
 * <p>The score of a column is {@code n·ln σ̂²} with the corrected penalty for free numbers of AICc (N. Sugiura, Commun. Stat. A
 * 7, 13–26, 1978) and {@value #COST_OF_MISREADING} for each reading left out: twice the logarithm of the odds that a reading is
 * well. So half a difference of scores is the logarithm of the odds of one story against another.
 */
final class RobustFit {

    /** Twice the logarithm of the odds that one reading is well: a slip in 150 readings (common practice, no source). */
    static final double COST_OF_MISREADING = 10;

    /** From which λ on a reading is pointed out. */
    static final double STANDS_OUT = 14;

    /** The same for a first reading that lies where a thermometer does that has not settled. */
    static final double STANDS_OUT_AT_FIRST = 12;

    private static final double PRIOR_READINGS = 4;

    /** The share of a mark by which a reading has to be off before anything is said. */
    private static final double LEAST_OFF = 0.75;

    /** What a law costs beside its free numbers: Newton’s is the usual one. */
    private static final double UNUSUAL = 2;

    /** What a law can cost more than another: a shape and its being unusual, or the parameters of many parts. */
    private static final double MOST_PENALTY = 3;

    private static final double QUIET = 1.1;

    private final Sample sample;
    private final LawFit fit;
    private final boolean[] trusted;
    private final double[] surprise;
    private final double score;

    private RobustFit(Sample sample, LawFit fit, boolean[] trusted) {
        this.sample = sample;
        this.fit = fit;
        this.trusted = trusted;
        this.surprise = surprises();
        this.score = scored();
    }

    /** The clues of a column with rising times and at least four readings. */
    static RobustFit of(Column column) {
        Sample sample = Sample.of(column);
        List<RobustFit> tried = new ArrayList<>();
        for (Law law : Law.values()) {
            if (law.fits(sample)) {
                boolean[] all = new boolean[sample.size()];
                Arrays.fill(all, true);
                RobustFit plain = settled(sample, law, all);
                tried.add(plain);
                if (law == Law.NEWTON && plain.isQuiet()) {
                    return plain;
                }
                if (sample.parts == 1 && !plain.isQuiet()) {
                    tried.add(settled(sample, law, RobustStart.of(sample, law)));
                }
            }
        }
        return Collections.min(tried, Comparator.comparingDouble(RobustFit::score));
    }

    /** The clues by one law alone: a first look, before the others are asked. */
    static RobustFit byOneLaw(Column column, Law law) {
        Sample sample = Sample.of(column);
        boolean[] all = new boolean[sample.size()];
        Arrays.fill(all, true);
        return settled(sample, law, all);
    }

    /** Takes readings in that agree with the curve, and leaves out the worst that does not, until nothing changes. */
    private static RobustFit settled(Sample sample, Law law, boolean[] start) {
        RobustFit clues = new RobustFit(sample, LawFit.of(sample, law, start), start);
        for (int round = 0; round < sample.size() && clues.isFitted(); round++) {
            boolean[] next = clues.reconsidered();
            if (Arrays.equals(next, clues.trusted)) {
                break;
            }
            LawFit fit = LawFit.of(sample, law, next);
            if (!Double.isFinite(fit.sumOfSquares())) {
                break;
            }
            clues = new RobustFit(sample, fit, next);
        }
        return clues;
    }

    /** Whether the readings scatter no more than they are expected to: then there is nothing to explain. */
    private boolean isQuiet() {
        return misreadings() == 0 && variance() < QUIET * sample.expected();
    }

    private boolean isFitted() {
        return Double.isFinite(fit.sumOfSquares());
    }

    private boolean[] reconsidered() {
        boolean[] next = trusted.clone();
        int worst = -1;
        for (int i = 0; i < next.length; i++) {
            boolean out = standsOut(i);
            if (!trusted[i]) {
                next[i] = !out;
            } else if (out && (worst < 0 || surprise[i] > surprise[worst])) {
                worst = i;
            }
        }
        int out = 0;
        for (boolean one : next) {
            out += one ? 0 : 1;
        }
        if (worst >= 0 && out < mostMisreadings()) {
            next[worst] = false;
        }
        return next;
    }

    private int mostMisreadings() {
        return Math.max(0, Math.min(sample.size() / 3, sample.size() - fit.parameters() - 1));
    }

    private boolean standsOut(int i) {
        return surprise[i] > threshold(i) && Math.abs(fit.residual(i)) > LEAST_OFF * sample.mark;
    }

    private double threshold(int i) {
        return i == 0 && isOnTheSideOfTheSurroundings(0) ? STANDS_OUT_AT_FIRST : STANDS_OUT;
    }

    /** Whether a reading lies from the curve towards the surroundings. */
    boolean isOnTheSideOfTheSurroundings(int i) {
        return fit.residual(i) * fit.difference() < 0;
    }

    private double[] surprises() {
        int n = sample.size();
        double[] surprises = new double[n];
        if (!isFitted()) {
            return surprises;
        }
        double[] leverages = fit.leverages();
        double whole = squares();
        double freedom = weight() - fit.parameters();
        double floor = sample.rounding() * freedom;
        for (int i = 0; i < n; i++) {
            double residual = fit.residual(i);
            if (trusted[i]) {
                double square = residual * residual / Math.max(1 - leverages[i], 1e-3);
                double rest = Math.max(whole - square, floor);
                surprises[i] = (freedom - 1) * Math.log1p(square / rest);
            } else {
                double square = residual * residual / (1 + leverages[i]);
                surprises[i] = freedom * Math.log1p(square / Math.max(whole, floor));
            }
        }
        return surprises;
    }

    private double squares() {
        return PRIOR_READINGS * sample.expected() + fit.sumOfSquares();
    }

    /** The readings that tell of the noise, with those it was taken for before. */
    private double weight() {
        return PRIOR_READINGS + sample.size() - misreadings();
    }

    private double variance() {
        return Math.max(squares() / weight(), sample.rounding());
    }

    private double scored() {
        double n = weight();
        double k = fit.parameters() + 1;
        double penalty = 2 * k + 2 * k * (k + 1) / Math.max(n - k - 1, 0.5);
        return (PRIOR_READINGS + sample.size()) * Math.log(variance())
                + penalty
                + (fit.law() == Law.NEWTON ? 0 : UNUSUAL)
                + COST_OF_MISREADING * misreadings();
    }

    /** By how much a better story could at most improve the score: no column scatters less than it rounds. */
    double room() {
        double least =
                Math.max(sample.rounding(), PRIOR_READINGS * sample.expected() / (PRIOR_READINGS + sample.size()));
        double spread = (PRIOR_READINGS + sample.size()) * Math.log(variance() / least);
        return spread + COST_OF_MISREADING * misreadings() + MOST_PENALTY;
    }

    double score() {
        return Double.isFinite(score) ? score : Double.MAX_VALUE;
    }

    Sample sample() {
        return sample;
    }

    LawFit fit() {
        return fit;
    }

    /** How many readings are taken for misread. */
    int misreadings() {
        int out = 0;
        for (boolean one : trusted) {
            out += one ? 0 : 1;
        }
        return out;
    }

    boolean isMisread(int i) {
        return !trusted[i];
    }

    /** How far a reading stands out: λ. */
    double surprise(int i) {
        return surprise[i];
    }
}
