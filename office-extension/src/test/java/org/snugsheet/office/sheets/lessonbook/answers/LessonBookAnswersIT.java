package org.snugsheet.office.sheets.lessonbook.answers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
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
import org.snugsheet.office.sheets.lessonbook.layout.JarsRows;
import org.snugsheet.office.sheets.lessonbook.readings.ReadingsPage;
import org.snugsheet.office.words.Language;

/**
 * The answers of the lesson book and its page for the wall, typed into.
 *
 * <p>The reference values are those of SciPy 1.x, worked out once, for surroundings of 1 °C and a start of 40 °C:
 *
 * <pre>{@code
 * import numpy as np; from scipy.optimize import curve_fit
 * t = np.arange(0, 31, 3.0)
 * (a, k), _ = curve_fit(lambda t, a, k: 1 + a * np.exp(-k * t), t, readings, p0=(39, .01), xtol=1e-14, ftol=1e-14)
 * np.log(2) / k, 39 * (1 - np.exp(-30 * k))
 * }</pre>
 */
@ExtendWith(SharedOffice.class)
class LessonBookAnswersIT {

    private static final Setting ENGLISH = new Setting(Language.ENGLISH, Scale.CELSIUS, Paper.A4);
    private static final double COLD = 1;
    private static final double[] BARE = {40, 37, 35, 33, 32, 30, 29, 27, 26, 25, 24};
    private static final double[] WOOL = {40, 39, 38, 38, 37, 36, 36, 35, 34, 34, 33};
    private static final double[] HAY = {41, 40, 39, 38, 37, 36, 36, 35, 34, 34, 33};
    private static final double BARE_HALF = 39.430350221967785;
    private static final double WOOL_HALF = 109.21355543389805;
    private static final double HAY_HALF = 94.2366958478002;
    private static final double BARE_LOST = 15.983971967553906;
    private static final double WOOL_LOST = 6.7615373542486585;

    private static final BookPlan PLAN = new BookPlan(BookPlan.dealt(List.of(), 4), 30, 3);
    private static final JarsRows ROWS = new JarsRows(PLAN);
    private static final String ANSWER = "Answers.A4";
    private static final String HELD = "Answers.A5";
    private static final String DETAILS = "Answers.A14:G60";
    private static final String SENTENCE = "Wall.A1";

    private final Office office;

    LessonBookAnswersIT(Office office) {
        this.office = office;
    }

    @Test
    void theWinnerIsSaidWithTheNumbersOfAnIndependentFit() {
        try (CalcDocument book = opened(LessonBook.of(PLAN), ENGLISH)) {
            type(book, 0, "no wrap", BARE);
            type(book, 1, "wool", WOOL);
            book.calculate();
            assertEquals(
                    "In first place: wool. That jar takes about 2.8 times as long to cool as the one in last place (no wrap).",
                    book.at(ANSWER).text(),
                    "109.2 / 39.4 = 2.77");
            assertEquals("", book.at(HELD).shown());
            assertEquals("First place: wool!", book.at(SENTENCE).text());
            assertEquals(List.of("wool", "no wrap", "", ""), shown(book, "Answers.B9:B12"));
            near(WOOL_HALF, half(book, 1));
            near(BARE_HALF, half(book, 0));
            near(WOOL_LOST, lost(book, 1));
            near(BARE_LOST, lost(book, 2));
            assertTrue(
                    book.at("Answers.D9").text().matches("109 \\([0-9]+ to [0-9]+\\)"),
                    book.at("Answers.D9").text());
            assertTrue(book.at("Answers.E9").text().startsWith("6.8 ("));
            assertEquals("16.0 °C", book.at("Wall.C4").text());
            assertEquals("–", book.at("Answers.G9").text(), "nothing is too close to call");
            assertEquals(List.of(), book.failing());
        }
    }

    /** A jar that began warmer: its own subtraction says 8, the bar says less, and both are beside each other. */
    @Test
    void ownSubtractionStandsBesideTheBar() {
        try (CalcDocument book = opened(LessonBook.of(PLAN), ENGLISH)) {
            type(book, 0, "no wrap", BARE);
            type(book, 1, "wool", WOOL);
            type(book, 2, "hay", HAY);
            book.calculate();
            near(HAY_HALF, half(book, 2));
            List<List<CellResult>> lines = book.all(DETAILS);
            List<CellResult> hay = line(lines, "hay");
            assertEquals("8", hay.get(2).shown());
            assertEquals("94 minutes", hay.get(3).shown());
            assertEquals("7.7", hay.get(4).shown());
            assertEquals("OK", hay.get(5).shown());
            assertEquals("7", line(lines, "wool").get(2).shown());
            assertEquals(
                    "Too close to call. These share first place: wool, hay. They take about 2.4 to 2.8 times as long to cool as the jar in last place (no wrap).",
                    book.at(ANSWER).text());
            assertEquals(
                    "A tie for first place: wool, hay. Too close to call!",
                    book.at(SENTENCE).text());
            assertEquals(List.of("hay", "wool", "–", ""), shown(book, "Answers.G9:G12"));
        }
    }

