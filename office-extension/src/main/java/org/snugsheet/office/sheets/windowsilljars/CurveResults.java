package org.snugsheet.office.sheets.windowsilljars;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.shared.OrDash;

/** The table of results of {@link WindowsillJars}: what the curve of each jar says, and its R-value. */
final class CurveResults {

    private static final String OF_ONE_JAR = "times;readings;surroundings;mark";

    private CurveResults() {}

    static void write(Page page) throws com.sun.star.uno.Exception {
        page.look("A23:F23", CellStyleName.SECTION).text("A23", "What the curves say");
        page.look("A24:F24", CellStyleName.HEAD);
        for (int jar = 0; jar < WindowsillJars.JARS.size(); jar++) {
            page.formula(WindowsillJars.column(jar) + "24", "=" + WindowsillJars.column(jar) + "7");
        }
        result(page, 25, "Cooling constant, per minute", "0.0000", fit("COOL.RATE"));
        uncertainty(page, 26, "0.0000", fit("COOL.RATE.ERROR"));
        result(page, 27, "Half-time, minutes", "0", fit("COOL.HALFTIME"));
        uncertainty(page, 28, "0", fit("COOL.HALFTIME.ERROR"));
        result(page, 29, "Start, °C", "0.0", fit("COOL.START"));
        uncertainty(page, 30, "0.0", fit("COOL.START.ERROR"));
        result(page, 31, "Misfit of the curve, °C", "0.00", fit("COOL.MISFIT"));
        result(page, 32, "", "0.0", OrDash.of("COOL.TEMP(later;start;surroundings;rate)"));
        writeResistances(page);
        page.formula("A32", "=\"Temperature at \"&later&\" min, °C\"");
    }

    private static String fit(String function) {
        return OrDash.of("IF(check=\"OK\";" + function + "(" + OF_ONE_JAR + ");" + OrDash.DASH + ")");
    }

    private static void writeResistances(Page page) throws com.sun.star.uno.Exception {
        result(page, 33, "R-value of the wrap, m²·K/W", "0.000", "");
        for (int jar = 0; jar < WindowsillJars.JARS.size(); jar++) {
            String wrap = "INDEX(wraps;" + (jar + 1) + ")";
            String thickness = "INDEX(thicknesses;" + (jar + 1) + ")";
            page.formula(
                    WindowsillJars.column(jar) + "33",
                    "=IF(LEN(" + wrap + ")+LEN(" + thickness + ")=0;\"no wrap\";IFERROR(WRAP.LAYER(" + thickness + ";"
                            + wrap + ");\"look again\"))");
        }
    }

    private static void result(Page page, int row, String label, String numbers, String formula)
            throws com.sun.star.uno.Exception {
        page.text("A" + row, label).look("A" + row, CellStyleName.LABEL);
        fillRow(page, row, CellStyleName.RESULT, numbers, formula);
    }

    private static void uncertainty(Page page, int row, String numbers, String formula)
            throws com.sun.star.uno.Exception {
        page.text("A" + row, "standard error").look("A" + row, CellStyleName.SUBLABEL);
        fillRow(page, row, CellStyleName.UNCERTAINTY, "\"± \"" + numbers, formula);
    }

    private static void fillRow(Page page, int row, CellStyleName look, String numbers, String formula)
            throws com.sun.star.uno.Exception {
        String cells = "B" + row + ":F" + row;
        page.look(cells, look).numbers(cells, numbers);
        if (!formula.isEmpty()) {
            page.formula(cells, formula);
        }
    }
}
