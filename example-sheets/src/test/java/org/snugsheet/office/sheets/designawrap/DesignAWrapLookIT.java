package org.snugsheet.office.sheets.designawrap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.ValidationAlertStyle;
import com.sun.star.sheet.ValidationType;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XCellFormatRangesSupplier;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
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

/** How the worked sheet “design a wrap” meets its reader: inputs, lists, cursor, charts in words, print. */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class DesignAWrapLookIT {
    @Test
    void onlyInputCellsCanBeTypedInto(Office office, BuiltSheets.Design design) throws com.sun.star.uno.Exception {
        try (CalcDocument document = office.open(design.sheet().ods())) {
            int open = 0;
            for (int index = 0; index < 3; index++) {
                XIndexAccess alike = as(XCellFormatRangesSupplier.class, page(document, index))
                        .getCellFormatRanges();
                for (int i = 0; i < alike.getCount(); i++) {
                    Object cells = alike.getByIndex(i);
                    CellRangeAddress place =
                            as(XCellRangeAddressable.class, cells).getRangeAddress();
                    boolean locked = ((CellProtection) property(cells, "CellProtection")).IsLocked;
                    boolean input = property(cells, "CellStyle").equals("Snug input");
                    assertEquals(input, !locked, index + ": " + place.StartColumn + " " + place.StartRow);
                    if (!locked) {
                        assertEquals(
                                "",
                                as(XCellRangesQuery.class, cells)
                                        .queryContentCells((short) CellFlags.FORMULA)
                                        .getRangeAddressesAsString());
                        open += (place.EndColumn - place.StartColumn + 1) * (place.EndRow - place.StartRow + 1);
                    }
                }
            }
            // Eight about the jar, six layers, lid and base, seven times and readings of two jars, the mark.
            assertEquals(8 + 6 * 2 + 2 * 2 + 7 * 3 + 1, open);
        }
    }

    @Test
    void everyInputHasAHintAndListsComeFromNames(Office office, BuiltSheets.Design design)
            throws com.sun.star.uno.Exception {
        try (CalcDocument document = office.open(design.sheet().ods())) {
            String[] lists = {
                "B7 scales", "B13 places", "B19 materials", "B24 materials", "B27 materials", "B28 materials"
            };
            for (String each : lists) {
                String[] cellAndList = each.split(" ");
                Object rule = validation(document, cellAndList[0]);
                assertEquals(ValidationType.LIST, property(rule, "Type"), each);
                assertEquals(cellAndList[1], as(XSheetCondition.class, rule).getFormula1(), each);
                boolean strict = cellAndList[1].equals("scales");
                // Of a material, any name that the functions take may be typed; the checks say what they do not.
                assertEquals(strict, property(rule, "ShowErrorMessage"), each);
                if (strict) {
                    assertEquals(ValidationAlertStyle.STOP, property(rule, "ErrorAlertStyle"), each);
                }
            }
            for (String cell : "B7 B8 B9 B10 B11 B12 B13 B14 B15 B19 C19 B24 C24 B27 C28".split(" ")) {
                assertEquals(true, property(validation(document, cell), "ShowInputMessage"), cell);
                assertTrue(
                        property(validation(document, cell), "InputMessage")
                                        .toString()
                                        .length()
                                > 20,
                        cell);
            }
        }
    }

    @Test
    void allPagesAreProtectedWithoutAPassword(Office office, BuiltSheets.Design design)
            throws com.sun.star.uno.Exception {
        try (CalcDocument document = office.open(design.sheet().ods())) {
            for (int i = 0; i < 3; i++) {
                XProtectable page = as(XProtectable.class, page(document, i));
                assertTrue(page.isProtected());
                page.unprotect("");
                assertFalse(page.isProtected());
            }
        }
    }

    @Test
    void itOpensWithTheCursorOnTheFirstLayerOfTheWrap(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = office.open(design.sheet().ods())) {
            Object selection = as(XModel.class, document.uno()).getCurrentSelection();
            var cell = as(XCellAddressable.class, selection).getCellAddress();
            assertEquals("0 1 19", cell.Sheet + " " + cell.Column + " " + cell.Row, "B20 of the first page");
        }
    }

    @Test
    void theChartsAreToldInWords(Office office, BuiltSheets.Design design) throws com.sun.star.uno.Exception {
        try (CalcDocument document = office.open(design.sheet().ods())) {
            XIndexAccess shapes = as(XDrawPageSupplier.class, page(document, 0)).getDrawPage();
            assertEquals(2, shapes.getCount());
            assertEquals("What each layer adds", property(shapes.getByIndex(0), "Title"));
            assertTrue(property(shapes.getByIndex(0), "Description").toString().contains("film of air outside"));
            assertTrue(property(shapes.getByIndex(1), "Description").toString().contains("what to expect"));
        }
    }

    @Test
    void theBarIsStackedOfEveryFilmAndLayerAndNamesItsUnit(Office office, BuiltSheets.Design design)
            throws com.sun.star.uno.Exception {
        try (CalcDocument document = office.open(design.sheet().ods())) {
            var charts = as(com.sun.star.table.XTableChartsSupplier.class, page(document, 0))
                    .getCharts();
            Object chart = as(XEmbeddedObjectSupplier.class, charts.getByName("r_by_layer"))
                    .getEmbeddedObject();
            var diagram = as(com.sun.star.chart.XChartDocument.class, chart).getDiagram();
            assertEquals(true, property(diagram, "Stacked"));
            Object title = as(com.sun.star.chart.XAxisYSupplier.class, diagram).getYAxisTitle();
            assertEquals("R-value of the side, m²·K/W", property(title, "String"));
            var data = as(
                    com.sun.star.chart.XChartDataArray.class,
                    as(com.sun.star.chart.XChartDocument.class, chart).getData());
            assertEquals(8, data.getColumnDescriptions().length);
            assertEquals("3 newspaper", data.getColumnDescriptions()[3]);
            double sum = 0;
            for (double part : data.getData()[1]) {
                sum += part;
            }
            assertEquals(document.calculate().at("E26").number(), sum, 1e-9);
        }
    }

    @Test
    void theDocumentSaysWhatItIs(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = office.open(design.sheet().ods())) {
            var properties =
                    as(XDocumentPropertiesSupplier.class, document.uno()).getDocumentProperties();
            assertEquals("Design a wrap", properties.getTitle());
            assertTrue(properties.getDescription().contains("invented readings"));
        }
    }

    @Test
    void theReadingsAreMarkedAsInventedAndTheDangersAreNamed(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = office.open(design.sheet().ods())) {
            assertTrue(document.calculate().at("A31").text().contains("invented"));
            String caution = document.at("A3").text();
            for (String danger : new String[] {
                "Caution:", "never hot or boiling", "Glass can crack", "icy", "slippery", "safety rules of your school"
            }) {
                assertTrue(caution.contains(danger), caution);
            }
        }
    }

    @Test
    void formulasSpeakOfNames(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = office.open(design.sheet().ods())) {
            assertTrue(document.formulaAt("M33").contains("(" + DesignAWrap.WRAPPED + ";vessel;scale)"));
            assertTrue(document.formulaAt("N33").contains("(times;wrapped;toward;mark;scale)"));
        }
    }

    @Test
    void nothingPointsOutOfTheDocument(BuiltSheets.Design design) throws IOException {
        String xml = Files.readString(design.sheet().fods());
        assertFalse(
                xml.contains("file:///") || xml.contains("script:event-listener") || xml.contains("http://localhost"));
    }

    @Test
    void theFirstPageIsPrintedOnOneSheetOfPaper(BuiltSheets.Design design) throws IOException {
        String pdf = Files.readString(design.sheet().pdf(), StandardCharsets.ISO_8859_1);
        assertTrue(pdf.contains("/Count 1"), "ISO 32000-1, 7.7.3.2: the number of pages");
        assertTrue(pdf.matches("(?s).*/MediaBox ?\\[ ?0 0 84[12](\\.\\d+)? 595(\\.\\d+)? ?\\].*"), "A4, lying");
    }

    private static Object validation(CalcDocument document, String cell) throws com.sun.star.uno.Exception {
        return property(page(document, 0).getCellRangeByName(cell), "Validation");
    }

    private static XSpreadsheet page(CalcDocument document, int index) throws com.sun.star.uno.Exception {
        return as(
                XSpreadsheet.class,
                as(XIndexAccess.class, document.uno().getSheets()).getByIndex(index));
    }

    private static Object property(Object object, String name) throws com.sun.star.uno.Exception {
        return as(XPropertySet.class, object).getPropertyValue(name);
    }

    private static <T> T as(Class<T> type, Object object) {
        return UnoRuntime.queryInterface(type, object);
    }
}
