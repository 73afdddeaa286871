package org.snugsheet.office.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Calls that once did what no call may do, found by {@link FuzzTest} and its forerunners: each stays a case. */
class FuzzCasesTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                // “Infinity” and “NaN” quoted, which nobody had typed
                "PLAN.READINGS(\"1E400\";38;5;10;0.01;2;;\"fahrenheit\")",
                "COLD.NEEDED(\"1E44\";1.79769313486231E308;30;\"C\")",
                "COLD.FROSTBITE(1.79769313486231E308;30)",
                "COLD.WINDCHILL(-10;\"1E400\")",
                "COLD.ANIMAL(\"1E400\";50)",
                "TEMP.UNIT(1;\"clo\";\"1E400\")",
                "TEMP.CONVERT(-300;\"1E400\";\"C\")",
                "WRAP.THICKNESS(0;-1.79769313486231E308;35)",
                "WRAP.END(250;35;{3;1.79769313486231E308};{\"glass\";\"wool\"};40;5;\"stirred water\")",
                "WRAP.VERDICT(0.01;5.0E-4;1E154;35;{3;10};{\"glass\";\"wool\"};40;5;\"stirred water\";;;21;;\"F\")",
                "COOL.RATE.ERROR({0;5;10;15;\"1E400\"};{38;32;26;22;\"warm\"};3)",
                "COOL.CURVE({0;10;1.79769313486231E308};{0;5;10;15;20};{38;32;26;22;19};3)",
                // a second of the processor and more
                "PLAN.REPEATS(0.05;0.0499;40;6.743654827212725;\"30\";3)",
                "PLAN.LESSON(1440;250;40;5;0.003;0.0025)"
            })
    void nothing_of_it_happens_again(String formula) {
        assertEquals(Optional.empty(), fault(Call.of(formula)));
    }

    /** The search for slips of the pen took a time that grew with the third power of the number of readings: 3 s for 200. */
    @ParameterizedTest
    @ValueSource(ints = {64, 200, 1000})
    void long_columns_are_answered(int rows) {
        Object[][] minutes = new Object[rows][];
        Object[][] temperatures = new Object[rows][];
        Object[][] block = new Object[rows + 1][];
        block[0] = new Object[] {"min", "bare"};
        for (int i = 0; i < rows; i++) {
            minutes[i] = new Object[] {(double) i};
            temperatures[i] = new Object[] {60 - 50.0 * i / rows};
            block[i + 1] = new Object[] {minutes[i][0], temperatures[i][0]};
        }
        for (String name : List.of("COOL.REPORT", "COOL.SENTENCE", "CHECK.READINGS", "CHECK.ALL")) {
            assertEquals(Optional.empty(), fault(call(name, minutes, temperatures, 5.0)));
        }
        assertEquals(Optional.empty(), fault(call("COOL.SHEET", block, 5.0)));
    }

    private static Call call(String name, Object... arguments) {
        return new Call(new FormulaText(name, new ArrayList<>(List.of(arguments))), "en");
    }

    private static Optional<String> fault(Call call) {
        // What is loaded and compiled first is no part of it.
        call.made();
        return Fault.in(call, call.made());
    }

    @Test
    void a_formula_is_taken_apart_and_written_again() {
        for (String formula : List.of(
                "COOL.RATE({0.0;5.0};{38.0;\"a \"\"b\"\"; |\"};3.0)",
                "COOL.SHEET({\"min\";\"bare\"|0.0;40.0};;\"F\")",
                "CHECK.VERSION()")) {
            assertEquals(formula, FormulaText.parse(formula).toString());
        }
    }
}
