package org.snugsheet.office.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.chart.XAxisXSupplier;
import com.sun.star.chart.XAxisYSupplier;
import com.sun.star.chart.XChartDocument;
import com.sun.star.container.XNameAccess;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.table.XTableChartsSupplier;
import com.sun.star.util.XProtectable;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.uno.Uno;

/** The curves of a selected block, drawn through the menu of a real office. */
@ExtendWith(SharedOffice.class)
class DrawIT {

    private static final double[] MINUTES = {0, 3, 6, 9, 12, 15, 18, 21, 24};

    private final Office office;

    DrawIT(Office office) {
        this.office = office;
    }

    /** The readings follow Newton’s law of cooling exactly, so that the curve must be that law. */
    @Test
    void theCurveIsTheLawOfTheReadings() {
        try (CalcDocument sheet = block()) {
            assertEquals("The curves are on the sheet “Curves”.", draw(sheet, "A1:C10"));
            assertEquals(List.of("Sheet1", "Curves"), sheet.sheetNames());
            int at = column(sheet, "minutes", 1);
            for (int step : new int[] {0, 20, 40}) {
                double minutes = sheet.at(cell(at, step)).number();
                assertEquals(24.0 * step / 40, minutes, 1e-9);
                assertEquals(3 + 38 * Math.exp(-0.045 * minutes), fitted(sheet, at, 0, step), 1e-6);
                // The jar that was read in °F is on the same axis.
                assertEquals(3 + 38 * Math.exp(-0.02 * minutes), fitted(sheet, at, 1, step), 1e-6);
            }
        }
    }

    @Test
    void titlesNameTheirUnits() throws Exception {
        try (CalcDocument sheet = block()) {
            draw(sheet, "A1:C10");
            XChartDocument chart = chart(sheet);
            assertEquals("How warm each jar stays", title(chart.getTitle()));
            assertEquals(
                    "minutes since the start",
                    title(Uno.as(XAxisXSupplier.class, chart.getDiagram()).getXAxisTitle()));
            assertEquals(
                    "temperature, °C",
                    title(Uno.as(XAxisYSupplier.class, chart.getDiagram()).getYAxisTitle()));
        }
    }

    @Test
    void aSingleCellStandsForTheBlockAroundIt() {
        try (CalcDocument sheet = block()) {
            draw(sheet, "B4");
            assertEquals("bare", sheet.at("Curves.A29").text());
            assertEquals("wool °F", sheet.at("Curves.A30").text());
        }
    }

    @Test
    void theChartFollowsTheReadings() {
        try (CalcDocument sheet = block()) {
            draw(sheet, "A1:C10");
            int at = column(sheet, "minutes", 1);
            double before = fitted(sheet, at, 0, 0);
            sheet.number("B2", 39);
            assertTrue(fitted(sheet, at, 0, 0) < before);
        }
    }

    @Test
    void aJarThatCannotBeFittedKeepsItsPointsAndSaysWhy() {
        try (CalcDocument sheet = block()) {
            sheet.text("B4", "warm");
            assertEquals(
                    "The curves are on the sheet “Curves”. No curve yet: bare. The reasons are below the chart.",
                    draw(sheet, "A1:C10"));
            assertEquals(
                    "Row 3 (minute 6): “warm” is not a temperature. Type a number, or leave the cell blank.",
                    sheet.at("Curves.B29").text());
            assertEquals("OK", sheet.at("Curves.B30").text());
        }
    }

    /** In the window it is told in the same words while the fields are still there. */
    @Test
    void surroundingsThatAreNoTemperatureAreToldAtOnce() {
        try (CalcDocument sheet = block()) {
            for (String typed : List.of("hello", "-400", "A20 or so")) {
                String told = Menu.choose(
                        office, select(sheet, "A1:C10"), MenuItem.DRAW, Menu.QUIET, Uno.named("Surroundings", typed));
                assertTrue(told.contains(typed) && !told.contains("Row"), told);
                assertEquals(List.of("Sheet1"), sheet.sheetNames());
            }
            for (String typed : List.of("melting ice", "37 °F", "3,5", "", "A20")) {
                String told = Menu.choose(
                        office, select(sheet, "A1:C10"), MenuItem.DRAW, Menu.QUIET, Uno.named("Surroundings", typed));
                assertTrue(told.startsWith("The curves are on the sheet"), typed + ": " + told);
            }
        }
    }

