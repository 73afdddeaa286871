package org.snugsheet.office.benchmark;

import com.sun.star.sheet.XCellRangeData;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;

/** Invented readings of many jars, in 5 °C, read to half a degree. */
final class ManyJars {

    static final List<String> SCALARS = List.of(
            "COOL.RATE", "COOL.RATE.ERROR", "COOL.HALFTIME", "COOL.HALFTIME.ERROR", "COOL.START", "COOL.START.ERROR");

    /** As many as COOL.SHEET takes at once. */
    private static final int BLOCK = 200;

    private static final int READINGS = 12;
    private static final int MINUTES = 4;
    private static final double AROUND = 5;

    /** What COOL.SHEET says of a jar. */
    private static final int TABLE_COLUMNS = 9;

    private final double[][] celsius;

    ManyJars(int count) {
        celsius = new double[count][READINGS];
        SplittableRandom random = new SplittableRandom(12);
        for (double[] jar : celsius) {
            double start = random.nextDouble(38, 43);
            double halfTime = random.nextDouble(15, 60);
            for (int i = 0; i < READINGS; i++) {
                double truth = AROUND + (start - AROUND) * Math.pow(2, -MINUTES * i / halfTime);
                jar[i] = Math.rint(2 * (truth + 0.3 * random.nextGaussian())) / 2;
            }
        }
    }

    /** One jar below the other, in the columns A to C. */
    void fillColumns(CalcDocument sheet) {
        int rows = celsius.length * READINGS;
        sheet.numbersDown(
                        "A1",
                        IntStream.range(0, rows)
                                .mapToDouble(i -> MINUTES * (i % READINGS))
                                .toArray())
                .numbersDown(
                        "B1",
                        IntStream.range(0, rows)
                                .mapToDouble(i -> celsius[i / READINGS][i % READINGS])
                                .toArray())
                .numbersDown(
                        "C1", IntStream.range(0, rows).mapToDouble(i -> AROUND).toArray());
    }

    /** Each function of each jar in the columns. */
    List<String> formulas(List<String> names) {
        return IntStream.range(0, celsius.length)
                .boxed()
                .flatMap(jar -> names.stream().map(name -> formula(name, jar)))
                .toList();
    }

    private static String formula(String name, int jar) {
        int from = jar * READINGS + 1;
        int to = from + READINGS - 1;
        return name.equals("LOGEST")
                ? String.format(Locale.ROOT, "=LOGEST(B%d:B%d;A%d:A%d)", from, to, from, to)
                : String.format(Locale.ROOT, "=%s(A%d:A%d;B%d:B%d;C%d)", name, from, to, from, to, from);
    }

    /** One jar beside the other, below its name, in blocks of as many as may be asked for at once, which stand below one another. */
    void fillBlocks(Office office, CalcDocument sheet) {
        office.call("filling blocks", () -> {
            for (int block = 0; block < blocks(); block++) {
                Uno.as(XCellRangeData.class, Uno.sheets(sheet.uno()).get(0).getCellRangeByName(block(block)))
                        .setDataArray(rows(block * BLOCK));
            }
            return true;
        });
    }

    private Object[][] rows(int first) {
        Object[][] rows = new Object[READINGS + 1][BLOCK + 1];
        rows[0][0] = "min";
        for (int i = 0; i < READINGS; i++) {
            rows[i + 1][0] = (double) MINUTES * i;
        }
        for (int jar = 0; jar < BLOCK; jar++) {
            rows[0][jar + 1] = "jar " + (first + jar + 1);
            for (int i = 0; i < READINGS; i++) {
                rows[i + 1][jar + 1] = celsius[first + jar][i];
            }
        }
        return rows;
    }

    int blocks() {
        return celsius.length / BLOCK;
    }

    String block(int block) {
        return CellName.of(0, top(block)) + ":" + CellName.of(BLOCK, top(block) + READINGS);
    }

    /** Beside the block, a row for each jar. */
    String tableRange(int block) {
        int left = BLOCK + 2;
        return CellName.of(left, top(block)) + ":" + CellName.of(left + TABLE_COLUMNS - 1, top(block) + BLOCK);
    }

    private static int top(int block) {
        return block * (BLOCK + 2);
    }
}
