package org.snugsheet.engine.summary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.slips.Slip;
import org.snugsheet.engine.slips.SlipFinder;
import org.snugsheet.engine.slips.SlipKind;

/**
 * Everything that is reported about one jar’s readings.
 *
 * <pre>{@code
 * JarSummary jar = JarSummary.of(typed);
 * jar.isUsable();                        // neither without readings nor held back because of a finding
 * jar.fit().halfTime();                  // a value, or why there is none
 * }</pre>
 *
 * @param typed what was typed
 * @param findings what the checks find, each with its location: water that is too hot for pupils, then the most certain
 *     first, other cautions last
 * @param fit the fit of the readings as they are
 */
public record JarSummary(TypedJar typed, List<Slip> findings, JarFit fit) {

    /** A summary; the findings are copied. */
    public JarSummary {
        findings = List.copyOf(findings);
    }

    /**
     * Summarizes one jar.
     *
     * @param jar what was typed
     * @return its summary; the only finding for a jar that waits for its first reading is that it has none
     */
    public static JarSummary of(TypedJar jar) {
        if (jar.isWaiting()) {
            Finding waiting = Finding.of(Problem.NO_READINGS);
            return new JarSummary(
                    jar, List.of(new Slip(SlipKind.REFUSED, 1, waiting)), new JarFit(new Known.Not<>(waiting)));
        }
        JarFit fit = JarFit.of(jar);
        List<Slip> slips = new ArrayList<>();
        UnaryOperator<Finding> places = jar.places();
        for (Slip slip :
                SlipFinder.find(jar.minutes(), jar.temperatures(), jar.surroundings(), jar.mark(), jar.scale())) {
            slips.add(new Slip(slip.kind(), slip.certainty(), places.apply(slip.finding())));
        }
        if (slips.isEmpty()) {
            fit.fit()
                    .found()
                    .map(found -> Cautions.of(jar, found))
                    .orElse(List.of())
                    .forEach(finding -> slips.add(new Slip(SlipKind.CAUTION, 1, places.apply(finding))));
        }
        List<Slip> findings = WhatCanHurt.among(jar, slips);
        if (fit.fit().found().isPresent()) {
            Stream.of(fit.halfTime().whyNot(), fit.start().whyNot())
                    .flatMap(Optional::stream)
                    .forEach(finding -> findings.add(new Slip(SlipKind.CAUTION, 1, finding)));
        }
        return new JarSummary(jar, findings, fit);
    }

    /**
     * Whether it waits for its first reading.
     *
     * @return true if nothing was typed for it yet
     */
    public boolean isWaiting() {
        return typed.isWaiting();
    }

    /**
     * Why it is left out of rankings, verdicts and curves: the first finding that is more than a caution.
     *
     * @return the reason; empty if the jar can be used
     */
    public Optional<Finding> heldBackBecause() {
        return findings.stream()
                .filter(slip -> slip.kind().holdsBack())
                .map(Slip::finding)
                .findFirst();
    }

    /**
     * Whether its readings can be used.
     *
     * @return true if nothing holds it back; then it has a fit
     */
    public boolean isUsable() {
        return heldBackBecause().isEmpty();
    }
}
