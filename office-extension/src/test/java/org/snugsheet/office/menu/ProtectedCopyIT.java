package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyValue;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellAddress;
import com.sun.star.util.CellProtection;
import com.sun.star.util.XProtectable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeWithWindows;
import org.snugsheet.office.uno.Uno;

/** Bringing the formulas back into sheets that are protected, in a window: undone and done again as often as one likes. */
@ExtendWith(OfficeWithWindows.class)
class ProtectedCopyIT {

    private static final String UNDO = ".uno:Undo";
    private static final String REDO = ".uno:Redo";
    private static final int TIMES = 4;

    private final Office office;

    ProtectedCopyIT(Office office) {
        this.office = office;
    }

    /** As the worked sheets are: locked but for the cells to type into, without a password. */
    @ParameterizedTest
    @ValueSource(strings = {"ods", "xlsx"})
    void withoutAPassword(String ending, @TempDir Path folder) {
        Path copy = shared(folder, ending);
        try (CalcDocument sheet = office.open(copy)) {
            Full before = Full.of(office, sheet);
            assertTrue(isProtected(sheet), "the copy is protected again");
            assertTrue(bringBack(sheet).startsWith("Formulas back in their cells: 3."));
            Full after = Full.of(office, sheet);
            assertTrue(isProtected(sheet));
            assertNotEquals(before, after);
            undoAndRedo(sheet, before, after);
        }
    }

    /** What was typed before and after is undone and done again with it. */
    @Test
    @NeedsWindows
    void withReadingsTypedBeforeAndAfter(@TempDir Path folder) {
        Path copy = shared(folder, "ods");
        try (CalcDocument sheet = office.open(copy)) {
            Full opened = Full.of(office, sheet);
            type(sheet, "B2", "33");
            Full typed = Full.of(office, sheet);
            bringBack(sheet);
            Full back = Full.of(office, sheet);
            type(sheet, "B3", "29");
            Full last = Full.of(office, sheet);
            for (int time = 0; time < TIMES; time++) {
                for (Full was : new Full[] {back, typed, opened}) {
                    call(sheet, UNDO);
                    assertEquals(was, Full.of(office, sheet), "undone, time " + time);
                }
                for (Full is : new Full[] {typed, back, last}) {
                    call(sheet, REDO);
                    assertEquals(is, Full.of(office, sheet), "done again, time " + time);
                }
            }
        }
    }

    /** Somebody gave the copy’s sheet a password: nothing at all is changed, and there is nothing to undo. */
    @Test
    void withAPassword(@TempDir Path folder) {
        Path copy = shared(folder, "ods");
        try (CalcDocument sheet = office.open(copy)) {
            protect(sheet, "", "secret");
            Full before = Full.of(office, sheet);
            int steps = Halfway.steps(office, sheet);
            assertEquals("The sheet “Sheet1” has a password. Take it off first.", bringBack(sheet));
            assertEquals(before, Full.of(office, sheet));
            assertEquals(steps, Halfway.steps(office, sheet));
            protect(sheet, "secret", "");
            Full open = Full.of(office, sheet);
            assertTrue(bringBack(sheet).startsWith("Formulas back in their cells: 3."));
            undoAndRedo(sheet, open, Full.of(office, sheet));
        }
    }

    /** The order of the sheets is protected as well, so that no sheet can come or go but by us. */
    @ParameterizedTest
    @ValueSource(strings = {"ods", "fods", "xlsx"})
    void withTheStructureOfTheDocument(String ending, @TempDir Path folder) throws IOException {
        Path copy = shared(folder, ending, sheet -> structure(sheet).protect(""));
        // Not every office reads that protection out of an .xlsx; other programs do.
        boolean isRead = !ending.equals("xlsx");
        assertTrue(isRead || part(copy, "xl/workbook.xml").contains("<workbookProtection lockStructure=\"true\""));
        try (CalcDocument sheet = office.open(copy)) {
            assertTrue(!isRead || office.call("asking", () -> structure(sheet).isProtected()), "as the original");
            Full before = Full.of(office, sheet);
            assertTrue(bringBack(sheet).startsWith("Formulas back in their cells: 3."));
            assertEquals(1, sheet.sheetNames().size());
            undoAndRedo(sheet, before, Full.of(office, sheet));
            assertTrue(!isRead || office.call("asking", () -> structure(sheet).isProtected()));
        }
    }

