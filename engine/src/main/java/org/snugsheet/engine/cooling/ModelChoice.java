package org.snugsheet.engine.cooling;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/**
 * Which law the readings support: Newton’s, unless another one is better beyond doubt.
 *
 * <p>Laws are compared by the corrected information criterion, {@code AICc = −2·ln L + 2K + 2K(K + 1)/(n − K − 1)} with K the
 * number of free parameters and the variance (N. Sugiura, Commun. Stat. A 7, 13–26, 1978; C. M. Hurvich and C.-L. Tsai,
 * Biometrika 76, 297–307, 1989). The variance in the likelihood is {@code SSR/n}, but never less than what rounding to the
 * mark leaves, so that no law is preferred for following the rounding. A law must be better by {@value #REAL_GAIN}: at that
 * distance the other one has “considerably less” support (K. P. Burnham and D. R. Anderson, Model Selection and Multimodel
 * Inference, 2002, section 2.6). Surroundings different from the given ones are accepted only if the readings determine them
 * {@linkplain LawDoubt whatever the law}.
 *
 * @param candidates the laws that could be fitted, Newton’s first
 * @param chosen the one the readings support
 */
public record ModelChoice(List<Candidate> candidates, Candidate chosen) {

    /** How much smaller than Newton’s the criterion of another law must be. */
    static final double REAL_GAIN = 4;

    /**
     * A law with its fit and its criterion.
     *
     * @param fit the fit
     * @param criterion AICc; infinite if there are too few readings to judge
     */
    public record Candidate(ModelFit fit, double criterion) {

        static Candidate of(ModelFit fit, Graduation mark) {
            double n = fit.size();
            double rounding = mark.standardUncertainty();
            double variance = Math.max(fit.sumOfSquares() / n, rounding * rounding);
            double minusTwoLogLikelihood = n * Math.log(2 * Math.PI * variance) + fit.sumOfSquares() / variance;
            return new Candidate(fit, minusTwoLogLikelihood + penalty(fit.model(), fit.size()));
        }
    }

    private static double penalty(CoolingModel model, int n) {
        double k = model.parameters() + 1;
        double room = n - k - 1;
        return room > 0 ? 2 * k + 2 * k * (k + 1) / room : Double.POSITIVE_INFINITY;
    }

    /** The criterion of a law that fits every reading exactly, the best possible. */
    private static double atBest(CoolingModel model, int n, Graduation mark) {
        double rounding = mark.standardUncertainty();
        return n * Math.log(2 * Math.PI * rounding * rounding) + penalty(model, n);
    }

    /** A choice; the candidates are copied. */
    public ModelChoice {
        candidates = List.copyOf(candidates);
    }

    /**
     * Fits all laws that suit the surroundings and chooses one.
     *
     * @param readings the readings
     * @param surroundings what the vessel stood in
     * @param mark the mark of the thermometer
     * @param others more laws to try, such as a {@link ClosedPair}
     * @return the choice
     * @throws InvalidInputException if not even Newton’s law can be fitted
     */
    public static ModelChoice of(
            Readings readings, Surroundings surroundings, Graduation mark, List<? extends CoolingModel> others) {
        CoolingFit single = CoolingFit.of(readings, surroundings, mark);
        Candidate newton = Candidate.of(single, mark);
        List<CoolingModel> laws = new ArrayList<>(others);
        if (surroundings instanceof Surroundings.Constant constant) {
            laws.add(new FreeConvection(constant.temperature()));
            laws.add(new FittedSurroundings());
            laws.add(new TwoStage(constant.temperature()));
        }
        List<Candidate> candidates = new ArrayList<>();
        candidates.add(newton);
        for (CoolingModel law : laws) {
            // The expensive law is not tried where it could not win.
            if (law instanceof TwoStage && newton.criterion() - atBest(law, readings.size(), mark) <= REAL_GAIN) {
                continue;
            }
            candidate(law, single, mark).ifPresent(candidates::add);
        }
        return choice(candidates, mark);
    }

    private static ModelChoice choice(List<Candidate> candidates, Graduation mark) {
        Candidate newton = candidates.get(0);
        Candidate best = Collections.min(candidates, Comparator.comparingDouble(Candidate::criterion));
        if (!(newton.criterion() - best.criterion() > REAL_GAIN)) {
            return new ModelChoice(candidates, newton);
        }
        if (best.fit() instanceof CoolingFit other && other.model().fitsSurroundings()) {
            // Only now, because it takes much longer than a fit: it is compared with the other laws with free
            // surroundings.
            List<Candidate> left = new ArrayList<>(candidates);
            int place = left.indexOf(best);
            try {
                CoolingFit among = CoolingFit.of(other.readings(), new Surroundings.Unknown(), mark);
                left.set(place, new Candidate(among, best.criterion()));
                return new ModelChoice(left, left.get(place));
            } catch (InvalidInputException refusal) {
                left.remove(place);
                return choice(left, mark);
            }
        }
        return new ModelChoice(candidates, best);
    }

    /** A law that cannot be fitted to these readings is no candidate; Newton’s has been. */
    private static Optional<Candidate> candidate(CoolingModel law, CoolingFit newton, Graduation mark) {
        try {
            ModelFit fit = law instanceof TwoStage twoStage ? twoStage.fit(newton) : law.fit(newton.readings(), mark);
            return Optional.of(Candidate.of(fit, mark));
        } catch (InvalidInputException refusal) {
            return Optional.empty();
        }
    }
}
