package org.snugsheet.office.investigation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.awt.Size;
import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XIndexAccess;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.XTableChartsSupplier;
import com.sun.star.util.XProtectable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.menu.Written;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** A sheet laid out through the menu of a real office, filled in, and read. */
@ExtendWith(SharedOffice.class)
class LayOutIT {

    private static final String ALL = "A1:I80";

    private final Office office;

    LayOutIT(Office office) {
        this.office = office;
    }

    @Test
    void anEmptySheetIsReadyAndShowsNoError() {
        try (CalcDocument sheet = office.newDocument()) {
            assertEquals(
                    "The investigation is laid out on the sheet “Investigation”. Type into the boxed cells.",
                    layOut(sheet));
            assertNoErrors(sheet, "Investigation");
            List<String> texts = texts(sheet, "Investigation");
            for (Caution caution : List.of(
                    Caution.GLASS,
                    Caution.ADULT_POURS,
                    Caution.SCHOOL_RULES,
                    Caution.ICE,
                    Caution.WRAPS,
                    Caution.LOW_PLACE,
                    Caution.SCALD)) {
                assertTrue(texts.stream().anyMatch(text -> text.contains(caution.english())), caution.name());
            }
            assertTrue(texts.stream().anyMatch(text -> text.startsWith("Start no warmer than 43 °C (109 °F).")));
            assertTrue(texts.contains(InvestigationWords.NO_RANKING.english()));
            office.call("looking at the sheet", () -> {
                Object page = sheet.uno().getSheets().getByName("Investigation");
                assertEquals(1, Uno.as(XPrintAreas.class, page).getPrintAreas().length);
                assertTrue(Uno.as(XProtectable.class, page).isProtected());
                assertEquals(
                        1, Uno.as(XTableChartsSupplier.class, page).getCharts().getElementNames().length);
                return true;
            });
        }
    }

