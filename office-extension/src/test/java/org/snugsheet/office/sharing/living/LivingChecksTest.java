package org.snugsheet.office.sharing.living;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.summary.JarSummary;
import org.snugsheet.engine.summary.TypedJar;
import org.snugsheet.office.functions.check.ProblemWords;
import org.snugsheet.office.words.Language;

/** Checks in a living copy: what was found on the day of the copy, and what a reading that was typed later may do to somebody. */
class LivingChecksTest {

    private static final List<Double> READINGS = List.of(40.0, 36.0, 33.0, 30.0, 27.0, 25.0, 23.0);
    private static final String SHEET = "jar";
    private static final String STEPS = "steps";

    /** Building Bulletin 87: no more than 43 °C. The words are those of the engine’s own check of such a jar. */
    @ParameterizedTest
    @EnumSource(Language.class)
    void aHotReadingIsToldInTheWordsOfTheChecks(Language language) {
        String sentence = sentence(0, 52.5, language);
        List<List<String>> table = checked(language, 0, 52.5);
        assertEquals("1", table.get(1).get(0));
        assertEquals(Finding.whatIsWrong(sentence), table.get(1).get(1));
        assertEquals(language.words(ProblemWords.CAN_HURT), table.get(1).get(2));
        assertEquals(Finding.whatToDo(sentence), table.get(1).get(3));
    }

    /** It hides nothing that the readings say else: the first is far from the curve of the others. */
    @Test
    void whatIsFoundElseComesBelow() {
        List<List<String>> table = checked(Language.ENGLISH, 6, 70.0);
        assertEquals("7", table.get(1).get(0));
        assertTrue(
                table.get(1).get(1).startsWith("Row 7 (minute 30): water of 70"),
                table.get(1).get(1));
        assertEquals("sure", table.get(2).get(2));
    }

    @Test
    void whatIsNotTooHotIsNotTold() {
        assertEquals("a caution", checked(Language.ENGLISH, 0, 43.0).get(1).get(2));
        assertEquals("a caution", checked(Language.ENGLISH, 3, 30.5).get(1).get(2));
        assertEquals("OK", checked(Language.ENGLISH, 3, 30.0).get(1).get(1));
        // Steam is in no jar.
        assertTrue(checked(Language.ENGLISH, 0, 500.0).get(1).get(2).matches("sure|a caution"));
    }

    @Test
    void aWordIsFoundInItsRow() {
        List<String> found = checked(Language.ENGLISH, 3, "warm").get(1);
        assertEquals(List.of("4", "A reading is not a temperature.", "sure", ""), found);
    }

    private static String sentence(int line, double typed, Language language) {
        List<Entry> minutes = new ArrayList<>();
        List<Entry> readings = new ArrayList<>();
        for (int i = 0; i < READINGS.size(); i++) {
            minutes.add(Entry.of(5.0 * i));
            readings.add(Entry.of(i == line ? typed : READINGS.get(i)));
        }
        TypedJar jar = new TypedJar(
                Optional.empty(),
                minutes,
                readings,
                List.of(Entry.of(3.0)),
                Graduation.of(0.5, Scale.CELSIUS),
                Scale.CELSIUS);
        return language.say(JarSummary.of(jar).findings().get(0).finding());
    }

    /** The table after another reading was typed. */
    private static List<List<String>> checked(Language language, int changed, Object typed) {
        PoiBook book = new PoiBook();
        Sheet sheet = book.sheet(SHEET);
        int n = READINGS.size();
        for (int i = 0; i < n; i++) {
            Row row = sheet.createRow(i);
            row.createCell(0).setCellValue(5.0 * i);
            if (i == changed && typed instanceof String word) {
                row.createCell(1).setCellValue(word);
            } else {
                row.createCell(1).setCellValue(i == changed ? (double) typed : READINGS.get(i));
            }
        }
        Row options = sheet.createRow(n);
        options.createCell(0).setCellValue(3.0);
        options.createCell(1).setCellValue(0.5);
        StepsPage page = new StepsPage(STEPS, 0);
        CallSteps steps = new CallSteps(page, new FoundNothing(), 0, language);
        String times = "$'jar'.A1:A" + n;
        String readings = "$'jar'.B1:B" + n;
        List<String> arguments = List.of(times, readings, "$'jar'.A" + (n + 1), "$'jar'.B" + (n + 1), "\"C\"");
        Translator.Table table =
                steps.of(new CallSteps.Given("CHECK.ALL", arguments, arguments)).orElseThrow();
        book.add(page);
        List<List<String>> shown = new ArrayList<>();
        for (int row = 0; row < 3; row++) {
            List<String> line = new ArrayList<>();
            for (int column = 0; column < 4; column++) {
                String at = StepsPage.address(table.column() + column, table.row() + row);
                double number = book.number(STEPS, at);
                line.add(
                        Double.isNaN(number)
                                ? String.valueOf(book.text(STEPS, at))
                                : String.valueOf(Math.round(number)));
            }
            shown.add(line);
        }
        return shown;
    }

    /** On the day of the copy nothing was found. */
    private static final class FoundNothing implements Seen {

        @Override
        public Optional<Cells> named(String name) {
            return Optional.empty();
        }

        @Override
        public Object[][] answer(String formula) {
            if (formula.startsWith("CHECK.ALL")) {
                return new Object[][] {{"Row", "What is wrong", "How sure", "What to do"}, {"", "OK", "", ""}};
            }
            if (formula.endsWith("A7") || formula.endsWith("B7")) {
                Object[][] then = new Object[READINGS.size()][1];
                for (int i = 0; i < then.length; i++) {
                    then[i][0] = formula.endsWith("A7") ? Double.valueOf(5.0 * i) : READINGS.get(i);
                }
                return then;
            }
            return new Object[][] {{formula.endsWith("A8") ? 3.0 : 0.5}};
        }
    }
}
