package org.snugsheet.office.sheets.lessonbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.sheets.builder.Setting;
import org.snugsheet.office.sheets.lessonbook.LessonBook;
import org.snugsheet.office.sheets.lessonbook.OpenedBooks;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.sheets.lessonbook.start.StartWords;
import org.snugsheet.office.words.Language;

/** The plan and the notes of a lesson book, against sums by hand. */
@ExtendWith(SharedOffice.class)
class LessonBookPlanIT {

    private static final Setting AMERICAN = new Setting(Language.ENGLISH, Scale.FAHRENHEIT, Paper.LETTER);
    private static final Setting ENGLISH = new Setting(Language.ENGLISH, Scale.CELSIUS, Paper.A4);
    private static final Setting GERMAN = new Setting(Language.GERMAN, Scale.CELSIUS, Paper.A4);

    private static final String SCALE = "B7";
    private static final String SHOWN = "B9";
    private static final String PLACE = "B10";
    private static final String AROUND = "B11";
    private static final String START = "B12";
    private static final String LESSON = "B14";
    private static final String HOT = "B16";
    private static final String COLD = "B17";
    private static final int FIRST_WRAP = 8;

    private final Office office;

    LessonBookPlanIT(Office office) {
        this.office = office;
    }

    /**
     * Heat balance of mixing with enthalpies 230.26, 167.53, 50.41 kJ/kg at 55, 40, 12 °C and densities 985.7, 992.2, 999.5
     * kg/m³ (steam tables, from memory), for four jars of 250 ml, and said to 10 ml.
     */
    @Test
    void theWaterForTheWholeClassKeepsItsHeat() {
        try (CalcDocument book = fresh(GERMAN, "", "wool", "wool", "own")) {
            type(book, START, 40);
            type(book, HOT, 55);
            type(book, COLD, 12);
            double grams = 4 * 250 * 0.9922;
            double hot = grams * (167.53 - 50.41) / (230.26 - 50.41);
            assertEquals(hot / 0.9857, number(amount(book, GERMAN, PlanWords.HOT)), 6);
            assertEquals((grams - hot) / 0.9995, number(amount(book, GERMAN, PlanWords.COLD)), 6);
            assertEquals("4", amount(book, GERMAN, PlanWords.JARS));
            assertEquals("5", amount(book, GERMAN, PlanWords.THERMOMETERS));
            assertEquals("3", amount(book, GERMAN, PlanWords.WRAPS));
            assertEquals("Wolle 3 mm × 2, own × 1", note(book, GERMAN, PlanWords.WRAPS));
            assertTrue(said(book, GERMAN).get(1).startsWith("4 Gefäße mit warmem Wasser, am Anfang 40 °C, in "));
            assertTrue(
                    said(book, GERMAN).stream()
                            .anyMatch(words -> words.startsWith("Mit je einem Gefäß zeig")
                                    && words.contains(" den Unterschied zwischen " + bare(GERMAN) + " und Wolle.")),
                    () -> said(book, GERMAN).toString());
        }
    }

    /**
     * Ice by hand with 4.2 and 4.18 J/(g K) and a latent heat of 334 J/g (handbook values, from memory): 4 kg from 12 °C, four jars from
     * 40 °C as far as they cool by the half-times on the page, and the room through a tub as wide as high, ISO 6946:2017, Table 7; and
     * half as much again.
     */
    @Test
    void theIceHasItsReserveAlready() {
        try (CalcDocument book = fresh(ENGLISH, "", "wool", "", "wool")) {
            book.text(PLACE, ENGLISH.language().words(StartWords.ICE_TUB));
            type(book, LESSON, 30);
            double bare = halfTime(book, ENGLISH, bare(ENGLISH) + " × 2");
            double wool = halfTime(book, ENGLISH, "wool × 2");
            double rate = (Math.log(2) / bare + Math.log(2) / wool) / 2;
            double tub = 4000 * 4.2 * 12;
            double jars = 4 * 250 * 0.9922 * 4.18 * 40 * (1 - Math.exp(-30 * rate));
            double room = room(4000) * 21 * 30 * 60;
            assertEquals(1.5 * (tub + jars + room) / 334, number(amount(book, ENGLISH, PlanWords.ICE)), 40);
            assertEquals("4000 ml", amount(book, ENGLISH, PlanWords.TUB));
            assertEquals("2", amount(book, ENGLISH, PlanWords.BAGS));
            assertEquals(List.of(), book.failing());
        }
    }

