package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.Locale;
import com.sun.star.uno.Any;
import java.lang.reflect.Proxy;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.Problem;
import org.snugsheet.office.functions.check.ProblemWords;
import org.snugsheet.office.words.Language;

/**
 * Every check of readings says that water is too hot for pupils, above the 43 °C (109 °F) of UK Department for Education, Building
 * Bulletin 87 (2003), and leaves the results as they are. The readings follow Newton’s law towards 5 °C.
 */
class HotWaterChecksTest {

    private static final Object LEFT_OUT = Any.VOID;
    private static final double[] MINUTES = {0, 5, 10, 15, 20, 25, 30};
    private static final String LIMIT = "43 °C (109 °F)";

    private final CoolFunctions cool = new CoolFunctions();
    private final CheckFunctions check = new CheckFunctions();

    @ParameterizedTest
    @CsvSource({
        "39, C, false, false", "44, C, false, true", "60, C, false, true", "95, C, false, true",
        "39, C, true, false", "44, C, true, true", "60, C, true, true", "95, C, true, true",
        "39, F, false, false", "44, F, false, true", "60, F, false, true", "95, F, false, true",
        "39, F, true, false", "44, F, true, true", "60, F, true, true", "95, F, true, true"
    })
    void allChecksFindIt(double start, String scale, boolean asText, boolean tooHot) {
        for (Language language : Language.values()) {
            XPropertySet document = documentIn(language);
            Object[][] readings = readings(start, scale, asText, 0.03);
            String first = check.readings(document, column(MINUTES), readings, around(scale), LEFT_OUT, scale);
            assertEquals(tooHot, first.contains(LIMIT), first);
            Object[][] all = check.all(document, column(MINUTES), readings, around(scale), LEFT_OUT, scale);
            assertEquals(tooHot, all[1][1].toString().contains(LIMIT), language + ": " + all[1][1]);
            assertEquals(tooHot, all[1][2].equals(language.words(ProblemWords.CAN_HURT)));
            Object[][] block = block(readings, readings(start, scale, asText, 0.05));
            Object[][] sheet = check.sheet(document, block, around(scale), LEFT_OUT, scale);
            for (String jar : new String[] {"wool", "bare"}) {
                assertEquals(
                        tooHot,
                        List.of(sheet).stream()
                                .anyMatch(line -> line[0].equals(jar)
                                        && line[2].toString().contains(LIMIT)),
                        jar);
            }
        }
    }

    @Test
    void theResultsStay() throws Exception {
        XPropertySet document = documentIn(Language.ENGLISH);
        Object[][] hot = readings(60, "C", false, 0.03);
        Object[][] hotBare = readings(60, "C", false, 0.05);
        Object[][] jars = cool.sheet(document, block(hot, hotBare), around("C"), LEFT_OUT, LEFT_OUT);
        assertEquals("OK", jars[1][8]);
        assertEquals(0.03, (double) jars[1][2], 0.001);
        Object[][] rank = cool.rank(
                document,
                column(MINUTES),
                besides(hot, hotBare),
                new Object[][] {{"wool", "bare"}},
                around("C"),
                LEFT_OUT,
                LEFT_OUT,
                LEFT_OUT);
        assertEquals("wool", rank[1][1]);
        assertEquals(1.0, rank[1][0]);
        String verdict = cool.verdict(
                document, column(MINUTES), hotBare, column(MINUTES), hot, around("C"), LEFT_OUT, LEFT_OUT, LEFT_OUT);
        assertTrue(verdict.contains("times as long to cool"), verdict);
    }

    /** By the numbers alone 85 … 40 may be °F, and is told so only after the caution. */
    @ParameterizedTest
    @ValueSource(doubles = {80, 85, 90, 99})
    void nobodyIsToldToNameTheScaleInstead(double start) {
        String said = check.readings(
                documentIn(Language.ENGLISH),
                column(MINUTES),
                readings(start, "C", false, 0.03),
                around("C"),
                LEFT_OUT,
                LEFT_OUT);
        assertTrue(said.startsWith("Row 1 (minute 0): water of " + (int) start + " °C"), said);
        assertTrue(said.contains("Only an adult handles it"), said);
        assertFalse(said.contains("Name the scale"), said);
    }

    /** Whoever looks for hot water finds it by this in every language. */
    @Test
    void everyLanguageNamesTheLimit() {
        for (Problem problem :
                List.of(Problem.ROW_TOO_HOT, Problem.ROW_TOO_HOT_OR_OTHER_SCALE, Problem.SURROUNDINGS_TOO_HOT)) {
            for (Language language : Language.values()) {
                assertTrue(language.words(problem).contains(LIMIT), language + " " + problem);
            }
        }
    }

    private static Object[][] readings(double start, String scale, boolean asText, double rate) {
        Object[] cells = new Object[MINUTES.length];
        for (int i = 0; i < cells.length; i++) {
            double celsius = 5 + (start - 5) * Math.exp(-rate * MINUTES[i]);
            double degrees = Math.rint((scale.equals("F") ? celsius * 1.8 + 32 : celsius) * 10) / 10;
            cells[i] = asText ? degrees + " °" + scale : (Object) degrees;
        }
        return column(cells);
    }

    private static String[][] around(String scale) {
        return new String[][] {{scale.equals("F") ? "41" : "5"}};
    }

    private static Object[][] block(Object[][] wool, Object[][] bare) {
        Object[][] block = new Object[MINUTES.length + 1][];
        block[0] = new Object[] {"min", "wool", "bare"};
        for (int i = 0; i < MINUTES.length; i++) {
            block[i + 1] = new Object[] {MINUTES[i], wool[i][0], bare[i][0]};
        }
        return block;
    }

    private static Object[][] besides(Object[][] one, Object[][] other) {
        Object[][] both = new Object[one.length][];
        for (int i = 0; i < one.length; i++) {
            both[i] = new Object[] {one[i][0], other[i][0]};
        }
        return both;
    }

    private static Object[][] column(double... numbers) {
        Object[] cells = new Object[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            cells[i] = numbers[i];
        }
        return column(cells);
    }

    private static Object[][] column(Object... cells) {
        Object[][] rows = new Object[cells.length][];
        for (int i = 0; i < cells.length; i++) {
            rows[i] = new Object[] {cells[i]};
        }
        return rows;
    }

    private static XPropertySet documentIn(Language language) {
        String code = switch (language) {
            case ENGLISH -> "en";
            case SPANISH -> "es";
            case FRENCH -> "fr";
            case GERMAN -> "de";
        };
        Locale locale = new Locale(code, "", "");
        return (XPropertySet) Proxy.newProxyInstance(
                HotWaterChecksTest.class.getClassLoader(),
                new Class<?>[] {XPropertySet.class},
                (proxy, method, arguments) -> locale);
    }
}
