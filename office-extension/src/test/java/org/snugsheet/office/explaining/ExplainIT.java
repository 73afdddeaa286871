package org.snugsheet.office.explaining;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.snugsheet.office.explaining.Explained.assertHas;
import static org.snugsheet.office.explaining.Explained.assertStarts;
import static org.snugsheet.office.explaining.Explained.explained;
import static org.snugsheet.office.explaining.Explained.jar;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.Problem;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.declare.TableHint;
import org.snugsheet.office.functions.Families;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.words.Language;

/** What is said of a cell, asked for through the menu of a real office. */
@ExtendWith(SharedOffice.class)
class ExplainIT {

    private final Office office;

    ExplainIT(Office office) {
        this.office = office;
    }

    static Stream<Arguments> refusing() {
        return Families.functions().stream()
                .filter(function -> !function.function().refused().isEmpty())
                .map(function -> Arguments.of(function.name(), function));
    }

    @Test
    void anAnswerIsExplainedByWhatItWasGiven() {
        try (CalcDocument sheet = jar(office)) {
            String said = explained(office, sheet, "COOL.RATE(A1:A5;$B$1:B5;C1;;\"C\")");
            // The office of the tests writes American English: commas between arguments.
            assertStarts("Cell D1: COOL.RATE(times, temps, surroundings, [mark], [scale])\n", said);
            assertHas("Its formula: =COOL.RATE(A1:A5,$B$1:B5,C1,,\"C\")", said);
            assertHas("The cooling constant per minute", said);
            assertHas("times is A1:A5, that is 0; 5; 10; 15; 20.", said);
            assertHas("temps is $B$1:B5, that is 40; 34; blank; 26; 24.", said);
            assertHas("surroundings is C1, that is 10.", said);
            assertHas("mark is left out.", said);
            assertHas("scale is \"C\".", said);
            assertHas("The jar loses 3.9 % of its extra warmth each minute, give or take 0.2 %.", said);
            assertHas("The jar loses half its extra warmth every 17.5 minutes, give or take 0.9.", said);
            assertFalse(said.contains("0.0395"), said);
        }
    }

