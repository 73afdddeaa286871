package org.snugsheet.office.sheets.lessonbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.star.sheet.XCalculatable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.Printing;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.harness.WithoutExtension;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.sharing.living.Gnumeric;
import org.snugsheet.office.sheets.builder.Setting;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.JarsRows;
import org.snugsheet.office.sheets.lessonbook.readings.ReadingsPage;
import org.snugsheet.office.sheets.lessonbook.start.StartPage;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/**
 * A lesson book of the example class as a copy that goes on working, in two offices without the extension: its winner, order, rates, half-times,
 * curves and sentences, with other readings, are those that the extension gives.
 */
@ExtendWith(SharedOffice.class)
class LivingBookIT {

    private static final int JARS = 8;
    private static final JarsRows ROWS = new JarsRows(new BookPlan(BookPlan.dealt(List.of(), JARS), 30, 3));
    private static final double DIGITS = 1e-9;

    /** Larger than such a copy is, and half as large as it was when each of its steps was written with its value. */
    private static final long MOST = 370_000;

    /** The same of a book of twelve jars. */
    private static final long MOST_OF_TWELVE = 475_000;

    /** Other readings of the second to the last jar, none of which is a slip, and the swapped digits put right. */
    private static final List<String> TYPED = List.of("C8=36", "D9=33", "G8=38", "H10=36", "E12=35", "J5=41");

    /** What the example class read in the cell that is made too hot for a moment. */
    private static final double TYPED_BEFORE = 35;

    /** And in the cell whose digits are swapped. */
    private static final double SLIPPED_BEFORE = 34;

    /** What is compared: sentences and order, constants and half-times of each jar, the ranking, the bars, the curves. */
    private static final List<String> COMPARED = List.of(
            "Start.A22:A22",
            "Answers.A4:A5",
            "Answers.A8:G16",
            "Wall.A1:C10",
            "Behind.H" + ROWS.jar(0) + ":I" + ROWS.jar(JARS - 1),
            "Behind.M" + ROWS.jar(0) + ":Q" + ROWS.jar(JARS - 1),
            "Behind.A" + (ROWS.rankingHead() + 1) + ":W" + (ROWS.rankingHead() + JARS),
            "Behind.A" + (ROWS.curvesHead() + 1) + ":Y" + (ROWS.curvesHead() + 41));

    private final Office office;
    private final Office plain;

    LivingBookIT(Office office, @WithoutExtension Office plain) {
        this.office = office;
        this.plain = plain;
    }

    /** One test for all of it: a book takes long to fill. */
    @Test
    void itGoesOnWithoutTheExtensionAndComesBack(@TempDir Path folder) throws IOException, InterruptedException {
        Path copy = folder.resolve("living.xlsx");
        Path original = folder.resolve("original.ods");
        Path typed = folder.resolve("typed.xlsx");
        Setting english = new Setting(Language.ENGLISH, Scale.CELSIUS, Paper.A4);
        List<List<CellResult>> before;
        List<Object> heads;
        try (CalcDocument book = OpenedBooks.fresh(office, LessonBook.example(), english)) {
            before = compared(book.calculate());
            heads = CellLooks.weights(office, book, "Behind", ROWS.rankingHead());
            book.saveAs(original, FileFormat.ODS);
            String told = Menu.shareLiving(office, book, copy);
            assertTrue(Files.exists(copy), told);
            assertTrue(Files.size(copy) < MOST, () -> copy.toFile().length() + " bytes");
        }
        List<List<CellResult>> after;
        List<List<CellResult>> hurts;
        List<List<CellResult>> slipped;
        try (CalcDocument book = office.open(original)) {
            slipped = slipped(book);
            type(book);
            after = compared(book.calculate());
            hurts = hurts(book);
        }
        assertNotEquals(before, after, "the other readings tell something else");
        try (CalcDocument book = plain.open(copy)) {
            // As it opens: a person works nothing out anew before typing.
            same(slipped, slipped(book));
            same(before, compared(book));
            assertEquals(heads, CellLooks.weights(plain, book, "Behind", ROWS.rankingHead()));
            assertEquals(CellStyleName.NARROW_HEAD.styleName(), CellLooks.styleOfTexts(plain, book, "Step by step", 4));
            assertEquals("A1:A2", Printing.areas(plain, book, "Step by step"), "the steps are for the screen");
            assertEquals("A1:D2", Printing.areas(plain, book, "How this was worked out"), "a list of many pages");
            type(book);
            // Nothing but what depends on the readings is worked out again, as when somebody types.
            same(after, compared(book));
            same(hurts, hurts(book));
            book.saveAs(typed, FileFormat.XLSX);
        }
        try (CalcDocument book = office.open(typed)) {
            String told = Menu.choose(office, book, MenuItem.BRING_BACK, Menu.QUIET);
            assertTrue(told.contains("Step by step"), told);
            String rate = book.formulaAt("Behind.M" + ROWS.jar(0));
            assertTrue(rate.contains("COOL.RATE"), rate);
            same(after, compared(book.calculateAll()));
        }
        inAnotherProgram(folder, typed, COMPARED, after);
    }

