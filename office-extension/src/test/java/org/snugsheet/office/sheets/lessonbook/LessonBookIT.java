package org.snugsheet.office.sheets.lessonbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyValue;
import com.sun.star.document.MacroExecMode;
import com.sun.star.frame.XModel;
import com.sun.star.frame.XStorable;
import com.sun.star.util.XModifiable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.sheets.builder.Setting;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.sheets.lessonbook.layout.JarsRows;
import org.snugsheet.office.sheets.lessonbook.readings.ReadingWords;
import org.snugsheet.office.sheets.lessonbook.start.StartWords;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** The lesson book as it opens, and what its first page and its readings understand. */
@ExtendWith(SharedOffice.class)
class LessonBookIT {

    private static final BookPlan USUAL = new BookPlan(BookPlan.dealt(List.of(), BookPlan.USUAL_JARS), 30, 3);
    private static final Setting AMERICAN = new Setting(Language.ENGLISH, Scale.FAHRENHEIT, Paper.LETTER);

    private final Office office;

    LessonBookIT(Office office) {
        this.office = office;
    }

    @Test
    void theMenuOpensItAsANewDocumentThatNobodyIsAskedToSave() {
        try (CalcDocument mine = office.newDocument()) {
            mine.text("A1", "mine");
            assertTrue(
                    start(mine, Uno.named("Jars", 3), Uno.named("Minutes", 20), Uno.named("Materials", "sock;leaves"))
                            .startsWith("Lesson book"));
            try (CalcDocument book = office.opened("Readings")) {
                office.call("looking at it", () -> {
                    assertFalse(Uno.as(XModifiable.class, book.uno()).isModified());
                    assertFalse(Uno.as(XStorable.class, book.uno()).hasLocation());
                    // Without this the office says above the book that its macros, of which it has none, are disabled.
                    PropertyValue[] opened = Uno.as(XModel.class, book.uno()).getArgs();
                    assertNotEquals(MacroExecMode.NEVER_EXECUTE, macros(opened));
                    return true;
                });
                assertEquals("sock", book.at("Start.F10").text(), "the first wrap again for the third jar");
                assertEquals(20, book.at("Readings.A15").number(), "every 2 minutes");
                assertEquals(new CellResult.Blank(), book.at("Start.F11"));
            }
            assertEquals("mine", mine.at("A1").text());
            assertEquals(1, mine.sheetNames().size());
        }
    }

    @Test
    void whatCannotBePlannedOpensNothing() {
        try (CalcDocument mine = office.newDocument()) {
            assertEquals("Plan 2 to 12 jars.", start(mine, Uno.named("Jars", 13)));
            assertEquals("“2.5” is not a whole number. Type a number such as 3.", start(mine, Uno.named("Jars", 2.5)));
            assertEquals("“many” is not a number. Type a plain number.", start(mine, Uno.named("Jars", "many")));
            assertEquals("Plan 5 to 360 minutes.", start(mine, Uno.named("Minutes", 1)));
            for (int interval : new int[] {0, 16}) {
                assertEquals(
                        "In 30 minutes, read 3 to 31 times. Type the whole minutes from one reading to the next.",
                        start(mine, Uno.named("Interval", interval)));
            }
        }
    }

    /** In Spanish as in the United States; there, and where the scale is turned afterwards, no page shows an error either. */
    @ParameterizedTest
    @EnumSource
    void anEmptyOneIsReadyInEveryLanguage(Language language) {
        boolean isAmerican = language == Language.SPANISH;
        Setting setting = isAmerican
                ? new Setting(language, Scale.FAHRENHEIT, Paper.LETTER)
                : new Setting(language, Scale.CELSIUS, Paper.A4);
        try (CalcDocument book = fresh(LessonBook.empty(), setting)) {
            assertEquals(List.of(), book.failing());
            assertEquals(language.words(StartWords.NAME_TWO), last(book, language.words(BookWords.START_PAGE)));
            assertEquals(language.words(ReadingWords.EMPTY), last(book, language.words(BookWords.READINGS_PAGE)));
            String start = language.words(BookWords.START_PAGE);
            String other = isAmerican ? "°C" : "°F";
            book.text(start + ".B7", other).text(start + ".B9", other).calculate();
            assertEquals(List.of(), book.failing());
        }
    }

    /** Nothing is typed again when the scale of the answers changes: 40 °C is 104 °F, 2 °C is 35.6 °F. */
    @Test
    void oneBoxTurnsTheScaleOfAllAnswers() {
        try (CalcDocument book = opened(LessonBook.empty(), Setting.USUAL)) {
            assertEquals("40 °C", book.at("Start.C12").text());
            book.text("Start.B9", "°F").number("Start.B11", 2);
            book.calculate();
            assertEquals("104 °F", book.at("Start.C12").text());
            assertEquals("36 °F", book.at("Start.C11").text());
            assertEquals("250 ml, that is 8 fl oz", book.at("Start.C13").text());
        }
    }

