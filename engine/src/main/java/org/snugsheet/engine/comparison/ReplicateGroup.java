package org.snugsheet.engine.comparison;

import java.util.List;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * Several jars with the same wrap, combined into one estimate for the wrap.
 *
 * <p>No two jars are wrapped alike, so their true cooling constants differ, by more than the readings of one jar can show
 * (random effects). Each jar has the same weight: the estimate is their mean y̅, its standard error comes from their spread,
 * {@code √(Σ(y − y̅)²/(m·(m − 1)))}, with m − 1 degrees of freedom. That is what AVERAGE and STDEV give. In meta-analysis it
 * is known as the interval of Hartung, Knapp, Sidik and Jonkman (J. Hartung and G. Knapp, Statistics in Medicine 20 (2001),
 * 1771–1782; K. Sidik and J. N. Jonkman, Statistics in Medicine 21 (2002), 3153–3159) with equal weights.
 *
 * <p>Why equal weights, and not the usual ones by Paule and Mandel or DerSimonian and Laird, {@code 1/(s² + τ²)}: with two to
 * six jars and a few readings each, s² and τ² are too poorly known to be used as weights. With s known to 3 degrees of
 * freedom the interval with Paule–Mandel weights held the truth 89 % of the time for six jars read alike, and 88 % for two
 * jars of which one was read four times as well as the other (the table of engine/docs/comparison-coverage.md; C. Röver, G.
 * Knapp and T. Friede, BMC Medical Research Methodology 15 (2015), 99, found the same). With equal weights it never falls
 * below 95 %, whatever the errors of the jars: that is a theorem (N. K. Bakirov and G. J. Székely 2005; R. Ibragimov and U.
 * K. Müller, Journal of Business &amp; Economic Statistics 28 (2010), 453–468). The price is a wider interval when one jar
 * was read much better than another.
 *
 * <p>By chance, two jars can agree far better than they were read, and then the limits are narrow. They are left narrow: the
 * 95 % of Student’s t include such cases, however much or little the jars truly differ, and hardly any other method achieves
 * that. For jars read alike, the sum of squares about a supposed truth and that of the readings are sufficient and complete
 * for the two variances, so limits that hold at 95 % whatever the spread must hold at 95 % for each value of that sum (Neyman
 * structure; E. L. Lehmann and J. P. Romano, Testing Statistical Hypotheses, 3rd edition 2005, section 4.3). A floor under
 * the width, “never narrower than the readings allow”, holds 99.5 % for two jars that do not differ.
 *
 * <p>The spread cannot show an error that the jars share: jars at nearly the same temperatures are rounded alike, and if
 * there is hardly any noise they agree to the last digit, all wrong by the same amount. So the
 * {@linkplain Estimate#sharedError shared errors} s are added, as if they were fully shared: the limits reach
 * {@code √((t·s(y̅))² + (z·s̅)²)}, with Student’s t of m − 1 degrees of freedom and the normal quantile z, since the shared
 * errors are known in advance. (The sum of such squares is no narrower than exact limits whatever the two variances: S. K.
 * Banerjee, Approximate confidence interval for linear functions of means of k populations when the population variances are
 * not equal, Sankhyā 22 (1960), 357–358.)
 *
 * @param jars one estimate a jar, at least one
 */
public record ReplicateGroup(List<Estimate> jars) {

    /**
     * Jars of one material.
     *
     * @throws InvalidInputException if there is none
     */
    public ReplicateGroup {
        jars = List.copyOf(jars);
        if (jars.isEmpty()) {
            throw InvalidInputException.of(Problem.NO_JARS);
        }
    }

    /**
     * Whether there is only one jar. Then the estimate is about that jar, not about the material, because it is unknown how
     * much another jar would differ.
     *
     * @return true for one jar
     */
    public boolean isSingleJar() {
        return jars.size() == 1;
    }

    /**
     * The estimate for the material, for limits and tests at 95 % or stricter: the mean of the jars, with the error from
     * their {@linkplain #bySpread spread} and the shared error. For one jar it is the jar’s own estimate. Jars that agree in
     * every digit have no spread; then the larger of the error from {@link #byReadings their readings} and the shared error
     * is used.
     *
     * @return the mean of the jars with its error, in their unit
     */
    public Estimate estimate() {
        if (isSingleJar()) {
            return jars.get(0);
        }
        Estimate bySpread = bySpread();
        double shared = jars.stream().mapToDouble(Estimate::sharedError).sum() / jars.size();
        if (jars.stream().allMatch(jar -> jar.value() == jars.get(0).value())) {
            Estimate byReadings = byReadings();
            Estimate together =
                    new Estimate(bySpread.value(), shared, Double.POSITIVE_INFINITY, shared, bySpread.commonError());
            return byReadings.marginOfError(Verdict.CONFIDENCE) >= together.marginOfError(Verdict.CONFIDENCE)
                    ? byReadings
                    : together;
        }
        // At stricter levels Student’s t grows faster than the normal quantile, so that this is slightly too wide
        // there.
        double normal = StudentT.quantile(Verdict.CONFIDENCE, Double.POSITIVE_INFINITY)
                / StudentT.quantile(Verdict.CONFIDENCE, bySpread.degreesOfFreedom());
        return new Estimate(
                bySpread.value(),
                Math.hypot(bySpread.standardError(), normal * shared),
                bySpread.degreesOfFreedom(),
                shared,
                bySpread.commonError());
    }

    /**
     * The mean of the jars with the error from their spread.
     *
     * @return the mean in their unit, with m − 1 degrees of freedom
     * @throws InvalidInputException if there is only one jar, which has no spread
     */
    public Estimate bySpread() {
        return new Estimate(mean(), Math.sqrt(variance() / jars.size()), jars.size() - 1.0, 0, common());
    }

    /**
     * The mean of the jars with the error from their readings alone, as if all jars cooled alike: {@code √(Σs²)/m}, with
     * degrees of freedom by Satterthwaite (Biometrics Bulletin 2 (1946), 110–114), {@code (Σs²)²/Σ(s⁴/ν)}.
     *
     * @return the mean in their unit; for one jar, the jar’s own estimate
     */
    public Estimate byReadings() {
        if (isSingleJar()) {
            return jars.get(0);
        }
        double largest =
                jars.stream().mapToDouble(Estimate::standardError).max().orElseThrow();
        // In units of the largest error, so that no fourth power underflows.
        double unit = largest > 0 ? largest : 1;
        double sum = 0;
        double overFreedom = 0;
        for (Estimate jar : jars) {
            double share = jar.standardError() / unit;
            sum += share * share;
            overFreedom += Math.pow(share, 4) / jar.degreesOfFreedom();
        }
        double degreesOfFreedom = overFreedom > 0 ? sum * sum / overFreedom : Double.POSITIVE_INFINITY;
        return new Estimate(mean(), unit * Math.sqrt(sum) / jars.size(), degreesOfFreedom, 0, common());
    }

    /**
     * How much the jars truly differ: the standard deviation between them, less the part that their readings alone explain,
     * {@code τ = √(Σ(y − y̅)²/(m − 1) − Σs²/m)}. Source: W. G. Cochran, The combination of estimates from different
     * experiments, Biometrics 10 (1954), 101–129.
     *
     * @return τ in their unit; zero if they differ no more than their readings explain
     * @throws InvalidInputException if there is only one jar
     */
    public double spreadBetweenJars() {
        double byReadings = 0;
        for (Estimate jar : jars) {
            byReadings += jar.standardError() * jar.standardError() / jars.size();
        }
        return Math.sqrt(Math.max(0, variance() - byReadings));
    }

    /** A common cause moves the mean of the jars by the mean of what it does to each. */
    private double common() {
        double sum = 0;
        for (Estimate jar : jars) {
            sum += jar.commonError();
        }
        return sum / jars.size();
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
            throw InvalidInputException.of(Problem.ONE_JAR_HAS_NO_SPREAD);
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
