package org.snugsheet.office.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNamed;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSheetOutline;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.TableOrientation;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.util.XMergeable;
import com.sun.star.util.XProtectable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;

/**
 * Of thousands of notes the office makes the first, and the others are written into the file: where rows and cells are alike, in groups, in
 * rows for every page, among merged and hidden ones. They must be those that the office itself makes, cell by cell.
 */
@ExtendWith(SharedOffice.class)
class ManyNotesIT {

    private static final String ALIKE = "WRAP.LAYER(20;0.04)";

    /** Blanks in a row, a letter beyond 16 bits, and what XML has uses for. */
    private static final String ODD =
            "IF(WRAP.LAYER(20;0.04)>0;\" a  b   \uD83E\uDDE6 <b>&amp;]]> \"\"q\"\" 'ü\";\"\")";

    private static final int MANY = 230;

    /** What all kinds of files are made of and held against; neither depends on the kind. */
    private record Original(
            CalcDocument sheet, List<String> formulas, int count, List<Map<String, String>> madeByOffice) {}

    private static @Nullable Original made;

    @BeforeAll
    static void make(Office office) {
        CalcDocument sheet = filled(office);
        try (CalcDocument other = filled(office)) {
            int count = office.call("sharing", () -> ShareCopy.make(other.uno()));
            made = new Original(sheet, formulas(office, sheet), count, notes(office, other));
        }
    }

    @AfterAll
    static void close() {
        if (made != null) {
            made.sheet().close();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {".ods", ".fods", ".xlsx"})
    void areThoseThatTheOfficeMakes(String ending, Office office, @TempDir Path folder) throws IOException {
        Path file = folder.resolve("copy" + ending);
        Original original = Objects.requireNonNull(made);
        List<Map<String, String>> madeByOffice = original.madeByOffice();
        Menu.share(office, original.sheet(), file);
        assertTrue(isWrittenIntoTheFile(file), "the quick way");
        assertTrue(madeByOffice.get(0).size() > MANY && madeByOffice.get(1).size() == MANY, "many of them");
        try (CalcDocument copy = office.open(file)) {
            assertEquals(madeByOffice, notes(office, copy));
            String told = Menu.choose(office, copy, MenuItem.BRING_BACK, Menu.QUIET);
            assertTrue(told.contains(": " + original.count() + "."), told);
            assertEquals(original.formulas(), formulas(office, copy));
            assertEquals(List.of(Map.of("G9", "mine"), Map.of(), Map.of()), notes(office, copy));
        }
    }

    /** The office places each note that it writes, and gives each drawing a plain number. */
    private static boolean isWrittenIntoTheFile(Path file) throws IOException {
        FileParts parts = FileParts.of(file);
        return parts.text("content.xml")
                        .filter(xml -> xml.matches("(?s).*<office:annotation(?![^>]*svg:x=)[^>]*>.*"))
                        .isPresent()
                || parts.text("xl/drawings/vmlDrawing1.vml")
                        .filter(xml -> xml.matches("(?s).*id=\"[A-Za-z_]*\\d+_\\d+\".*"))
                        .isPresent();
    }

    private static CalcDocument filled(Office office) {
        CalcDocument sheet = office.newDocument();
        office.call("more pages", () -> {
            sheet.uno().getSheets().insertNewByName("Two", (short) 1);
            sheet.uno().getSheets().insertNewByName("Few", (short) 2);
            return true;
        });
        sheet.formulasDown("C3", Collections.nCopies(MANY, ALIKE));
        for (String top : List.of("F5", "G5", "H5")) {
            sheet.formulasDown(top, Collections.nCopies(60, ALIKE));
        }
        sheet.formulasDown("Two.B2", Collections.nCopies(MANY, ODD)).formula("Few.A1", ALIKE);
        sheet.arrayFormula("K40:N43", "WRAP.MATERIALS()");
        office.call("a sheet as people have them", () -> {
            XSpreadsheet page = Uno.sheets(sheet.uno()).get(0);
            Uno.as(XSheetAnnotationsSupplier.class, page)
                    .getAnnotations()
                    .insertNew(new CellAddress((short) 0, 6, 8), "mine");
            Uno.as(XSheetOutline.class, page).group(address(page, "A10:A20"), TableOrientation.ROWS);
            Uno.as(XSheetOutline.class, page).group(address(page, "A12:A14"), TableOrientation.ROWS);
            Uno.as(XPrintAreas.class, page).setTitleRows(address(page, "A3:A6"));
            Uno.as(XPrintAreas.class, page).setPrintTitleRows(true);
            Uno.as(XMergeable.class, page.getCellRangeByName("C30:D33")).merge(true);
            Object hidden = Uno.as(XColumnRowRange.class, page).getRows().getByIndex(50);
            Uno.set(Uno.as(XPropertySet.class, hidden), "IsVisible", false);
            XSpreadsheet second = Uno.sheets(sheet.uno()).get(1);
            Uno.as(XNamed.class, second).setName("Two & <three>");
            Uno.as(XProtectable.class, second).protect("");
            return true;
        });
        assertFalse(formulas(office, sheet).isEmpty());
        return sheet;
    }

    private static CellRangeAddress address(XSpreadsheet page, String range) {
        return Uno.as(XCellRangeAddressable.class, page.getCellRangeByName(range))
                .getRangeAddress();
    }

    private static List<Map<String, String>> notes(Office office, CalcDocument sheet) {
        return office.call("reading notes", () -> List.of(notes(sheet, 0), notes(sheet, 1), notes(sheet, 2)));
    }

    private static Map<String, String> notes(CalcDocument sheet, int page) throws com.sun.star.uno.Exception {
        Map<String, String> notes = new TreeMap<>();
        Notes.of(Uno.sheets(sheet.uno()).get(page))
                .forEach((at, text) -> notes.put(CellName.of(at.column(), at.row()), text));
        return notes;
    }

    private static List<String> formulas(Office office, CalcDocument sheet) {
        return office.call(
                "reading formulas",
                () -> Uno.sheets(sheet.uno()).subList(0, 3).stream()
                        .map(page ->
                                Arrays.deepToString(Uno.as(XCellRangeFormula.class, page.getCellRangeByName("A1:P300"))
                                        .getFormulaArray()))
                        .toList());
    }
}
