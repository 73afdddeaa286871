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
 * What somebody should know of readings that can be used as they are: errors of the whole column, as far as it shows them.
 *
 * <p>How large such errors are where it does not is worked out by {@code CHECK.FAIR}.
 */
final class Cautions {

    /** Marks of thermometers go by twos, fives and tens. */
    private static final List<Integer> COARSER = List.of(10, 5, 2);

    /** How seldom readings may seem to keep to coarser marks by chance (common practice, no source). */
    private static final double BY_CHANCE = 1.0 / 200;

    /** “Considerably less” support (K. P. Burnham and D. R. Anderson, Model Selection and Multimodel Inference, 2002, section 2.6). */
    private static final double BEYOND_DOUBT = 4;

    private static final double NEAR = 1e-6;

    private Cautions() {}

    static List<Finding> of(TypedJar jar, CoolingFit fit) {
        // Round a curve towards the wrong level all readings wander; that says why.
        Optional<Finding> bend = bendsElsewhere(jar, fit)
                .or(() -> fit.isWandering() ? Optional.of(Finding.of(Problem.READINGS_WANDER)) : Optional.empty());
        return Stream.of(bend, coarserThanMark(jar, fit))
                .flatMap(Optional::stream)
                .toList();
    }

    /**
     * Readings that support other surroundings than those typed, beyond doubt by the criterion of {@link ModelChoice}, against each law
     * in those typed: a room that drifts or thermometers that differ bend the whole curve towards another level, and so does a jar
     * in still air a little. Melting ice is what it is.
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

    /** Of readings at d different marks all fall on every m-th mark by chance once in m^d. */
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