    /** The same two bodies, one in the other, by small steps; the water outside is colder than the jars and the room. */
    @Test
    void aTubWithoutIceWarmsAndTheForecastReckonsWithThat() {
        try (CalcDocument book = fresh(ENGLISH, "", "wool", "", "wool")) {
            book.text(PLACE, ENGLISH.language().words(StartWords.TUB));
            type(book, AROUND, 5);
            type(book, LESSON, 60);
            double bare = Math.log(2) / halfTime(book, ENGLISH, bare(ENGLISH) + " × 2");
            double wool = Math.log(2) / halfTime(book, ENGLISH, "wool × 2");
            double mean = (bare + wool) / 2;
            double water = 5;
            double jar = 40;
            double wrapped = 40;
            double step = 0.01;
            for (double minute = 0; minute < 60; minute += step) {
                double given = 4 * 250 * 4.18 * mean * (jar - water) + 60 * room(4000) * (21 - water);
                jar -= mean * (jar - water) * step;
                wrapped -= wool * (wrapped - water) * step;
                water += given / (4000 * 4.2) * step;
            }
            String said = said(book, ENGLISH).stream()
                    .filter(words -> words.contains("warm the tub from 5 °C to about"))
                    .findFirst()
                    .orElseThrow();
            assertEquals(water, number(said.substring(said.indexOf("about"))), 1, said);
            assertEquals(wrapped, number(end(book, ENGLISH, "wool × 2")), 1.5);
            assertTrue(note(book, ENGLISH, PlanWords.TUB).contains("Your cold tap gives 12 °C: chill it"));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "C, 43, false",
        "C, 44, true",
        "C, 44 °C, true",
        "C, 110 °F, true",
        "F, 109, false",
        "F, 110, true",
        "F, 44 °C, true"
    })
    void aStartThatIsTooHotIsRefusedInWords(String scale, String start, boolean refused) {
        try (CalcDocument book = opened(ENGLISH, "", "wool")) {
            book.text(SCALE, "°" + scale);
            type(book, START, start);
            List<String> said = said(book, ENGLISH);
            assertEquals(refused, said.get(1).startsWith("Too hot for pupils"), said::toString);
            assertEquals(
                    !refused,
                    said.stream()
                            .anyMatch(words -> words.contains("lessons in 10 show") || words.contains("lesson shows")),
                    said::toString);
            assertEquals(!refused, said.contains("Thermometers"), said::toString);
            assertEquals(refused, said.contains("No plan yet: see the words at the top."), said::toString);
            assertTrue(said.stream().anyMatch(words -> words.contains("no more than 43 °C (109 °F)")), "care stays");
            assertEquals(List.of(), book.failing());
        }
    }

    @Test
    void ownWordsAreMeasuredAndNotForecast() {
        try (CalcDocument book = fresh(ENGLISH, "", "socks of Ada", "hat")) {
            book.calculate();
            assertEquals("–", end(book, ENGLISH, "socks of Ada"));
            List<String> said = said(book, ENGLISH);
            assertTrue(said.contains("your own words: measured, not forecast"), said::toString);
            assertTrue(
                    said.contains(
                            "A forecast takes two wraps from the list on the page Start. Your own words are measured like the others."),
                    said::toString);
            assertEquals(List.of(), book.failing());
        }
    }

    /** Single jars that scatter by a tenth: the normal distribution of the difference of two of them, by hand from the half-times. */
    @Test
    void howOftenTheDifferenceShowsFollowsFromTheHalfTimes() {
        try (CalcDocument book = fresh(ENGLISH, "", "leaves", "fleece", "wool")) {
            type(book, AROUND, 1);
            List<String> said = said(book, ENGLISH);
            double bare = Math.log(2) / halfTime(book, ENGLISH, bare(ENGLISH));
            double leaves = Math.log(2) / halfTime(book, ENGLISH, "leaves");
            double fleece = Math.log(2) / halfTime(book, ENGLISH, "fleece");
            double wool = Math.log(2) / halfTime(book, ENGLISH, "wool");
            // Their distance in standard deviations: from 3.3 on more than 9 in 10 lie beyond 1.96, below 0.3 fewer
            // than
            // 1 in 10 (tables of the normal distribution).
            assertTrue((bare - leaves) / (0.1 * Math.hypot(bare, leaves)) > 3.6);
            assertTrue(Math.abs(fleece - wool) / (0.1 * Math.hypot(fleece, wool)) < 0.25);
            assertTrue(
                    said.stream()
                            .anyMatch(
                                    words -> words.matches(
                                            "With 1 jar of each, nearly every lesson shows the difference between no wrap and leaves\\..*")),
                    said::toString);
            assertTrue(
                    said.stream()
                            .anyMatch(
                                    words -> words.startsWith(
                                            "With 1 jar of each, hardly any lesson shows the difference between fleece and wool. Even 12 jars")),
                    said::toString);
        }
    }

