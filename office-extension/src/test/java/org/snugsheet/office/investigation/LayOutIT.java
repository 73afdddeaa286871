package org.snugsheet.office.investigation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.snugsheet.office.investigation.LaidOut.assertNoErrors;
import static org.snugsheet.office.investigation.LaidOut.layOut;
import static org.snugsheet.office.investigation.LaidOut.texts;

import com.sun.star.sheet.XPrintAreas;
import com.sun.star.table.XTableChartsSupplier;
import com.sun.star.util.XProtectable;
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

    private final Office office;

    LayOutIT(Office office) {
        this.office = office;
    }

    @Test
    void anEmptySheetIsReadyAndShowsNoError() {
        try (CalcDocument sheet = office.newDocument()) {
            assertEquals(
                    "The investigation is laid out on the sheet “Investigation”. Type into the boxed cells.",
                    layOut(office, sheet));
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

    @Test
    void theDocumentDecidesLanguageAndUnits() {
        try (CalcDocument sheet = office.newDocument().locale("en-US")) {
            layOut(office, sheet);
            assertTrue(texts(sheet, "Investigation")
                    .contains(Language.ENGLISH.say(InvestigationWords.SURROUNDINGS_LABEL, "°F")));
            assertTrue(formulas(sheet, "Investigation").stream().anyMatch(formula -> formula.contains("\"F\"")));
        }
        try (CalcDocument sheet = office.newDocument().locale("de-DE")) {
            layOut(office, sheet);
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
            layOut(office, sheet, Uno.named("Materials", "sock\nleaves"), Uno.named("Jars", 6));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            for (int jar = 0; jar < 6; jar++) {
                assertEquals(
                        jar % 2 == 0 ? "sock" : "leaves",
                        sheet.at("Investigation." + (char) ('B' + jar) + head).text());
            }
            layOut(office, sheet);
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
                    layOut(office, sheet, Uno.named("Jars", 3)));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            assertEquals("newspaper", sheet.at("Investigation.D" + head).text());
            assertEquals(new CellResult.Blank(), sheet.at("Investigation.E" + head));
        }
    }

    @Test
    void howOftenToReadCanBeChosen() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(office, sheet, Uno.named("Minutes", 12), Uno.named("Interval", 4));
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
            assertEquals("Plan 2 to 8 jars.", layOut(office, sheet, Uno.named("Jars", 9)));
            assertEquals(
                    "“2.5” is not a whole number. Type a number such as 3.",
                    layOut(office, sheet, Uno.named("Jars", 2.5)));
            assertEquals(
                    "“many” is not a number. Type a plain number.", layOut(office, sheet, Uno.named("Jars", "many")));
            assertTrue(layOut(office, sheet, Uno.named("Materials", ";")).startsWith("Name one wrap at least"));
            assertEquals("Plan 5 to 360 minutes.", layOut(office, sheet, Uno.named("Minutes", 1)));
            for (int interval : new int[] {0, 16}) {
                assertEquals(
                        "In 30 minutes, read 3 to 61 times. Type the whole minutes from one reading to the next.",
                        layOut(office, sheet, Uno.named("Interval", interval)));
            }
            assertTrue(layOut(office, sheet, Uno.named("Mark", "0")).contains("more than zero"));
            assertTrue(layOut(office, sheet, Uno.named("Surroundings", "cold")).contains("“cold”"));
            Written.assertAgain(before, sheet);
            assertEquals(styles, Written.styles(sheet));
        }
    }

    private static void assertMatches(String pattern, String shown) {
        assertTrue(shown.matches(pattern), shown);
    }

    private static List<String> formulas(CalcDocument sheet, String page) {
        return java.util.stream.IntStream.rangeClosed(1, 80)
                .mapToObj(row -> sheet.formulaAt(page + ".A" + row))
                .toList();
    }
}
