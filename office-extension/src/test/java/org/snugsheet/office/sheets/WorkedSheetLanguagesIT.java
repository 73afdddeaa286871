package org.snugsheet.office.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.chart.XChartDataArray;
import com.sun.star.chart.XChartDocument;
import com.sun.star.container.XIndexAccess;
import com.sun.star.container.XNamed;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.table.XTableCharts;
import com.sun.star.table.XTableChartsSupplier;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.page.StyleSheet;
import org.snugsheet.office.sheets.builder.Setting;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.sheets.readings.ReadWords;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** The sheets about one jar, a design and winter coats as they open for people of each language, and in degrees Fahrenheit. */
@ExtendWith(SharedOffice.class)
class WorkedSheetLanguagesIT {

    /** The enums with the words of these sheets, by the beginning of their keys. */
    private static final Set<String> OF_SHEETS = Set.of(
            "FirstWords",
            "OneJarWords",
            "CoatsWords",
            "GarmentWords",
            "DesignWords",
            "DesignBehindWords",
            "ReadWords",
            "SharedWords");

    private static final Map<String, String> COATS_LISTS = Map.of(
            "garments",
            "COLD.GARMENT(%1$s)",
            "activities",
            "IFERROR(COLD.NEEDED(5;%1$s;0);COLD.NEEDED(-25;%1$s;0))",
            "coverings",
            "COLD.ANIMAL(%1$s;10)");
    private static final Map<String, String> DESIGN_LISTS = Map.of(
            "materials",
            "WRAP.LAYER(5;%1$s)",
            "places",
            "WRAP.FLOW(volume;radius;thicknesses;layers;halfway;cold;%1$s;lid_r;base_r;;scale)");

    private final Office office;

    WorkedSheetLanguagesIT(Office office) {
        this.office = office;
    }

    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvSource({
        "first-five-minutes, ENGLISH, FAHRENHEIT",
        "first-five-minutes, SPANISH, CELSIUS",
        "first-five-minutes, FRENCH, CELSIUS",
        "first-five-minutes, GERMAN, CELSIUS",
        "one-jar-one-curve, ENGLISH, FAHRENHEIT",
        "one-jar-one-curve, SPANISH, FAHRENHEIT",
        "one-jar-one-curve, FRENCH, CELSIUS",
        "one-jar-one-curve, GERMAN, CELSIUS",
        "winter-coats, ENGLISH, FAHRENHEIT",
        "winter-coats, SPANISH, FAHRENHEIT",
        "winter-coats, FRENCH, CELSIUS",
        "winter-coats, GERMAN, CELSIUS",
        "design-a-wrap, ENGLISH, FAHRENHEIT",
        "design-a-wrap, SPANISH, FAHRENHEIT",
        "design-a-wrap, FRENCH, CELSIUS",
        "design-a-wrap, GERMAN, CELSIUS"
    })
    void aSheetSpeaksItsLanguageAndAllOfItCanBeRead(String name, Language language, Scale scale) throws Exception {
        try (CalcDocument sheet = opened(name, language, scale)) {
            List<String> errors = new ArrayList<>();
            List<String> shown = new ArrayList<>();
            List<String> cutOff = office.call("looking at " + name, () -> {
                List<String> cut = new ArrayList<>();
                XIndexAccess pages = Uno.as(XIndexAccess.class, sheet.uno().getSheets());
                for (int i = 0; i < pages.getCount(); i++) {
                    XSpreadsheet page = Uno.as(XSpreadsheet.class, pages.getByIndex(i));
                    shown.add(Uno.as(XNamed.class, page).getName());
                    cut.addAll(TextFits.cutOff(page));
                }
                return cut;
            });
            for (String page : sheet.sheetNames()) {
                for (List<CellResult> row : sheet.values(page + "." + used(sheet, page))) {
                    for (CellResult cell : row) {
                        if (cell.error() != 0) {
                            errors.add(page + ": " + cell);
                        } else if (cell instanceof CellResult.OfText) {
                            shown.add(cell.text());
                        }
                    }
                }
            }
            assertEquals(List.of(), errors);
            assertEquals(List.of(), ForeignWords.among(shown, language, OF_SHEETS));
            assertEquals("", String.join("\n", cutOff));
            assertTrue(shown.size() > 60, "it has words: " + shown.size());
            String start = sheet.sheetNames().get(0) + ".";
            String box = name.equals("first-five-minutes") ? "D20" : name.equals("one-jar-one-curve") ? "C20" : "B7";
            assertEquals(
                    scale == Scale.FAHRENHEIT ? "F" : "C", sheet.at(start + box).text());
            switch (name) {
                case "first-five-minutes" -> slipsAreSeen(sheet, start, language);
                case "design-a-wrap" -> {
                    listsAreKnown(sheet, DESIGN_LISTS);
                    slipsOfADesignAreSeen(sheet, start, language);
                }
                case "winter-coats" -> {
                    listsAreKnown(sheet, COATS_LISTS);
                    assertEquals(9, bars(sheet), "what is needed, two outfits, six animals");
                }
                default -> assertTrue(sheet.at(start + "E7").number() > 20);
            }
        }
    }

