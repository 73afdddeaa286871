package org.snugsheet.office.sharing.living;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.office.words.Language;

/** A living copy refuses with a sentence what the functions refuse, and never answers with a wrong number. */
class LivingRefusalsTest {

    private static final String STEPS = "steps";

    /** The constant, the half-time, the start with their errors, the misfit, the surroundings with their error. */
    private static final int ANSWERS = 9;

    /** What is refused is what the grammar of the functions refuses; the sentences are those of the page. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 5 10 15 20 | 38 32 26 22 19 | 3    | 1 | C | NONE",
                "0 5 10 15 20 | 38 32 - _ 19   | 3    | 1 | C | NONE",
                "0 5 10 15 20 | 38 32 - _ _    | 3    | 1 | C | TOO_FEW",
                "0 5 10 15 20 | 38 32 26 22 19 | _    | 1 | C | AROUND_BLANK",
                "0 5 10 15 20 | 38 32 26 22 19 | fit  | 1 | C | AROUND_UNREADABLE",
                "0 5 10 15 20 | 38 32 26 22 19 | cold | 1 | C | AROUND_UNREADABLE",
                "0 5 10 15 20 | 38 32 warm 22 1| 3    | 1 | C | READING_UNREADABLE",
                "0 5 10 15 20 | 38 32 26 22 -5 | 3    | 1 | C | BEYOND",
                "0 5 10 15 20 | 38 32 26 22 -500 | 3  | 1 | C | TOO_COLD",
                "0 5 10 10 20 | 38 32 26 22 19 | 3    | 1 | C | NOT_RISING",
                "0 5 soon 15 20 | 38 32 26 22 19 | 3  | 1 | C | TIME_UNREADABLE",
                "0.375 0.379 0.382 0.386 0.389 | 38 32 26 22 19 | 3 | 1 | C | NOT_MINUTES",
                "0 5 10 15 20 | 38 32 26 22 19 | 3    | 0 | C | NO_MARK",
                "0 5 10 15 20 | 38 32 26 22 19 | 3    | 1 | R | NO_SCALE",
                "0 5 10 15 20 | 4 3 4 3 4      | 3    | 1 | C | SETTLED_ALREADY",
                "0 5 10 15 20 | 20 22 25 29 34 | 3    | 1 | C | MOVES_AWAY"
            })
    void saysWhy(String minutes, String readings, String around, String mark, String scale, String refusal) {
        Optional<LivingWords> why =
                refusal.equals("NONE") ? Optional.empty() : Optional.of(LivingWords.valueOf(refusal));
        PoiBook book = new PoiBook();
        Sheet sheet = book.sheet("jar");
        String[] times = minutes.strip().split(" +", -1);
        String[] typed = readings.strip().split(" +", -1);
        for (int i = 0; i < times.length; i++) {
            Row row = sheet.createRow(i);
            put(row, 0, times[i]);
            put(row, 1, typed[i]);
        }
        Row options = sheet.createRow(times.length);
        put(options, 0, around);
        put(options, 1, mark);
        put(options, 2, scale);
        StepsPage page = new StepsPage(STEPS, 0);
        Language language = Language.ENGLISH;
        CallSteps steps = new CallSteps(page, new OneTemperature(), 0, language);
        Translator.Table rate = steps.of(new CallSteps.Given(
                        "COOL.RATE",
                        java.util.List.of("$'jar'.A1:A5", "$'jar'.B1:B5", "$'jar'.A6", "$'jar'.B6", "$'jar'.C6"),
                        java.util.List.of("", "", "$'jar'.A6", "", "")))
                .orElseThrow();
        book.add(page);
        String answer = StepsPage.address(rate.column(), rate.row());
        // The reason stands above the constant.
        String reason = book.text(STEPS, StepsPage.address(rate.column(), rate.row() - 1));
        assertEquals(why.map(language::words).orElse(""), reason);
        for (int i = 0; i < ANSWERS; i++) {
            String shown = book.shown(STEPS, StepsPage.address(rate.column(), rate.row() + i));
            assertEquals(why.isPresent(), shown.equals("#N/A"), i + ": " + shown);
        }
        assertTrue(why.isPresent() || book.number(STEPS, answer) > 0.03);
    }

    private static void put(Row row, int column, String typed) {
        String content = typed.strip();
        if (!content.equals("_")) {
            PoiBook.put(
                    row.createCell(column), content.matches("-?[0-9.]+") ? (Object) Double.valueOf(content) : content);
        }
    }

    /** On the day of the copy the surroundings were one temperature. */
    private static final class OneTemperature implements Seen {

        @Override
        public Optional<Cells> named(String name) {
            return Optional.empty();
        }

        @Override
        public Object[][] answer(String formula) {
            return new Object[][] {{3.0}};
        }
    }
}
