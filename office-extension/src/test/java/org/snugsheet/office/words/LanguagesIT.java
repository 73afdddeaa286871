package org.snugsheet.office.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.Problem;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.Families;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;

/** Cells speak the language of their document. */
@ExtendWith(SharedOffice.class)
class LanguagesIT {

    @ParameterizedTest
    @CsvSource({"es-MX", "fr-CA", "de-DE", "en-US"})
    void every_example_that_answers_in_words_does_so_in_the_language_of_the_document(String tag, Office office) {
        Language language = Language.of(tag);
        List<FunctionDeclaration> inWords = Families.functions().stream()
                .filter(function -> !function.function().answer().matches("[-0-9.]+"))
                .toList();
        Map<String, String> declared = new TreeMap<>();
        Map<String, String> answered = new TreeMap<>();
        try (CalcDocument sheet = office.newDocument().locale(tag)) {
            sheet.formulasDown(
                    "A1",
                    inWords.stream()
                            .map(function -> function.function().example())
                            .toList());
            for (int i = 0; i < inWords.size(); i++) {
                declared.put(inWords.get(i).name(), inWords.get(i).answer(language));
                answered.put(inWords.get(i).name(), sheet.at("A" + (i + 1)).text());
            }
        }
        assertEquals(lines(declared), lines(answered));
    }

    @Test
    void another_language_for_the_document_is_another_language_for_its_cells(Office office) {
        try (CalcDocument sheet = office.newDocument().locale("en-US")) {
            sheet.formula("A1", "CHECK.READINGS({0;5};{40;34};10)");
            CellResult english = sheet.at("A1");
            sheet.locale("de-DE").calculateAll();
            CellResult german = sheet.at("A1");

            assertEquals("Only 2 of the readings can be used, and 3 are needed. Take more readings.", english.text());
            assertEquals(Language.GERMAN.say(Problem.TOO_FEW_READINGS, 3, 2), german.text());
        }
    }

    private static String lines(Map<String, String> answers) {
        StringBuilder lines = new StringBuilder();
        answers.forEach((name, answer) ->
                lines.append(name).append(".answer=").append(answer).append('\n'));
        return lines.toString();
    }
}
