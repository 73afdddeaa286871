package org.snugsheet.office.explaining;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.sheet.XSheetAnnotations;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellAddress;
import com.sun.star.table.XCell;
import com.sun.star.text.XSimpleText;
import com.sun.star.text.XText;
import com.sun.star.util.CellProtection;
import com.sun.star.util.XMergeable;
import com.sun.star.util.XProtectable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.uno.Uno;

/** The line of the menu that puts the whole table of a formula into the sheet. */
@ExtendWith(SharedOffice.class)
class WholeTableIT {

    private static final String REPORT = "COOL.REPORT(A1:A5;B1:B5;C1)";

    private final Office office;
    private final CalcDocument sheet;

    WholeTableIT(Office office) {
        this.office = office;
        this.sheet = office.newDocument();
    }

    @BeforeEach
    void typeReadings() {
        sheet.numbersDown("A1", 0, 5, 10, 15, 20)
                .numbersDown("B1", 40, 34, 30, 26, 24)
                .number("C1", 10);
    }

    @AfterEach
    void close() {
        sheet.close();
    }

    @Test
    void theTableStandsInTheSheetAsWideAndHighAsItIs() {
        sheet.formula("E3", REPORT);
        assertEquals("Quantity", sheet.at("E3").text());
        String said = chosen("E3");
        assertTrue(said.matches("The whole table is in E3:J1\\d\\."), said);
        assertEquals("unit", sheet.at("J3").text());
        assertEquals(17.506, sheet.at("F5").number(), 0.001);
        assertTrue(sheet.formulaAt("J5").startsWith("{=SNUGSHEET.COOL.REPORT("), sheet.formulaAt("J5"));
        assertTrue(chosen("F5").startsWith("The whole table is already in E3:"));
    }

    /** Numbers are shown as a person reads them and stay whole; what somebody formatted stays as it is. */
    @Test
    void theTableIsShownWithoutRawDigits() {
        sheet.formula("E3", REPORT);
        office.call("formatting a cell", () -> {
            XSpreadsheet page =
                    Uno.as(XSpreadsheet.class, sheet.uno().getSheets().getByName("Sheet1"));
            Uno.set(page.getCellRangeByName("F4"), "NumberFormat", 10);
            return true;
        });
        chosen("E3");
        assertEquals("17.51", shown("F5"));
        assertEquals(17.506, sheet.at("F5").number(), 0.001);
        assertTrue(shown("F4").endsWith("%"), shown("F4"));
        assertEquals(true, wrapped("E5"), "the label beside a number");
        undo();
        assertEquals(0, format("F5"));
        assertEquals(false, wrapped("E5"));
    }

    private String shown(String cell) {
        return office.call(
                "reading what is shown", () -> Uno.as(XText.class, cell(cell)).getString());
    }

    private int format(String cell) {
        return office.call("reading a format", () -> (Integer) Uno.property(cell(cell), "NumberFormat"));
    }

    private boolean wrapped(String cell) {
        return office.call("reading a look", () -> (Boolean) Uno.property(cell(cell), "IsTextWrapped"));
    }

    private XCell cell(String name) throws com.sun.star.uno.Exception {
        return Uno.as(XSpreadsheet.class, sheet.uno().getSheets().getByName("Sheet1"))
                .getCellRangeByName(name)
                .getCellByPosition(0, 0);
    }

    /** What is not a range, and what counts from the cell or leaves out its sheet. */
    @Test
    void nestedAddressesMeanTheSame() {
        for (String address :
                List.of("OFFSET(A1;0;0;5;1)", "INDIRECT(\"A1:A5\")", "INDIRECT(\"R1C1:R5C1\";0)", "INDEX(A1:B5;0;1)")) {
            sheet.formula("E3", "COOL.REPORT(" + address + ";B1:B5;C1)");
            String said = chosen("E3");
            assertTrue(said.startsWith("The whole table is in E3:J1"), address + ": " + said);
            assertEquals(17.506, sheet.at("F5").number(), 0.001, address);
            undo();
            sheet.formula("E3", "");
        }
    }

    @Test
    void oneUndoTakesItBackAndRedoBringsItAgain() {
        sheet.formula("E3", REPORT);
        String formula = sheet.formulaAt("E3");
        for (int i = 0; i < 3; i++) {
            chosen("E3");
            assertEquals("Quantity", sheet.at("E3").text());
            undo();
            assertEquals(formula, sheet.formulaAt("E3"));
            assertTrue(sheet.at("J5") instanceof CellResult.Blank);
            redo();
            assertEquals(17.506, sheet.at("F5").number(), 0.001);
            undo();
            redo();
            undo();
        }
        chosen("E3");
        sheet.number("A7", 1);
        undo();
        undo();
        assertEquals(formula, sheet.formulaAt("E3"));
        redo();
        redo();
        assertEquals(1, sheet.at("A7").number());
        assertEquals(17.506, sheet.at("F5").number(), 0.001);
    }

    /** A table of the wrong size gets the right one; its own cells are in nobody’s way. */
    @Test
    void aTableThatGrewIsShownWholeAgain() {
        sheet.arrayFormula("E3:F5", REPORT);
        String said = chosen("F4");
        assertTrue(said.startsWith("The whole table is in E3:J1"), said);
        undo();
        assertTrue(sheet.formulaAt("F5").startsWith("{="), sheet.formulaAt("F5"));
        assertTrue(sheet.at("G5") instanceof CellResult.Blank);
        sheet.arrayFormula("E20:Z60", REPORT);
        assertTrue(chosen("E20").startsWith("The whole table is in E20:J"));
        assertTrue(sheet.at("Z60") instanceof CellResult.Blank);
    }

