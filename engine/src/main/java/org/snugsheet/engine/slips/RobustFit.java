package org.snugsheet.engine.slips;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * The law that fits a column best, how well it fits, and which readings do not belong to it.
 *
 * <p>The noise of the readings is unknown, and a few readings say little about it. So it is assumed to be what is usual for a
 * hand-held thermometer, with the weight of {@value #PRIOR_READINGS} readings (the scaled inverse χ² prior; A. Gelman and
 * others, Bayesian Data Analysis, 3rd edition 2013, section 3.2), and never less than the rounding. A reading stands out by
 * {@code λ = ν·ln(1 + t²/ν)}, twice the logarithm of the likelihood ratio of Student’s t, with t its distance from the curve
 * through the others in standard errors (Cook and Weisberg, Residuals and Influence in Regression, 1982, section 2.2).
 *
 * <p>The score of a column is {@code n·ln σ̂²} with the corrected penalty for free parameters of AICc (N. Sugiura, Commun.
 * Stat. A 7, 13–26, 1978) and {@value #COST_OF_MISREADING} for each reading left out: twice the logarithm of the odds that a
 * reading is right. So half a difference of scores is the logarithm of the odds of one hypothesis against another.
 */
final class RobustFit {

    /** Twice the logarithm of the odds that a reading is right: one slip in 150 readings (common practice, no source). */
    static final double COST_OF_MISREADING = 10;

    /** Readings with a larger λ are reported. */
    static final double STANDS_OUT = 14;

    /** The same for a first reading on the side where a thermometer reads that has not settled. */
    static final double STANDS_OUT_AT_FIRST = 12;

    private static final double PRIOR_READINGS = 4;

    /** The share of a mark by which a reading must be off to be reported. */
    private static final double LEAST_OFF = 0.75;

    /** What a law other than Newton’s costs in addition to its free parameters. */
    private static final double UNUSUAL = 2;

    /** The most that one law can cost more than another: one shape and being unusual, or the parameters of many parts. */
    private static final double MOST_PENALTY = 3;

    private static final double QUIET = 1.1;

    private final LawGrids grids;
    private final Sample sample;
    private final LawFit fit;
    private final boolean[] trusted;
    private final double[] surprise;
    private final double score;

    private RobustFit(LawGrids grids, LawFit fit, boolean[] trusted) {
        this.grids = grids;
        this.sample = grids.sample();
        this.fit = fit;
        this.trusted = trusted;
        this.surprise = surprises();
        this.score = scored();
    }

    /** The best fit to a column with rising times and at least four readings. */
    static RobustFit of(Column column) {
        return best(LawGrids.of(Sample.of(column)));
    }

    /** The fit of one law alone: a first look before the others are tried. */
    static RobustFit byOneLaw(Column column, Law law) {
        return byOneLaw(LawGrids.of(Sample.of(column)), law);
    }

    /** {@link #of} another column, sooner if only temperatures differ. */
    RobustFit ofOther(Column column) {
        return best(grids.with(Sample.of(column)));
    }

    /** {@link #byOneLaw} for another column, by the law of this fit. */
    RobustFit ofOtherByThisLaw(Column column) {
        return byOneLaw(grids.with(Sample.of(column)), fit.law());
    }

    private static RobustFit best(LawGrids grids) {
        Sample sample = grids.sample();
        List<RobustFit> tried = new ArrayList<>();
        for (Law law : Law.values()) {
            if (law.fits(sample)) {
                RobustFit plain = byOneLaw(grids, law);
                tried.add(plain);
                if (law == Law.NEWTON && plain.isQuiet()) {
                    return plain;
                }
                if (sample.parts == 1 && !plain.isQuiet()) {
                    tried.add(settled(grids, law, RobustStart.of(grids, law, plain.fit.rate())));
                }
            }
        }
        return Collections.min(tried, Comparator.comparingDouble(RobustFit::score));
    }

    private static RobustFit byOneLaw(LawGrids grids, Law law) {
        boolean[] all = new boolean[grids.sample().size()];
        Arrays.fill(all, true);
        return settled(grids, law, all);
    }

    /** Includes readings that agree with the curve and leaves out the worst that does not, until nothing changes. */
    private static RobustFit settled(LawGrids grids, Law law, boolean[] start) {
        LawGrid grid = grids.of(law);
        RobustFit robust = new RobustFit(grids, LawFit.of(grid, start), start);
        for (int round = 0; round < start.length && robust.isFitted(); round++) {
            boolean[] next = robust.reconsidered();
            if (Arrays.equals(next, robust.trusted)) {
                break;
            }
            LawFit fit = LawFit.of(grid, next);
            if (!Double.isFinite(fit.sumOfSquares())) {
                break;
            }
            robust = new RobustFit(grids, fit, next);
        }
        return robust;
    }

    /** Whether the readings scatter no more than expected, so that there is nothing to explain. */
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

    /** Whether a reading lies on the side of the curve toward the surroundings. */
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

    /** The weight of the evidence on the noise: the trusted readings and those that the prior counts for. */
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

    /** By how much a better hypothesis could improve the score at most: no column scatters less than rounding makes it. */
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

    /** How many readings are left out as misread. */
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