    private static String part(Path file, String name) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            return new String(zip.getInputStream(zip.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void withTheStructureOfTheDocumentAndAPassword(@TempDir Path folder) {
        Path copy = shared(folder, "ods");
        try (CalcDocument sheet = office.open(copy)) {
            office.call("protecting", () -> {
                structure(sheet).protect("secret");
                return true;
            });
            Full before = Full.of(office, sheet);
            int steps = Halfway.steps(office, sheet);
            String told = bringBack(sheet);
            assertTrue(told.contains("its structure has a password. Take it off first."), told);
            assertEquals(before, Full.of(office, sheet));
            assertEquals(steps, Halfway.steps(office, sheet));
        }
    }

    private static XProtectable structure(CalcDocument sheet) {
        return Uno.as(XProtectable.class, sheet.uno());
    }

    private interface Change {
        void of(CalcDocument sheet) throws com.sun.star.uno.Exception;
    }

    /** A password given afterwards is a step of its own: it goes before the formulas do, and comes after them. */
    @Test
    void withAPasswordGivenAfterwards(@TempDir Path folder) {
        Path copy = shared(folder, "ods");
        try (CalcDocument sheet = office.open(copy)) {
            Full before = Full.of(office, sheet);
            bringBack(sheet);
            Full after = Full.of(office, sheet);
            protect(sheet, "", "secret");
            for (int time = 0; time < TIMES; time++) {
                // Taking the old protection off and putting the new one on are two steps.
                call(sheet, UNDO);
                call(sheet, UNDO);
                assertEquals(after, Full.of(office, sheet));
                call(sheet, UNDO);
                assertEquals(before, Full.of(office, sheet));
                call(sheet, REDO);
                assertEquals(after, Full.of(office, sheet));
                call(sheet, REDO);
                call(sheet, REDO);
                assertTrue(isProtected(sheet));
                assertFalse(opens(sheet, ""), "with its password again");
            }
        }
    }

    private void undoAndRedo(CalcDocument sheet, Full before, Full after) {
        for (int time = 0; time < TIMES; time++) {
            call(sheet, UNDO);
            assertEquals(before, Full.of(office, sheet), "undone, time " + time);
            call(sheet, REDO);
            assertEquals(after, Full.of(office, sheet), "done again, time " + time);
        }
    }

    private String bringBack(CalcDocument sheet) {
        return Menu.choose(office, sheet, MenuItem.BRING_BACK, Menu.QUIET);
    }

    private void call(CalcDocument sheet, String address, PropertyValue... arguments) {
        Menu.asAPerson(office, () -> Menu.call(office, sheet, address, arguments));
    }

    private void type(CalcDocument sheet, String cell, String text) {
        call(sheet, ".uno:GoToCell", Uno.named("ToPoint", "Sheet1." + cell));
        call(sheet, ".uno:EnterString", Uno.named("StringName", text));
    }

    private static XProtectable protection(CalcDocument sheet) throws com.sun.star.uno.Exception {
        return Uno.as(XProtectable.class, Uno.sheets(sheet.uno()).get(0));
    }

    private boolean isProtected(CalcDocument sheet) {
        return office.call("asking", () -> protection(sheet).isProtected());
    }

    private boolean opens(CalcDocument sheet, String password) {
        return office.call("trying a password", () -> {
            try {
                protection(sheet).unprotect(password);
            } catch (com.sun.star.lang.IllegalArgumentException wrong) {
                return false;
            }
            return !protection(sheet).isProtected();
        });
    }

    private void protect(CalcDocument sheet, String old, String password) {
        office.call("protecting", () -> {
            protection(sheet).unprotect(old);
            protection(sheet).protect(password);
            return true;
        });
    }

    private Path shared(Path folder, String ending) {
        return shared(folder, ending, sheet -> {});
    }

    private Path shared(Path folder, String ending, Change change) {
        Path copy = folder.resolve("copy." + ending);
        try (CalcDocument sheet = office.newDocument()) {
            sheet.numbersDown("A1", 0, 5, 10, 15, 20)
                    .numbersDown("B1", 40, 34, 30, 26, 24)
                    .number("C1", 10)
                    .formula("D1", "COOL.RATE(A1:A5;B1:B5;C1)")
                    .formula("D2", "2*COOL.HALFTIME(A1:A5;B1:B5;C1)")
                    .arrayFormula("F1:H3", "COOL.CURVE(A2:A3;A1:A5;B1:B5;C1)");
            office.call("locking all but the readings, with a note", () -> {
                XSpreadsheet page = Uno.sheets(sheet.uno()).get(0);
                Uno.as(XSheetAnnotationsSupplier.class, page)
                        .getAnnotations()
                        .insertNew(new CellAddress((short) 0, 3, 1), "mine");
                Uno.set(
                        page.getCellRangeByName("A1:C5"),
                        "CellProtection",
                        new CellProtection(false, false, false, false));
                protection(sheet).protect("");
                change.of(sheet);
                return true;
            });
            Menu.share(office, sheet, copy);
        }
        return copy;
    }
}
