package org.snugsheet.engine.summary;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.slips.Slip;

/**
 * The jars of a block and the findings that concern all of them: a problem with the times or the surroundings is not repeated
 * for each jar.
 *
 * @param jars the jars
 * @param common what is found in every jar that has readings
 */
public record SheetSummary(List<JarSummary> jars, List<Slip> common) {

    private static final Set<Problem> OF_SURROUNDINGS =
            EnumSet.of(Problem.SURROUNDINGS_BLANK, Problem.SURROUNDINGS_NOT_A_TEMPERATURE, Problem.SURROUNDINGS_LENGTH);

    /** A summary; the lists are copied. */
    public SheetSummary {
        jars = List.copyOf(jars);
        common = List.copyOf(common);
    }

    /**
     * Summarizes the jars of a block.
     *
     * @param jars their summaries
     * @return the summary of all
     */
    public static SheetSummary of(List<JarSummary> jars) {
        List<JarSummary> read = jars.stream().filter(jar -> !jar.isWaiting()).toList();
        List<Slip> common = new ArrayList<>();
        if (!read.isEmpty()) {
            for (Slip slip : read.get(0).findings()) {
                boolean ofAll = read.size() > 1
                        || OF_SURROUNDINGS.contains(slip.finding().problem());
                if (ofAll && read.stream().allMatch(jar -> has(jar, slip))) {
                    common.add(slip);
                }
            }
        }
        return new SheetSummary(jars, common);
    }

    /**
     * The findings of one jar alone.
     *
     * @param jar one of the jars
     * @return its findings without those common to all; empty for a jar that waits for its first reading
     */
    public List<Slip> own(JarSummary jar) {
        return jar.isWaiting()
                ? List.of()
                : jar.findings().stream()
                        .filter(slip -> common.stream().noneMatch(one -> isSame(one, slip)))
                        .toList();
    }

    private static boolean has(JarSummary jar, Slip slip) {
        return jar.findings().stream().anyMatch(own -> isSame(own, slip));
    }

    /** The certainty differs from jar to jar, as their readings do. */
    private static boolean isSame(Slip one, Slip other) {
        return one.kind() == other.kind() && one.finding().equals(other.finding());
    }
}