    /** The sentences are the engine’s own, with the row to blame. */
    @Test
    void aRefusalIsExplainedInWords() {
        try (CalcDocument sheet = jar(office)) {
            sheet.text("B2", "warm");
            assertHas(
                    "Row 2 (minute 5): “warm” is not a temperature. Type a number, or leave the cell blank.",
                    explained(office, sheet, "COOL.RATE(A1:A5;B1:B5;C1)"));
            assertHas(
                    InvalidInputException.of(Problem.TOO_FEW_READINGS, 3, 1)
                            .finding()
                            .sentence(),
                    explained(office, sheet, "IFERROR(COOL.RATE(A1:A1;B1:B1;C1);\"none\")"));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refusing")
    void everyRefusedExampleHasItsReason(String name, FunctionDeclaration function) {
        try (CalcDocument sheet = office.newDocument()) {
            assertHas(
                    "It cannot answer. ",
                    explained(office, sheet, function.function().refused()));
        }
    }

    /** What is neither a number nor a cell is worked out where nobody sees it. */
    @Test
    void nestedFormulasAndNamesAreWorkedOutAside() {
        try (CalcDocument sheet = jar(office)) {
            String said = explained(office, sheet, "COOL.RATE(A1:A5+1;B1:B5;SUM(C1;2)-2)");
            assertHas("times is A1:A5+1, that is 1; 6; 11; 16; 21.", said);
            assertHas("surroundings is SUM(C1,2)-2, that is 10.", said);
            assertEquals(1, sheet.sheetNames().size());
            assertEquals("", sheet.formulaAt("A1"));
        }
    }

    /** Found in the hand: the office gives A1:A5+1 as one number where the formula was ended with Enter. */
    @Test
    void whatOnlyAnArrayFormulaWorksOutIsToldSo() {
        try (CalcDocument sheet = jar(office)) {
            String said = explained(office, sheet, "COOL.RATE(A1:A5+1;B1:B5;C1)");
            assertHas("A1:A5+1 works out many cells at once", said);
            assertHas("Ctrl+Shift+Enter", said);
            sheet.formula("D1", "").arrayFormula("D1:D1", "COOL.RATE(A1:A5+1;B1:B5;C1)");
            Menu.select(office, sheet, "D1");
            assertHas("every 17.5 minutes", Menu.choose(office, sheet, MenuItem.EXPLAIN, Menu.QUIET));
        }
    }

    @Test
    void theInnerCallThatRefusesIsTheOneExplained() {
        try (CalcDocument sheet = jar(office)) {
            String said = explained(office, sheet, "COOL.TEMP(5;40;10;COOL.RATE(A1:A2;B1:B2;C1))");
            assertStarts("Cell D1: COOL.RATE(", said);
            assertHas(
                    InvalidInputException.of(Problem.TOO_FEW_READINGS, 3, 2)
                            .finding()
                            .sentence(),
                    said);
            assertHas("The cell also asks:\n• COOL.TEMP", said);
        }
    }

    @Test
    void faultsOutsideTheFunctionAreTold() {
        try (CalcDocument sheet = jar(office)) {
            sheet.formula("B2", "1/0");
            assertHas("B2 shows an error", explained(office, sheet, "COOL.RATE(A1:A5;B1:B5;C1)"));
            assertHas(
                    "given 2 arguments but needs 3. Count what is between the signs ,",
                    explained(office, sheet, "COOL.RATE(A1:A5;B1:B5)"));
            assertHas("none of Snugsheet’s functions", explained(office, sheet, "SUM(A1:A5)"));
            assertHas("a name that is not known", explained(office, sheet, "COOL.RAET(A1)"));
            assertHas("another part of the formula", explained(office, sheet, "WRAP.LAYER(20;0.04)/0"));
        }
    }

    @Test
    void aCellOfATableIsExplained() {
        try (CalcDocument sheet = jar(office)) {
            sheet.arrayFormula("E1:G3", "COOL.CURVE(A1:A2;A1:A5;B1:B5;C1)");
            Menu.select(office, sheet, "F2");
            String said = Menu.choose(office, sheet, MenuItem.EXPLAIN, Menu.QUIET);
            assertStarts("Cell F2: COOL.CURVE(", said);
            assertHas("answers with a table", said);
        }
    }

    @Test
    void aWordWithoutQuotesIsToldToNeedThem() {
        try (CalcDocument sheet = jar(office)) {
            String said = explained(office, sheet, "COOL.RATE(A1:A5;B1:B5;C1;2;F)");
            assertHas("If it is a word, it needs quotation marks round it: \"F\"", said);
            assertFalse(said.contains("another part"), said);
            assertHas("quotation marks round it: \"fit\"", explained(office, sheet, "COOL.RATE(A1:A5;B1:B5;fit)"));
        }
    }

    @Test
    void aHeadingAmongTheReadingsIsCalledOne() {
        try (CalcDocument sheet = jar(office)) {
            sheet.text("F1", "m").numbersDown("F2", 0, 5, 10, 15, 20);
            sheet.text("G1", "wool").numbersDown("G2", 40, 34, 30, 26, 24);
            String said = explained(office, sheet, "COOL.RATE(F1:F6;G1:G6;C1)");
            assertHas("Row 1: “m” is not a number. “m” looks like a heading", said);
            assertHas("Leave it out: F2:F6, G2:G6 in place of F1:F6, G1:G6.", said);
            assertHas("F2:F6, G2:G6", explained(office, sheet, "CHECK.READINGS(F1:F6;G1:G6;C1)"));
            assertFalse(explained(office, sheet, "COOL.RATE(F2:F6;G2:G6;C1)").contains("heading"));
            sheet.text("A1", "warm");
            sheet.formula("A2", "F3").formula("A3", "F4");
            assertHas("“warm” looks like a heading", explained(office, sheet, "COOL.RATE(A1:A5;B1:B5;C1)"));
        }
    }

    @Test
    void aTableInOneCellIsToldToNeedMore() {
        try (CalcDocument sheet = jar(office)) {
            String said = explained(office, sheet, "COOL.REPORT(A1:A5;B1:B5;C1)");
            assertHas("shows only its first head", said);
            assertHas("6 columns", said);
            assertHas("Ctrl+Shift+Enter", said);
            assertHas("every 17.5 minutes", said);
            sheet.formula("D1", "").arrayFormula("E1:J9", "COOL.REPORT(A1:A5;B1:B5;C1)");
            Menu.select(office, sheet, "F2");
            assertFalse(Menu.choose(office, sheet, MenuItem.EXPLAIN, Menu.QUIET).contains("first head"));
            assertFalse(explained(office, sheet, "INDEX(COOL.REPORT(A1:A5;B1:B5;C1);2;2)")
                    .contains("first head"));
        }
    }

    /** Both ways are named as the menu names them. */
    @ParameterizedTest
    @EnumSource
    void theMenuIsNamedAsItIs(Language language) {
        String line = language.words(MenuItem.TABLE).replace("~", "");
        for (Phrase words : List.of(ExplainingWords.FIRST_HEAD, TableHint.HOW)) {
            assertTrue(language.words(words).contains("Snugsheet ▸ " + line), language.words(words));
        }
    }

    @Test
    void severalOfOurFunctionsAreEachToldWithTheirAnswers() {
        try (CalcDocument sheet = jar(office)) {
            String said = explained(office, sheet, "COOL.TEMP(5;40;C1;COOL.RATE(A1:A5;B1:B5;C1))*2");
            assertHas("At that time the jar is at about 35 °C.", said);
            assertHas("With the rest of the formula the cell shows 69", said);
            assertHas("• COOL.RATE(A1:A5, B1:B5, C1): The jar loses 3.9 % of its extra warmth each minute", said);
        }
    }

    @Test
    void theErrorIsSaidBesideWhatItIsTheErrorOf() {
        try (CalcDocument sheet = jar(office)) {
            assertHas(
                    "every 17.5 minutes, give or take 0.9.",
                    explained(office, sheet, "COOL.HALFTIME.ERROR(A1:A5;B1:B5;C1)"));
            assertHas(
                    "At minute 0 the jar was at 39.7 °C, give or take 0.5.",
                    explained(office, sheet, "COOL.START(A1:A5;B1:B5;C1)"));
            assertHas(
                    "The second jar takes",
                    explained(office, sheet, "COOL.SLOWER(A1:A5;B1:B5;A1:A5;{40;39;38;37;36};C1)"));
            assertHas("about 2 watts get through", explained(office, sheet, "WRAP.LAYER(20;0.04)"));
            // 2.8391 ft²·°F·h/Btu are 0.5 m²·K/W (NIST SP 811, B.8: 1 ft²·°F·h/Btu is 0.1761102 m²·K/W).
            assertHas("about 2 watts get through", explained(office, sheet, "WRAP.LAYER(20;0.04;\"US\")"));
        }
    }
}
