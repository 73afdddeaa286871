package org.snugsheet.office.explaining;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.snugsheet.office.explaining.Explained.assertHas;
import static org.snugsheet.office.explaining.Explained.explained;
import static org.snugsheet.office.explaining.Explained.jar;

import com.sun.star.sheet.XNamedRanges;
import com.sun.star.table.CellAddress;
import com.sun.star.util.XModifiable;
import com.sun.star.util.XProtectable;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** Cells explained whatever their document is like: locked, in another language, for reading only, of several sheets. */
@ExtendWith(SharedOffice.class)
class ExplainedDocumentIT {

    private final Office office;

    ExplainedDocumentIT(Office office) {
        this.office = office;
    }

    @Test
    void explainingChangesNothing() {
        try (CalcDocument sheet = jar(office)) {
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
        try (CalcDocument sheet = jar(office)) {
            sheet.formula("D1", "COOL.RATE(A1:A2;B1:B2;C1+0.5)");
            String said = office.call(
                    "explaining",
                    () -> Explanation.of(
                            office.uno(),
                            sheet.uno(),
                            new com.sun.star.table.CellAddress((short) 0, 3, 0),
                            Language.GERMAN));
            assertHas(
                    Language.GERMAN.say(InvalidInputException.of(Problem.TOO_FEW_READINGS, 3, 2)
                            .finding()),
                    said);
            assertHas("10,5", said);
        }
    }

    @Test
    void cellsOfSeveralSheetsNamesAndBlankSurroundingsAreToldPlainly() {
        try (CalcDocument sheet = jar(office)) {
            office.call("adding", () -> {
                sheet.uno().getSheets().insertNewByName("Wool", (short) 1);
                Uno.as(XNamedRanges.class, Uno.property(sheet.uno(), "NamedRanges"))
                        .addNewByName("Minutes", "$Sheet1.$A$1:$A$5", new CellAddress(), 0);
                Uno.as(XNamedRanges.class, Uno.property(Uno.sheets(sheet.uno()).get(0), "NamedRanges"))
                        .addNewByName("Warmth", "$Sheet1.$B$1:$B$5", new CellAddress(), 0);
                return true;
            });
            assertHas(
                    "goes through several sheets", explained(office, sheet, "COOL.RATE(A1:A5;$Sheet1.B1:$Wool.B5;C1)"));
            String named = explained(office, sheet, "COOL.RATE(minutes;Warmth;C1)");
            assertHas("that is 0; 5; 10; 15; 20.", named);
            assertHas("that is 40; 34; blank; 26; 24.", named);
            assertHas("every 17.5 minutes", named);
            assertHas("Its formula: =COOL.RATE(Minutes,Warmth,C1)", named);
            assertHas(
                    InvalidInputException.of(Problem.SURROUNDINGS_BLANK)
                            .finding()
                            .sentence(),
                    explained(office, sheet, "COOL.RATE(A1:A5;B1:B5;C2)"));
            sheet.formula("Wool.B2", "1/0");
            assertHas(
                    "Wool.B2 shows an error. Fix that first.",
                    explained(office, sheet, "COOL.RATE(A1:A5;$Wool.B1:B5;C1)"));
        }
    }

    @Test
    void aLockedSheetIsExplainedToo() {
        try (CalcDocument sheet = jar(office)) {
            sheet.formula("D1", "COOL.RATE(OFFSET(A1;0;0;5;1);B1:B5;C1)");
            office.call("locking", () -> {
                Uno.as(XProtectable.class, Uno.sheets(sheet.uno()).get(0)).protect("secret");
                return true;
            });
            Menu.select(office, sheet, "D1");
            assertHas("every 17.5 minutes", Menu.choose(office, sheet, MenuItem.EXPLAIN, Menu.QUIET));
        }
    }

    @Test
    void aDocumentForReadingOnlyIsExplainedToo(@TempDir Path folder) {
        Path file = folder.resolve("jar.ods");
        try (CalcDocument sheet = jar(office)) {
            sheet.formula("D1", "COOL.RATE(OFFSET(A1;0;0;5;1);B1:B5;C1)").saveAs(file, FileFormat.ODS);
        }
        assertTrue(file.toFile().setReadOnly());
        try (CalcDocument sheet = office.open(file)) {
            Menu.select(office, sheet, "D1");
            assertHas("every 17.5 minutes", Menu.choose(office, sheet, MenuItem.EXPLAIN, Menu.QUIET));
        }
    }

    @Test
    void aGermanDocumentIsExplainedInTheLanguageOfTheOffice() {
        try (CalcDocument sheet = jar(office)) {
            sheet.locale("de-DE").text("B3", "30,5 °C");
            String said = explained(office, sheet, "COOL.RATE(A1:A5;B1:B5;C1)");
            assertHas("that is 40; 34; 30,5 °C; 26; 24.", said);
            assertHas("The jar loses half its extra warmth every 17", said);
            assertHas("The jar loses half", explained(office, sheet, "COOL.HALFTIME(A1:A5;B1:B5;C1)"));
        }
    }
}
