package org.snugsheet.engine.cooling;

import java.util.Optional;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.comparison.StudentT;
import org.snugsheet.engine.comparison.Verdict;

/** What rounding does to a cooling constant, beyond the errors of single readings. */
final class RoundingUncertainty {

    private RoundingUncertainty() {}

    /** The cooling constants that rounding alone leaves possible; only for surroundings that are given and constant. */
    static Optional<Interval> reachable(CoolingFit fit) {
        return fit.model() instanceof ConstantSurroundings constant
                ? BoundedRoundingLimits.rates(
                        fit.readings(), constant.surroundings().celsius(), fit.amplitude(), fit.mark())
                : Optional.empty();
    }

    /**
     * The cooling constant in 1/min with a standard error for comparisons. It is increased where rounding errors are
     * correlated, and up to a curve through all {@linkplain BoundedRoundingLimits bars} that lies beyond the 95 % limits.
     * Another jar shares the rounding that noise does not scatter and, if rounding alone explains the readings, the whole
     * range that the bars allow.
     */
    static Estimate estimate(CoolingFit fit) {
        Estimate plain = fit.estimate();
        double rate = fit.constant().perSecond();
        double reach = reachable(fit)
                .map(rates -> Math.max(rate - rates.low(), Double.isFinite(rates.high()) ? rates.high() - rate : 0))
                .map(perSecond -> new CoolingConstant(perSecond).perMinute())
                .orElse(0.0);
        StandardErrors errors = fit.errors();
        double raised = new CoolingConstant(errors.raisedOf(StandardErrors.RATE)).perMinute();
        double shared = new CoolingConstant(errors.sharedOf(StandardErrors.RATE)).perMinute();
        return new Estimate(
                plain.value(),
                Math.max(raised, reach / StudentT.quantile(Verdict.CONFIDENCE, plain.degreesOfFreedom())),
                plain.degreesOfFreedom(),
                Math.max(shared, reach / StudentT.quantile(Verdict.CONFIDENCE, Double.POSITIVE_INFINITY)),
                plain.commonError());
    }
}
