package org.snugsheet.engine.slips;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;

/** What the finder says of columns made by {@code src/test/scipy/slip_columns.py}, which shares no code with it. */
final class ColumnsReport {

    private ColumnsReport() {}

    /**
     * Prints a line for each kind of slip.
     *
     * @param arguments none; {@code -Dcolumns} names the file
     * @throws IOException if it cannot be read
     */
    public static void main(String[] arguments) throws IOException {
        Map<String, int[]> counts = new LinkedHashMap<>();
        for (String line : Files.readAllLines(Path.of(System.getProperty("columns", "columns.csv")))) {
            String[] parts = line.split(";", -1);
            count(parts, counts.computeIfAbsent(parts[0], kind -> new int[5]));
        }
        System.out.println("| slip | columns | anything said, % | its row | what was meant | a number nobody typed |");
        System.out.println("|---|---|---|---|---|---|");
        counts.forEach((kind, c) -> System.out.printf(
                Locale.ROOT,
                "| %s | %d | %.1f | %.1f | %.1f | %.1f |%n",
                kind,
                c[0],
                100.0 * c[1] / c[0],
                100.0 * c[2] / c[0],
                100.0 * c[3] / c[0],
                100.0 * c[4] / c[0]));
    }

    private static void count(String[] parts, int[] counts) {
        int row = Integer.parseInt(parts[1]);
        double mark = Double.parseDouble(parts[2]);
        List<Entry> readings = entries(parts[6]);
        List<Slip> slips = SlipFinder.find(
                entries(parts[5]), readings, entries(parts[3]), Graduation.of(mark, Scale.CELSIUS), Scale.CELSIUS);
        counts[0]++;
        counts[1] += slips.isEmpty() ? 0 : 1;
        List<Slip> here =
                slips.stream().filter(slip -> slip.row().orElse(0) == row).toList();
        counts[2] += here.isEmpty() ? 0 : 1;
        counts[3] += here.stream().anyMatch(slip -> proposes(slip, parts[4], mark)) ? 1 : 0;
        counts[4] += slips.stream().anyMatch(slip -> quotesANumberNobodyTyped(slip, readings)) ? 1 : 0;
    }

    private static boolean proposes(Slip slip, String meant, double mark) {
        List<Object> arguments = slip.finding().arguments();
        return !meant.isEmpty()
                && arguments.size() > 2
                && arguments.get(2) instanceof Double proposed
                && Math.abs(proposed - Double.parseDouble(meant)) <= mark + 1e-6;
    }

    /** Sentences with a scale at the end quote the reading first. */
    private static boolean quotesANumberNobodyTyped(Slip slip, List<Entry> readings) {
        List<Object> arguments = slip.finding().arguments();
        return slip.row().isPresent()
                && arguments.size() == 4
                && arguments.get(1) instanceof Double quoted
                && readings.get(slip.row().getAsInt() - 1) instanceof Entry.Value typed
                && Math.abs(quoted - typed.value()) > 1e-6;
    }

    private static List<Entry> entries(String numbers) {
        List<Entry> entries = new ArrayList<>();
        for (String number : numbers.split(",", -1)) {
            entries.add(Entry.ofWritten(number));
        }
        return entries;
    }
}
