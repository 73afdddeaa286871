package org.snugsheet.engine.cooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.snugsheet.engine.quantity.Scale;

/**
 * Prints how often the limits hold the truth over a whole grid of lessons, and in how many of its cells they do so less
 * than 92 % of the time, or more than 98. Run it from the engine’s folder:
 *
 * <pre>mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=org.snugsheet.engine.cooling.CoverageReport</pre>
 *
 * <p>It takes the better part of an hour on two cores, less with {@code -Druns=400}; {@code -Donly=surroundings} prints the
 * rows alone whose name has that word.
 */
public final class CoverageReport {

    private static final int RUNS = Integer.getInteger("runs", 2000);

    private static final String ONLY = System.getProperty("only", "");

    private CoverageReport() {}

    /** One cell of the grid with its count. */
    private record Cell(String lesson, double noiseToRounding, Coverage.Count count) {

        boolean isBetween(double from, double to) {
            return from <= noiseToRounding && noiseToRounding < to;
        }
    }

    /**
     * Prints the report as Markdown.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        System.out.println(
                "| limits of | noise to rounding | cells | answered | held | below 92 % | above 98 % | worst cell |");
        System.out.println("|---|---|---|---|---|---|---|---|");
        print("rate and half-time", lesson -> lesson.rate(RUNS, seed(lesson)));
        print("times slower", lesson -> lesson.slower(RUNS, seed(lesson)));
        print("verdict on equal jars", lesson -> lesson.noFalseClaim(RUNS, seed(lesson)));
        print("fitted surroundings", lesson -> lesson.surroundings(RUNS, seed(lesson)));
        print(
                "fitted surroundings, not rounded",
                notRounded(),
                Coverage::noiseToRounding,
                lesson -> lesson.surroundings(RUNS, seed(lesson)));
        materials("jars of one material", lesson -> lesson.limits(RUNS, seed(lesson)));
        materials("verdict on equal materials", lesson -> lesson.noFalseClaim(2, RUNS, seed(lesson)));
        materials("ranking of five equal materials", lesson -> lesson.noFalseClaim(5, RUNS / 4, seed(lesson)));
    }

    private static void print(String what, Function<Coverage, Coverage.Count> count) {
        print(what, grid(), Coverage::noiseToRounding, count);
    }

    private static void materials(String what, Function<MaterialCoverage, Coverage.Count> count) {
        print(what, materials(), cell -> cell.lesson().noiseToRounding(), count);
    }

    private static <L> void print(
            String what, List<L> grid, ToDoubleFunction<L> noise, Function<L, Coverage.Count> count) {
        if (!what.contains(ONLY)) {
            return;
        }
        List<Cell> cells = grid.parallelStream()
                .map(lesson -> new Cell(lesson.toString(), noise.applyAsDouble(lesson), count.apply(lesson)))
                .filter(cell -> cell.count().answered() >= cell.count().asked() / 4)
                .toList();
        row(what, "below 1: rounding rules", cells, 0, 1);
        row(what, "1 to 3", cells, 1, 3);
        row(what, "3 and more", cells, 3, 1e9);
    }

    private static void row(String what, String band, List<Cell> all, double from, double to) {
        List<Cell> cells = all.stream().filter(cell -> cell.isBetween(from, to)).toList();
        if (cells.isEmpty()) {
            return;
        }
        Coverage.Count sum = cells.stream().map(Cell::count).reduce(new Coverage.Count(0, 0, 0), Coverage.Count::plus);
        Cell worst = cells.stream()
                .min(Comparator.comparingDouble(cell -> cell.count().share()))
                .orElseThrow();
        System.out.println(String.format(
                Locale.ROOT,
                "| %s | %s | %d | %.1f %% | %.1f %% | %d | %d | %.1f %% (%s) |",
                what,
                band,
                cells.size(),
                100.0 * sum.answered() / sum.asked(),
                100 * sum.share(),
                cells.stream().filter(cell -> cell.count().share() < 0.92).count(),
                cells.stream().filter(cell -> cell.count().share() > 0.98).count(),
                100 * worst.count().share(),
                worst.lesson()));
    }

    static List<Coverage> grid() {
        List<Coverage> grid = new ArrayList<>();
        for (Scale scale : List.of(Scale.CELSIUS, Scale.FAHRENHEIT)) {
            for (int readings : new int[] {5, 8, 12, 20}) {
                for (double mark : new double[] {0.1, 0.5, 1, 2}) {
                    for (double halfTime : new double[] {3, 10, 30, 100, 300}) {
                        for (double noise : new double[] {0, 0.1, 0.3, 1}) {
                            grid.add(new Coverage(readings, mark, scale, halfTime, noise));
                        }
                    }
                }
            }
        }
        return grid;
    }

    /** The same where the marks are so fine that rounding is nothing beside the noise. */
    private static List<Coverage> notRounded() {
        return grid().stream()
                .filter(lesson -> lesson.noise() > 0)
                .map(Coverage::withoutRounding)
                .distinct()
                .toList();
    }

    static List<MaterialCoverage> materials() {
        List<MaterialCoverage> grid = new ArrayList<>();
        for (int readings : new int[] {6, 12}) {
            for (double halfTime : new double[] {30, 100}) {
                for (double noise : new double[] {0, 0.1, 0.3, 0.6, 1, 2}) {
                    for (int jars : new int[] {2, 3, 6}) {
                        for (double spread : new double[] {0, 0.02, 0.1}) {
                            for (double startsApart : new double[] {0, 0.5, 2}) {
                                Coverage lesson = new Coverage(readings, 1, Scale.CELSIUS, halfTime, noise);
                                grid.add(new MaterialCoverage(lesson, jars, spread, startsApart));
                            }
                        }
                    }
                }
            }
        }
        return grid;
    }

    // Not the hash of a record: an enum’s differs from run to run.
    private static long seed(Object lesson) {
        return lesson.toString().hashCode();
    }
}
