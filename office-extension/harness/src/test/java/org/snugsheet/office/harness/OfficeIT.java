package org.snugsheet.office.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.office.harness.FunctionWizard.Argument;
import org.snugsheet.office.harness.FunctionWizard.Category;

/** An office that works: formulas, error codes, the function wizard. */
@ExtendWith(SharedOffice.class)
class OfficeIT {
    @Test
    void aFormulaGivesANumber(@WithoutExtension Office office) {
        assertEquals(21.5, office.evaluate("=AVERAGE(20;23)").number());
        assertEquals(1, office.evaluate("=TRUE()").number());
        assertEquals("TRUE", office.evaluate("=TRUE()").shown());
        assertEquals(4, office.evaluate("2+2").number(), "without equals sign");
    }

    @Test
    void aFormulaGivesAText(@WithoutExtension Office office) {
        assertEquals("wool sock", office.evaluate("=\"wool\" & \" sock\"").text());
        assertEquals(new CellResult.OfText(""), office.evaluate("=\"\""));
        assertThrows(
                AssertionError.class, () -> office.evaluate("=\"sock\"").number(), "a text is not taken for a number");
    }

    /** Codes and meanings: LibreOffice help, "Error Codes in LibreOffice Calc". */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "=SQRT(-1)        | 502   | Err:502",
                "=10^400          | 503   | #NUM!",
                "=LEFT(1;2;3;4)   | 504   | Err:504",
                "=\"sock\"*1 | 519   | #VALUE!",
                "=A1              | 522   | Err:522",
                "=IRR({1;2;3})    | 523   | Err:523",
                "=#REF!           | 524   | #REF!",
                "=NOSUCHSOCK(1)   | 525   | #NAME?",
                "=1/0             | 532   | #DIV/0!",
                "=NA()            | 32767 | #N/A"
            })
    void aFailedFormulaGivesItsCode(String formula, int code, String shown, @WithoutExtension Office office) {
        assertEquals(new CellResult.OfError(code, shown), office.evaluate(formula));
    }

    @Test
    void aFailureDoesNotStickToTheNextFormula(@WithoutExtension Office office) {
        assertEquals(ErrorCodes.DIVISION_BY_ZERO, office.evaluate("=1/0").error());
        assertEquals(0, office.evaluate("=1/2").error());
    }

    /** Headings: LibreOffice help, "Functions by Category". */
    @ParameterizedTest
    @CsvSource({
        "DSUM, DATABASE",
        "WEEKDAY, DATE_AND_TIME",
        "PMT, FINANCIAL",
        "ISNUMBER, INFORMATION",
        "IF, LOGICAL",
        "SUM, MATHEMATICAL",
        "MMULT, ARRAY",
        "AVERAGE, STATISTICAL",
        "INDEX, SPREADSHEET",
        "LEFT, TEXT",
        "BESSELI, ADD_IN"
    })
    void theWizardSortsFunctions(String name, Category category, @WithoutExtension Office office) {
        assertEquals(category, office.functionWizard().find(name).orElseThrow().category());
    }

    @Test
    void theWizardDescribesArguments(@WithoutExtension Office office) {
        FunctionWizard.Function round = office.functionWizard().find("round").orElseThrow();
        assertFalse(round.description().isBlank());
        List<Argument> arguments = round.arguments();
        assertEquals(2, arguments.size());
        assertFalse(arguments.get(0).optional());
        assertTrue(arguments.get(1).optional(), "the number of places may be left out");
        assertFalse(arguments.get(1).description().isBlank());
    }

    @Test
    void theOfficeIsShared(@WithoutExtension Office one, @WithoutExtension Office other) {
        assertSame(one, other);
    }

    @Test
    void whatTheOfficeThrowsSaysWhatWasTried(@WithoutExtension Office office) {
        try (CalcDocument document = office.newDocument()) {
            OfficeFailure failure = assertThrows(OfficeFailure.class, () -> document.at("no cell"));
            assertTrue(failure.getMessage().contains("reading no cell"), failure.getMessage());
            assertTrue(office.isAlive(), "a mistake in an address does not cost the office");
        }
    }
}
