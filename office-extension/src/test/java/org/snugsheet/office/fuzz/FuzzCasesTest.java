package org.snugsheet.office.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

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
                // “∞” read by nobody
                "CHECK.READINGS({0;5;10;15;20};{38;32;26;22;1.7976931348623157E308};3)",
                "CHECK.READINGS({0;5;10;15;20};{38;32;26;22;1.7976931348623157E308};3;0.1;\"F\")",
                "COOL.SHEET({\"min\";\"bare\"|0;38|5;32|10;26|15;22|20;1.8E306};3)",
                "COLD.NEEDED.WORN({25;25};-1.7976931348623157E308)",
                "COLD.NEEDED(-5;-1.7976931348623157E308;;\"fahrenheit\")",
                "PLAN.LESSON(30;250;40;1E300;0.05;0.03)",
                "PLAN.MIX.COLD(55;12;1.7976931348623157E308;1000)",
                "PLAN.POWER(4;0.05;0.04;40;5;1.7976931348623157E308;30;0.2)",
                "PLAN.READINGS(0.04;40;5;42;0.03;1;1.7976931348623157E308)",
                "PLAN.INTERVAL(0.5;40;5;40;0.03;;1.7976931348623157E308)",
                // broke off, or answered what is no number
                "CHECK.FAIR({0;5;10;15;20};{22;26;19;38;32};3;{0;5;10;15;20};{38;35;32;29;27};3;200;250;\"open\";\"bare\";5)",
                "CHECK.FAIR({0;5;10;15;20};{38;32;26;22;19};3;{0;5;10;15;20};{38;35;32;29;27};3;1.58E-308;250;\"open\";\"bare\")",
                "COLD.NEEDED(-237;115;7)",
                "COLD.NEEDED(36;115;7;\"K\")",
                "COOL.POWER(1.7E308;1.7E308;40;5)",
                "PLAN.CERTAINTY(0.04;1.7E308;5;40;5)",
                "PLAN.LESSON(1440;250;40;5;0.05;0.05)",
                "PLAN.LONGEST(0.04;1.7E308;5)",
                "PLAN.TELLAPART(0.04;0.02;40;5;1.7E308)",
                "PLAN.TELLAPART(0.04;0.02;1.7E308;5;2)",
                "WRAP.TURNING(1.7E308;1E-300)",
                "WRAP.ONEJAR.ERROR(1E-300;1E300;220;0;1E300)",
                // a second of the processor and more
                "PLAN.REPEATS(0.05;0.0499;40;6.743654827212725;\"30\";3)",
                "PLAN.LESSON(1440;250;40;5;0.003;0.0025)"
            })
    void nothing_of_it_happens_again(String formula) {
        assertEquals(Optional.empty(), fault(Call.of(formula)));
    }

    /** Found by {@link LiveFuzzIT}: so warm a place counted as one in which bare skin freezes. */
    @Test
    void the_warmest_surroundings_are_not_cold() {
        Call call = Call.of("CHECK.READINGS({0;5;10;15};{40;38;36;35};123456789012345)");
        assertFalse(call.made().said().contains("freeze"), () -> call.made().said());
    }

    /** Found by {@link LiveFuzzIT}: a tab in a cell of several lines comes as this letter. */
    @Test
    void a_cell_of_white_space_is_blank() {
        assertEquals(
                35.0, Call.of("TEMP.READ(\"95 \u00b0F\";\"\u0001\n\")").made().answer());
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