    @Test
    void whatCannotBeDrawnAddsNothing() {
        try (CalcDocument sheet = block()) {
            assertEquals(DrawingWords.NO_NAMES.english(), draw(sheet, "A2:C10"));
            assertEquals(DrawingWords.NO_BLOCK.english(), draw(sheet, "Z1"));
            for (int jar = 0; jar < 9; jar++) {
                sheet.text((char) ('B' + jar) + "1", "jar");
            }
            assertTrue(draw(sheet, "A1:J10").contains("Select fewer columns"));
            assertTrue(Menu.choose(office, select(sheet, "A1:C10"), MenuItem.DRAW, Menu.QUIET, Uno.named("Mark", "0"))
                    .contains("more than zero"));
            assertEquals(1, sheet.sheetNames().size());
        }
    }

    /** A selection of whole columns or of the whole sheet means what is in them, and nobody has to wait. */
    @ParameterizedTest
    @ValueSource(strings = {"A1:C1048576", "A1:AMJ1048576"})
    void wholeColumnsAndSheetsAreCut(String cells) {
        try (CalcDocument sheet = block()) {
            // Below the block other numbers would be readings; there are none.
            Instant start = Instant.now();
            String said = Menu.choose(
                    office,
                    select(sheet.text("A20", ""), cells),
                    MenuItem.DRAW,
                    Menu.QUIET,
                    Uno.named("Scale", "C"),
                    Uno.named("Surroundings", "3"));
            assertTrue(Duration.between(start, Instant.now()).toSeconds() < 20, said);
            assertEquals("The curves are on the sheet “Curves”.", said);
            assertEquals("bare", sheet.at("Curves.A29").text());
        }
    }

    @Test
    void theScaleIsThatOfTheReadings() throws Exception {
        try (CalcDocument sheet = block().locale("en-US").text("C1", "wool")) {
            sheet.numbersDown("C2", 40, 38, 36, 34, 33, 32, 31, 30, 29);
            Menu.choose(office, select(sheet, "A1:C10"), MenuItem.DRAW, Menu.QUIET);
            assertEquals(
                    "temperature, °C",
                    title(Uno.as(XAxisYSupplier.class, chart(sheet).getDiagram())
                            .getYAxisTitle()));
        }
        try (CalcDocument sheet = block().locale("de-DE").text("B1", "wool")) {
            sheet.numbersDown("B2", 104, 101, 98, 95, 92, 90, 88, 86, 84).number("A20", 38);
            Menu.choose(office, select(sheet, "A1:B10"), MenuItem.DRAW, Menu.QUIET, Uno.named("Surroundings", "A20"));
            int row = sheet.rowOf("wool", "Kurven.A1");
            assertEquals("OK", sheet.at("Kurven.B" + row).text());
            assertTrue(sheet.formulaAt("Kurven.B" + row).contains("\"F\""));
        }
    }

    /** A jar whose head names its scale keeps that one: the others decide which scale is common to all. */
    @Test
    void aJarWithAScaleOfItsOwnDoesNotDecideForTheOthers() throws Exception {
        try (CalcDocument sheet = block().locale("en-US").text("C1", "wool").text("D1", "leaves (F)")) {
            sheet.numbersDown("C2", 40, 38, 36, 34, 33, 32, 31, 30, 29);
            sheet.numbersDown("D2", 104, 100, 97, 94, 91, 88, 86, 84, 82);
            Menu.choose(office, select(sheet, "A1:D10"), MenuItem.DRAW, Menu.QUIET);
            assertEquals(
                    "temperature, °C",
                    title(Uno.as(XAxisYSupplier.class, chart(sheet).getDiagram())
                            .getYAxisTitle()));
        }
    }

    /** One slip among the readings does not make another scale of them. */
    @Test
    void aSlipDoesNotDecideTheScale() throws Exception {
        try (CalcDocument sheet = block().locale("en-US").text("C1", "wool")) {
            sheet.numbersDown("B2", 104, 91, 80, 71, 64, 59, 5.4, 51, 48);
            sheet.numbersDown("C2", 104, 98, 92, 86, 82, 78, 73, 70, 67);
            Menu.choose(office, select(sheet, "A1:C10"), MenuItem.DRAW, Menu.QUIET);
            assertEquals(
                    "temperature, °F",
                    title(Uno.as(XAxisYSupplier.class, chart(sheet).getDiagram())
                            .getYAxisTitle()));
        }
    }