    @Test
    void anAmericanClassPoursFluidOuncesAndAnswersTurnWithOneBox() {
        try (CalcDocument book = fresh(AMERICAN, "", "wool")) {
            book.calculate();
            // 1 fl oz is 29.57353 ml: NIST Special Publication 811, appendix B.
            String hot = amount(book, AMERICAN, PlanWords.HOT);
            double ounces = number(hot);
            double milliliters = number(hot.substring(hot.indexOf('(') + 1));
            assertEquals(milliliters / 29.57353, ounces, 0.7, hot);
            assertTrue(end(book, AMERICAN, "wool").endsWith(" °F"));
            assertTrue(said(book, AMERICAN).get(1).contains("104 °F"));
            book.text(SHOWN, "°C").calculate();
            assertTrue(end(book, AMERICAN, "wool").endsWith(" °C"));
            assertEquals(hot.substring(hot.indexOf('(') + 1, hot.length() - 1), amount(book, AMERICAN, PlanWords.HOT));
            assertTrue(said(book, AMERICAN).get(1).contains("40 °C"));
        }
    }

    @ParameterizedTest
    @CsvSource({"15, 30, 10–25, 25–30", "30, 45, 10–40, 40–45", "60, 75, 10–70, 70–75"})
    void theTimetableFitsTheLesson(int minutes, int lasts, String reading, String sharing) {
        try (CalcDocument book = opened(ENGLISH, "", "wool")) {
            type(book, LESSON, minutes);
            List<String> said = said(book, ENGLISH);
            assertTrue(said.contains("5  A timetable for a lesson of " + lasts + " minutes"), said::toString);
            assertTrue(said.containsAll(List.of(reading, sharing)), said::toString);
            assertEquals(
                    lasts > 45,
                    said.stream().anyMatch(words -> words.startsWith("This takes 75 minutes")),
                    said::toString);
        }
    }

    /** Limits: −18 °C (0 °F), Child Care Weather Watch (Healthy Child Care Iowa); 60 °C: see SafeStart. */
    @Test
    void eachCautionStandsWhereItIsNeeded() {
        try (CalcDocument book = opened(ENGLISH, "", "wool")) {
            type(book, AROUND, -5);
            type(book, HOT, 50);
            assertFalse(said(book, ENGLISH).stream().anyMatch(words -> words.contains("-18 °C (0 °F)")));
            assertTrue(note(book, ENGLISH, PlanWords.HOT).contains("an adult mixes it"));
            type(book, AROUND, -20);
            type(book, HOT, 62);
            assertTrue(said(book, ENGLISH).stream().anyMatch(words -> words.contains("-18 °C (0 °F)")));
            assertEquals(
                    "62 °C burns skin within seconds: an adult mixes it, away from pupils, and hands out only what is mixed to 40 °C",
                    note(book, ENGLISH, PlanWords.HOT));
            type(book, HOT, 38);
            assertEquals(
                    "taps of 38 °C and 12 °C do not mix to 40 °C: see the page Start",
                    note(book, ENGLISH, PlanWords.HOT));
            assertEquals("–", amount(book, ENGLISH, PlanWords.HOT));
        }
    }

