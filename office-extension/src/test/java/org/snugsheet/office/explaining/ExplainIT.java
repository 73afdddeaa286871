package org.snugsheet.office.explaining;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.util.XModifiable;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.Families;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.uno.Uno;
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
        try (CalcDocument sheet = jar()) {
            String said = explained(sheet, "COOL.RATE(A1:A5;$B$1:B5;C1;;\"C\")");
            assertStarts("Cell D1: COOL.RATE(times; temps; surroundings; [mark]; [scale])", said);
            assertHas("The cooling constant per minute", said);
            assertHas("times is A1:A5, that is 0; 5; 10; 15; 20.", said);
            assertHas("temps is $B$1:B5, that is 40; 34; blank; 26; 24.", said);
            assertHas("surroundings is C1, that is 10.", said);
            assertHas("mark is left out.", said);
            assertHas("scale is \"C\".", said);
            assertHas("It answers: 0.0395966", said);
        }
    }

    /** The sentences are the engine’s own, with the row to blame. */
    @Test
    void aRefusalIsExplainedInWords() {
        try (CalcDocument sheet = jar()) {
            sheet.text("B2", "warm");
            assertHas(
                    Refusal.atRow(2, Trouble.NOT_A_TEMPERATURE, "warm")
                            .finding()
                            .sentence(),
                    explained(sheet, "COOL.RATE(A1:A5;B1:B5;C1)"));
            assertHas(
                    Refusal.of(Trouble.TOO_FEW_READINGS, 3, 1).finding().sentence(),
                    explained(sheet, "IFERROR(COOL.RATE(A1:A1;B1:B1;C1);\"none\")"));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refusing")
    void everyRefusedExampleHasItsReason(String name, FunctionDeclaration function) {
        try (CalcDocument sheet = office.newDocument()) {
            assertHas("It cannot answer. ", explained(sheet, function.function().refused()));
        }
    }

    /** What is neither a number nor a cell is worked out where nobody sees it. */
    @Test
    void nestedFormulasAndNamesAreWorkedOutAside() {
        try (CalcDocument sheet = jar()) {
            String said = explained(sheet, "COOL.RATE(A1:A5+1;B1:B5;SUM(C1;2)-2)");
            assertHas("times is A1:A5+1, that is 1; 6; 11; 16; 21.", said);
            assertHas("surroundings is SUM(C1;2)-2, that is 10.", said);
            assertEquals(1, sheet.sheetNames().size());
            assertEquals("", sheet.formulaAt("A1"));
        }
    }

    @Test
    void theInnerCallThatRefusesIsTheOneExplained() {
        try (CalcDocument sheet = jar()) {
            String said = explained(sheet, "COOL.TEMP(5;40;10;COOL.RATE(A1:A2;B1:B2;C1))");
            assertStarts("Cell D1: COOL.RATE(", said);
            assertHas(Refusal.of(Trouble.TOO_FEW_READINGS, 3, 2).finding().sentence(), said);
            assertHas("The cell also asks COOL.TEMP.", said);
        }
    }

    @Test
    void faultsOutsideTheFunctionAreTold() {
        try (CalcDocument sheet = jar()) {
            sheet.formula("B2", "1/0");
            assertHas("B2 shows an error", explained(sheet, "COOL.RATE(A1:A5;B1:B5;C1)"));
            assertHas("given 2 arguments but needs 3", explained(sheet, "COOL.RATE(A1:A5;B1:B5)"));
            assertHas("none of our functions", explained(sheet, "SUM(A1:A5)"));
            assertHas("a name that is not known", explained(sheet, "COOL.RAET(A1)"));
            assertHas("another part of the formula", explained(sheet, "WRAP.LAYER(20;0.04)/0"));
        }
    }

    @Test
    void aCellOfATableIsExplained() {
        try (CalcDocument sheet = jar()) {
            sheet.arrayFormula("E1:G3", "COOL.CURVE(A1:A2;A1:A5;B1:B5;C1)");
            Menu.select(office, sheet, "F2");
            String said = Menu.choose(office, sheet, MenuItem.EXPLAIN, Menu.QUIET);
            assertStarts("Cell F2: COOL.CURVE(", said);
            assertHas("answers with a table", said);
        }
    }

    @Test
    void explainingChangesNothing() {
        try (CalcDocument sheet = jar()) {
            sheet.formula("D1", "COOL.RATE(A1:A5+1;B1:B5;C1)");
            office.call("forgetting changes", () -> {
                Uno.as(XModifiable.class, sheet.uno()).setModified(false);
                return true;
            });
            Menu.select(office, sheet, "D1");
            Menu.choose(office, sheet, MenuItem.EXPLAIN, Menu.QUIET);
            assertFalse(office.call(
                    "asking", () -> Uno.as(XModifiable.class, sheet.uno()).isModified()));
        }
    }

    @Test
    void theReasonIsSaidInTheLanguageAskedFor() {
        try (CalcDocument sheet = jar()) {
            sheet.formula("D1", "COOL.RATE(A1:A2;B1:B2;C1+0.5)");
            String said = office.call(
                    "explaining",
                    () -> Explanation.of(
                            office.uno(),
                            sheet.uno(),
                            new com.sun.star.table.CellAddress((short) 0, 3, 0),
                            Language.GERMAN));
            assertHas(
                    Language.GERMAN.say(
                            Refusal.of(Trouble.TOO_FEW_READINGS, 3, 2).finding()),
                    said);
            assertHas("10,5", said);
        }
    }

    private CalcDocument jar() {
        CalcDocument sheet = office.newDocument();
        sheet.numbersDown("A1", 0, 5, 10, 15, 20)
                .numbersDown("B1", 40, 34)
                .numbersDown("B4", 26, 24)
                .number("C1", 10);
        return sheet;
    }

    private String explained(CalcDocument sheet, String formula) {
        sheet.formula("D1", formula);
        Menu.select(office, sheet, "D1");
        return Menu.choose(office, sheet, MenuItem.EXPLAIN, Menu.QUIET);
    }

    private static void assertStarts(String words, String said) {
        assertTrue(said.startsWith(words), said);
    }

    private static void assertHas(String words, String said) {
        assertTrue(said.contains(words), said);
    }
}
