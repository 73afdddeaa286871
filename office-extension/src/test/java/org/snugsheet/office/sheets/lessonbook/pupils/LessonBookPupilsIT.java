package org.snugsheet.office.sheets.lessonbook.pupils;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.awt.Size;
import com.sun.star.container.XNamed;
import com.sun.star.drawing.XDrawPage;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.frame.XStorable;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Setting;
import org.snugsheet.office.sheets.lessonbook.LessonBook;
import org.snugsheet.office.sheets.lessonbook.OpenedBooks;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** The pages for pupils of a lesson book: what is on them, for each group, on paper. */
@ExtendWith(SharedOffice.class)
class LessonBookPupilsIT {

    private static final Setting GERMAN = new Setting(Language.GERMAN, Scale.CELSIUS, Paper.A4);
    private static final Setting AMERICAN = new Setting(Language.ENGLISH, Scale.FAHRENHEIT, Paper.LETTER);

    /** Large print for pupils, in points; what is asked of these pages. */
    private static final float LEAST_TYPE = 12;

    /** A4 is 210 mm wide (ISO 216), less two margins of 10 mm: what is no wider is printed in its own size on Letter, too. */
    private static final int MOST_WIDTH = 19_000;

    private static final Pattern ADULT = Pattern.compile(
            "caution|password|protected|vorsicht|kennwort|achtung|precaución|contraseña|attention|mot de passe|scald|43 °c|109 °f",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    private final Office office;

    LessonBookPupilsIT(Office office) {
        this.office = office;
    }

    @ParameterizedTest
    @CsvSource({"3, 30, 3", "12, 30, 1"})
    void eachGroupHasASheetOfPaperOnEachPage(int jars, int minutes, int interval, @TempDir Path folder)
            throws IOException {
        try (CalcDocument book = filled(named(jars, minutes, interval), AMERICAN)) {
            for (Paper paper : Paper.values()) {
                office.call("changing the paper", () -> {
                    PrintSetup.printOn(paper, book.uno());
                    return true;
                });
                for (BookWords page : List.of(BookWords.PICTURES_PAGE, BookWords.NUMBERS_PAGE)) {
                    String pdf = printed(book, page.english(), folder);
                    assertEquals(jars, sheetsOfPaper(pdf), page + " on " + paper);
                    assertTrue(pdf.contains("/Marked true"), "tagged, for a screen reader");
                }
            }
            // A dozen groups that read each minute are the largest book there is.
            Path ods = book.saveAs(folder.resolve("book.ods"), FileFormat.ODS);
            assertTrue(Files.size(ods) < 300_000, Files.size(ods) + " bytes");
        }
    }

    @ParameterizedTest
    @EnumSource
    void theWordsAreThoseOfChildrenInOneLanguage(Language language) {
        Setting setting = new Setting(language, Scale.CELSIUS, Paper.A4);
        Set<String> theirs =
                Arrays.stream(PupilWords.values()).map(language::words).collect(Collectors.toCollection(TreeSet::new));
        try (CalcDocument book = filled(named(2, 30, 10), setting)) {
            for (BookWords page : List.of(BookWords.PICTURES_PAGE, BookWords.NUMBERS_PAGE)) {
                String tab = language.words(page);
                for (String shown : texts(book, tab)) {
                    assertFalse(ADULT.matcher(shown).find(), shown);
                    boolean isNumber = shown.matches("[−-]?[0-9]+( °[CF]| min)?|°[CF]|min");
                    boolean isGroup =
                            shown.startsWith(language.say(PupilWords.GROUP, "").strip());
                    assertTrue(isNumber || isGroup || theirs.contains(shown), shown + " in " + language);
                }
                List<String[]> drawings = drawings(book, tab);
                assertEquals(page == BookWords.PICTURES_PAGE ? 6 * 2 : 0, drawings.size());
                for (String[] drawing : drawings) {
                    assertTrue(theirs.contains(drawing[0]) && drawing[0].length() > 5, drawing[0]);
                    assertTrue(theirs.contains(drawing[1]) && drawing[1].length() > 30, drawing[1]);
                }
            }
        }
    }

    /** Children who learn to read get a word or two at a time: an instruction has five words at most. */
    @ParameterizedTest
    @EnumSource
    void instructionsForTheYoungestAreShort(Language language) {
        for (PupilWords words : EnumSet.of(
                PupilWords.NAME, PupilWords.DRAW_JAR, PupilWords.GUESS, PupilWords.COLOR, PupilWords.CIRCLE_FACE)) {
            for (String sentence : language.words(words).split("[.]")) {
                long count = Arrays.stream(sentence.split("\\s+"))
                        .filter(word -> word.matches(".*\\p{L}.*"))
                        .count();
                assertTrue(count <= 5, sentence);
            }
        }
    }

    @Test
    void eachGroupSeesItsWrapAlsoOneThatNobodyNamed() {
        try (CalcDocument book = filled(new BookPlan(List.of("Wolle", "", "Laub"), 30, 3), GERMAN)) {
            for (BookWords page : List.of(BookWords.PICTURES_PAGE, BookWords.NUMBERS_PAGE)) {
                List<String> shown = texts(book, Language.GERMAN.words(page));
                assertTrue(
                        shown.containsAll(List.of("Gruppe 1: Wolle", "Gruppe 2", "Gruppe 3: Laub")), shown::toString);
                assertTrue(shown.indexOf("Gruppe 1: Wolle") < shown.indexOf("Gruppe 2"), "in the order of the jars");
            }
        }
    }

    /** Cold air is planned with 2 °C or 36 °F, the start with 40 °C or 104 °F, as the first page says. */
    @Test
    void theScaleOfThermometersAndSquaresFollowsTheFirstPage() {
        try (CalcDocument book = filled(named(2, 30, 3), new Setting(Language.ENGLISH, Scale.CELSIUS, Paper.A4))) {
            assertEquals(steps(0, 5, "C"), marks(book, 0));
            start(book, "typed_scale", "°F");
            assertEquals(steps(30, 10, "F"), marks(book, 0));
            assertEquals(steps(30, 10, "F"), marks(book, 1));
            start(book, "typed_scale", "°C");
            // The second jar has a thermometer of its own.
            office.call("typing", () -> {
                Uno.as(XSpreadsheet.class, Uno.sheets(book.uno()).get(0))
                        .getCellRangeByName("H9")
                        .getCellByPosition(0, 0)
                        .setFormula("°F");
                return true;
            });
            book.calculate();
            assertEquals(steps(0, 5, "C"), marks(book, 0));
            assertEquals(steps(30, 10, "F"), marks(book, 1));
        }
    }

    @Test
    void theScaleReachesFromBelowTheSurroundingsToAboveTheStart() {
        try (CalcDocument book = filled(named(2, 30, 3), AMERICAN)) {
            reaches(book, "C", 0, 40, -5, 5);
            reaches(book, "C", 1, 40, 0, 5);
            reaches(book, "C", -7, 40, -10, 10);
            reaches(book, "C", -30, 40, -40, 10);
            reaches(book, "C", 12, 43, 10, 5);
            reaches(book, "F", 36, 104, 30, 10);
            reaches(book, "F", 32, 109, 30, 10);
            reaches(book, "F", 0, 104, -20, 20);
        }
    }

    private void reaches(CalcDocument book, String scale, int cold, int start, int lowest, int step) {
        start(book, "typed_scale", "°" + scale);
        start(book, "typed_surroundings", String.valueOf(cold));
        start(book, "typed_start", String.valueOf(start));
        assertEquals(steps(lowest, step, scale), marks(book, 0));
        assertTrue(lowest < cold && lowest + 10 * step > start);
    }

    @Test
    void theMinutesAlongTheBottomReachToTheEndOfTheLesson() {
        int[][] lessons = {{6, 1}, {7, 2}, {18, 3}, {30, 5}, {45, 10}, {60, 10}, {90, 15}, {360, 60}, {500, 120}};
        try (CalcDocument book = filled(named(2, 30, 3), AMERICAN)) {
            for (int[] lesson : lessons) {
                start(book, "typed_lesson", String.valueOf(lesson[0]));
                List<String> minutes = IntStream.rangeClosed(0, 6)
                        .mapToObj(mark -> mark * lesson[1] + (mark == 6 ? " min" : ""))
                        .toList();
                List<String> shown = texts(book, BookWords.NUMBERS_PAGE.english());
                int at = shown.indexOf(minutes.get(6));
                assertTrue(at >= 6, minutes + " are not in " + shown);
                assertEquals(minutes, shown.subList(at - 6, at + 1));
                assertTrue(6 * lesson[1] >= lesson[0]);
            }
        }
    }

    @Test
    void theTypeIsLargeAndPrintedInItsOwnSize() {
        try (CalcDocument book = filled(named(2, 30, 3), GERMAN)) {
            office.call("measuring", () -> {
                for (XSpreadsheet page : pupils(book, Language.GERMAN)) {
                    CellRangeAddress area = Uno.as(XPrintAreas.class, page).getPrintAreas()[0];
                    Object all =
                            page.getCellRangeByPosition(area.StartColumn, area.StartRow, area.EndColumn, area.EndRow);
                    assertTrue(((Size) Uno.property(all, "Size")).Width <= MOST_WIDTH, "shrunk on paper");
                    short filled = (short) (CellFlags.STRING | CellFlags.FORMULA | CellFlags.VALUE);
                    for (CellRangeAddress part : Uno.as(XCellRangesQuery.class, page)
                            .queryContentCells(filled)
                            .getRangeAddresses()) {
                        for (int row = part.StartRow; row <= part.EndRow; row++) {
                            for (int column = part.StartColumn; column <= part.EndColumn; column++) {
                                float points = (float) Uno.property(page.getCellByPosition(column, row), "CharHeight");
                                assertTrue(
                                        points >= LEAST_TYPE
                                                || page.getCellByPosition(column, row)
                                                        .getFormula()
                                                        .isBlank(),
                                        points + " points in row " + row);
                            }
                        }
                    }
                }
                return true;
            });
        }
    }

    private CalcDocument filled(LessonBook sheet, Setting setting) {
        return OpenedBooks.fresh(office, sheet, setting).calculate();
    }

    private CalcDocument filled(BookPlan plan, Setting setting) {
        return filled(LessonBook.of(plan), setting);
    }

    /** Jars with wraps of long names, such as a class gives them. */
    private static BookPlan named(int jars, int minutes, int interval) {
        return new BookPlan(
                IntStream.rangeClosed(1, jars)
                        .mapToObj(jar -> "two old ski socks number " + jar)
                        .toList(),
                minutes,
                interval);
    }

    private static List<String> steps(int lowest, int step, String scale) {
        return IntStream.rangeClosed(0, 10)
                .mapToObj(mark -> lowest + mark * step + (mark == 10 ? " °" + scale : ""))
                .toList();
    }

    /** The numbers beside the squares of a jar, from the lowest; those beside its three thermometers must be the same. */
    private List<String> marks(CalcDocument book, int jar) {
        List<String> squares = numbers(group(book, Language.ENGLISH.words(BookWords.NUMBERS_PAGE), jar), 0);
        List<List<String>> pictures = group(book, Language.ENGLISH.words(BookWords.PICTURES_PAGE), jar);
        for (int column : new int[] {1, 6, 11}) {
            assertEquals(squares, numbers(pictures, column));
        }
        return squares;
    }

    private static List<String> numbers(List<List<String>> rows, int column) {
        List<String> numbers = new ArrayList<>();
        for (List<String> row : rows) {
            if (row.get(column).matches("-?[0-9]+( °[CF])?")) {
                numbers.add(0, row.get(column));
            }
        }
        return numbers;
    }

    /** The rows of one group. */
    private List<List<String>> group(CalcDocument book, String page, int jar) {
        List<List<String>> rows = shown(book, page);
        List<Integer> tops = IntStream.range(0, rows.size())
                .filter(row -> rows.get(row).get(0).startsWith("Group "))
                .boxed()
                .toList();
        return rows.subList(tops.get(jar), jar + 1 < tops.size() ? tops.get(jar + 1) : rows.size());
    }

    private List<String> texts(CalcDocument book, String page) {
        return shown(book, page).stream()
                .flatMap(List::stream)
                .filter(shown -> !shown.isBlank())
                .toList();
    }

    /** All cells of a page; one that shows an error has no value and is told apart. */
    private List<List<String>> shown(CalcDocument book, String page) {
        return office.call("reading " + page, () -> {
            XSpreadsheet sheet =
                    Uno.as(XSpreadsheet.class, book.uno().getSheets().getByName(page));
            Object[][] values = Uno.as(XCellRangeData.class, sheet.getCellRangeByName("A1:AI240"))
                    .getDataArray();
            return Arrays.stream(values)
                    .map(row ->
                            Arrays.stream(row).map(LessonBookPupilsIT::written).toList())
                    .toList();
        });
    }

    private static String written(Object value) {
        return value instanceof Double number
                ? String.valueOf(Math.round(number))
                : value instanceof String text ? text : "an error";
    }

    private void start(CalcDocument book, String name, String typed) {
        office.call("typing " + typed, () -> {
            Object names = Uno.property(book.uno(), "NamedRanges");
            Object range =
                    Uno.as(com.sun.star.container.XNameAccess.class, names).getByName(name);
            Uno.as(
                            com.sun.star.table.XCellRange.class,
                            Uno.as(com.sun.star.sheet.XCellRangeReferrer.class, range)
                                    .getReferredCells())
                    .getCellByPosition(0, 0)
                    .setFormula(typed);
            return true;
        });
        book.calculate();
    }

    private List<String[]> drawings(CalcDocument book, String tab) {
        return office.call("looking at drawings", () -> {
            XDrawPage paper = Uno.as(
                            XDrawPageSupplier.class, book.uno().getSheets().getByName(tab))
                    .getDrawPage();
            List<String[]> all = new ArrayList<>();
            for (int i = 0; i < paper.getCount(); i++) {
                Object shape = paper.getByIndex(i);
                all.add(new String[] {
                    Uno.property(shape, "Title").toString(),
                    Uno.property(shape, "Description").toString()
                });
            }
            return all;
        });
    }

    private static List<XSpreadsheet> pupils(CalcDocument book, Language language) throws com.sun.star.uno.Exception {
        List<XSpreadsheet> pages = new ArrayList<>();
        for (BookWords page : List.of(BookWords.PICTURES_PAGE, BookWords.NUMBERS_PAGE)) {
            pages.add(Uno.as(XSpreadsheet.class, book.uno().getSheets().getByName(language.words(page))));
        }
        return pages;
    }

    /** Prints one page, all that is on its sheets of paper, as a tagged PDF. */
    private String printed(CalcDocument book, String tab, Path folder) throws IOException {
        Path file = folder.resolve("printed.pdf").toAbsolutePath();
        office.call("printing", () -> {
            List<CellRangeAddress[]> areas = new ArrayList<>();
            for (XSpreadsheet sheet : Uno.sheets(book.uno())) {
                XPrintAreas its = Uno.as(XPrintAreas.class, sheet);
                areas.add(its.getPrintAreas());
                if (!Uno.as(XNamed.class, sheet).getName().equals(tab)) {
                    its.setPrintAreas(new CellRangeAddress[0]);
                }
            }
            Uno.as(XStorable.class, book.uno())
                    .storeToURL(file.toUri().toString(), new com.sun.star.beans.PropertyValue[] {
                        Uno.named("FilterName", "calc_pdf_Export"),
                        Uno.named(
                                "FilterData", new com.sun.star.beans.PropertyValue[] {Uno.named("UseTaggedPDF", true)}),
                        Uno.named("Overwrite", true)
                    });
            List<XSpreadsheet> sheets = Uno.sheets(book.uno());
            for (int i = 0; i < sheets.size(); i++) {
                Uno.as(XPrintAreas.class, sheets.get(i)).setPrintAreas(areas.get(i));
            }
            return true;
        });
        return Files.readString(file, StandardCharsets.ISO_8859_1);
    }

    private static long sheetsOfPaper(String pdf) {
        return Pattern.compile("/Type ?/Page[^s]").matcher(pdf).results().count();
    }
}