    /** As many jars as a book can have, read by an invented class: how large the file is, and one change. */
    @Test
    void twelveJarsGoOnInASmallFile(@TempDir Path folder) throws IOException, InterruptedException {
        BookPlan plan = new BookPlan(BookPlan.dealt(List.of(), BookPlan.MOST_JARS), 30, 3);
        JarsRows rows = new JarsRows(plan);
        Path copy = folder.resolve("twelve.xlsx");
        List<String> told =
                List.of("Answers.A4:A5", "Behind.M" + rows.jar(0) + ":Q" + rows.jar(BookPlan.MOST_JARS - 1));
        List<List<CellResult>> before = new ArrayList<>();
        List<List<CellResult>> after;
        Setting english = new Setting(Language.ENGLISH, Scale.CELSIUS, Paper.A4);
        try (CalcDocument book =
                OpenedBooks.fresh(office, LessonBook.of(plan), english).calculatedOnlyWhenTold()) {
            book.number("Start." + StartPage.SURROUNDINGS, 1);
            Random random = new Random(20261128);
            for (int jar = 0; jar < plan.jars(); jar++) {
                double[] degrees = new double[plan.readings()];
                for (int i = 0; i < degrees.length; i++) {
                    double minutes = i * plan.interval();
                    degrees[i] =
                            Math.rint(1 + 39 * Math.exp(-(0.02 - 0.001 * jar) * minutes) + 0.3 * random.nextGaussian());
                }
                book.text("Start.F" + (8 + jar), "layers of newspaper: " + (jar + 1))
                        .numbersDown("Readings." + ReadingsPage.cell(jar, 0), degrees);
            }
            book.calculate();
            Uno.as(XCalculatable.class, book.uno()).enableAutomaticCalculation(true);
            told.forEach(range -> before.addAll(book.values(range)));
            String said = Menu.shareLiving(office, book, copy);
            assertTrue(Files.exists(copy), said);
            assertTrue(Files.size(copy) < MOST_OF_TWELVE, () -> copy.toFile().length() + " bytes");
            after = changed(book, told);
        }
        try (CalcDocument book = plain.open(copy)) {
            same(after, changed(book, told));
        }
        // As it was written, not as an office saves it again.
        inAnotherProgram(folder, copy, told, before);
    }

    private static List<List<CellResult>> changed(CalcDocument book, List<String> told) {
        List<List<CellResult>> all = new ArrayList<>();
        book.number("Readings." + ReadingsPage.cell(2, 4), 33);
        told.forEach(range -> all.addAll(book.values(range)));
        assertTrue(isNumber(all.get(all.size() - 1).get(0)), () -> String.valueOf(all));
        return all;
    }

