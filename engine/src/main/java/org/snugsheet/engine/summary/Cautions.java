package org.snugsheet.engine.summary;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.cooling.CoolingLaw;
import org.snugsheet.engine.cooling.ModelChoice;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Surroundings;

/**
 * Cautions about readings that can be used as they are: errors of the whole column, as far as the readings show them.
 *
 * <p>{@code CHECK.FAIR} estimates the size of such errors where they do not show.
 */
final class Cautions {

    /** Marks of thermometers are spaced by twos, fives and tens. */
    private static final List<Integer> COARSER = List.of(10, 5, 2);

    /** How rarely readings may fall on coarser marks by chance (common practice, no source). */
    private static final double BY_CHANCE = 1.0 / 200;

    /**
     * “Considerably less” support (K. P. Burnham and D. R. Anderson, Model Selection and Multimodel Inference, 2002, section
     * 2.6).
     */
    private static final double BEYOND_DOUBT = 4;

    private static final double NEAR = 1e-6;

    private Cautions() {}

    static List<Finding> of(TypedJar jar, CoolingFit fit) {
        // About a curve toward the wrong level all readings wander; this caution says why.
        Optional<Finding> bend = bendsElsewhere(jar, fit)
                .or(() -> fit.isWandering() ? Optional.of(Finding.of(Problem.READINGS_WANDER)) : Optional.empty());
        return Stream.of(bend, coarserThanMark(jar, fit))
                .flatMap(Optional::stream)
                .toList();
    }

    /**
     * Readings that support surroundings other than those typed, clearly by the criterion of {@link ModelChoice} and against
     * every law in those typed: a room that drifts or thermometers that differ bend the whole curve toward another level, and
     * so, slightly, does a jar in still air. Melting ice is never doubted.
     */
    private static Optional<Finding> bendsElsewhere(TypedJar jar, CoolingFit fit) {
        if (!(jar.around() instanceof Surroundings.Constant typed) || typed.isExact()) {
            return Optional.empty();
        }
        ModelChoice choice = ModelChoice.of(fit.readings(), typed, jar.mark(), List.of());
        ModelChoice.Candidate chosen = choice.chosen();
        if (chosen.fit() instanceof CoolingFit other
                && other.model().law() == CoolingLaw.SURROUNDINGS_FITTED
                && choice.candidates().stream()
                        .allMatch(law -> law.equals(chosen) || law.criterion() - chosen.criterion() > BEYOND_DOUBT)
                && Math.abs(other.surroundings().minus(typed.temperature()).kelvins())
                        > jar.mark().graduation().kelvins()) {
            Scale scale = jar.scale();
            return Optional.of(Finding.of(
                    Problem.BENDS_ELSEWHERE,
                    other.surroundings().in(scale),
                    typed.temperature().in(scale),
                    scale.symbol()));
        }
        return Optional.empty();
    }

    /** The probability that readings at d different marks all fall on every m-th mark by chance is m^−d. */
    private static Optional<Finding> coarserThanMark(TypedJar jar, CoolingFit fit) {
        Scale scale = jar.scale();
        double mark = jar.mark().graduation().in(scale);
        List<Double> marks = fit.readings().all().stream()
                .map(reading -> reading.temperature().in(scale) / mark)
                .toList();
        double different = marks.stream().map(Math::rint).distinct().count();
        return COARSER.stream()
                .filter(times -> Math.pow(times, -different) < BY_CHANCE)
                .filter(times -> marks.stream().allMatch(each -> isWhole(each / times)))
                .findFirst()
                .map(times -> Finding.of(Problem.COARSER_THAN_MARK, times * mark, mark, scale.symbol()));
    }

    private static boolean isWhole(double number) {
        return Math.abs(number - Math.rint(number)) < NEAR;
    }
}
