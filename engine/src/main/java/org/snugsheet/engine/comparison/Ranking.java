package org.snugsheet.engine.comparison;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * Materials in order, the one that cools slowest first.
 *
 * <p>Every two materials are compared by Welch’s test, and the p values adjusted by Holm’s step-down, so that a false
 * difference is claimed in at most 5 % of tables. Two materials whose adjusted p is not above 0.05 are <em>separated</em>.
 *
 * <p><b>Places.</b> From the best down, a material shares the place of those just above it if it is separated from none of
 * them; otherwise it opens a new place, whose number is one more than the materials above it (1, 1, 3). So materials on
 * one place are never separated. The converse does not hold: “cannot be told apart” does not carry over from one pair to
 * the next. If A and B cannot be told apart, nor B and C, but A and C can, then A and B share place 1 and C is on place 3,
 * though B and C cannot be told apart. {@link #notToldApartFrom} says so.
 *
 * @param materials the materials, best first; of equal ones the one named first
 * @param pairs every two of them, in the order of the materials
 */
public record Ranking(List<RankedMaterial> materials, List<RankedPair> pairs) {

    /** How often a table may claim something false. */
    static final double LEVEL = 1 - Verdict.CONFIDENCE;

    /** A ranking; the lists are copied. */
    public Ranking {
        materials = List.copyOf(materials);
        pairs = List.copyOf(pairs);
    }

    /**
     * Ranks jars.
     *
     * @param jars the jars in any order, from independent readings; those of one name are combined as {@link
     *     ReplicateGroup}
     * @return the ranking
     * @throws InvalidInputException if a name is blank or there are not two names
     */
    public static Ranking of(List<NamedEstimate> jars) {
        return of(jars, 0);
    }

    /**
     * Ranks jars so that even a material with a single jar is judged as a material: another jar with the same wrap would
     * differ. Where there are several jars, their spread is observed, and the share is not used.
     *
     * @param jars the jars in any order, from independent readings
     * @param spread the standard deviation between jars wrapped alike, as a share of their constant
     * @return the ranking
     * @throws InvalidInputException if a name is blank, there are not two names, or the spread is no share
     */
    public static Ranking of(List<NamedEstimate> jars, double spread) {
        List<Candidate> best = candidates(jars, spread);
        int n = best.size();
        int count = n * (n - 1) / 2;
        double strictest = 1 - LEVEL / count;
        List<Estimate> estimates = best.stream().map(c -> c.jars().estimate()).toList();
        List<Ratio> ratios = new ArrayList<>(count);
        for (int better = 0; better < n; better++) {
            for (int worse = better + 1; worse < n; worse++) {
                ratios.add(new Ratio(estimates.get(worse), estimates.get(better)));
            }
        }
        double[] p = ratios.stream().mapToDouble(Ratio::equalityP).toArray();
        double[] adjusted = Holm.adjusted(p);
        int[] places = places(adjusted, n);
        List<RankedMaterial> materials = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            materials.add(new RankedMaterial(
                    places[i], best.get(i).name(), best.get(i).jars()));
        }
        List<RankedPair> pairs = new ArrayList<>(count);
        for (int better = 0; better < n; better++) {
            for (int worse = better + 1; worse < n; worse++) {
                int i = index(better, worse, n);
                pairs.add(new RankedPair(
                        materials.get(better), materials.get(worse), ratios.get(i), strictest, p[i], adjusted[i]));
            }
        }
        return new Ranking(materials, pairs);
    }

    private static int[] places(double[] adjusted, int n) {
        int[] places = new int[n];
        int top = 0;
        for (int i = 0; i < n; i++) {
            boolean separated = false;
            for (int above = top; above < i; above++) {
                separated |= adjusted[index(above, i, n)] <= LEVEL;
            }
            top = separated ? i : top;
            places[i] = top + 1;
        }
        return places;
    }

    private record Candidate(String name, ReplicateGroup jars) {}

    private static List<Candidate> candidates(List<NamedEstimate> jars, double spread) {
        Map<String, String> names = new LinkedHashMap<>();
        Map<String, List<Estimate>> byName = new LinkedHashMap<>();
        for (int i = 0; i < jars.size(); i++) {
            String name = jars.get(i).name().strip();
            if (name.isEmpty()) {
                throw InvalidInputException.atItem(i + 1, Problem.JAR_WITHOUT_NAME);
            }
            String key = name.toLowerCase(Locale.ROOT);
            names.putIfAbsent(key, name);
            byName.computeIfAbsent(key, k -> new ArrayList<>()).add(jars.get(i).estimate());
        }
        if (byName.size() < 2) {
            throw InvalidInputException.of(Problem.NOTHING_TO_RANK);
        }
        List<Candidate> candidates = new ArrayList<>();
        byName.forEach((key, estimates) -> {
            Estimate first = estimates.get(0).withSpread(spread);
            List<Estimate> own = estimates.size() > 1 ? estimates : List.of(first);
            candidates.add(new Candidate(names.getOrDefault(key, key), new ReplicateGroup(own)));
        });
        candidates.sort(Comparator.comparingDouble(c -> c.jars().estimate().value()));
        return candidates;
    }

    /** The index of the pair in the list of pairs, row by row. */
    private static int index(int better, int worse, int n) {
        return better * (2 * n - better - 1) / 2 + worse - better - 1;
    }

    /**
     * One pair.
     *
     * @param one the position of a material, from 0 for the best
     * @param other that of another
     * @return the pair, the better one first in either order of the arguments
     */
    public RankedPair pair(int one, int other) {
        int n = materials.size();
        if (one == other || Math.min(one, other) < 0 || Math.max(one, other) >= n) {
            throw new IllegalArgumentException(one + " and " + other + " of " + n);
        }
        return pairs.get(index(Math.min(one, other), Math.max(one, other), n));
    }

    /**
     * Which materials a material cannot be told apart from, on its own place or another.
     *
     * @param position its position, from 0 for the best
     * @return the others, best first
     */
    public List<RankedMaterial> notToldApartFrom(int position) {
        List<RankedMaterial> others = new ArrayList<>();
        for (int i = 0; i < materials.size(); i++) {
            if (i != position && !pair(position, i).isSeparated()) {
                others.add(materials.get(i));
            }
        }
        return others;
    }

    /** One line for each material, such as {@code 1. wool: 0.02000 ± 0.00030}. */
    @Override
    public String toString() {
        return materials.stream()
                .map(material -> material.place() + ". " + material.name() + ": " + material.estimate())
                .collect(Collectors.joining("\n"));
    }
}
