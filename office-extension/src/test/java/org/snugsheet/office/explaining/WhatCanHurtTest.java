package org.snugsheet.office.explaining;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.Families;
import org.snugsheet.office.words.Language;

/**
 * Walks every function that meets water or weather and answers with a number. Limits: 43 °C, UK Department for Education, Building
 * Bulletin 87 (2003); −18 °C (0 °F), Child Care Weather Watch (Healthy Child Care Iowa); −27 °C, Canadian Paediatric Society.
 */
class WhatCanHurtTest {

    private static final Set<String> WATER =
            Set.of("temps", "otherTemps", "start", "from", "to", "temp", "bathTemp", "warm");

    @ParameterizedTest
    @CsvSource({
        "39, C, false", "44, C, true", "60, C, true", "95, C, true",
        "39, F, false", "44, F, true", "60, F, true", "95, F, true"
    })
    void waterThatIsTooHotIsSaidOfEveryFunction(double celsius, String scale, boolean tooHot) {
        int walked = 0;
        for (FunctionDeclaration function : Families.functions()) {
            boolean family = function.name().startsWith("COOL.")
                    || function.name().startsWith("WRAP.")
                    || function.name().equals("CHECK.FAIR");
            for (int i = 0; family && i < function.arguments().size(); i++) {
                if (WATER.contains(function.arguments().get(i).name()) && takesAScale(function)) {
                    double degrees = scale.equals("F") ? celsius * 1.8 + 32 : celsius;
                    for (Object typed : new Object[] {degrees, degrees + " °" + scale}) {
                        Optional<String> said =
                                WhatCanHurt.in(function, givens(function, i, typed, scale), Language.ENGLISH);
                        assertEquals(tooHot, said.orElse("").startsWith("Too hot for pupils"), function.name());
                    }
                    walked++;
                }
            }
        }
        assertTrue(walked >= 40, "functions walked: " + walked);
    }

    /** What plans a lesson makes none with water that is too hot; a table says so in words. */
    @ParameterizedTest
    @CsvSource({"39, false", "44, true", "60, true", "95, true"})
    void noFunctionPlansWithWaterThatIsTooHot(double celsius, boolean refused) {
        int walked = 0;
        for (FunctionDeclaration function : Families.functions()) {
            List<String> names =
                    function.arguments().stream().map(one -> one.name()).toList();
            if (!function.name().startsWith("PLAN.") || !names.contains("start")) {
                continue;
            }
            for (Object typed : new Object[] {celsius, celsius + " °C", celsius * 1.8 + 32 + " °F"}) {
                List<Given> givens = ofTheExample(function);
                givens.set(names.indexOf("start"), Given.of("start", new Object[][] {{typed}}, true, Optional.empty()));
                Rerun.Result result = Rerun.of(function, givens, Language.ENGLISH);
                assertEquals(
                        refused,
                        result.refusal().map(Refusal::trouble).equals(Optional.of(Trouble.START_TOO_HOT)),
                        function.name() + " " + typed);
            }
            walked++;
        }
        assertTrue(walked >= 10, "functions walked: " + walked);
    }

    @ParameterizedTest
    @CsvSource({
        "-5, C, It feels like -5 °C", "-20, C, Risk of frostbite for children", "-30, C, Too cold for children",
        "-5, F, It feels like 23 °F", "-20, F, Risk of frostbite for children", "-30, F, Too cold for children"
    })
    void weatherIsSaidOfEveryFunction(double celsius, String scale, String words) {
        for (FunctionDeclaration function : Families.functions()) {
            if (function.name().equals("COLD.WINDCHILL") || function.name().startsWith("COLD.NEEDED")) {
                double degrees = scale.equals("F") ? celsius * 1.8 + 32 : celsius;
                for (Object typed : new Object[] {degrees, degrees + " °" + scale}) {
                    String said = WhatCanHurt.in(function, givens(function, 0, typed, scale), Language.ENGLISH)
                            .orElse("");
                    assertTrue(said.startsWith(words), function.name() + ": " + said);
                }
            }
        }
    }

    @Test
    void theHottestCounts() {
        FunctionDeclaration rate = Families.functions().stream()
                .filter(function -> function.name().equals("COOL.RATE"))
                .findFirst()
                .orElseThrow();
        List<Given> givens = givens(rate, 1, 0.0, "C");
        givens.set(1, Given.of("B1:B3", new Object[][] {{41.0}, {""}, {"180 °F"}}, false, Optional.empty()));
        assertEquals(Optional.of(Caution.SCALDS_AT_ONCE.english()), WhatCanHurt.in(rate, givens, Language.ENGLISH));
    }

    private static List<Given> ofTheExample(FunctionDeclaration function) {
        String example = function.function().example();
        String[] values = example.substring(example.indexOf('(') + 1, example.length() - 1)
                .split(";", -1);
        List<Given> givens = new ArrayList<>();
        for (int i = 0; i < function.arguments().size(); i++) {
            givens.add(
                    i < values.length && !values[i].isEmpty()
                            ? Given.of(
                                    values[i], new Object[][] {{Double.parseDouble(values[i])}}, true, Optional.empty())
                            : Given.LEFT_OUT);
        }
        return givens;
    }

    private static boolean takesAScale(FunctionDeclaration function) {
        return function.arguments().stream()
                .anyMatch(argument -> argument.name().equals("scale"));
    }

    private static List<Given> givens(FunctionDeclaration function, int at, Object typed, String scale) {
        Given[] givens = new Given[function.arguments().size()];
        Arrays.fill(givens, Given.LEFT_OUT);
        for (int i = 0; i < givens.length; i++) {
            if (i == at) {
                givens[i] = Given.of("A1", new Object[][] {{typed}}, true, Optional.empty());
            } else if (function.arguments().get(i).name().equals("scale")) {
                givens[i] = Given.of(scale, new Object[][] {{scale}}, true, Optional.empty());
            }
        }
        return new ArrayList<>(List.of(givens));
    }
}
