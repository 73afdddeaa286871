package org.snugsheet.engine.cooling;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.comparison.StudentT;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Reading;

/**
 * Readings too far from the fitted curve for chance. They are reported, never left out.
 *
 * <p>Each residual is divided by its standard error as estimated from the other readings, {@code tᵢ = rᵢ / (s₍ᵢ₎·√(1 − hᵢ))}
 * with the leverage h, and compared with Student’s quantile for n − p − 1 degrees of freedom at 5 % divided among all
 * readings. Source: R. D. Cook and S. Weisberg, Residuals and Influence in Regression, 1982, sections 2.2.1 and 2.2.2
 * (externally studentized residuals, Bonferroni bound). s₍ᵢ₎ is never less than the rounding to the mark.
 */
public final class Outliers {

    private static final double FALSE_ALARMS = 0.05;

    private Outliers() {}

    /**
     * The outlying readings.
     *
     * @param fit the fit
     * @param mark the mark of the thermometer
     * @return the readings, in their order; none if there are too few readings to judge
     */
    public static List<Reading> in(CoolingFit fit, Graduation mark) {
        int others = fit.degreesOfFreedom() - 1;
        if (others < 1) {
            return List.of();
        }
        double limit = StudentT.criticalValue(FALSE_ALARMS / fit.size(), others);
        double[] residuals = fit.solution().residuals();
        double[] leverages = fit.solution().leverages();
        double rounding = mark.standardUncertainty();
        List<Reading> found = new ArrayList<>();
        for (int i = 0; i < residuals.length; i++) {
            double free = 1 - leverages[i];
            double square = residuals[i] * residuals[i];
            double withoutIt = Math.max((fit.sumOfSquares() - square / free) / others, rounding * rounding);
            if (square > limit * limit * withoutIt * free) {
                found.add(fit.readings().all().get(i));
            }
        }
        return found;
    }
}