    /** Cut off by a neighbor, by the edge of what is printed, below the last line that has room; and what has room. */
    @Test
    void whatIsCutOffIsFound() {
        String words = "words that are wider than a cell";
        try (CalcDocument sheet = office.newDocument()) {
            sheet.text("A1", words).text("B1", "beside it");
            sheet.text("A2", words).text("C2", "far from it");
            sheet.text("D3", words);
            sheet.text("A4", words + ", and " + words).text("A5", words).number("A6", 123_456_789_012.0);
            List<String> found = office.call("looking at it", () -> {
                XSpreadsheet page = Uno.as(
                        XSpreadsheet.class,
                        Uno.as(XIndexAccess.class, sheet.uno().getSheets()).getByIndex(0));
                Uno.set(page.getCellRangeByName("A1:D6"), "CharFontName", StyleSheet.FONT);
                Uno.set(
                        Uno.as(XColumnRowRange.class, page.getCellRangeByName("A1:D6"))
                                .getRows(),
                        "Height",
                        1400);
                Uno.set(
                        Uno.as(XColumnRowRange.class, page.getCellRangeByName("A1:D6"))
                                .getColumns(),
                        "Width",
                        3000);
                Uno.set(page.getCellRangeByName("A4:A5"), "IsTextWrapped", true);
                Uno.as(XPrintAreas.class, page).setPrintAreas(new CellRangeAddress[] {
                    Uno.as(XCellRangeAddressable.class, page.getCellRangeByName("A1:D6"))
                            .getRangeAddress()
                });
                return TextFits.cutOff(page);
            });
            assertEquals(
                    List.of("A1", "D3", "A4"),
                    found.stream()
                            .map(each -> each.replaceAll("^[^.]*\\.| .*", ""))
                            .toList(),
                    found::toString);
        }
    }

    /** The minute of a slip, and no row, which is nowhere to be seen. */
    private static void slipsAreSeen(CalcDocument sheet, String page, Language language) {
        String minute = language == Language.SPANISH ? "Minuto " : "Minute ";
        boolean isFahrenheit = sheet.at(page + "D20").text().equals("F");
        assertEquals(language.words(ReadWords.OK), sheet.at(page + "F7").text());
        assertEquals(27, sheet.at(page + "G14").number(), 1.5);
        double read = sheet.at(page + "C10").number();
        assertStarts(minute + "10", said(sheet.number(page + "C10", read / 10), page + "F7"));
        sheet.number(page + "C10", read).number(page + "C8", isFahrenheit ? 140 : 60);
        assertStarts(minute + "0", said(sheet, page + "F7"));
        sheet.number(page + "B8", 0.375).number(page + "B9", 0.378);
        String mixed = said(sheet, page + "F7");
        assertTrue(mixed.endsWith(language.words(ReadWords.MIXED_TIMES)), mixed);
    }

    private static void slipsOfADesignAreSeen(CalcDocument sheet, String page, Language language) {
        String minute = language == Language.SPANISH ? "Minuto " : "Minute ";
        double read = sheet.at(page + "H36").number();
        assertStarts("OK", said(sheet, page + "A34"));
        String said = said(sheet.number(page + "H36", read / 10), page + "A34");
        assertTrue(said.contains(minute + "15"), said);
        assertEquals("–", sheet.at(page + "N33").text());
    }

    private static String said(CalcDocument sheet, String cell) {
        return sheet.calculate().at(cell).text();
    }

    private int bars(CalcDocument sheet) {
        return office.call("counting the bars", () -> {
            for (String page : sheet.sheetNames()) {
                XTableCharts charts = Uno.as(
                                XTableChartsSupplier.class,
                                sheet.uno().getSheets().getByName(page))
                        .getCharts();
                if (charts.hasByName("coats_compared")) {
                    Object chart = Uno.as(XEmbeddedObjectSupplier.class, charts.getByName("coats_compared"))
                            .getEmbeddedObject();
                    Object data = Uno.as(XChartDocument.class, chart).getData();
                    return Uno.as(XChartDataArray.class, data).getData().length;
                }
            }
            return 0;
        });
    }

    /** What can be chosen from a list is understood by the functions. */
    private static void listsAreKnown(CalcDocument sheet, Map<String, String> lists) {
        lists.forEach((list, formula) -> assertEquals(List.of(), refused(sheet, list, formula)));
    }

    private static List<String> refused(CalcDocument sheet, String list, String formula) {
        sheet.uno().getSheets().insertNewByName("probe " + list, (short) 0);
        String at = "probe " + list + ".";
        int size = (int) sheet.formula(at + "A1", "=ROWS(" + list + ")")
                .calculate()
                .at(at + "A1")
                .number();
        assertTrue(size > 1, list);
        List<String> names = new ArrayList<>();
        List<String> refusals = new ArrayList<>();
        for (int i = 1; i <= size; i++) {
            String item = "INDEX(" + list + ";" + i + ")";
            names.add("=" + item);
            refusals.add("=IF(ISNUMBER(" + String.format(formula, item) + ");0;1)");
        }
        sheet.formulasDown(at + "B1", names).formulasDown(at + "C1", refusals).calculate();
        return sheet.all(at + "B1:C" + size).stream()
                .filter(row -> row.get(1).number() != 0)
                .map(row -> row.get(0).shown())
                .toList();
    }

    private static void assertStarts(String beginning, String said) {
        assertTrue(said.startsWith(beginning), said);
    }

    private String used(CalcDocument sheet, String page) {
        return office.call("measuring " + page, () -> {
            XSpreadsheet cells =
                    Uno.as(XSpreadsheet.class, sheet.uno().getSheets().getByName(page));
            XSheetCellCursor cursor = cells.createCursor();
            Uno.as(XUsedAreaCursor.class, cursor).gotoEndOfUsedArea(false);
            CellRangeAddress end = Uno.as(XCellRangeAddressable.class, cursor).getRangeAddress();
            return "A1:" + CellName.of(end.EndColumn, end.EndRow);
        });
    }

    private CalcDocument opened(String name, Language language, Scale scale) {
        WorkedSheet worked = WorkedSheets.named(name).orElseThrow();
        assertTrue(worked.languages().contains(language), name);
        Paper paper = scale == Scale.FAHRENHEIT ? Paper.LETTER : Paper.A4;
        return MenuSheets.opened(office, worked, new Setting(language, scale, paper))
                .calculate();
    }
}
