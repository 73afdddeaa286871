package org.snugsheet.engine.slips;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Prints how often slips are found and how often clean columns are accused: the tables of docs/slips.md. The tests do a small part of
 * the same with other seeds. Run it from the engine’s folder:
 *
 * <p>{@code -Druns=300} takes fewer of each, {@code -Donly=CONSTANT} one kind.
 *
 * <pre>mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=org.snugsheet.engine.slips.SlipReport</pre>
 */
public final class SlipReport {

    private static final int RUNS = Integer.getInteger("runs", 2_000);
    private static final long SEED = Long.getLong("seed", 2_027);
    private static final String ONLY = System.getProperty("only", "");
    static final double[] MARKS = {0.5, 1, 2};

    private SlipReport() {}

    /**
     * Prints the tables.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        print(
                "| slip | found, mark 0.5 | 1 | 2 | called by its name, mark 0.5 | 1 | 2 | others accused, mark 0.5 | 1 | 2 |\n");
        print("|---|---|---|---|---|---|---|---|---|---|\n");
        long seed = SEED;
        for (SlipLab.Made made : SlipLab.Made.values()) {
            if (!made.name().contains(ONLY)) {
                continue;
            }
            int[][] count = new int[3][MARKS.length];
            for (int m = 0; m < MARKS.length; m++) {
                SplittableRandom random = new SplittableRandom(seed++);
                for (int run = 0; run < RUNS; run++) {
                    SlipLab.Typed typed = SlipLab.with(made, MARKS[m], random);
                    List<Slip> slips = typed.slips();
                    count[0][m] += SlipLab.isFound(made, typed, slips) ? 1 : 0;
                    count[1][m] += SlipLab.isNamed(made, typed, slips) ? 1 : 0;
                    count[2][m] += SlipLab.accusesOthers(made, typed, slips) ? 1 : 0;
                }
            }
            print("| %s |", made.name().toLowerCase(Locale.ROOT).replace('_', ' '));
            for (int[] row : count) {
                for (int hits : row) {
                    print(" %.1f |", 100.0 * hits / RUNS);
                }
            }
            print("\n");
        }
        print("\n| clean columns accused | mark 0.5 | 1 | 2 |\n|---|---|---|---|\n| all |");
        for (int m = 0; m < MARKS.length; m++) {
            SplittableRandom random = new SplittableRandom(SEED + 1_000 + m);
            int accused = 0;
            for (int run = 0; run < 10 * RUNS; run++) {
                accused += SlipLab.clean(MARKS[m], random).slips().isEmpty() ? 0 : 1;
            }
            print(" %.2f |", 10.0 * accused / RUNS);
        }
        print("\n");
    }

    private static void print(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
    }
}
