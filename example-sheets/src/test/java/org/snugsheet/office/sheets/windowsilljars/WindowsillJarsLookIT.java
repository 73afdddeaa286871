package org.snugsheet.office.sheets.windowsilljars;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellContentType;
import com.sun.star.table.XCell;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.CellProtection;
import com.sun.star.util.XProtectable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.sheets.BuiltSheets;

/** How the worked sheet meets its reader: what can be typed into, where the cursor is, what is printed and described. */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class WindowsillJarsLookIT {
    private static final int ROWS = 40;
    private static final int COLUMNS = 10;

    @Test
    void onlyInputCellsCanBeTypedInto(Office office, BuiltSheets.Sheet sheet) throws com.sun.star.uno.Exception {
        try (CalcDocument document = office.open(sheet.ods())) {
            XSpreadsheet page = page(document, 0);
            int open = 0;
            for (int row = 0; row < ROWS; row++) {
                for (int column = 0; column < COLUMNS; column++) {
                    XCell cell = page.getCellByPosition(column, row);
                    boolean locked = ((CellProtection) property(cell, "CellProtection")).IsLocked;
                    boolean input = property(cell, "CellStyle").toString().matches("Snug input( head)?");
                    assertEquals(input, !locked, "column " + column + ", row " + row);
                    assertTrue(locked || cell.getType() != CellContentType.FORMULA);
                    open += locked ? 0 : 1;
                }
            }
            // Times and readings; names, materials and thicknesses; three settings.
            assertEquals(9 * 6 + 3 * 5 + 3, open);
        }
    }

    @Test
    void allPagesAreProtectedWithoutAPassword(Office office, BuiltSheets.Sheet sheet)
            throws com.sun.star.uno.Exception {
        try (CalcDocument document = office.open(sheet.ods())) {
            for (int i = 0; i < 3; i++) {
                XProtectable page = as(XProtectable.class, page(document, i));
                assertTrue(page.isProtected());
                page.unprotect("");
                assertFalse(page.isProtected());
            }
        }
    }

    @Test
    void itOpensWithTheCursorOnTheFirstReading(Office office, BuiltSheets.Sheet sheet) {
        try (CalcDocument document = office.open(sheet.ods())) {
            Object selection = as(XModel.class, document.uno())
                    .getCurrentController()
                    .getModel()
                    .getCurrentSelection();
            var cell = as(XCellAddressable.class, selection).getCellAddress();
            assertEquals("0 1 7", cell.Sheet + " " + cell.Column + " " + cell.Row, "B8 of the first page");
        }
    }

    @Test
    void theChartIsToldInWords(Office office, BuiltSheets.Sheet sheet) throws com.sun.star.uno.Exception {
        try (CalcDocument document = office.open(sheet.ods())) {
            XIndexAccess shapes = as(XDrawPageSupplier.class, page(document, 0)).getDrawPage();
            assertEquals(1, shapes.getCount());
            Object chart = shapes.getByIndex(0);
            assertEquals("How the jars cool", property(chart, "Title"));
            assertTrue(property(chart, "Description").toString().contains("lines the fitted curves"));
        }
    }

    @Test
    void theChartWithTheBandIsToldInWords(Office office, BuiltSheets.Sheet sheet) throws com.sun.star.uno.Exception {
        try (CalcDocument document = office.open(sheet.ods())) {
            XIndexAccess shapes = as(XDrawPageSupplier.class, page(document, 1)).getDrawPage();
            assertEquals(1, shapes.getCount());
            Object chart = shapes.getByIndex(0);
            assertEquals("One jar, its curve and the 95 % band", property(chart, "Title"));
            assertTrue(property(chart, "Description").toString().contains("dashed lines"));
        }
    }

    @Test
    void theDocumentSaysWhatItIs(Office office, BuiltSheets.Sheet sheet) {
        try (CalcDocument document = office.open(sheet.ods())) {
            var properties =
                    as(XDocumentPropertiesSupplier.class, document.uno()).getDocumentProperties();
            assertEquals("Four wrapped jars on a snowy windowsill", properties.getTitle());
            assertTrue(properties.getDescription().contains("invented readings"));
        }
    }

    @Test
    void theReadingsAreMarkedAsInventedAndTheDangersAreNamed(Office office, BuiltSheets.Sheet sheet) {
        try (CalcDocument document = office.open(sheet.ods())) {
            assertTrue(document.at("A6").text().contains("invented"));
            String caution = document.at("A3").text();
            assertTrue(caution.startsWith("Caution:"));
            for (String danger : new String[] {"never hot or boiling", "Glass breaks", "slippery", "safety policy"}) {
                assertTrue(caution.contains(danger), caution);
            }
        }
    }

    @Test
    void formulasSpeakOfNames(Office office, BuiltSheets.Sheet sheet) {
        try (CalcDocument document = office.open(sheet.ods())) {
            for (String cell : new String[] {"B25", "F28", "C31"}) {
                assertTrue(document.formulaAt(cell).endsWith("(times;readings;surroundings;mark);\"–\");\"–\")"));
            }
        }
    }

    @Test
    void eachPageIsPrintedOnOneSheetOfPaper(BuiltSheets.Sheet sheet) throws IOException {
        String pdf = Files.readString(sheet.pdf(), StandardCharsets.ISO_8859_1);
        assertTrue(pdf.contains("/Count 2"), "ISO 32000-1, 7.7.3.2: the number of pages");
        assertTrue(pdf.matches("(?s).*/MediaBox ?\\[ ?0 0 84[12](\\.\\d+)? 595(\\.\\d+)? ?\\].*"), "A4, lying");
        assertTrue(pdf.matches("(?s).*/MediaBox ?\\[ ?0 0 595(\\.\\d+)? 84[12](\\.\\d+)? ?\\].*"), "A4, upright");
    }

    private static XSpreadsheet page(CalcDocument document, int index) throws com.sun.star.uno.Exception {
        XSpreadsheetDocument book = document.uno();
        return as(XSpreadsheet.class, as(XIndexAccess.class, book.getSheets()).getByIndex(index));
    }

    private static Object property(Object object, String name) throws com.sun.star.uno.Exception {
        return as(XPropertySet.class, object).getPropertyValue(name);
    }

    private static <T> T as(Class<T> type, Object object) {
        return UnoRuntime.queryInterface(type, object);
    }
}
