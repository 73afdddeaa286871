package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Problem;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.declare.FunctionDeclaration.ArgumentDeclaration;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.ErrorCodes;
import org.snugsheet.office.words.Language;

/**
 * Every declared function in plain Java: both its examples, in every language, and its example typed in other ways. A new function is
 * tested here as soon as it is declared; {@code CatalogueIT} runs the same examples in a real office.
 */
class EveryFunctionTest {

    /** What is answered in degrees of a scale, and what in their differences. */
    private static final Set<String> TEMPERATURES =
            Set.of("COOL.START", "COOL.SURROUNDINGS", "COOL.TEMP", "COOL.MIXED", "WRAP.FACE", "WRAP.END", "PLAN.BATH");

    private static final Set<String> DIFFERENCES = Set.of("COOL.START.ERROR", "COOL.SURROUNDINGS.ERROR", "COOL.MISFIT");

    /**
     * Text that names its own scale; marks and charts, which are other ones on each scale; sentences that name degrees; and a block, in
     * which each jar has its own.
     */
    private static final Set<String> OF_ITS_OWN_SCALE = Set.of(
            "TEMP.READ", "TEMP.ROUND", "COLD.WINDCHILL", "COLD.FROSTBITE", "WRAP.VERDICT", "COOL.SHEET", "CHECK.SHEET");

    /** The office hands over a lone cell for a column of times as it does for any column: a blank one as 0. */
    private static final Set<String> COLUMNS_OF_TIMES = Set.of("COOL.CURVE 0", "COOL.MINUTES 0");