    @Test
    void aSlipHoldsItsJarBackFromEveryClaim() {
        try (CalcDocument book = opened(LessonBook.of(PLAN), ENGLISH)) {
            type(book, 0, "no wrap", BARE);
            type(book, 1, "wool", WOOL);
            type(book, 2, "hay", HAY);
            book.number(reading(1, 4), 73).calculate();
            assertEquals(
                    "In first place: hay. That jar takes about 2.4 times as long to cool as the one in last place (no wrap).",
                    book.at(ANSWER).text());
            assertEquals(
                    "Held back until somebody has looked at it: 2 wool.",
                    book.at(HELD).text());
            assertEquals(List.of("hay", "no wrap", "", ""), shown(book, "Wall.B3:B6"));
            List<CellResult> wool = line(book.all(DETAILS), "wool");
            assertEquals("–", wool.get(2).shown());
            assertEquals("–", wool.get(4).shown());
            assertTrue(wool.get(5).shown().contains("73"), wool.get(5).shown());
            String points = "Behind." + ROWS.shown(1);
            assertTrue(shown(book, points).stream().allMatch(String::isEmpty), "it has no points either");
            String curve = "Behind." + ROWS.curve(1, 0);
            assertTrue(shown(book, curve).stream().allMatch(String::isEmpty));
            assertEquals(List.of(), book.failing());
        }
    }

    @Test
    void whatIsMissingIsSaidStepByStep() {
        try (CalcDocument book = opened(LessonBook.of(PLAN), ENGLISH)) {
            book.calculate();
            assertEquals(
                    "No answer yet: name the wraps on the page Start.",
                    book.at(ANSWER).text());
            assertEquals(List.of(), book.failing());
            book.text(wrap(0), "no wrap").text(wrap(1), "wool").calculate();
            assertEquals(
                    "No answer yet: type what the thermometers read on the page Readings.",
                    book.at(ANSWER).text());
            type(book, 0, "no wrap", BARE);
            book.text("Start.B11", "").calculate();
            assertEquals(
                    "No answer yet: how cold is it around the jars? Type it on the page Start.",
                    book.at(ANSWER).text());
            book.number("Start.B11", COLD).calculate();
            assertEquals(
                    "No answer yet: only one jar can be used so far (1 no wrap). A comparison needs two.",
                    book.at(ANSWER).text());
            assertEquals("Still waiting for readings: 2 wool.", book.at(HELD).text());
            assertEquals(
                    "Our bars will grow here. We need the readings of two jars first.",
                    book.at(SENTENCE).text());
            assertTrue(texts(book, "Wall.A2:W20").stream()
                    .allMatch(words -> words.isEmpty() || words.startsWith("Name:")));
            type(book, 1, "no wrap", WOOL);
            book.calculate();
            assertEquals(
                    "No answer yet: the jars that can be used are all wrapped alike. A comparison needs two wraps.",
                    book.at(ANSWER).text());
            assertEquals(List.of(), book.failing());
        }
    }

    /** Water of 60 °C burns within seconds (US CPSC, document 5098), see PLAN.SAFE. */
    @Test
    void whatCanHurtComesFirst() {
        try (CalcDocument book = opened(LessonBook.of(PLAN), ENGLISH)) {
            type(book, 0, "no wrap", BARE);
            type(book, 1, "wool", WOOL);
            book.calculate();
            assertEquals("", book.at("Answers.A3").shown());
            book.number("Start.B12", 60).calculate();
            String hot = book.at("Answers.A3").text();
            assertTrue(hot.startsWith("Too hot for pupils: water of 60 °C (140 °F)"), hot);
            book.number("Start.B12", 40).number(reading(0, 0), 65).calculate();
            assertTrue(
                    book.at("Answers.A3").text().startsWith("Jar 1 (no wrap) – "),
                    book.at("Answers.A3").text());
        }
    }

