package org.snugsheet.engine.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.comparison.Verdict.CannotTell;

/**
 * Prints how often limits hold the truth and how often a difference is claimed that is not there: the tables of
 * docs/comparison-coverage.md. The tests do a small part of the same. Run it from the engine’s folder:
 *
 * <pre>mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=org.snugsheet.engine.comparison.CoverageReport</pre>
 */
public final class CoverageReport {

    private static final int RUNS = Integer.getInteger("runs", 10_000);

    private static final double[] SPREADS = {0, 0.5, 1, 3};

    private static final int[][] FREEDOMS = {
        {1, 1}, {1, 5}, {1, 18}, {2, 2}, {2, 18}, {3, 3}, {3, 6}, {3, 18}, {6, 6}, {6, 18}, {10, 10}, {18, 18}
    };

    private CoverageReport() {}

    /**
     * Prints the tables; takes about a quarter of an hour with 10 000 runs a cell, fewer with {@code -Druns=1000};
     * {@code -Donly=ranking} prints the tables alone whose name has that word.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        table("jars", CoverageReport::jars);
        table("ratio", CoverageReport::ratio);
        table("verdict of jars", CoverageReport::verdictOfJars);
        table("verdict of materials", CoverageReport::verdictOfMaterials);
        table("ranking", CoverageReport::ranking);
    }

    private static void table(String name, Runnable table) {
        if (name.contains(System.getProperty("only", ""))) {
            table.run();
        }
    }

    private static void jars() {
        print("\n| jars | read | freedom | spread 0 | 0.5 | 1 | 3 |\n|---|---|---|---|---|---|---|\n");
        for (double[] errors : new double[][] {{1}, {1, 2}, {1, 4}}) {
            for (int count : new int[] {2, 3, 4, 6}) {
                for (int freedom : new int[] {3, 8, 18}) {
                    print("| %d | 1:%.0f | %d |", count, errors[errors.length - 1], freedom);
                    for (double spread : SPREADS) {
                        print(" %s |", jarsCell(count, errors, freedom, spread));
                    }
                    print("\n");
                }
            }
        }
    }

    private static String jarsCell(int count, double[] errors, int freedom, double spread) {
        Chance chance = new Chance(100 + count);
        int held = 0;
        int byTheWider = 0;
        int weighted = 0;
        for (int i = 0; i < RUNS; i++) {
            List<Estimate> estimates = chance.jars(count, 0, spread, errors, freedom);
            ReplicateGroup jars = new ReplicateGroup(estimates);
            boolean isHeld = holds(jars.estimate(), 0);
            held += isHeld ? 1 : 0;
            byTheWider += isHeld || holds(jars.byReadings(), 0) ? 1 : 0;
            weighted += holds(PauleMandel.estimate(estimates), 0) ? 1 : 0;
        }
        return percent(held) + " (" + percent(byTheWider) + ", " + percent(weighted) + ")";
    }

    private static boolean holds(Estimate estimate, double truth) {
        return estimate.interval(Verdict.CONFIDENCE).contains(truth);
    }

    private static void ratio() {
        print(
                "\n| freedom | errors 5 and 5 %% | 5 and 10 %% | 10 and 5 %% | 5 and 20 %% | 20 and 5 %% | 50 and 50 %% |\n");
        print("|---|---|---|---|---|---|---|\n");
        double[][] relative = {{0.05, 0.05}, {0.05, 0.1}, {0.1, 0.05}, {0.05, 0.2}, {0.2, 0.05}, {0.5, 0.5}};
        for (int[] freedom : FREEDOMS) {
            print("| %d and %d |", freedom[0], freedom[1]);
            for (double[] error : relative) {
                Chance chance = new Chance(200);
                print(
                        " %s |",
                        share(() ->
                                isHeld(chance.jar(2, 2 * error[0], freedom[0]), chance.jar(1, error[1], freedom[1]))));
            }
            print("\n");
        }
    }

    /** Whether the limits hold the true ratio, 2. A jar that seems to warm is refused, which claims nothing false. */
    private static boolean isHeld(Estimate first, Estimate second) {
        try {
            return new Ratio(first, second).interval(Verdict.CONFIDENCE).contains(2);
        } catch (InvalidInputException warms) {
            return true;
        }
    }

