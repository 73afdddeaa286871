package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyValue;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSheetAnnotationAnchor;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellAddress;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.text.XSimpleText;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeWithWindows;
import org.snugsheet.office.harness.Printing;
import org.snugsheet.office.uno.Uno;

/** Bringing the formulas back in a window: what is asked before, and the one step that undoes it. */
@ExtendWith(OfficeWithWindows.class)
class BringBackIT {

    private static final String CELLS = "A1:H12";

    private final Office office;

    BringBackIT(Office office) {
        this.office = office;
    }

    /** With two pages, an array, a note of somebody’s and the page of the copy, wherever that one is. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void undoAndRedoAsOftenAsOneLikes(boolean pageFirst, @TempDir Path folder) {
        Path copy = shared(folder);
        try (CalcDocument sheet = office.open(copy)) {
            if (pageFirst) {
                office.call("moving the page", () -> {
                    sheet.uno().getSheets().moveByName("How this was worked out", (short) 0);
                    return true;
                });
            }
            String before = state(sheet);
            String told = Menu.choose(office, sheet, MenuItem.BRING_BACK, Menu.QUIET);
            assertTrue(told.startsWith("Formulas back in their cells: 4."), told);
            assertFalse(sheet.sheetNames().contains("How this was worked out"));
            String after = state(sheet);
            assertNotEquals(before, after);
            for (int i = 0; i < 3; i++) {
                step(sheet, XUndoManager::undo);
                assertEquals(before, state(sheet));
                step(sheet, XUndoManager::redo);
                assertEquals(after, state(sheet));
            }
            step(sheet, XUndoManager::undo);
            told = Menu.choose(office, sheet, MenuItem.BRING_BACK, Menu.QUIET);
            assertTrue(told.startsWith("Formulas back in their cells: 4."), told);
            assertEquals(after, state(sheet));
        }
    }

    /** The page that comes back is as it was, so that it warns as before and goes once more. */
    @Test
    void thePageThatComesBackWarnsAsBefore(@TempDir Path folder) {
        Path copy = shared(folder);
        try (CalcDocument sheet = office.open(copy)) {
            String paper = paper(sheet);
            Menu.choose(office, sheet, MenuItem.BRING_BACK, Menu.QUIET);
            step(sheet, XUndoManager::undo);
            assertEquals(paper, paper(sheet));
            assertEquals("", sheet.at("How this was worked out.A3").shown());
            sheet.number("B2", 33);
            String warning = sheet.at("How this was worked out.A3").shown();
            assertTrue(warning.startsWith("These answers are of the readings as they were on"), warning);
            assertFalse(office.call("looking", () -> (Boolean) Uno.property(
                    Uno.as(XColumnRowRange.class, sheet.uno().getSheets().getByName("How this was worked out"))
                            .getColumns()
                            .getByIndex(7),
                    "IsVisible")));
        }
    }

    /** What of the page that keeps the formulas is printed, and how. */
    private String paper(CalcDocument sheet) {
        String page = "How this was worked out";
        String style = office.call(
                "looking", () -> (String) Uno.property(sheet.uno().getSheets().getByName(page), "PageStyle"));
        return style + " " + Printing.areas(office, sheet, page) + " " + Printing.sheetsOfPaper(office, sheet);
    }

    private void step(CalcDocument sheet, Step step) {
        office.call("undoing or redoing", () -> {
            step.of(Uno.as(XUndoManagerSupplier.class, sheet.uno()).getUndoManager());
            return true;
        });
    }

    private interface Step {
        void of(XUndoManager undo) throws com.sun.star.uno.Exception;
    }

    @Test
    @NeedsWindows
    void whatWillBeWrittenIsAskedAbout(@TempDir Path folder) throws Exception {
        Path copy = shared(folder);
        try (CalcDocument sheet = office.open(copy)) {
            sheet.number("D1", 9);
            String before = state(sheet);
            CompletableFuture<String> chosen = choose(sheet);
            Seen asked = asked();
            assertTrue(asked.text().contains("Formulas to be written into their cells: 3."), asked.text());
            assertTrue(asked.text().contains("Sheet1.D2:  =2*COOL.HALFTIME(A1:A5;B1:B5;C1)"), asked.text());
            assertTrue(asked.text().contains("Sheet1.D1:  Something else was typed there. It stays."), asked.text());
            asked.press("Cancel");
            chosen.get(1, TimeUnit.MINUTES);
            assertEquals(before, state(sheet));
        }
    }

    private Seen asked() throws Exception {
        return Seen.window(office, MenuWords.BRING_BACK.english());
    }

    private CompletableFuture<String> choose(CalcDocument sheet, PropertyValue... arguments) {
        return Menu.chosenByAPerson(office, sheet, MenuItem.BRING_BACK, arguments);
    }

    private Path shared(Path folder) {
        Path copy = folder.resolve("copy.ods");
        try (CalcDocument sheet = office.newDocument()) {
            sheet.numbersDown("A1", 0, 5, 10, 15, 20)
                    .numbersDown("B1", 40, 34, 30, 26, 24)
                    .number("C1", 10)
                    .formula("D1", "COOL.RATE(A1:A5;B1:B5;C1)")
                    .formula("D2", "2*COOL.HALFTIME(A1:A5;B1:B5;C1)")
                    .arrayFormula("F1:H3", "COOL.CURVE(A2:A3;A1:A5;B1:B5;C1)");
            office.call("adding a page and a note", () -> {
                sheet.uno().getSheets().insertNewByName("Second", (short) 1);
                Uno.as(XSheetAnnotationsSupplier.class, Uno.sheets(sheet.uno()).get(0))
                        .getAnnotations()
                        .insertNew(new CellAddress((short) 0, 3, 1), "mine");
                return true;
            });
            sheet.formula("Second.A1", "WRAP.LAYER(20;0.04)");
            Menu.share(office, sheet, copy);
        }
        return copy;
    }

    private String state(CalcDocument sheet) {
        return office.call("reading all", () -> {
            StringBuilder all = new StringBuilder();
            for (XSpreadsheet page : Uno.sheets(sheet.uno())) {
                all.append(Uno.as(com.sun.star.container.XNamed.class, page).getName())
                        .append(Arrays.deepToString(Uno.as(XCellRangeFormula.class, page.getCellRangeByName(CELLS))
                                .getFormulaArray()));
                for (int column = 0; column < 8; column++) {
                    for (int row = 0; row < 2; row++) {
                        Object note = Uno.as(XSheetAnnotationAnchor.class, page.getCellByPosition(column, row))
                                .getAnnotation();
                        all.append(Uno.as(XSimpleText.class, note).getString()).append('|');
                    }
                }
            }
            return all.append(Uno.as(
                                    com.sun.star.beans.XPropertySet.class,
                                    Uno.as(XDocumentPropertiesSupplier.class, sheet.uno())
                                            .getDocumentProperties()
                                            .getUserDefinedProperties())
                            .getPropertySetInfo()
                            .getProperties()
                            .length)
                    .toString();
        });
    }
}
