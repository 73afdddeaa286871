package org.snugsheet.engine.slips;

import java.util.Optional;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Problem;

/**
 * A column that does not change, though even the best wrapped jar would have: the thermometer is not in the water.
 *
 * <p>Two hypotheses are compared: equal readings apart from noise, and a jar with a half-time of {@value #SLOWEST_HALF_TIME}
 * minutes, slower than any wrap a class can make (common practice, no source).
 */
final class ConstantColumn {

    static final double SLOWEST_HALF_TIME = 150;

    private static final double COST = 0.5;

    /** Odds of five to three: a thermometer out of the water is no rare slip, and it costs a lesson. */
    private static final double LEAST_GAIN = 1;

    /** Where the surroundings are unknown, the jar is assumed to be this much warmer than they are, in kelvins. */
    private static final double USUAL_DIFFERENCE = 20;

    private ConstantColumn() {}

    static Optional<Slip> in(Column column) {
        Sample sample = Sample.of(column);
        int n = sample.size();
        Level level = Level.of(sample, 0);
        if (!level.isAtRest(sample)) {
            return Optional.empty();
        }
        double[] slow = new double[n];
        double meanSlow = 0;
        for (int i = 0; i < n; i++) {
            double difference = sample.known ? level.celsius() - sample.around[i] : USUAL_DIFFERENCE;
            slow[i] = difference * Math.pow(2, -sample.minutes[i] / SLOWEST_HALF_TIME);
            meanSlow += slow[i] / n;
        }
        double aboutSlow = 0;
        for (int i = 0; i < n; i++) {
            double offSlow = sample.celsius[i] - level.celsius() - (slow[i] - meanSlow);
            aboutSlow += offSlow * offSlow;
        }
        double aboutMean = level.scatter() * (n - 1);
        double gain = (aboutSlow - aboutMean) / Math.max(sample.expected(), level.scatter()) - COST;
        if (gain < LEAST_GAIN) {
            return Optional.empty();
        }
        return Optional.of(new Slip(
                SlipKind.CONSTANT,
                SlipFinder.certainty(gain),
                Finding.of(
                        Problem.CONSTANT_COLUMN,
                        level.shown(column.scale()),
                        column.scale().symbol())));
    }
}
