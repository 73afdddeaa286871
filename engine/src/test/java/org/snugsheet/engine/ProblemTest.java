package org.snugsheet.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What every sentence must keep to, so that it can be said and translated. */
class ProblemTest {

    @ParameterizedTest
    @EnumSource(Problem.class)
    void everySentenceIsAPatternThatCanBeSaid(Problem problem) {
        String pattern = problem.english();
        int values = new MessageFormat(pattern, Locale.ENGLISH).getFormatsByArgumentIndex().length;
        Object[] arguments = new Object[values];
        String[] said = new String[values];
        for (int i = 0; i < values; i++) {
            Matcher place = Pattern.compile("\\{" + i + "(,number[^}]*)?}").matcher(pattern);
            assertTrue(place.find(), "the value {" + i + "} is never said: " + pattern);
            String format = place.group(1);
            arguments[i] = format == null ? "value" + i : (Object) (11.25 + i);
            said[i] = new MessageFormat("{0" + (format == null ? "" : format) + "}", Locale.ENGLISH)
                    .format(new Object[] {arguments[i]});
        }
        String sentence = new MessageFormat(pattern, Locale.ENGLISH).format(arguments);
        for (String value : said) {
            assertTrue(sentence.contains(value), sentence);
        }
        assertFalse(sentence.contains("{") || sentence.contains("}"), sentence);
    }

    @ParameterizedTest
    @EnumSource(Problem.class)
    void noSentenceHasTheApostropheThatWouldHideItsValues(Problem problem) {
        assertFalse(problem.english().contains("'"), problem.english());
    }

    @ParameterizedTest
    @EnumSource(Problem.class)
    void everySentenceBeginsAndEndsAsOne(Problem problem) {
        String sentence = problem.english();
        char first = sentence.charAt(0);
        assertTrue(Character.isUpperCase(first) || first == '“' || first == '{', sentence);
        // HELD_BACK ends in the sentence of another finding, and a list of those ends TOO_FEW_TO_RANK.
        boolean endsInAnother = problem == Problem.HELD_BACK || problem == Problem.TOO_FEW_TO_RANK;
        assertTrue(
                sentence.endsWith(".") || sentence.endsWith("?") || (endsInAnother && sentence.endsWith("}")),
                sentence);
        assertEquals(sentence.strip().replaceAll("\\s+", " "), sentence);
    }

    @ParameterizedTest
    @EnumSource(
            value = Problem.class,
            mode = EnumSource.Mode.MATCH_ANY,
            names = {"ROW_.*", "LAYER_.*"})
    void theTroubleOfARowSaysWhich(Problem problem) {
        String place = problem.name().startsWith("ROW_") ? "{0}: " : "Layer {0}";
        assertTrue(problem.english().startsWith(place), problem.english());
    }
}
