package org.snugsheet.office.explaining;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.Families;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;

/**
 * Cells that go through several sheets, such as {@code Sheet1.A1:Sheet3.A9}. The office hands over those of the first sheet alone, and
 * nothing that tells there were more; so the cell cannot refuse, and its explanation does.
 */
@ExtendWith(SharedOffice.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SeveralSheetsIT {

    private static final String FIRST = "$Sheet1.$A$1:$A$5";
    private static final String THROUGH = "$Sheet1.$A$1:$Last.$A$5";

    private final Office office;
    private final CalcDocument sheet;

    SeveralSheetsIT(Office office) {
        this.office = office;
        this.sheet = office.newDocument();
    }

    static Stream<FunctionDeclaration> functionsOfCells() {
        return Families.functions().stream()
                .filter(function -> !function.arguments().isEmpty());
    }

    @BeforeAll
    void threeSheets() {
        office.call("adding", () -> {
            sheet.uno().getSheets().insertNewByName("Middle", (short) 1);
            sheet.uno().getSheets().insertNewByName("Last", (short) 2);
            return true;
        });
        for (String name : new String[] {"Sheet1", "Middle", "Last"}) {
            double more = name.length();
            sheet.numbersDown(name + ".A1", 0, 5, 10, 15, 20);
            sheet.numbersDown(name + ".B1", 40, 34 + more, 30 + more, 26 + more, 24 + more);
        }
    }

    @AfterAll
    void close() {
        sheet.close();
    }

    /** The fact that the rest rests on: of each of the three kinds of argument only the first sheet arrives. */
    @Test
    void theOfficeHandsOverTheFirstSheetAlone() {
        double plain = rate("$Sheet1.$A$1:$A$5", "$Sheet1.$B$1:$B$5", "10");
        assertEquals(plain, rate("$Sheet1.$A$1:$Last.$A$5", "$Sheet1.$B$1:$Last.$B$5", "10"), 0);
        sheet.numbersDown("Sheet1.C1", 10, 10, 11, 11, 12);
        sheet.numbersDown("Last.C1", 1, 2, 3, 4, 5);
        assertEquals(
                rate("$Sheet1.$A$1:$A$5", "$Sheet1.$B$1:$B$5", "$Sheet1.$C$1:$C$5"),
                rate("$Sheet1.$A$1:$A$5", "$Sheet1.$B$1:$B$5", "$Sheet1.$C$1:$Last.$C$5"),
                0);
        sheet.number("Sheet1.D1", 0.5).number("Last.D1", 4);
        assertEquals(
                rate("$Sheet1.$A$1:$A$5", "$Sheet1.$B$1:$B$5", "10;$Sheet1.$D$1"),
                rate("$Sheet1.$A$1:$A$5", "$Sheet1.$B$1:$B$5", "10;$Sheet1.$D$1:$Last.$D$1"),
                0);
    }

    private double rate(String times, String temps, String rest) {
        return sheet.formula("F1", "COOL.RATE.ERROR(" + times + ";" + temps + ";" + rest + ")")
                .at("F1")
                .number();
    }

    /** Whatever function, whichever argument: the sentence comes, and no number is said beside it. */
    @ParameterizedTest
    @MethodSource("functionsOfCells")
    void theExplanationOfEveryFunctionRefuses(FunctionDeclaration function) {
        int count = function.arguments().size();
        int needed = (int) function.arguments().stream()
                .filter(argument -> !argument.optional())
                .count();
        for (int through = 0; through < Math.max(1, needed); through++) {
            StringBuilder call = new StringBuilder(function.name()).append('(');
            for (int i = 0; i < Math.min(count, Math.max(1, needed)); i++) {
                call.append(i == 0 ? "" : ";").append(i == through ? THROUGH : FIRST);
            }
            String said = explained(call.append(')').toString());
            assertTrue(said.contains("goes through several sheets. Give cells of one sheet."), said);
            assertTrue(!said.contains("It answers"), said);
        }
    }

    private String explained(String formula) {
        sheet.formula("F1", formula);
        Menu.select(office, sheet, "F1");
        return Menu.choose(office, sheet, MenuItem.EXPLAIN, Menu.QUIET);
    }
}
