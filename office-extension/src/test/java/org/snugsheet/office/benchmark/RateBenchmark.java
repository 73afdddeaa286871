package org.snugsheet.office.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeSetup;
import org.snugsheet.office.packaging.SecondExtension;

/**
 * What COOL.RATE over two ranges of {@value #READINGS} cells costs, beside {@link Idle} with the same arguments in the same
 * office. Each of the two fills a sheet of its own with the same readings; the sheets are calculated in turn, round by
 * round, and the medians are printed, and the median and the quartiles of the ratios of the rounds.
 *
 * <p>First every formula has other readings, so that no fit can be remembered from another one; then six functions share
 * those of a jar, as in a worked sheet.
 *
 * <pre>mvn -q -Poffice-benchmark -DskipTests -pl office-extension -am verify</pre>
 */
public final class RateBenchmark {

    private static final int READINGS = 12;
    private static final int FORMULAS = Integer.getInteger("formulas", 2000);
    private static final int WARMING = Integer.getInteger("warming", 30);
    private static final int ROUNDS = Integer.getInteger("rounds", 31);

    private static final List<String> OF_ONE_JAR = List.of(
            "COOL.RATE", "COOL.RATE.ERROR", "COOL.HALFTIME", "COOL.HALFTIME.ERROR", "COOL.START", "COOL.START.ERROR");

    private RateBenchmark() {}

    /**
     * Measures and prints.
     *
     * @param arguments the packed extension
     * @throws IOException if the extension with the idle function cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createTempDirectory("snugsheet-benchmark-");
        Path idle = folder.resolve("idle.oxt");
        OfficeSetup setup = OfficeSetup.plain()
                .withExtension(Path.of(arguments[0]))
                .withExtension(SecondExtension.write(idle, Idle.class, IdleFunctions.class))
                .withPatience(Duration.ofMinutes(10));
        try (Office office = setup.start()) {
            System.out.printf(
                    Locale.ROOT,
                    "%d formulas over two ranges of %d cells, median of %d rounds after %d to warm up%n%n",
                    FORMULAS,
                    READINGS,
                    ROUNDS,
                    WARMING);
            System.out.println("| formulas | IDLE.RATE | ours | ours to idle |");
            System.out.println("|---|---|---|---|");
            compare(office, "COOL.RATE, other readings in every formula", i -> "COOL.RATE", i -> i);
            compare(
                    office,
                    "six functions of each jar",
                    i -> OF_ONE_JAR.get(i % OF_ONE_JAR.size()),
                    i -> i / OF_ONE_JAR.size());
        } finally {
            Files.deleteIfExists(idle);
            Files.deleteIfExists(folder);
        }
    }

    private static void compare(Office office, String what, IntFunction<String> name, IntFunction<Integer> jar) {
        try (CalcDocument idle = sheet(office, i -> "IDLE.RATE", jar);
                CalcDocument ours = sheet(office, name, jar)) {
            requireNumbers(idle);
            requireNumbers(ours);
            List<Double> idleTimes = new ArrayList<>();
            List<Double> ourTimes = new ArrayList<>();
            List<Double> ratios = new ArrayList<>();
            for (int round = 0; round < WARMING + ROUNDS; round++) {
                // The first of a round may find the office cleaning up, so they take turns.
                boolean idleFirst = round % 2 == 0;
                double first = seconds(idleFirst ? idle : ours);
                double second = seconds(idleFirst ? ours : idle);
                if (round >= WARMING) {
                    double idleTime = idleFirst ? first : second;
                    double ourTime = idleFirst ? second : first;
                    idleTimes.add(idleTime);
                    ourTimes.add(ourTime);
                    ratios.add(ourTime / idleTime);
                }
            }
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %.1f µs | %.1f µs | %.2f (%.2f to %.2f) |%n",
                    what,
                    1e6 * quantile(idleTimes, 0.5) / FORMULAS,
                    1e6 * quantile(ourTimes, 0.5) / FORMULAS,
                    quantile(ratios, 0.5),
                    quantile(ratios, 0.25),
                    quantile(ratios, 0.75));
        }
    }

    private static CalcDocument sheet(Office office, IntFunction<String> name, IntFunction<Integer> jar) {
        CalcDocument sheet = office.newDocument();
        int jars = jar.apply(FORMULAS - 1) + 1;
        double[] times = new double[jars * READINGS];
        double[] temperatures = new double[jars * READINGS];
        double[] surroundings = new double[jars * READINGS];
        SplittableRandom random = new SplittableRandom(12);
        for (int i = 0; i < jars; i++) {
            double room = Math.rint(random.nextDouble(0, 8));
            double start = random.nextDouble(38, 43);
            double halfTime = random.nextDouble(15, 60);
            for (int j = 0; j < READINGS; j++) {
                int row = i * READINGS + j;
                times[row] = 4 * j;
                double truth = room + (start - room) * Math.pow(2, -times[row] / halfTime);
                temperatures[row] = Math.rint(2 * (truth + 0.3 * random.nextGaussian())) / 2;
                surroundings[row] = room;
            }
        }
        sheet.numbersDown("A1", times).numbersDown("B1", temperatures).numbersDown("C1", surroundings);
        sheet.formulasDown(
                "E1",
                IntStream.range(0, FORMULAS)
                        .mapToObj(i -> formula(name.apply(i), jar.apply(i)))
                        .toList());
        return sheet;
    }

    private static String formula(String name, int jar) {
        int from = jar * READINGS + 1;
        int to = from + READINGS - 1;
        return String.format(Locale.ROOT, "=%s(A%d:A%d;B%d:B%d;C%d)", name, from, to, from, to, from);
    }

    private static void requireNumbers(CalcDocument sheet) {
        for (List<CellResult> row : sheet.all("E1:E" + FORMULAS)) {
            row.get(0).number();
        }
    }

    private static double seconds(CalcDocument sheet) {
        long start = System.nanoTime();
        sheet.calculateAll();
        return (System.nanoTime() - start) / 1e9;
    }

    private static double quantile(List<Double> values, double share) {
        double[] sorted =
                values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return sorted[(int) Math.round(share * (sorted.length - 1))];
    }
}
