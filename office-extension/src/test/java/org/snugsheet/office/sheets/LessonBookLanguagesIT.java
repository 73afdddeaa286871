package org.snugsheet.office.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSpreadsheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.sheets.builder.Setting;
import org.snugsheet.office.sheets.lessonbook.LessonBook;
import org.snugsheet.office.sheets.lessonbook.OpenedBooks;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.sheets.lessonbook.readings.ReadingsPage;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** All pages of a lesson book in each language: the words are of that language, and none is cut off. */
@ExtendWith(SharedOffice.class)
class LessonBookLanguagesIT {

    /** The enums with the words of the book, by the beginning of their keys. */
    private static final Set<String> OF_BOOK = Set.of(
            "AnswerWords",
            "BehindWords",
            "BookWords",
            "NoteWords",
            "PlanWords",
            "PupilWords",
            "ReadingWords",
            "StartWords",
            "WallWords",
            "SharedWords");

    private final Office office;

    LessonBookLanguagesIT(Office office) {
        this.office = office;
    }

    @ParameterizedTest
    @EnumSource
    void theExampleSpeaksItsLanguageAndAllOfItCanBeRead(Language language) throws Exception {
        try (CalcDocument book = opened(LessonBook.example(), language)) {
            List<String> shown = texts(book);
            assertEquals(List.of(), book.failing());
            assertEquals(List.of(), ForeignWords.among(shown, language, OF_BOOK));
            assertTrue(shown.size() > 400, "it has words: " + shown.size());
            List<List<TextFits>> pages = pages(book, 0, 8);
            assertEquals("", cutOff(pages));
            String start = book.sheetNames().get(0);
            for (int place = 1; place <= 3; place++) {
                book.formula(start + ".B10", "=INDEX(offered_places;" + place + ")")
                        .calculate();
                assertEquals(
                        "", cutOff(pages.subList(0, 2)), book.at(start + ".B10").text());
            }
            // What can hurt is said at the greatest length, and last of all may it be cut off.
            String hot = book.sheetNames().get(4) + "." + ReadingsPage.cell(2, 0);
            book.number(hot, language == Language.ENGLISH ? 140 : 60).calculate();
            assertEquals("", cutOff(pages.subList(4, 6)));
            String other = language == Language.ENGLISH ? "°C" : "°F";
            book.text(start + ".B7", other).text(start + ".B9", other).calculate();
            assertEquals(List.of(), book.failing(), "on the other scale");
            assertNotEquals(
                    "", book.at(language.words(BookWords.ANSWERS_PAGE) + ".A4").shown());
        }
    }

    @ParameterizedTest
    @CsvSource({"2, FRENCH", "5, GERMAN", "12, ENGLISH", "12, SPANISH"})
    void nothingIsCutOffHoweverManyJars(int jars, Language language) {
        BookPlan plan = new BookPlan(BookPlan.dealt(List.of("newspaper", "Oma", "leaves"), jars), 60, 2);
        try (CalcDocument book = opened(LessonBook.of(plan), language)) {
            assertEquals("", cutOff(pages(book, 0, 2)) + cutOff(pages(book, 4, 7)));
        }
    }

    /** Those of all pages but the one behind, and the names of all. */
    private List<String> texts(CalcDocument book) {
        List<String> names = book.sheetNames();
        return office.call("reading all pages", () -> {
            List<String> texts = new ArrayList<>(names);
            for (String name : names.subList(0, names.size() - 1)) {
                XSpreadsheet page =
                        Uno.as(XSpreadsheet.class, book.uno().getSheets().getByName(name));
                for (Object[] row : Uno.as(XCellRangeData.class, page.getCellRangeByName("A1:Z600"))
                        .getDataArray()) {
                    Stream.of(row)
                            .filter(cell -> cell instanceof String text && !text.isEmpty())
                            .forEach(text -> texts.add((String) text));
                }
            }
            return texts;
        });
    }

    private List<List<TextFits>> pages(CalcDocument book, int first, int end) {
        return office.call("looking at pages", () -> {
            List<List<TextFits>> pages = new ArrayList<>();
            for (XSpreadsheet page : Uno.sheets(book.uno()).subList(first, end)) {
                pages.add(TextFits.of(page));
            }
            return pages;
        });
    }

    private String cutOff(List<List<TextFits>> pages) {
        return office.call("looking at pages", () -> {
            List<String> cut = new ArrayList<>();
            for (List<TextFits> page : pages) {
                for (TextFits area : page) {
                    cut.addAll(area.cutOff());
                }
            }
            return String.join("\n", cut);
        });
    }

    private CalcDocument opened(LessonBook book, Language language) {
        Setting setting = language == Language.ENGLISH
                ? new Setting(language, Scale.FAHRENHEIT, Paper.LETTER)
                : new Setting(language, Scale.CELSIUS, Paper.A4);
        return OpenedBooks.fresh(office, book, setting).calculate();
    }
}
