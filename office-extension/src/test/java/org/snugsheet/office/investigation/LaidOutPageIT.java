package org.snugsheet.office.investigation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.snugsheet.office.investigation.LaidOut.layOut;

import com.sun.star.awt.Point;
import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.ValidationType;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.sheet.XSheetPageBreak;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.util.CellProtection;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.uno.Uno;

/** The laid-out page as a teacher meets it: where it opens, how Enter runs over it, how it goes on paper. */
@ExtendWith(SharedOffice.class)
class LaidOutPageIT {

    private static final short FILLED = CellFlags.VALUE | CellFlags.DATETIME | CellFlags.STRING | CellFlags.FORMULA;

    private final Office office;

    LaidOutPageIT(Office office) {
        this.office = office;
    }

    /** The cells behind the page are beyond the edge of a wide screen. */
    @Test
    void thePageStandsAlone() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(office, sheet, Uno.named("Scale", "C"));
            office.call("looking for what works behind the page", () -> {
                XSpreadsheet page =
                        Uno.as(XSpreadsheet.class, sheet.uno().getSheets().getByName("Investigation"));
                for (int column = 9; ; column++) {
                    XCellRangesQuery cells =
                            Uno.as(XCellRangesQuery.class, page.getCellRangeByPosition(column, 0, column, 200));
                    if (cells.queryContentCells(FILLED).getRangeAddresses().length > 0) {
                        int left = ((Point) Uno.property(page.getCellByPosition(column, 0), "Position")).X;
                        // 1920 pixels at 96 a twenty-fifth of a meter, in hundredths of a millimeter.
                        assertTrue(left > 1920 * 2540 / 96, "column " + column);
                        return true;
                    }
                }
            });
        }
    }

    /** The page opens at the surroundings: on a screen of 768 lines the cautions above them must be in sight, with eight jars too. */
    @Test
    void thePageOpensWithItsCautionsInSight() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(office, sheet, Uno.named("Jars", 8));
            int surroundings = sheet.rowOf("minutes", "Investigation.A1") - 3;
            office.call("measuring the first view", () -> {
                XSpreadsheet page =
                        Uno.as(XSpreadsheet.class, sheet.uno().getSheets().getByName("Investigation"));
                Object below = page.getCellByPosition(0, surroundings);
                // 529 pixels are left for cells, seen in the office with its usual bars, at 96 to the inch.
                assertTrue(((Point) Uno.property(below, "Position")).Y < 529 * 2540 / 96, "too low");
                return true;
            });
        }
    }

    /** Each part, shrunk to the width of the paper as it is printed, is no higher than the paper: nothing is cut within the chart. */
    @ParameterizedTest
    @ValueSource(ints = {2, 6, 7, 8})
    void eachPartGoesOnOneSheetOfPaper(int jars) {
        for (String language : new String[] {"en-US", "de-DE"}) {
            try (CalcDocument sheet = office.newDocument().locale(language)) {
                layOut(office, sheet, Uno.named("Jars", jars));
                office.call("measuring the parts", () -> {
                    XSpreadsheet page = Uno.sheets(sheet.uno()).get(1);
                    Object style = Uno.as(XStyleFamiliesSupplier.class, sheet.uno())
                            .getStyleFamilies()
                            .getByName("PageStyles");
                    style = Uno.as(XNameAccess.class, style)
                            .getByName(Uno.property(page, "PageStyle").toString());
                    double width = length(style, "Width") - length(style, "LeftMargin") - length(style, "RightMargin");
                    double height = length(style, "Height")
                            - length(style, "TopMargin")
                            - length(style, "BottomMargin")
                            - length(style, "FooterHeight");
                    CellRangeAddress printed = Uno.as(XPrintAreas.class, page).getPrintAreas()[0];
                    Point edge = (Point)
                            Uno.property(page.getCellByPosition(printed.EndColumn + 1, printed.EndRow + 1), "Position");
                    List<Integer> ends = new ArrayList<>(
                            Arrays.stream(Uno.as(XSheetPageBreak.class, page).getRowPageBreaks())
                                    .filter(end -> end.ManualBreak && end.Position <= printed.EndRow)
                                    .map(end -> end.Position)
                                    .toList());
                    ends.add(printed.EndRow + 1);
                    double top = 0;
                    for (int row : ends) {
                        double below = ((Point) Uno.property(page.getCellByPosition(0, row), "Position")).Y;
                        assertTrue((below - top) * Math.min(1, width / edge.X) < height, language + ", to row " + row);
                        top = below;
                    }
                    return true;
                });
            }
        }
    }

    private static double length(Object style, String name) throws com.sun.star.uno.Exception {
        return (Integer) Uno.property(style, name);
    }

    /** Enter goes down and on to the next column, past all that is locked: there the readings must follow each other. */
    @Test
    void nothingLiesBetweenTheColumnsOfReadings() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(office, sheet, Uno.named("Jars", 4));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            List<String> open = office.call("looking for what can be typed", () -> {
                List<String> cells = new ArrayList<>();
                XSpreadsheet page =
                        Uno.as(XSpreadsheet.class, sheet.uno().getSheets().getByName("Investigation"));
                for (int column = 0; column < 9; column++) {
                    for (int row = 0; row < 80; row++) {
                        CellProtection lock =
                                (CellProtection) Uno.property(page.getCellByPosition(column, row), "CellProtection");
                        if (!lock.IsLocked) {
                            cells.add((char) ('A' + column) + String.valueOf(row + 1));
                        }
                    }
                }
                return cells;
            });
            // After the very last reading Enter starts again at the first cell of all: a name, over which no number is
            // typed.
            int names = sheet.rowOf("no wrap", "Investigation.A1");
            List<String> wanted = new ArrayList<>();
            for (int row = names; row < names + 6; row++) {
                wanted.add("A" + row);
            }
            for (char column = 'A'; column <= 'E'; column++) {
                for (int i = 1; i <= 11; i++) {
                    wanted.add(column + String.valueOf(head + i));
                }
            }
            assertEquals(wanted, open);
            office.call("looking at the rule of a name", () -> {
                XSpreadsheet page =
                        Uno.as(XSpreadsheet.class, sheet.uno().getSheets().getByName("Investigation"));
                Object rule = Uno.property(page.getCellRangeByName("A" + names), "Validation");
                assertEquals(ValidationType.CUSTOM, Uno.property(rule, "Type"));
                assertEquals(
                        "ISTEXT(A" + names + ")",
                        Uno.as(XSheetCondition.class, rule).getFormula1());
                assertEquals(true, Uno.property(rule, "ShowErrorMessage"));
                assertEquals(false, Uno.property(rule, "ShowInputMessage"), "it would cover the finding beside it");
                assertEquals(InvestigationWords.NUMBER_FOR_NAME.english(), Uno.property(rule, "ErrorMessage"));
                return true;
            });
        }
    }
}
