package org.snugsheet.office.sheets.designawrap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.TreeMap;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.sheets.BuiltSheets;
import org.snugsheet.sheets.Csv;

/**
 * Where the worked sheet “design a wrap” shows what, and the values it must show.
 *
 * <p>Reference values: {@code design-reference.csv}, worked out from the published formulas by a program of its own, see
 * {@code src/test/scipy/design.py}.
 */
final class DesignReference {
    /** The reference takes other publications of water’s properties, which differ by up to 0.3 % in their films. */
    static final double PRECISION = 2e-4;

    static final double FITTED = 1e-6;

    /** The film of water alone, m²·K/W: IAPWS SR6-08 and R15-11 differ by 0.3 % in water’s conductivity. */
    private static final double FILM = 1e-5;

    static final Map<String, String> FITS = Map.of(
            "bare rate", "L33",
            "bare rate error", "L34",
            "bare halftime", "L35",
            "bare halftime error", "L36",
            "wrapped rate", "N33",
            "wrapped rate error", "N34",
            "wrapped halftime", "N35",
            "wrapped halftime error", "N36");

    static final Map<String, String> WORKED_OUT = worked();

    private static Map<String, String> worked() {
        Map<String, String> cells = new TreeMap<>(Map.of(
                "bare halfway", "Curves.J23",
                "bare expected rate", "K33",
                "bare expected R", "K37",
                "bare watts", "K41",
                "bare R", "L37",
                "bare R error", "L38",
                "wrapped halfway", "Curves.J22",
                "wrapped expected rate", "M33",
                "wrapped expected R", "M37",
                "wrapped watts", "M41"));
        cells.putAll(Map.of(
                "wrapped R", "N37",
                "wrapped R error", "N38",
                "wrap R", "N39",
                "wrap R error", "N40",
                "lid R", "E27",
                "base R", "E28",
                "wrapped expected at the end", "Curves.C36"));
        int[] rows = {18, 19, 20, 21, 22, 25};
        for (int i = 0; i < rows.length; i++) {
            cells.put("way " + i + " R", "E" + rows[i]);
            cells.put("way " + i + " outside", "G" + rows[i]);
        }
        return cells;
    }

    private DesignReference() {}

    static CalcDocument open(Office office, BuiltSheets.Design design) {
        return office.open(design.sheet().ods()).calculateAll();
    }

    static void assertResults(CalcDocument document) {
        assertEquals(
                FITS.size() + WORKED_OUT.size(),
                Csv.rows("design-reference.csv").size());
        FITS.forEach((name, cell) -> assertNear(document, name, cell, FITTED));
        WORKED_OUT.forEach((name, cell) -> assertNear(document, name, cell, PRECISION));
    }

    static void assertNear(CalcDocument document, String name, String cell, double precision) {
        double expected = reference(name);
        double least = name.startsWith("way") ? FILM : 0;
        assertEquals(expected, document.at(cell).number(), Math.max(least, precision * expected), name + ", " + cell);
    }

    static double reference(String name) {
        return Csv.rows("design-reference.csv").stream()
                .filter(row -> row.get("name").equals(name))
                .findFirst()
                .orElseThrow()
                .number("value");
    }
}