    @Test
    void aClassWithFahrenheitGetsItsUsualValues() {
        try (CalcDocument book = fresh(LessonBook.empty(), AMERICAN)) {
            assertEquals("°F", book.at("Start.B7").text());
            assertEquals("2 °F", book.at("Start.C8").text());
            assertEquals("104 °F", book.at("Start.C12").text());
            assertEquals("122 °F, measured by an adult", book.at("Start.C16").text());
        }
    }

    @Test
    void waterThatIsTooHotIsSaidBesideItsBox() {
        try (CalcDocument book = opened(LessonBook.empty(), Setting.USUAL)) {
            for (String typed : new String[] {"44", "112 °F", "60"}) {
                book.text("Start.B12", typed);
                book.calculate();
                assertEquals(
                        "Too hot for pupils: no more than 43 °C.",
                        book.at("Start.C12").text(),
                        typed);
                assertTrue(last(book, "Start").startsWith("Too hot for pupils"), last(book, "Start"));
                assertTrue(last(book, "Start").contains("Your school’s policy"), last(book, "Start"));
            }
            book.text("Start.B12", "warm").calculate();
            assertEquals(
                    "this cannot be read: type a number such as 40",
                    book.at("Start.C12").text());
            book.number("Start.B16", 65).calculate();
            assertEquals(
                    "65 °C: an adult mixes it, away from pupils",
                    book.at("Start.C16").text());
        }
    }

    /** The example has one reading with its digits swapped and one that was missed. */
    @Test
    void aSlipHoldsItsJarBackAndNoOther() {
        try (CalcDocument book = opened(LessonBook.example(), Setting.USUAL)) {
            assertEquals(List.of(), book.failing());
            List<String> words = shown(book, "Readings.C16:J16");
            assertEquals("look at minute 9", words.get(4));
            assertEquals(7, words.stream().filter("OK"::equals).count());
            String said = last(book, "Readings");
            assertTrue(said.startsWith("Jar 5 (fleece) – minute 9: "), said);
            assertFalse(said.contains("Row"), said);
            assertFalse(shown(book, "Behind." + ranked()).contains("fleece"), "no place for it");
            book.number("Readings.G8", 38).calculate();
            assertEquals("All readings so far can be used: see the page Answers.", last(book, "Readings"));
            assertTrue(shown(book, "Behind." + ranked()).contains("fleece"));
        }
    }

    /** Clock times, a thermometer with a scale of its own, and a cold place that was read over and over. */
    @Test
    void readingsAreTakenAsTheyCome() {
        try (CalcDocument book = opened(LessonBook.example(), Setting.USUAL)) {
            double before = book.at("Behind." + rate(0)).number();
            for (int i = 0; i < 11; i++) {
                book.text("Readings.B" + (5 + i), String.format("9:%02d", 5 + 3 * i));
            }
            book.calculate();
            assertEquals(before, book.at("Behind." + rate(0)).number(), 1e-12, "the clock");
            book.text("Start.H8", "°F");
            for (int i = 0; i < 11; i++) {
                double celsius = book.at("Readings.C" + (5 + i)).number();
                book.number("Readings.C" + (5 + i), celsius * 1.8 + 32);
            }
            book.calculate();
            assertEquals(before, book.at("Behind." + rate(0)).number(), 1e-3, "°F among °C");
            assertEquals("1 no wrap °F", book.at("Readings.C4").text());
            book.text("Start.B11", "");
            book.calculate();
            assertEquals("how cold?", book.at("Readings.C16").text());
            for (int i = 0; i < 11; i++) {
                book.number("Readings.K" + (5 + i), 1);
            }
            book.calculate();
            assertEquals("OK", book.at("Readings.C16").text());
            assertEquals(before, book.at("Behind." + rate(0)).number(), 1e-3, "a column of surroundings");
        }
    }

    private static String ranked() {
        return new JarsRows(USUAL).ofRanking("J");
    }

    private static String rate(int jar) {
        return "M" + new JarsRows(USUAL).jar(jar);
    }

    private String start(CalcDocument sheet, PropertyValue... more) {
        List<PropertyValue> all = new ArrayList<>(Arrays.asList(more));
        all.add(Menu.QUIET);
        return Menu.choose(office, sheet, MenuItem.BOOK, all.toArray(PropertyValue[]::new));
    }

    /** What the office decided of macros; nobody who says nothing of them may run any. */
    private static Object macros(PropertyValue[] opened) {
        return Arrays.stream(opened)
                .filter(one -> one.Name.equals("MacroExecutionMode"))
                .map(one -> one.Value)
                .findFirst()
                .orElse(MacroExecMode.NEVER_EXECUTE);
    }

    private CalcDocument opened(LessonBook book, Setting setting) {
        return OpenedBooks.open(office, book, setting).calculate();
    }

    private CalcDocument fresh(LessonBook book, Setting setting) {
        return OpenedBooks.fresh(office, book, setting).calculate();
    }

    /** The last cell in the first column that shows something: what a page says. */
    private static String last(CalcDocument book, String page) {
        return shown(book, page + ".A1:A40").stream()
                .filter(text -> !text.isBlank())
                .reduce("", (before, text) -> text);
    }

    private static List<String> shown(CalcDocument book, String cells) {
        return book.all(cells).stream()
                .flatMap(List::stream)
                .map(CellResult::shown)
                .collect(Collectors.toList());
    }
}