    /** One switch changes what is shown; a difference of 1 °C is one of 1.8 °F by definition (NIST SP 811). */
    @Test
    void theOtherScaleIsShownWithoutTypingAgain() {
        try (CalcDocument book = opened(LessonBook.of(PLAN), ENGLISH)) {
            type(book, 0, "no wrap", BARE);
            type(book, 1, "wool", WOOL);
            book.text("Start.B9", "°F").calculate();
            near(1.8 * WOOL_LOST, lost(book, 1));
            near(1.8 * BARE_LOST, lost(book, 2));
            assertEquals("28.8 °F", book.at("Wall.C4").text());
            assertEquals(
                    "Degrees lost in 30 minutes, °F (short is good)",
                    book.at("Wall.A2").text());
            assertEquals(
                    "°F lost in 30 minutes, all starting at 104 °F",
                    book.at("Answers.E8").text());
            assertTrue(texts(book, "Wall.A8:W12").contains("One box is 2 °F. Color as many boxes as the jar lost."));
            near(WOOL_HALF, half(book, 1));
        }
    }

    @Test
    void twoJarsAreComparedOnDemand() {
        try (CalcDocument book = opened(LessonBook.of(PLAN), ENGLISH)) {
            type(book, 0, "no wrap", BARE);
            type(book, 1, "wool", WOOL);
            book.calculate();
            List<List<CellResult>> column = book.all("Answers.A1:A60");
            int row = 1;
            while (!column.get(row - 1).get(0).shown().equals("Compare two jars")) {
                row++;
            }
            String verdict = "Answers.A" + (row + 3);
            assertEquals("Choose two jars from the lists.", book.at(verdict).text());
            book.text("Answers.B" + (row + 1), "2 wool")
                    .text("Answers.B" + (row + 2), "1 no wrap")
                    .calculate();
            assertTrue(
                    book.at(verdict).text().startsWith("The first jar takes 2.77 times"),
                    book.at(verdict).text());
            book.number(reading(1, 4), 73).calculate();
            assertEquals(
                    "At least one of the two cannot be used yet: see its line above.",
                    book.at(verdict).text());
        }
    }

    /** The class that never was: five wraps tie, one jar has its digits swapped, and it is marked as invented until it is not. */
    @Test
    void theExampleIsMarkedAsInvented() {
        try (CalcDocument book = opened(LessonBook.example(), ENGLISH)) {
            book.calculate();
            assertTrue(book.at(ANSWER).text().startsWith("Too close to call. These share first place: "));
            assertTrue(
                    book.at(ANSWER).text().endsWith(" (invented)"),
                    book.at(ANSWER).text());
            assertTrue(book.at(SENTENCE).text().endsWith(" (invented)"));
            assertEquals(
                    "Held back until somebody has looked at it: 5 fleece.",
                    book.at(HELD).text());
            assertFalse(shown(book, "Wall.B3:B10").contains("fleece"));
            book.number(reading(4, 3), 38).calculate();
            assertEquals("", book.at(HELD).shown());
            assertTrue(shown(book, "Wall.B3:B10").contains("fleece"));
        }
    }

    private CalcDocument opened(LessonBook sheet, Setting setting) {
        return OpenedBooks.open(office, sheet, setting).calculatedOnlyWhenTold();
    }

    private static void type(CalcDocument book, int jar, String wrap, double... readings) {
        book.number("Start.B11", COLD).text(wrap(jar), wrap).numbersDown(reading(jar, 0), readings);
    }

    private static String wrap(int jar) {
        return "Start.F" + (8 + jar);
    }

    private static String reading(int jar, int reading) {
        return "Readings." + ReadingsPage.cell(jar, reading);
    }

    private static double half(CalcDocument book, int jar) {
        return book.at("Behind.O" + ROWS.jar(jar)).number();
    }

    private static double lost(CalcDocument book, int place) {
        return book.at("Behind.N" + (ROWS.rankingHead() + place)).number();
    }

    private static void near(double expected, double actual) {
        assertEquals(expected, actual, 1e-6 * expected);
    }

    private static List<CellResult> line(List<List<CellResult>> lines, String wrap) {
        return lines.stream()
                .filter(line -> line.get(1).shown().equals(wrap))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> shown(CalcDocument book, String column) {
        return book.all(column).stream().map(row -> row.get(0).shown()).toList();
    }

    private static List<String> texts(CalcDocument book, String cells) {
        return book.all(cells).stream()
                .flatMap(List::stream)
                .map(CellResult::shown)
                .toList();
    }
}
