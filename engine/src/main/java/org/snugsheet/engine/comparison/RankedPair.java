package org.snugsheet.engine.comparison;

import org.snugsheet.engine.InvalidInputException;

/**
 * Two materials of a {@link Ranking} compared with each other.
 *
 * @param better the one that cools slower, by its estimate
 * @param worse the other
 * @param ratio how many times slower the better one cools
 * @param confidence that of the {@link #interval}, chosen so that in at least 95 % of tables the intervals of all pairs hold
 *     the truth simultaneously: 1 − 0.05/k for k pairs (Bonferroni)
 * @param p how often chance alone would make two like materials differ as much, by Welch’s test
 * @param adjustedP the same adjusted for all pairs of the table, by Holm’s step-down
 */
public record RankedPair(
        RankedMaterial better, RankedMaterial worse, Ratio ratio, double confidence, double p, double adjustedP) {

    /**
     * Whether the two can be told apart.
     *
     * @return true if the adjusted p is at most 0.05
     */
    public boolean isSeparated() {
        return adjustedP <= Ranking.LEVEL;
    }

    /**
     * How many times slower the better one cools, with limits that hold simultaneously for all pairs of the table. Holm’s
     * step-down sees a little more than these limits do: a pair may be separated though its limits reach 1.
     *
     * @return the limits; the upper one may be infinite
     * @throws InvalidInputException if one of the two is below zero by more than its error
     */
    public Interval interval() {
        return ratio.interval(confidence);
    }
}
