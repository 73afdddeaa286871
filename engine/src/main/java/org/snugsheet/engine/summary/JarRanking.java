package org.snugsheet.engine.summary;

import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Location;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.NamedEstimate;
import org.snugsheet.engine.comparison.RankedMaterial;
import org.snugsheet.engine.comparison.Ranking;
import org.snugsheet.engine.cooling.CoolingConstant;

/**
 * A ranking of the usable jars; the others are held back and do not influence it.
 *
 * @param ranking the ranking, without the jars held back
 * @param ranked the jars in it, in the order they were given
 * @param heldBack the jars left out, in that order
 * @param spread how much jars wrapped alike differ, included where a material has one jar; 0 if not
 */
public record JarRanking(Ranking ranking, List<JarSummary> ranked, List<JarSummary> heldBack, double spread) {

    /** A ranking; the lists are copied. */
    public JarRanking {
        ranked = List.copyOf(ranked);
        heldBack = List.copyOf(heldBack);
    }

    /**
     * Ranks jars.
     *
     * @param jars their summaries; jars of one name are jars of one material
     * @param spread how much jars wrapped alike differ, as a share of their constant; 0 if single jars stand only for
     *     themselves
     * @return the ranking
     * @throws InvalidInputException if the spread is not a share, or fewer than two names are left; the message says which
     *     jars are held back and why
     */
    public static JarRanking of(List<JarSummary> jars, double spread) {
        List<JarSummary> usable = jars.stream().filter(JarSummary::isUsable).toList();
        List<NamedEstimate> estimates = usable.stream()
                .map(jar ->
                        new NamedEstimate(name(jar), jar.fit().fit().orRefuse().conservativeEstimate()))
                .toList();
        List<JarSummary> heldBack = jars.stream().filter(jar -> !jar.isUsable()).toList();
        try {
            return new JarRanking(Ranking.of(estimates, spread), usable, heldBack, spread);
        } catch (InvalidInputException refusal) {
            if (refusal.problem() != Problem.NOTHING_TO_RANK || heldBack.isEmpty()) {
                throw refusal;
            }
            requireMoreThanOneReason(jars);
            throw InvalidInputException.of(
                    Problem.TOO_FEW_TO_RANK,
                    heldBack.stream().map(JarRanking::reason).toList());
        }
    }

    /**
     * The half-time of a material: that of a single jar, or that of the mean of several, by the same rule.
     *
     * @param material one of the ranked
     * @return seconds, or why it has no half-time
     */
    public Known<Double> halfTime(RankedMaterial material) {
        if (material.jars().isSingleJar()) {
            return ranked.stream()
                    .filter(jar -> name(jar).strip().equalsIgnoreCase(material.name()))
                    .findFirst()
                    .orElseThrow()
                    .fit()
                    .halfTime();
        }
        Estimate mean = material.estimate();
        return Known.of(() ->
                CoolingConstant.ofPerMinute(mean.value()).halfTime(CoolingConstant.ofPerMinute(mean.combinedError())));
    }

    /** A reason that holds back all jars, such as clock times, is stated once, with its advice. */
    private static void requireMoreThanOneReason(List<JarSummary> jars) {
        List<Optional<Finding>> reasons =
                jars.stream().map(JarSummary::heldBackBecause).distinct().toList();
        if (jars.size() > 1 && reasons.size() == 1) {
            throw new InvalidInputException(reasons.get(0).orElseThrow());
        }
    }

    /** Why a jar is held back, in a sentence that names it. */
    private static Finding reason(JarSummary jar) {
        Finding reason = jar.heldBackBecause().orElseThrow();
        boolean namesTheJar = reason.location().flatMap(Location::jar).isPresent();
        return namesTheJar ? reason : Finding.of(Problem.HELD_BACK, name(jar), reason);
    }

    private static String name(JarSummary jar) {
        return jar.typed().name().orElse("");
    }
}