    /** The readings of a page that is laid out are on a locked sheet: they are drawn, twice, and the lock stays. */
    @Test
    void aLockedSheetIsDrawnTwice() {
        try (CalcDocument sheet = block()) {
            office.call("locking", () -> {
                Uno.as(XProtectable.class, Uno.sheets(sheet.uno()).get(0)).protect("");
                return true;
            });
            assertEquals("The curves are on the sheet “Curves”.", draw(sheet, "A1:C10"));
            assertEquals("The curves are on the sheet “Curves 2”.", draw(sheet, "A1:C10"));
            assertEquals(List.of("Sheet1", "Curves", "Curves 2"), sheet.sheetNames());
            assertTrue(office.call(
                    "looking at the lock",
                    () -> Uno.as(XProtectable.class, Uno.sheets(sheet.uno()).get(0))
                            .isProtected()));
            assertEquals("OK", sheet.at("Curves 2.B29").text());
        }
    }

    @Test
    void numbersBehindTheCurvesAreShort() {
        try (CalcDocument sheet = block()) {
            draw(sheet, "A1:C10");
            for (List<CellResult> row : sheet.all("Curves.A35:J75")) {
                for (CellResult cell : row) {
                    if (cell instanceof CellResult.OfNumber number) {
                        assertTrue(number.shown().matches("-?\\d+([.,]\\d)?"), number.shown());
                    }
                }
            }
        }
    }

    private String draw(CalcDocument sheet, String cells) {
        return Menu.choose(
                office,
                select(sheet, cells),
                MenuItem.DRAW,
                Menu.QUIET,
                Uno.named("Scale", "C"),
                Uno.named("Mark", "1"),
                Uno.named("Surroundings", "A20"));
    }

    private CalcDocument select(CalcDocument sheet, String cells) {
        Menu.select(office, sheet, cells);
        return sheet;
    }

    private CalcDocument block() {
        CalcDocument sheet = office.newDocument();
        double[] bare = new double[MINUTES.length];
        double[] wool = new double[MINUTES.length];
        for (int i = 0; i < MINUTES.length; i++) {
            bare[i] = 3 + 38 * Math.exp(-0.045 * MINUTES[i]);
            wool[i] = (3 + 38 * Math.exp(-0.02 * MINUTES[i])) * 1.8 + 32;
        }
        return sheet.text("A1", "min")
                .text("B1", "bare")
                .text("C1", "wool °F")
                .numbersDown("A2", MINUTES)
                .numbersDown("B2", bare)
                .numbersDown("C2", wool)
                .number("A20", 3);
    }

    /** The column of the numbers behind the curves that has this head, the first or a later one. */
    private static int column(CalcDocument sheet, String head, int later) {
        List<CellResult> heads = sheet.all("Curves.A34:J34").get(0);
        int found = 0;
        for (int column = 0; column < heads.size(); column++) {
            if (heads.get(column) instanceof CellResult.OfText text
                    && text.text().equals(head)
                    && found++ == later) {
                return column;
            }
        }
        throw new AssertionError(heads.toString());
    }

    private static double fitted(CalcDocument sheet, int at, int jar, int step) {
        return sheet.at(cell(at + 1 + 3 * jar, step)).number();
    }

    private static String cell(int column, int step) {
        return "Curves." + (char) ('A' + column) + (35 + step);
    }

    private XChartDocument chart(CalcDocument sheet) {
        return office.call("reading the chart", () -> {
            XNameAccess charts = Uno.as(
                            XTableChartsSupplier.class, sheet.uno().getSheets().getByName("Curves"))
                    .getCharts();
            return Uno.as(
                    XChartDocument.class,
                    Uno.as(XEmbeddedObjectSupplier.class, charts.getByName(charts.getElementNames()[0]))
                            .getEmbeddedObject());
        });
    }

    private static String title(Object shape) throws com.sun.star.uno.Exception {
        return String.valueOf(Uno.property(shape, "String"));
    }
}