    @Test
    void somebodysNotesStay() {
        sheet.formula("E3", "1").formula("F4", "1");
        note(4, 2, "mine on the first");
        note(5, 3, "mine inside");
        sheet.text("F4", "");
        sheet.arrayFormula("E3:F5", REPORT);
        assertTrue(chosen("F4").startsWith("The whole table is in E3:J1"));
        assertEquals(List.of("mine on the first", "mine inside"), notes());
        undo();
        assertEquals(List.of("mine on the first", "mine inside"), notes());
        redo();
        assertEquals(List.of("mine on the first", "mine inside"), notes());
    }

    private void note(int column, int row, String text) {
        office.call("noting", () -> {
            annotations().insertNew(new CellAddress((short) 0, column, row), text);
            return true;
        });
    }

    private List<String> notes() {
        return office.call("reading notes", () -> {
            List<String> notes = new ArrayList<>();
            for (int i = 0; i < annotations().getCount(); i++) {
                notes.add(Uno.as(XSimpleText.class, annotations().getByIndex(i)).getString());
            }
            return notes;
        });
    }

    private XSheetAnnotations annotations() throws com.sun.star.uno.Exception {
        return Uno.as(XSheetAnnotationsSupplier.class, Uno.sheets(sheet.uno()).get(0))
                .getAnnotations();
    }

    @Test
    void nothingIsOverwritten() {
        sheet.formula("E3", REPORT).text("G5", "mine").number("J4", 3);
        assertTrue(chosen("E3").contains("there is something in J4, G5."), chosen("E3"));
        assertEquals("mine", sheet.at("G5").text());
        assertTrue(sheet.at("F4") instanceof CellResult.Blank);
        sheet.numbersDown("I5", 1, 2, 3, 4, 5);
        assertTrue(chosen("E3").contains("something in J4, G5, I5, I6, I7 and in 2 more of them."), chosen("E3"));
        office.call("merging", () -> {
            Uno.as(XMergeable.class, range("M5:N5")).merge(true);
            return true;
        });
        sheet.formula("L3", REPORT);
        assertTrue(chosen("L3").contains("are merged"));
    }

    @Test
    void whatHasNoTableSaysSo() {
        sheet.formula("E3", "COOL.RATE(A1:A5;B1:B5;C1)");
        assertTrue(chosen("E3").contains("does not answer with a table"));
        assertTrue(chosen("A1").contains("does not answer with a table"));
        sheet.formula("E3", "INDEX(" + REPORT + ";2;2)");
        assertTrue(chosen("E3").contains("takes one value out of a table"));
        sheet.formula("E3", "COOL.REPORT(A1:A2;B1:B2;C1)");
        assertTrue(chosen("E3").contains("cannot answer"));
        sheet.formula("E1048576", REPORT);
        assertTrue(chosen("E1048576").contains("does not fit"));
    }

    @Test
    void aLockedSheetStaysAsItIs() {
        sheet.formula("E3", REPORT);
        protect("");
        assertTrue(chosen("E3").contains("The sheet “Sheet1” is protected."));
        assertTrue(sheet.at("F5") instanceof CellResult.Blank);
    }

    /** Where a person may type into all of the cells, the table may go there, too. */
    @Test
    void cellsThatAreOpenInALockedSheetAreFilled() {
        sheet.formula("E3", REPORT);
        office.call("opening", () -> {
            Uno.as(XPropertySet.class, range("E3:J20"))
                    .setPropertyValue("CellProtection", new CellProtection(false, false, false, false));
            return true;
        });
        protect("secret");
        String said = chosen("E3");
        assertTrue(said.startsWith("The whole table is in E3:J1"), said);
        assertEquals(17.506, sheet.at("F5").number(), 0.001);
    }

    @Test
    void aDocumentForReadingOnlyStaysAsItIs(@TempDir Path folder) {
        Path file = sheet.formula("E3", REPORT).saveAs(folder.resolve("jar.ods"), FileFormat.ODS);
        assertTrue(file.toFile().setReadOnly());
        try (CalcDocument reading = office.open(file)) {
            boolean readOnly = office.call(
                    "asking",
                    () -> Uno.as(com.sun.star.frame.XStorable.class, reading.uno())
                            .isReadonly());
            Menu.select(office, reading, "E3");
            String said = Menu.choose(office, reading, MenuItem.TABLE, Menu.QUIET);
            // Root may write into every file, so the office opens it for writing then.
            assertTrue(said.startsWith(readOnly ? "This document is open for reading only" : "The whole table"), said);
        }
    }

    /** Each table function’s own example, at the size its table has. */
    @Test
    void everyTableIsShownWhole() {
        for (var function : org.snugsheet.office.functions.Families.functions()) {
            if (function.isTable()) {
                sheet.formula("E3", function.function().example());
                String said = chosen("E3");
                assertTrue(said.startsWith("The whole table is in E3:"), function.name() + ": " + said);
                undo();
                sheet.formula("E3", "");
            }
        }
    }

    private String chosen(String cell) {
        Menu.select(office, sheet, cell);
        return Menu.choose(office, sheet, MenuItem.TABLE, Menu.QUIET);
    }

    private void undo() {
        office.call("undoing", () -> {
            steps().undo();
            return true;
        });
    }

    private void redo() {
        office.call("redoing", () -> {
            steps().redo();
            return true;
        });
    }

    private XUndoManager steps() {
        return Uno.as(XUndoManagerSupplier.class, sheet.uno()).getUndoManager();
    }

    private void protect(String password) {
        office.call("locking", () -> {
            Uno.as(XProtectable.class, Uno.sheets(sheet.uno()).get(0)).protect(password);
            return true;
        });
    }

    private Object range(String cells) throws com.sun.star.uno.Exception {
        return Uno.sheets(sheet.uno()).get(0).getCellRangeByName(cells);
    }
}
