package org.snugsheet.office.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XSheetAnnotation;
import com.sun.star.sheet.XSheetAnnotationAnchor;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellAddress;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;

/** Notes on the first cell of an array formula and inside it, through files and as often as one likes. */
@ExtendWith(SharedOffice.class)
class ArrayNotesIT {

    private static final String CELLS = "C3:F6";
    private static final String FORMULA = "=WRAP.MATERIALS()";
    private static final Map<String, String> MINE =
            Map.of("C3", "mine, on the first cell", "D5", "mine, inside", "A1", "shown");

    @ParameterizedTest
    @ValueSource(strings = {"ods", "fods", "xlsx"})
    void comeBackAsTheyWereEachTime(String ending, Office office, @TempDir Path folder) {
        Path before = folder.resolve("round0.ods");
        try (CalcDocument sheet = office.newDocument()) {
            office.call("noting", () -> {
                for (Map.Entry<String, String> note : MINE.entrySet()) {
                    XSpreadsheet page = page(sheet);
                    Area at = Area.read(0, note.getKey()).orElseThrow();
                    Uno.as(XSheetAnnotationsSupplier.class, page)
                            .getAnnotations()
                            .insertNew(new CellAddress((short) 0, at.left(), at.top()), note.getValue());
                }
                annotation(sheet, "A1").setIsVisible(true);
                return true;
            });
            // Afterwards the office would take no note on a part of an array.
            sheet.arrayFormula(CELLS, FORMULA.substring(1));
            assertEquals(MINE, notes(office, sheet));
            sheet.saveAs(before, FileFormat.ODS);
        }
        for (int round = 1; round <= 3; round++) {
            Path copy = folder.resolve("copy" + round + "." + ending);
            try (CalcDocument sheet = office.open(before)) {
                assertEquals(MINE, notes(office, sheet));
                Menu.share(office, sheet, copy);
            }
            before = folder.resolve("round" + round + ".ods");
            try (CalcDocument sheet = office.open(copy)) {
                Map<String, String> kept = new TreeMap<>(MINE);
                kept.put("C3", MINE.get("C3") + "\n" + FORMULA);
                assertEquals(kept, notes(office, sheet));
                String told = Menu.choose(office, sheet, MenuItem.BRING_BACK, Menu.QUIET);
                assertTrue(told.contains(": 1."), told);
                assertEquals(MINE, notes(office, sheet), "after round " + round);
                assertEquals(
                        "{" + FORMULA + "}",
                        office.call(
                                "reading",
                                () -> Uno.as(
                                                XArrayFormulaRange.class,
                                                page(sheet).getCellRangeByName(CELLS))
                                        .getArrayFormula()));
                assertTrue(office.call("shown", () -> annotation(sheet, "A1").getIsVisible()), "is shown");
                sheet.saveAs(before, FileFormat.ODS);
            }
        }
    }

    private static XSpreadsheet page(CalcDocument sheet) throws com.sun.star.uno.Exception {
        return Uno.sheets(sheet.uno()).get(0);
    }

    private static XSheetAnnotation annotation(CalcDocument sheet, String cell) throws com.sun.star.uno.Exception {
        Object anchor = page(sheet).getCellRangeByName(cell).getCellByPosition(0, 0);
        return Uno.as(XSheetAnnotationAnchor.class, anchor).getAnnotation();
    }

    private static Map<String, String> notes(Office office, CalcDocument sheet) {
        return office.call("reading notes", () -> {
            Map<String, String> notes = new TreeMap<>();
            Notes.of(page(sheet)).forEach((at, text) -> notes.put(CellName.of(at.column(), at.row()), text));
            return notes;
        });
    }
}