    /** Gnumeric, where it is installed, works out everything anew and writes each page as text. */
    private static void inAnotherProgram(Path folder, Path typed, List<String> ranges, List<List<CellResult>> after)
            throws IOException, InterruptedException {
        assumeTrue(Gnumeric.isThere(), "Gnumeric’s ssconvert is not installed: the copy was tried in the office only");
        Map<String, List<String>> pages = Gnumeric.workOut(typed, Files.createTempDirectory(folder, "gnumeric"));
        for (String page : new TreeSet<>(
                ranges.stream().map(range -> range.split("\\.", -1)[0]).toList())) {
            List<String> lines = pages.getOrDefault(page, List.of());
            assertFalse(lines.isEmpty(), page);
            for (String line : lines) {
                assertFalse(line.matches(".*#(VALUE|REF|NAME)[!?].*"), line);
            }
            int at = 0;
            for (String range : ranges) {
                List<List<CellResult>> cells = after.subList(at, at + rows(range));
                at += rows(range);
                if (range.startsWith(page + ".")) {
                    sameText(cells, lines, range);
                }
            }
        }
    }

    private static void type(CalcDocument book) {
        for (String cell : TYPED) {
            String[] parts = cell.split("=", -1);
            book.number("Readings." + parts[0], Double.parseDouble(parts[1]));
        }
    }

    /** What is said below each jar while digits of one are swapped. */
    private static List<List<CellResult>> slipped(CalcDocument book) {
        book.number("Readings.D9", 43);
        List<List<CellResult>> told = book.values("Behind.I" + ROWS.jar(0) + ":I" + ROWS.jar(JARS - 1));
        assertEquals("look at minute 12", told.get(1).get(0).shown(), () -> String.valueOf(told));
        book.number("Readings.D9", SLIPPED_BEFORE);
        return told;
    }

    /** What is told of water that scalds, typed for a moment. */
    private static List<List<CellResult>> hurts(CalcDocument book) {
        book.number("Readings.D8", 61.5);
        List<List<CellResult>> told = book.values("Behind.K" + ROWS.jar(0) + ":K" + ROWS.jar(JARS - 1));
        assertTrue(told.get(1).get(0).shown().contains("61.5 °C"), () -> String.valueOf(told));
        book.number("Readings.D8", TYPED_BEFORE);
        return told;
    }

    private static List<List<CellResult>> compared(CalcDocument book) {
        List<List<CellResult>> all = new ArrayList<>();
        COMPARED.forEach(range -> all.addAll(book.values(range)));
        return all;
    }

    private static int rows(String range) {
        String[] numbers = range.replaceAll("[^0-9:]", "").split(":", -1);
        return Integer.parseInt(numbers[1]) - Integer.parseInt(numbers[0]) + 1;
    }

    private static void same(List<List<CellResult>> expected, List<List<CellResult>> found) {
        assertEquals(expected.size(), found.size());
        for (int row = 0; row < expected.size(); row++) {
            for (int column = 0; column < expected.get(row).size(); column++) {
                CellResult one = expected.get(row).get(column);
                CellResult other = found.get(row).get(column);
                if (isNumber(one)) {
                    assertEquals(one.number(), other.number(), DIGITS * Math.max(1e-3, Math.abs(one.number())));
                } else {
                    assertEquals(one.shown(), other.shown());
                }
            }
        }
    }

    private static boolean isNumber(CellResult cell) {
        return cell instanceof CellResult.OfNumber;
    }

    private static void sameText(List<List<CellResult>> cells, List<String> lines, String range) {
        int top = Integer.parseInt(range.replaceAll("^[^.]*\\.[A-Z]+", "").split(":", -1)[0]);
        int left = range.replaceAll("^[^.]*\\.", "").charAt(0) - 'A';
        for (int row = 0; row < cells.size(); row++) {
            String[] line = lines.get(top - 1 + row).split("\t", -1);
            for (int column = 0; column < cells.get(row).size(); column++) {
                CellResult expected = cells.get(row).get(column);
                String found = left + column < line.length ? line[left + column] : "";
                String where = String.format(Locale.ROOT, "%s, row %d, column %d", range, row + 1, column + 1);
                if (isNumber(expected)) {
                    assertEquals(
                            expected.number(),
                            Double.parseDouble(found),
                            DIGITS * Math.max(1e-3, Math.abs(expected.number())),
                            where);
                } else {
                    assertEquals(expected.shown(), found, where);
                }
            }
        }
    }
}