    /** Options that may be 0, the usual value of which is another one. */
    private static final Set<String> NOT_ZERO = Set.of(
            "WRAP room",
            "WRAP height",
            "WRAP emissivity",
            "PLAN leak",
            "PLAN certainty",
            "PLAN scatter",
            "PLAN often",
            "PLAN spread");

    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.\"])-?\\d+(\\.\\d+)?(?![\\w.])");

    private final PlainSheet sheet = new PlainSheet();

    static Stream<Arguments> functions() {
        return Families.functions().stream().map(function -> Arguments.of(function.name(), function));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("functions")
    void theExampleAnswersAsDeclared(String name, FunctionDeclaration function) {
        String answer = function.function().answer();
        CellResult result = sheet.result(function.function().example());
        if (result instanceof CellResult.OfNumber number) {
            int digits = answer.contains(".") ? answer.length() - answer.indexOf('.') - 1 : 9;
            assertEquals(Double.parseDouble(answer), number.number(), 0.5001 * Math.pow(10, -digits));
        } else {
            assertEquals(answer, result.text());
            for (Language language : Language.translated()) {
                CellResult theirs =
                        new PlainSheet(language).result(function.function().example());
                assertEquals(function.answer(language), theirs.text());
            }
        }
    }

    /** By the engine, and in words: an exception of any other kind would be a mistake, and fails the call. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("functions")
    void theRefusedExampleIsRefusedInWords(String name, FunctionDeclaration function) {
        String refused = function.function().refused();
        // Only a function that says in words what is wrong, or is asked nothing, can always answer.
        boolean always = name.startsWith("CHECK.") || function.arguments().isEmpty();
        assertEquals(always, refused.isEmpty());
        if (!always) {
            assertFalse(function.function().because().isEmpty());
            Finding why = sheet.refusal(refused);
            for (Language language : Language.values()) {
                String said = language.say(why);
                assertTrue((said.endsWith(".") || said.endsWith("?")) && !said.contains("{"), said);
            }
        }
    }

    /** A blank cell is never zero: whatever is needed and forgotten is refused, or in TEMP answered by a blank. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("functions")
    void aBlankCellForANeededArgumentIsNeverTakenForZero(String name, FunctionDeclaration function) {
        ExampleCall example = ExampleCall.of(function);
        for (int i = 0; i < function.arguments().size(); i++) {
            if (!function.arguments().get(i).optional() && !COLUMNS_OF_TIMES.contains(name + " " + i)) {
                String formula = example.with(i, "Z1").formula();
                CellResult result = sheet.result(formula);
                if (name.startsWith("TEMP.") && i == 0) {
                    assertEquals(
                            new CellResult.OfText(""),
                            result,
                            () -> formula + ": in TEMP a blank first argument is answered by a blank (Cells.each)");
                } else if (name.startsWith("CHECK.") || name.equals("COOL.SHEET")) {
                    assertFalse(
                            cells(function, formula).stream()
                                    .anyMatch(cell -> cell.shown().equals(Answer.OK)),
                            formula);
                } else {
                    assertEquals(ErrorCodes.INVALID_ARGUMENT, result.error(), formula);
                }
            }
        }
    }

    /** A blank cell for an option is the option left out; where 0 would be another thing, it is refused. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("functions")
    void aBlankCellForAnOptionCountsAsLeftOutOrIsRefused(String name, FunctionDeclaration function) {
        ExampleCall example = ExampleCall.of(function);
        List<CellResult> answer = cells(function, example.formula());
        for (int i = 0; i < function.arguments().size(); i++) {
            String argument = function.arguments().get(i).name();
            if (function.arguments().get(i).optional()) {
                String formula = example.with(i, "Z1").formula();
                if (NOT_ZERO.contains(name.substring(0, 4) + " " + argument)) {
                    assertEquals(Problem.OPTION_ZERO, sheet.refusal(formula).problem(), formula);
                } else {
                    boolean isLeftOut = example.typed().get(i).isEmpty();
                    assertEquals(
                            isLeftOut
                                    ? answer
                                    : cells(function, example.with(i, "").formula()),
                            cells(function, formula),
                            formula);
                }
            }
        }
    }

    /** A number may be typed as text, with a point or a comma. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("functions")
    void aNumberTypedAsTextIsThatNumber(String name, FunctionDeclaration function) {
        ExampleCall example = ExampleCall.of(function);
        List<CellResult> answer = cells(function, example.formula());
        for (String point : List.of(".", ",")) {
            ExampleCall typed = example;
            for (int i = 0; i < example.typed().size(); i++) {
                // In a list of materials a text is a name, and clock times are texts as they are.
                if (i != example.indexOf("materials") && i != example.indexOf("clock")) {
                    typed = typed.with(
                            i,
                            NUMBER.matcher(example.typed().get(i))
                                    .replaceAll(number -> "\"" + number.group().replace(".", point) + "\""));
                }
            }
            assertEquals(answer, cells(function, typed.formula()), typed.formula());
        }
    }

    /**
     * NIST SP 811 (2008), B.8: °F = 1.8·°C + 32, and a difference is never shifted; 1 mile is 1.609344 km. The mark is given on both
     * scales, for the usual ones are not the same.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("withScale")
    void fahrenheitGivesTheSameAnswer(String name, FunctionDeclaration function) {
        ExampleCall celsius = ExampleCall.of(function);
        int mark = celsius.indexOf("mark");
        if (mark >= 0 && celsius.typed().get(mark).isEmpty()) {
            celsius = celsius.with(mark, "1");
        }
        ExampleCall fahrenheit = celsius.with(celsius.indexOf("scale"), "\"F\"");
        for (int i = 0; i < function.arguments().size(); i++) {
            ArgumentDeclaration argument = function.arguments().get(i);
            String typed = celsius.typed().get(i);
            if (i == mark) {
                fahrenheit = fahrenheit.with(i, changed(typed, 1.8, 0));
            } else if (argument.name().equals("wind")) {
                fahrenheit = fahrenheit.with(i, changed(typed, 1 / 1.609344, 0));
            } else if (argument.temperature().isPresent()) {
                fahrenheit = fahrenheit.with(i, changed(typed, 1.8, 32));
            }
        }
        CellResult expected = sheet.result(celsius.formula());
        CellResult actual = sheet.result(fahrenheit.formula());
        if (expected instanceof CellResult.OfNumber number) {
            double wanted = number.number() * (TEMPERATURES.contains(name) || DIFFERENCES.contains(name) ? 1.8 : 1)
                    + (TEMPERATURES.contains(name) ? 32 : 0);
            assertEquals(
                    wanted,
                    actual.number(),
                    1e-7 * Math.max(1, Math.abs(wanted)),
                    fahrenheit.formula()
                            + "; what is answered in degrees is to be named in TEMPERATURES or DIFFERENCES above");
        } else {
            assertEquals(expected, actual, fahrenheit.formula());
        }
    }

    static Stream<Arguments> withScale() {
        return functions()
                .filter(one ->
                        ExampleCall.of((FunctionDeclaration) one.get()[1]).indexOf("scale") >= 0
                                && !OF_ITS_OWN_SCALE.contains(one.get()[0]));
    }

    private List<CellResult> cells(FunctionDeclaration function, String formula) {
        return function.isTable()
                ? sheet.table(formula).stream().flatMap(List::stream).toList()
                : List.of(sheet.result(formula));
    }

    private static String changed(String typed, double factor, double shift) {
        return NUMBER.matcher(typed)
                .replaceAll(number -> String.valueOf(Double.parseDouble(number.group()) * factor + shift));
    }
}