    private static void verdictOfJars() {
        print("\n| freedom | errors 1:1 | 1:2 | 2:1 | 1:4 | 4:1 |\n|---|---|---|---|---|---|\n");
        for (int[] freedom : FREEDOMS) {
            print("| %d and %d |", freedom[0], freedom[1]);
            for (double[] error : new double[][] {{1, 1}, {1, 2}, {2, 1}, {1, 4}, {4, 1}}) {
                Chance chance = new Chance(300);
                int claims = 0;
                int plain = 0;
                for (int i = 0; i < RUNS; i++) {
                    Estimate first = chance.jar(50, error[0], freedom[0]);
                    Estimate second = chance.jar(50, error[1], freedom[1]);
                    claims += isClaimed(first, second) ? 1 : 0;
                    plain += plainWelch(first, second) < 1 - Verdict.CONFIDENCE ? 1 : 0;
                }
                print(" %s (%s) |", percent(claims), percent(plain));
            }
            print("\n");
        }
    }

    /** Welch’s test without regard to how few the degrees of freedom are. */
    private static double plainWelch(Estimate first, Estimate second) {
        double one = first.standardError() * first.standardError();
        double other = second.standardError() * second.standardError();
        double freedom = (one + other)
                * (one + other)
                / (one * one / first.degreesOfFreedom() + other * other / second.degreesOfFreedom());
        return StudentT.twoSided((first.value() - second.value()) / Math.sqrt(one + other), freedom);
    }

    private static void verdictOfMaterials() {
        print("\n| jars | freedom | spread 0 | 0.5 | 1 | 3 | 3 and 0 | 0 and 3 |\n|---|---|---|---|---|---|---|---|\n");
        double[][] spreads = {{0, 0}, {0.5, 0.5}, {1, 1}, {3, 3}, {3, 0}, {0, 3}};
        for (int[] counts : new int[][] {{2, 2}, {2, 3}, {2, 6}, {3, 3}, {3, 6}, {4, 4}, {6, 6}}) {
            for (int freedom : new int[] {3, 8}) {
                print("| %d and %d | %d |", counts[0], counts[1], freedom);
                for (double[] spread : spreads) {
                    Chance chance = new Chance(400);
                    print(
                            " %s |",
                            share(() -> isClaimed(
                                    material(chance, counts[0], spread[0], freedom),
                                    material(chance, counts[1], spread[1], freedom))));
                }
                print("\n");
            }
        }
    }

    private static Estimate material(Chance chance, int count, double spread, int freedom) {
        return new ReplicateGroup(chance.jars(count, 50, spread, new double[] {1}, freedom)).estimate();
    }

    private static boolean isClaimed(Estimate first, Estimate second) {
        return !(Verdict.of(first, second) instanceof CannotTell);
    }

    private static void ranking() {
        print("\n| materials | jars of each | freedom | spread 0 | 0.5 | 1 | 3 |\n|---|---|---|---|---|---|---|\n");
        for (int materials : new int[] {3, 5, 8}) {
            for (int[] counts : new int[][] {{1}, {2}, {3}, {6}, {2, 6}}) {
                for (int[] freedom : new int[][] {{3}, {8}, {3, 18}}) {
                    print("| %d | %s | %s |", materials, either(counts), either(freedom));
                    for (double spread : SPREADS) {
                        Chance chance = new Chance(500);
                        boolean told = counts[0] > 1 || spread == 0;
                        print(
                                " %s |",
                                told ? share(() -> isAnyClaimed(chance, materials, counts, spread, freedom)) : "–");
                    }
                    print("\n");
                }
            }
        }
    }

    private static String either(int[] numbers) {
        return IntStream.of(numbers).mapToObj(String::valueOf).collect(Collectors.joining(" or "));
    }

    private static boolean isAnyClaimed(Chance chance, int materials, int[] counts, double spread, int[] freedoms) {
        List<NamedEstimate> jars = new ArrayList<>();
        for (int material = 0; material < materials; material++) {
            int freedom = freedoms[material % freedoms.length];
            for (Estimate jar : chance.jars(counts[material % counts.length], 50, spread, new double[] {1}, freedom)) {
                jars.add(new NamedEstimate("wrap " + material, jar));
            }
        }
        return Ranking.of(jars).pairs().stream().anyMatch(RankedPair::isSeparated);
    }

    private static String share(BooleanSupplier happens) {
        return percent((int)
                IntStream.range(0, RUNS).filter(i -> happens.getAsBoolean()).count());
    }

    private static String percent(int times) {
        return String.format(Locale.ROOT, "%.1f", 100.0 * times / RUNS);
    }

    private static void print(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
    }
}