    /** Readings by Newton’s law, rounded to the mark: the rates come back, and the wraps in their order. */
    @Test
    void whatIsTypedIsWorkedOut() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(
                    sheet,
                    Uno.named("Materials", "bare;sock;leaves"),
                    Uno.named("Scale", "C"),
                    Uno.named("Surroundings", "3"),
                    Uno.named("Minutes", 30));
            double[] rates = {0.045, 0.03, 0.018};
            int head = sheet.rowOf("minutes", "Investigation.A1");
            for (int jar = 0; jar < rates.length; jar++) {
                double[] readings = new double[11];
                for (int i = 0; i < readings.length; i++) {
                    readings[i] = Math.rint(3 + 38 * Math.exp(-rates[jar] * 3 * i));
                }
                sheet.numbersDown("Investigation." + (char) ('B' + jar) + (head + 1), readings);
            }
            assertNoErrors(sheet, "Investigation");
            int results = sheet.rowOf(InvestigationWords.RESULTS.english(), "Investigation.A1") + 2;
            for (int jar = 0; jar < rates.length; jar++) {
                double rate = sheet.at("Investigation.C" + (results + jar)).number();
                double error = sheet.at("Investigation.D" + (results + jar)).number();
                assertEquals(rates[jar], rate, 3 * error);
                assertEquals("OK", sheet.at("Investigation.I" + (results + jar)).text());
            }
            int best = sheet.rowOf(InvestigationWords.RANKING.english(), "Investigation.A1") + 3;
            assertEquals("leaves", sheet.at("Investigation.B" + best).text());
            assertEquals("bare", sheet.at("Investigation.B" + (best + 2)).text());
        }
    }

    /** A finding names its place as the person sees it, stands above the readings, and marks the cell. */
    @Test
    void theChecksSpeakAtOnce() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(sheet, Uno.named("Scale", "C"), Uno.named("Surroundings", "3"));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            int sock = sheet.rowOf("wool sock", "Investigation.A1");
            sheet.numbersDown("Investigation.C" + (head + 1), 42, 39, 37, 35, 33, 31, 29.5, 28, 26.5, 25, 24);
            assertEquals("OK", sheet.at("Investigation.C" + sock).text());
            assertEquals("", sheet.at("Investigation.C" + (sock + 1)).text());
            sheet.text("Investigation.C" + (head + 5), "wram");
            assertEquals(
                    "wool sock, minute 12: “wram” is not a temperature. Type a number, or leave the cell blank.",
                    sheet.at("Investigation.C" + sock).text());
            assertTrue(sock < head);
            assertMarkedBy(sheet, "C" + sock, "$C$" + sock);
            int results = sheet.rowOf(InvestigationWords.RESULTS.english(), "Investigation.A1") + 2;
            assertMarkedBy(sheet, "I" + results, "$I$" + results);
            assertEquals(List.of(5), marked(sheet, "C", head));
            sheet.number("Investigation.C" + (head + 5), 330);
            assertEquals(List.of(5), marked(sheet, "C", head));
            assertEquals(List.of(), marked(sheet, "B", head));
            sheet.number("Investigation.B" + (head + 1), 60);
            assertTrue(texts(sheet, "Investigation").stream()
                    .anyMatch(text -> text.startsWith(Caution.SCALDS_IN_SECONDS.english())));
        }
    }

    /** With a finding open a jar keeps its points but has no curve, and its reason stands whole in the ranking. */
    @Test
    void aJarHeldBackHasNoCurveAndSaysWhy() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(
                    sheet,
                    Uno.named("Materials", "bare;sock;leaves"),
                    Uno.named("Scale", "C"),
                    Uno.named("Surroundings", "3"));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            double[] rates = {0.045, 0.03, 0.018};
            for (int jar = 0; jar < rates.length; jar++) {
                double[] readings = new double[11];
                for (int i = 0; i < readings.length; i++) {
                    readings[i] = Math.rint(10 * (3 + 38 * Math.exp(-rates[jar] * 3 * i))) / 10;
                }
                sheet.numbersDown("Investigation." + (char) ('B' + jar) + (head + 1), readings);
            }
            assertEquals(List.of(true, true, true), curves(sheet, 3));
            double right = sheet.at("Investigation.C" + (head + 4)).number();
            sheet.number("Investigation.C" + (head + 4), right / 10);
            assertEquals(List.of(true, false, true), curves(sheet, 3));
            int ranking = sheet.rowOf(InvestigationWords.RANKING.english(), "Investigation.A1") + 2;
            assertEquals(
                    InvestigationWords.REMARK_HEAD.english(),
                    sheet.at("Investigation.H" + ranking).text());
            assertEquals("sock", sheet.at("Investigation.B" + (ranking + 3)).text());
            String reason = sheet.at("Investigation.H" + (ranking + 3)).text();
            assertTrue(reason.startsWith("minute 9: "), reason);
            assertFits(sheet, "H" + (ranking + 3), reason);
        }
    }

    /** That two readings are few is no news while they are being taken; a slip in one of them is. */
    @Test
    void theFirstReadingsAreTakenInPeace() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(sheet, Uno.named("Scale", "C"), Uno.named("Surroundings", "3"));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            int jar = sheet.rowOf("no wrap", "Investigation.A1");
            int results = sheet.rowOf(InvestigationWords.RESULTS.english(), "Investigation.A1") + 2;
            sheet.numbersDown("Investigation.B" + (head + 1), 41, 37);
            assertEquals("", sheet.at("Investigation.C" + jar).text());
            assertEquals("", sheet.at("Investigation.I" + results).text());
            sheet.text("Investigation.B" + (head + 2), "wram");
            assertTrue(
                    sheet.at("Investigation.C" + jar).text().startsWith("no wrap, minute 3: “wram”"),
                    sheet.at("Investigation.C" + jar).text());
            sheet.numbersDown("Investigation.B" + (head + 2), 37, 34);
            assertEquals("OK", sheet.at("Investigation.C" + jar).text());
        }
    }

    /** Nothing is found before anything is typed, and the surroundings are asked for once, not once a jar. */
    @Test
    void missingSurroundingsAreAskedForOnce() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(sheet, Uno.named("Scale", "C"));
            String asked = InvestigationWords.SURROUNDINGS_ASKED.english();
            assertFalse(texts(sheet, "Investigation").contains(asked));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            for (char column = 'B'; column <= 'F'; column++) {
                sheet.numbersDown("Investigation." + column + (head + 1), 42, 39, 37, 35);
            }
            int jars = sheet.rowOf("no wrap", "Investigation.A1");
            // Above the readings, where it is seen while they are typed.
            assertEquals(asked, sheet.at("Investigation.B" + (head - 3)).text());
            for (int jar = 0; jar < 5; jar++) {
                assertEquals("", sheet.at("Investigation.C" + (jars + jar)).text());
            }
        }
    }

    /** Times of the day mean the minutes since the first. */
    @Test
    void clockTimesAreMinutes() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(
                    sheet,
                    Uno.named("Scale", "C"),
                    Uno.named("Surroundings", "3"),
                    Uno.named("Jars", 2),
                    Uno.named("Minutes", 12));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            for (int i = 0; i <= 12; i++) {
                sheet.number("Investigation.A" + (head + 1 + i), (9 * 60 + 5 + i) / 1440.0);
                sheet.number("Investigation.B" + (head + 1 + i), Math.rint(10 * (3 + 38 * Math.exp(-0.045 * i))) / 10);
            }
            int results = sheet.rowOf(InvestigationWords.RESULTS.english(), "Investigation.A1") + 2;
            assertEquals(0.045, sheet.at("Investigation.C" + results).number(), 0.002);
            assertEquals(41, sheet.at("Investigation.F" + results).number(), 0.5);
        }
    }

    @Test
    void theDocumentDecidesLanguageAndUnits() {
        try (CalcDocument sheet = office.newDocument().locale("en-US")) {
            layOut(sheet);
            assertTrue(texts(sheet, "Investigation")
                    .contains(Language.ENGLISH.say(InvestigationWords.SURROUNDINGS_LABEL, "°F")));
            assertTrue(formulas(sheet, "Investigation").stream().anyMatch(formula -> formula.contains("\"F\"")));
        }
        try (CalcDocument sheet = office.newDocument().locale("de-DE")) {
            layOut(sheet);
            String page = Language.GERMAN.words(InvestigationWords.PAGE);
            assertTrue(texts(sheet, page).contains(Language.GERMAN.words(InvestigationWords.TITLE)));
            assertTrue(texts(sheet, page).contains(Language.GERMAN.say(InvestigationWords.SURROUNDINGS_LABEL, "°C")));
            List<String> formulas = formulas(sheet, page);
            assertTrue(formulas.stream().anyMatch(formula -> formula.contains("\"C\"")));
            assertFalse(formulas.stream().anyMatch(formula -> formula.contains(";\"F\")")));
            assertNoErrors(sheet, page);
        }
    }

    /** A code such as 0.0000 is English: where a comma is usual, its point would be a mark of thousands. */
    @Test
    void numbersAreWrittenAsTheReaderWritesThem() {
        try (Office german = office.setup().inLocale(Locale.GERMANY).start();
                CalcDocument sheet = german.newDocument()) {
            Menu.choose(
                    german,
                    sheet,
                    MenuItem.LAY_OUT,
                    Menu.QUIET,
                    Uno.named("Surroundings", "3"),
                    Uno.named("Materials", "Socke;Laub"),
                    Uno.named("Minutes", 12));
            String page = sheet.sheetNames().get(1) + ".";
            Language language = Language.GERMAN;
            int head = sheet.rowOf(language.words(InvestigationWords.MINUTES_HEAD), page + "A1");
            sheet.numbersDown(page + "B" + (head + 1), 41, 37, 33, 29, 26);
            int results = sheet.rowOf(language.words(InvestigationWords.RESULTS), page + "A1") + 2;
            assertMatches("0,\\d{4}", sheet.at(page + "C" + results).shown());
            assertMatches("± 0,\\d{4}", sheet.at(page + "D" + results).shown());
            assertMatches("4[01],\\d", sheet.at(page + "F" + results).shown());
            sheet.number(page + "B" + (head + 4), 2.9);
            int jar = sheet.rowOf("Socke", page + "A1");
            assertMatches(
                    "Socke, Minute 3: 2,9, .*29.*", sheet.at(page + "C" + jar).text());
            sheet.text(page + "B" + (head + 4), "29,0");
            assertEquals("OK", sheet.at(page + "C" + jar).text());
        }
    }

    @Test
    void moreJarsThanWrapsAreSeveralOfEach() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(sheet, Uno.named("Materials", "sock\nleaves"), Uno.named("Jars", 6));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            for (int jar = 0; jar < 6; jar++) {
                assertEquals(
                        jar % 2 == 0 ? "sock" : "leaves",
                        sheet.at("Investigation." + (char) ('B' + jar) + head).text());
            }
            layOut(sheet);
            assertEquals(List.of("Sheet1", "Investigation", "Investigation 2"), sheet.sheetNames());
        }
    }

    /** Who has fewer jars than wraps need not delete a line. */
    @Test
    void fewerJarsThanWrapsTakeTheFirst() {
        try (CalcDocument sheet = office.newDocument()) {
            assertEquals(
                    "The investigation is laid out on the sheet “Investigation” for 3 jars, with the first 3 of your 5 wraps."
                            + " Type into the boxed cells.",
                    layOut(sheet, Uno.named("Jars", 3)));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            assertEquals("newspaper", sheet.at("Investigation.D" + head).text());
            assertEquals(new CellResult.Blank(), sheet.at("Investigation.E" + head));
        }
    }

    @Test
    void howOftenToReadCanBeChosen() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(sheet, Uno.named("Minutes", 12), Uno.named("Interval", 4));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            for (int i = 0; i < 4; i++) {
                assertEquals(4 * i, sheet.at("Investigation.A" + (head + 1 + i)).number());
            }
            assertFalse(sheet.at("Investigation.A" + (head + 5)) instanceof CellResult.OfNumber);
        }
    }

    @Test
    void whatCannotBePlannedChangesNothing() {
        try (CalcDocument sheet = office.newDocument()) {
            List<String> before = Written.body(sheet);
            String styles = Written.styles(sheet);
            assertEquals("Plan 2 to 8 jars.", layOut(sheet, Uno.named("Jars", 9)));
            assertEquals(
                    "“2.5” is not a whole number. Type a number such as 3.", layOut(sheet, Uno.named("Jars", 2.5)));
            assertEquals("“many” is not a number. Type a plain number.", layOut(sheet, Uno.named("Jars", "many")));
            assertTrue(layOut(sheet, Uno.named("Materials", ";")).startsWith("Name one wrap at least"));
            assertEquals("Plan 5 to 360 minutes.", layOut(sheet, Uno.named("Minutes", 1)));
            for (int interval : new int[] {0, 16}) {
                assertEquals(
                        "In 30 minutes, read 3 to 61 times. Type the whole minutes from one reading to the next.",
                        layOut(sheet, Uno.named("Interval", interval)));
            }
            assertTrue(layOut(sheet, Uno.named("Mark", "0")).contains("more than zero"));
            assertTrue(layOut(sheet, Uno.named("Surroundings", "cold")).contains("“cold”"));
            Written.assertAgain(before, sheet);
            assertEquals(styles, Written.styles(sheet));
        }
    }

    private String layOut(CalcDocument sheet, PropertyValue... plan) {
        PropertyValue[] arguments = new PropertyValue[plan.length + 1];
        arguments[0] = Menu.QUIET;
        System.arraycopy(plan, 0, arguments, 1, plan.length);
        return Menu.choose(office, sheet, MenuItem.LAY_OUT, arguments);
    }

    /** What looks different in trouble asks the cell that tells of it, and no cell further down. */
    private void assertMarkedBy(CalcDocument sheet, String cell, String teller) {
        String asked = office.call("asking what marks " + cell, () -> {
            XSpreadsheet page =
                    Uno.as(XSpreadsheet.class, sheet.uno().getSheets().getByName("Investigation"));
            Object marks = Uno.property(page.getCellRangeByName(cell), "ConditionalFormat");
            return Uno.as(
                            XSheetCondition.class,
                            Uno.as(XIndexAccess.class, marks).getByIndex(0))
                    .getFormula1();
        });
        assertEquals("AND(" + teller + "<>\"OK\";" + teller + "<>\"\")", asked);
    }

    /** Which readings of a column, counted from 1, are marked: as the condition of the marks says. */
    private List<Integer> marked(CalcDocument sheet, String column, int head) {
        String condition = office.call("asking what marks a reading", () -> {
            XSpreadsheet page =
                    Uno.as(XSpreadsheet.class, sheet.uno().getSheets().getByName("Investigation"));
            Object marks = Uno.property(page.getCellRangeByName(column + (head + 1)), "ConditionalFormat");
            return Uno.as(
                            XSheetCondition.class,
                            Uno.as(XIndexAccess.class, marks).getByIndex(0))
                    .getFormula1();
        });
        List<Integer> marked = new ArrayList<>();
        for (int i = 1; i <= 11; i++) {
            sheet.formula("Investigation.Z" + (head + i), condition);
            if (sheet.at("Investigation.Z" + (head + i)).number() == 1) {
                marked.add(i);
            }
        }
        return List.copyOf(marked);
    }

    /** Which jars have a curve: from top to bottom of the sheet the numbers of three lines each stand beside each other. */
    private List<Boolean> curves(CalcDocument sheet, int jars) {
        List<List<CellResult>> behind = sheet.all("Investigation.AA1:AZ120");
        int row = 0;
        while (behind.get(row).stream()
                        .filter(cell -> cell instanceof CellResult.OfText text
                                && text.text().equals("minutes"))
                        .count()
                < 2) {
            row++;
        }
        List<Boolean> drawn = new ArrayList<>();
        for (int jar = 0; jar < jars; jar++) {
            drawn.add(behind.get(row + 1).get(2 + jars + 3 * jar) instanceof CellResult.OfNumber);
        }
        return List.copyOf(drawn);
    }

    /** Letters are half as wide as high at most, on average, and lines a fifth higher. */
    private void assertFits(CalcDocument sheet, String cell, String text) {
        office.call("measuring " + cell, () -> {
            XSpreadsheet page =
                    Uno.as(XSpreadsheet.class, sheet.uno().getSheets().getByName("Investigation"));
            Object range = page.getCellRangeByName(cell);
            double points = (Float) Uno.property(range, "CharHeight");
            double letter = points / 72 * 2540;
            com.sun.star.sheet.XSheetCellCursor whole =
                    page.createCursorByRange(Uno.as(com.sun.star.sheet.XSheetCellRange.class, range));
            whole.collapseToMergedArea();
            Size size = (Size) Uno.property(whole, "Size");
            double lines = Math.ceil(text.length() * letter / 2 / (size.Width - 200));
            assertTrue(lines * 1.2 * letter < size.Height, text + ": " + lines + " lines in " + size.Height);
            return true;
        });
    }

    private static void assertMatches(String pattern, String shown) {
        assertTrue(shown.matches(pattern), shown);
    }

    private static List<String> texts(CalcDocument sheet, String page) {
        return sheet.all(page + "." + ALL).stream()
                .flatMap(List::stream)
                .filter(CellResult.OfText.class::isInstance)
                .map(CellResult::text)
                .toList();
    }

    private static List<String> formulas(CalcDocument sheet, String page) {
        return java.util.stream.IntStream.rangeClosed(1, 80)
                .mapToObj(row -> sheet.formulaAt(page + ".A" + row))
                .toList();
    }

    private static void assertNoErrors(CalcDocument sheet, String page) {
        sheet.calculateAll();
        assertEquals(
                List.of(),
                sheet.all(page + "." + ALL).stream()
                        .flatMap(List::stream)
                        .filter(CellResult.OfError.class::isInstance)
                        .toList());
    }
}
