package org.snugsheet.engine.comparison;

import java.util.List;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;

/**
 * Several jars with the same wrap, made one estimate for the wrap.
 *
 * <p>No two jars are wrapped alike, so their true cooling constants differ, by more than the readings of one jar can show
 * (random effects). Each jar counts the same: the estimate is their mean y̅, its standard error comes from their spread,
 * {@code √(Σ(y − y̅)²/(m·(m − 1)))}, with m − 1 degrees of freedom. That is what AVERAGE and STDEV give. In the words of
 * meta-analysis it is the interval of Hartung, Knapp, Sidik and Jonkman (J. Hartung and G. Knapp, Statistics in Medicine
 * 20 (2001), 1771–1782; K. Sidik and J. N. Jonkman, Statistics in Medicine 21 (2002), 3153–3159) with equal weights.
 *
 * <p>Why equal weights, and not the usual ones by Paule and Mandel or DerSimonian and Laird, {@code 1/(s² + τ²)}: with two
 * to six jars and a few readings each, s² and τ² are too poorly known to weigh by. With s known to 3 degrees of freedom the
 * interval with Paule–Mandel weights held the truth 89 % of the time for six jars read alike, and 88 % for two jars of which
 * one was read four times as well as the other (the table of engine/docs/comparison-coverage.md; C. Röver, G. Knapp and T.
 * Friede, BMC Medical Research Methodology 15 (2015), 99, found the like). With equal weights it never falls below 95 %,
 * whatever the errors of the jars: that is a theorem (N. K. Bakirov and G. J. Székely 2005; R. Ibragimov and U. K. Müller,
 * Journal of Business &amp; Economic Statistics 28 (2010), 453–468). The price is some width when one jar was read much
 * better than another.
 *
 * <p>A safeguard: two jars can agree by chance far better than they were read. So the interval is never narrower than
 * {@link #byReadings} has it, which knows nothing of the spread (the same is done with other weights by D. Jackson, M. Law,
 * G. Rücker and G. Schwarzer, Statistics in Medicine 36 (2017), 3923–3934). For jars that do not differ at all it is then
 * wider than it need be.
 *
 * @param jars one estimate a jar, at least one
 */
public record JarsOfOneMaterial(List<Estimate> jars) {

    /**
     * Jars of one material.
     *
     * @throws Refusal if there is none
     */
    public JarsOfOneMaterial {
        jars = List.copyOf(jars);
        if (jars.isEmpty()) {
            throw Refusal.of(Trouble.NO_JARS);
        }
    }

    /**
     * Whether there is only one jar. Its estimate then speaks of that jar, not of the material: how much another jar would
     * differ is not known.
     *
     * @return true for one jar
     */
    public boolean isSingleJar() {
        return jars.size() == 1;
    }

    /**
     * The estimate for the material, for limits of 95 %.
     *
     * @return as {@link #estimate(double)}
     */
    public Estimate estimate() {
        return estimate(Verdict.CONFIDENCE);
    }

    /**
     * The estimate for the material: {@link #bySpread} or {@link #byReadings}, whichever has the wider interval at that
     * confidence. For one jar it is the jar’s own.
     *
     * @param confidence that of the limits, or of the strictest test, that the estimate will be used for
     * @return the mean of the jars with its error, in their unit
     * @throws Refusal if the confidence does not lie between 0 and 1
     */
    public Estimate estimate(double confidence) {
        Require.confidence(confidence);
        if (isSingleJar()) {
            return jars.get(0);
        }
        Estimate bySpread = bySpread();
        Estimate byReadings = byReadings();
        return bySpread.reach(confidence) >= byReadings.reach(confidence) ? bySpread : byReadings;
    }

    /**
     * The mean of the jars with the error that their spread shows.
     *
     * @return the mean in their unit, with m − 1 degrees of freedom
     * @throws Refusal if there is only one jar, which has no spread
     */
    public Estimate bySpread() {
        return new Estimate(mean(), Math.sqrt(variance() / jars.size()), jars.size() - 1.0);
    }

    /**
     * The mean of the jars with the error that their readings alone leave, as if all jars cooled alike: {@code √(Σs²)/m},
     * with degrees of freedom by Satterthwaite (Biometrics Bulletin 2 (1946), 110–114), {@code (Σs²)²/Σ(s⁴/ν)}.
     *
     * @return the mean in their unit; for one jar, the jar’s own estimate
     */
    public Estimate byReadings() {
        if (isSingleJar()) {
            return jars.get(0);
        }
        double largest =
                jars.stream().mapToDouble(Estimate::standardError).max().orElseThrow();
        // In units of the largest error, so that no fourth power is lost.
        double unit = largest > 0 ? largest : 1;
        double sum = 0;
        double overFreedom = 0;
        for (Estimate jar : jars) {
            double share = jar.standardError() / unit;
            sum += share * share;
            overFreedom += Math.pow(share, 4) / jar.degreesOfFreedom();
        }
        double degreesOfFreedom = overFreedom > 0 ? sum * sum / overFreedom : Double.POSITIVE_INFINITY;
        return new Estimate(mean(), unit * Math.sqrt(sum) / jars.size(), degreesOfFreedom);
    }

    /**
     * How much the jars truly differ: the standard deviation between them, with what their readings alone would spread
     * them taken off, {@code τ = √(Σ(y − y̅)²/(m − 1) − Σs²/m)}. Source: W. G. Cochran, The combination of estimates from
     * different experiments, Biometrics 10 (1954), 101–129.
     *
     * @return τ in their unit; zero if they differ no more than their readings explain
     * @throws Refusal if there is only one jar
     */
    public double spreadBetweenJars() {
        double byReadings = 0;
        for (Estimate jar : jars) {
            byReadings += jar.standardError() * jar.standardError() / jars.size();
        }
        return Math.sqrt(Math.max(0, variance() - byReadings));
    }

    private double mean() {
        double sum = 0;
        for (Estimate jar : jars) {
            sum += jar.value();
        }
        return sum / jars.size();
    }

    private double variance() {
        if (isSingleJar()) {
            throw Refusal.of(Trouble.ONE_JAR_HAS_NO_SPREAD);
        }
        double mean = mean();
        double sum = 0;
        for (Estimate jar : jars) {
            double apart = jar.value() - mean;
            sum += apart * apart;
        }
        return sum / (jars.size() - 1);
    }
}