    @ParameterizedTest
    @EnumSource
    void nothingFailsInAnyLanguageOrPlace(Language language) {
        Setting setting = new Setting(language, Scale.CELSIUS, Paper.A4);
        try (CalcDocument book = fresh(setting, "", "wool", "leaves")) {
            for (StartWords place : List.of(StartWords.TUB, StartWords.ICE_TUB, StartWords.SNOW, StartWords.COLD_AIR)) {
                book.text(PLACE, language.words(place)).calculate();
                assertEquals(List.of(), book.failing(), place.name());
            }
            for (int jar = 0; jar < 3; jar++) {
                book.text("F" + (FIRST_WRAP + jar), "");
            }
            book.calculate();
            assertEquals(List.of(), book.failing(), "empty");
            assertTrue(said(book, setting)
                    .get(1)
                    .startsWith(language.words(PlanWords.NOT_YET).substring(0, 20)));
            String notes = language.words(BookWords.NOTES_PAGE) + ".A1:A60";
            List<String> read =
                    book.all(notes).stream().map(row -> row.get(0).shown()).toList();
            assertTrue(read.stream().anyMatch(words -> words.contains("43 °C (109 °F)")), read::toString);
            assertTrue(read.stream().anyMatch(words -> words.contains("-18 °C (0 °F)")), read::toString);
            assertTrue(read.stream().anyMatch(words -> words.contains("5.G.A.2")), read::toString);
            assertFalse(read.stream().anyMatch(words -> words.contains("MS-PS3")), "nothing beyond grade 5");
        }
    }

    /** W/K of a tub as wide as high: air and water at its walls, ISO 6946:2017, Table 7. */
    private static double room(double milliliters) {
        double end = Math.PI * Math.pow(milliliters * 1e-6 / (2 * Math.PI), 2.0 / 3);
        return end * (4 / 0.13 + 1 / 0.17 + 1 / 0.10);
    }

    private CalcDocument opened(Setting setting, String... wraps) {
        return OpenedBooks.open(office, planned(setting, wraps), setting).calculatedOnlyWhenTold();
    }

    private CalcDocument fresh(Setting setting, String... wraps) {
        return OpenedBooks.fresh(office, planned(setting, wraps), setting).calculatedOnlyWhenTold();
    }

    private static LessonBook planned(Setting setting, String... wraps) {
        return LessonBook.of(new BookPlan(
                Arrays.stream(wraps).map(wrap -> wrap(wrap, setting)).toList(), 60, 5));
    }

    private static String wrap(String english, Setting setting) {
        if (english.isEmpty()) {
            return bare(setting);
        }
        return List.of("wool", "fleece", "newspaper", "leaves").contains(english)
                ? Materials.nameIn(Materials.find(english), setting.language().locale())
                : english;
    }

    private static String bare(Setting setting) {
        return setting.language().words(BookWords.BARE);
    }

    private static void type(CalcDocument book, String cell, Object value) {
        if (value instanceof Number number) {
            book.number(cell, number.doubleValue());
        } else if (value.toString().matches("[0-9]+")) {
            book.number(cell, Double.parseDouble(value.toString()));
        } else {
            book.text(cell, value.toString());
        }
        book.calculate();
    }

    private static List<List<CellResult>> rows(CalcDocument book, Setting setting) {
        return book.all(setting.language().words(BookWords.PLAN_PAGE) + ".A1:D50");
    }

    /** All that stands on the plan, row by row; the title comes first. */
    private static List<String> said(CalcDocument book, Setting setting) {
        return rows(book, setting).stream()
                .flatMap(List::stream)
                .map(CellResult::shown)
                .filter(words -> !words.isEmpty())
                .toList();
    }

    private static List<CellResult> row(CalcDocument book, Setting setting, String label) {
        return rows(book, setting).stream()
                .filter(row -> row.get(0).shown().equals(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError(label + " is not in " + said(book, setting)));
    }

    private static String amount(CalcDocument book, Setting setting, Phrase item) {
        return row(book, setting, setting.language().words(item)).get(1).shown();
    }

    private static String note(CalcDocument book, Setting setting, Phrase item) {
        return row(book, setting, setting.language().words(item)).get(2).shown();
    }

    private static String end(CalcDocument book, Setting setting, String kind) {
        return row(book, setting, kind).get(2).shown();
    }

    private static double halfTime(CalcDocument book, Setting setting, String kind) {
        return number(row(book, setting, kind).get(3).shown());
    }

    /** The first number in a text. */
    private static double number(String words) {
        return Double.parseDouble(words.replaceFirst("^[^0-9-]*", "").replaceFirst("[^0-9.].*$", ""));
    }
}
