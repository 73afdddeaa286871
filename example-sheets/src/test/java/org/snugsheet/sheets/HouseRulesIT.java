package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.awt.Point;
import com.sun.star.awt.Size;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.util.XProtectable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.sheets.WorkedSheets;
import org.snugsheet.office.sheets.builder.WorkedSheet;

/** What every worked sheet keeps to, whatever it is about. */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class HouseRulesIT {

    static Stream<String> sheets() {
        return WorkedSheets.all().stream().map(WorkedSheet::fileName);
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void everySheetKeepsToTheRules(String name, Office office, BuiltSheets.All built) {
        Path ods = built.named(name).ods();
        try (CalcDocument document = office.open(ods)) {
            List<XSpreadsheet> pages = office.call("looking at " + name, () -> Opened.pages(document.calculateAll()));
            assertAll(
                    name,
                    () -> InputCellRules.opensOnAnInputOfTheFirstPage(document),
                    () -> firstScreenShowsAllAcrossAndTheInput(document, pages.get(0)),
                    () -> saysWhatItIs(document),
                    () -> assertTrue(
                            isEmpty(pages.get(0)) || words(pages).contains("invented"),
                            "it says that its numbers are invented"),
                    () -> assertTrue(words(pages.subList(0, 1)).contains("Caution:"), "it names what can hurt"),
                    () -> hasNames(document),
                    () -> assertEquals(
                            List.of(), InputCellRules.inputsGivenByAddress(document, pages), "name these cells"),
                    () -> hasNoMacroAndNoLink(ods),
                    () -> assertEquals(
                            List.of(), ArrayFormulas.overlaps(built.named(name).fods()), "a formula below an array"),
                    () -> InputCellRules.enterStaysInTheGrid(document),
                    () -> PageRules.clockTimesFit(document),
                    () -> PageRules.whatNobodyTypesOnComesLast(pages),
                    () -> PageRules.promisesAreStyled(pages),
                    () -> PageRules.nothingIsCutOffOnPaper(pages),
                    () -> assertTrue(printed(pages) > 0, "a page to print"));
            for (XSpreadsheet page : pages) {
                assertAll(
                        name,
                        () -> assertEquals("", Opened.failingCells(page)),
                        () -> InputCellRules.inputsAreStyledUnlockedAndRuled(document, page),
                        () -> picturesAreToldInWords(page),
                        () -> isSetUpForPaper(document, page, Paper.A4),
                        () -> isProtectedWithoutAPassword(page));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void everySheetIsThereForLetterToo(String name, Office office, BuiltSheets.All built) throws IOException {
        try (CalcDocument document = office.open(built.named(name).letter())) {
            for (XSpreadsheet page : office.call("looking at " + name, () -> Opened.pages(document))) {
                assertAll(name, () -> isSetUpForPaper(document, page, Paper.LETTER));
            }
        }
        // 8.5 in by 11 in are 612 by 792 points.
        String pdf = Files.readString(built.named(name).letterPdf(), StandardCharsets.ISO_8859_1);
        assertTrue(pdf.contains("MediaBox[0 0 612 792]") || pdf.contains("MediaBox[0 0 792 612]"), name);
        assertFalse(pdf.matches("(?s).*/MediaBox ?\\[ ?0 0 (595|84[12]).*"), name);
    }

    /** On a screen of 1366 by 768 points, which leaves some 317 by 146 mm for cells; less than 75 % is hard to read. */
    private static void firstScreenShowsAllAcrossAndTheInput(CalcDocument document, XSpreadsheet page)
            throws com.sun.star.uno.Exception {
        XModel model = Opened.as(XModel.class, document.uno());
        int zoom = (short) Opened.property(model.getCurrentController(), "ZoomValue");
        assertTrue(zoom >= 75 && zoom <= 100, "zoom " + zoom);
        CellRangeAddress printed = Opened.as(XPrintAreas.class, page).getPrintAreas()[0];
        Object cells = page.getCellRangeByPosition(0, 0, printed.EndColumn, printed.EndRow);
        int width = ((Size) Opened.property(cells, "Size")).Width;
        assertTrue(width * zoom <= 100 * 31_700, "as wide as " + width);
        Object input = model.getCurrentSelection();
        int below = ((Point) Opened.property(input, "Position")).Y + ((Size) Opened.property(input, "Size")).Height;
        assertTrue(below * zoom <= 100 * 14_600, "down to " + below);
    }

    /** Whether nobody typed a number yet; what a formula works out does not count. */
    private static boolean isEmpty(XSpreadsheet page) {
        return Opened.as(XCellRangesQuery.class, page)
                        .queryContentCells((short) CellFlags.VALUE)
                        .getRangeAddresses()
                        .length
                == 0;
    }

    private static void saysWhatItIs(CalcDocument document) {
        var properties =
                Opened.as(XDocumentPropertiesSupplier.class, document.uno()).getDocumentProperties();
        assertFalse(properties.getTitle().isBlank());
        assertFalse(properties.getSubject().isBlank());
        assertFalse(properties.getDescription().isBlank());
        assertTrue(properties.getKeywords().length >= 3);
        assertEquals("en", properties.getLanguage().Language);
    }

    private static String words(List<XSpreadsheet> pages) throws com.sun.star.uno.Exception {
        StringBuilder all = new StringBuilder();
        for (XSpreadsheet page : pages) {
            all.append(String.join("\n", Opened.contents(page)));
        }
        return all.toString();
    }

    private static void hasNames(CalcDocument document) throws com.sun.star.uno.Exception {
        XNamedRanges names = Opened.as(XNamedRanges.class, Opened.property(document.uno(), "NamedRanges"));
        assertTrue(names.getElementNames().length >= 1);
        for (String name : names.getElementNames()) {
            var cells = Opened.as(XCellRangeReferrer.class, names.getByName(name));
            assertFalse(cells == null || cells.toString().contains("#REF!"), name);
        }
    }

    private static void hasNoMacroAndNoLink(Path ods) throws IOException {
        try (ZipFile zip = new ZipFile(ods.toFile())) {
            assertTrue(
                    zip.stream().noneMatch(entry -> entry.getName().matches("(Basic|Scripts|Dialogs)/.*")), "no macro");
            var content = zip.getEntry("content.xml");
            String xml = new String(zip.getInputStream(content).readAllBytes(), StandardCharsets.UTF_8);
            // A chart is an object of the file itself: ./Object 1.
            assertFalse(xml.matches("(?s).*xlink:href=\"(?!\\./|#).*"), "no link to elsewhere");
            assertFalse(xml.contains("table:cell-range-source"), "no cells of other files");
        }
    }

    private static int printed(List<XSpreadsheet> pages) {
        return pages.stream()
                .mapToInt(page -> Opened.as(XPrintAreas.class, page).getPrintAreas().length)
                .sum();
    }

    private static void picturesAreToldInWords(XSpreadsheet page) throws com.sun.star.uno.Exception {
        for (Map<String, String> shape : Opened.shapes(page)) {
            assertTrue(shape.getOrDefault("Title", "").length() > 5, shape.toString());
            assertTrue(shape.getOrDefault("Description", "").length() > 30, shape.toString());
        }
    }

    private static void isSetUpForPaper(CalcDocument document, XSpreadsheet page, Paper paper)
            throws com.sun.star.uno.Exception {
        String name = Opened.property(page, "PageStyle").toString();
        assertTrue(name.startsWith("Snug "), name);
        Object style = Opened.as(XStyleFamiliesSupplier.class, document.uno())
                .getStyleFamilies()
                .getByName("PageStyles");
        style = Opened.as(com.sun.star.container.XNameAccess.class, style).getByName(name);
        int width = (int) Opened.property(style, "Width");
        int height = (int) Opened.property(style, "Height");
        // ISO 216; ANSI/ASME Y14.1. The office keeps lengths in twips, some 0.02 mm.
        assertEquals(paper == Paper.A4 ? 21000 : 21590, Math.min(width, height), 4, name);
        assertEquals(paper == Paper.A4 ? 29700 : 27940, Math.max(width, height), 4, name);
        assertEquals((short) 1, Opened.property(style, "ScaleToPagesX"), name);
    }

    private static void isProtectedWithoutAPassword(XSpreadsheet page) throws com.sun.star.uno.Exception {
        XProtectable locked = Opened.as(XProtectable.class, page);
        assertTrue(locked.isProtected());
        locked.unprotect("");
        assertFalse(locked.isProtected());
    }
}
