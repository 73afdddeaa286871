package org.snugsheet.office.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeSetup;
import org.snugsheet.office.packaging.SecondExtension;
import org.snugsheet.office.sheets.WorkedSheets;
import org.snugsheet.office.sheets.builder.WorkedSheet;

/**
 * How long a person waits in a live office: for the first answer, for the jars of a whole school, for each worked sheet. Beside ours stands
 * {@link Idle}, which does nothing with the same arguments, and a built-in function that fits a straight line.
 *
 * <pre>mvn -q -Poffice-benchmark -DskipTests -pl office-extension -am verify</pre>
 */
public final class InOfficeBenchmark {

    private static final int JARS = Integer.getInteger("jars", 3000);
    private static final int ROUNDS = Integer.getInteger("rounds", 5);
    private static final int STARTS = Integer.getInteger("starts", 3);

    private static final String READINGS = "({0;5;10;15;20};{40;34;30;26;24};10)";

    private InOfficeBenchmark() {}

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
                .withPatience(Duration.ofMinutes(20));
        try {
            System.out.printf(
                    "%s, Java %s, %d cores%n%n",
                    System.getProperty("os.name"),
                    System.getProperty("java.version"),
                    Runtime.getRuntime().availableProcessors());
            firstAnswers(setup);
            try (Office office = setup.start()) {
                System.out.println("| what | once | median of " + ROUNDS + " more |\n|---|---|---|");
                manyJars(office);
                curve(office);
                for (WorkedSheet sheet : WorkedSheets.all()) {
                    new SheetTimes(office, sheet, ROUNDS).print();
                }
            }
        } finally {
            Files.deleteIfExists(idle);
            Files.deleteIfExists(folder);
        }
    }

    /** The first function in Java starts Java, whatever it does: so one that does nothing has the first turn in every second start. */
    private static void firstAnswers(OfficeSetup setup) {
        System.out.println("| start | built-in | first in Java | then |\n|---|---|---|---|");
        for (int start = 1; start <= 2 * STARTS; start++) {
            List<String> names =
                    start % 2 == 1 ? List.of("COOL.RATE", "COOL.HALFTIME") : List.of("IDLE.RATE", "COOL.RATE");
            try (Office office = setup.start()) {
                double builtIn = answered(office, "SLOPE({0;5;10};{40;34;30})");
                double first = answered(office, names.get(0) + READINGS);
                double second = answered(office, names.get(1) + READINGS);
                System.out.printf(
                        Locale.ROOT,
                        "| %d | %.3f s | %s %.3f s | %s %.3f s |%n",
                        start,
                        builtIn,
                        names.get(0),
                        first,
                        names.get(1),
                        second);
            }
        }
        System.out.println();
    }

    private static double answered(Office office, String formula) {
        // An error would be there sooner, or later.
        return seconds(() -> office.evaluate("=" + formula).number());
    }

    private static void manyJars(Office office) {
        System.out.printf("| jars: %d | | |%n", JARS);
        ManyJars jars = new ManyJars(JARS);
        int scalars = ManyJars.SCALARS.size();
        calculated(office, jars, scalars + " functions of each jar", jars.formulas(ManyJars.SCALARS));
        calculated(
                office,
                jars,
                "IDLE.RATE " + scalars + " times for each jar",
                jars.formulas(
                        IntStream.range(0, scalars).mapToObj(i -> "IDLE.RATE").toList()));
        calculated(
                office,
                jars,
                "LOGEST " + scalars + " times for each jar",
                jars.formulas(
                        IntStream.range(0, scalars).mapToObj(i -> "LOGEST").toList()));
        try (CalcDocument sheet = office.newDocument().calculatedOnlyWhenTold()) {
            jars.fillBlocks(office, sheet);
            for (int block = 0; block < jars.blocks(); block++) {
                sheet.arrayFormula(jars.tableRange(block), "=COOL.SHEET(" + jars.block(block) + ";5)");
            }
            printed("COOL.SHEET of all jars", sheet);
        }
    }

    private static void calculated(Office office, ManyJars jars, String what, List<String> formulas) {
        try (CalcDocument sheet = office.newDocument().calculatedOnlyWhenTold()) {
            jars.fillColumns(sheet);
            sheet.formulasDown("E1", formulas);
            printed(what, sheet);
        }
    }

    private static void curve(Office office) {
        for (int times : new int[] {100, 1000}) {
            try (CalcDocument sheet = office.newDocument().calculatedOnlyWhenTold()) {
                sheet.numbersDown(
                        "A1",
                        IntStream.range(0, times)
                                .mapToDouble(i -> 30.0 * i / times)
                                .toArray());
                sheet.numbersDown("B1", 0, 5, 10, 15, 20, 25, 30).numbersDown("C1", 38, 32, 27, 23, 20, 17, 15);
                sheet.arrayFormula("E1:G" + (times + 1), "=COOL.CURVE(A1:A" + times + ";B1:B7;C1:C7;3)");
                printed("COOL.CURVE of " + times + " times", sheet);
            }
        }
    }

    private static void printed(String what, CalcDocument sheet) {
        double first = seconds(sheet::calculateAll);
        if (!sheet.failing().isEmpty()) {
            throw new IllegalStateException(what + ": " + sheet.failing());
        }
        double[] more = IntStream.range(0, ROUNDS)
                .mapToDouble(i -> seconds(sheet::calculateAll))
                .sorted()
                .toArray();
        System.out.printf(Locale.ROOT, "| %s | %.3f s | %.3f s |%n", what, first, more[ROUNDS / 2]);
    }

    static double seconds(Runnable work) {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e9;
    }
}
