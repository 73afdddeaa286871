package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.awt.Point;
import com.sun.star.awt.Size;
import com.sun.star.container.XNamed;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUniqueCellFormatRangesSupplier;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.util.CellProtection;
import com.sun.star.util.XProtectable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.page.Paper;
import org.snugsheet.sheets.builder.WorkedSheet;

/** What every worked sheet keeps to, whatever it is about. */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class HouseRulesIT {
    private static final String INPUT_STYLE = "Snug input( head| large)?";

    // An address that stays where it is, with its page, if it names one.
    private static final Pattern FIXED =
            Pattern.compile("(?:\\$?'?([^'$.;(&=<>+*/^-]+)'?\\.)?\\$([A-Z]{1,3})\\$([0-9]+)");

    static Stream<String> sheets() {
        return BuildSheets.SHEETS.stream().map(WorkedSheet::fileName);
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void everySheetKeepsToTheRules(String name, Office office, BuiltSheets.All built) {
        Path ods = built.named(name).ods();
        try (CalcDocument document = office.open(ods)) {
            List<XSpreadsheet> pages = office.call("looking at " + name, () -> Opened.pages(document.calculateAll()));
            assertAll(
                    name,
                    () -> opensOnAnInputOfTheFirstPage(document),
                    () -> firstScreenShowsAllAcrossAndTheInput(document, pages.get(0)),
                    () -> saysWhatItIs(document),
                    () -> assertTrue(words(pages).contains("invented"), "it says that its numbers are invented"),
                    () -> assertTrue(words(pages.subList(0, 1)).contains("Caution:"), "it names what can hurt"),
                    () -> hasNames(document),
                    () -> assertEquals(List.of(), inputsGivenByAddress(document, pages), "name these cells"),
                    () -> hasNoMacroAndNoLink(ods),
                    () -> assertEquals(
                            List.of(), ArrayFormulas.overlaps(built.named(name).fods()), "a formula below an array"),
                    () -> enterStaysInTheGrid(document),
                    () -> PageRules.clockTimesFit(document),
                    () -> PageRules.whatNobodyTypesOnComesLast(pages),
                    () -> PageRules.promisesAreStyled(pages),
                    () -> PageRules.nothingIsCutOffOnPaper(pages),
                    () -> assertTrue(printed(pages) > 0, "a page to print"));
            for (XSpreadsheet page : pages) {
                assertAll(
                        name,
                        () -> assertEquals("", Opened.failingCells(page)),
                        () -> inputsAreStyledUnlockedAndRuled(document, page),
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

    private static void opensOnAnInputOfTheFirstPage(CalcDocument document) throws com.sun.star.uno.Exception {
        Object cell = Opened.as(XModel.class, document.uno()).getCurrentSelection();
        CellAddress place = Opened.as(XCellAddressable.class, cell).getCellAddress();
        assertEquals(0, place.Sheet, "the first page");
        assertTrue(
                Opened.property(cell, "CellStyle").toString().matches(INPUT_STYLE), "the cursor is on an input cell");
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

    /**
     * The formulas that look for what is typed at a fixed address, such as $B$20. A table that is filled down or to the right
     * goes on with relative ones; the numbers of rows and columns, as ROW gives them, are no cells.
     */
    private static List<String> inputsGivenByAddress(CalcDocument document, List<XSpreadsheet> pages)
            throws com.sun.star.uno.Exception {
        List<String> found = new ArrayList<>();
        for (XSpreadsheet page : pages) {
            String own = Opened.as(XNamed.class, page).getName();
            String[][] cells =
                    Opened.as(XCellRangeFormula.class, Opened.used(page)).getFormulaArray();
            for (String formula : Arrays.stream(cells).flatMap(Arrays::stream).toList()) {
                if (formula.matches("\\{?=.*")) {
                    String places = formula.replaceAll("\"[^\"]*\"", "").replaceAll("(ROW|COLUMN)\\([^)]*\\)", "");
                    Matcher address = FIXED.matcher(places);
                    while (address.find()) {
                        String there = address.group(1) == null ? own : address.group(1);
                        if (isInput(document, there, address.group(2) + address.group(3))) {
                            found.add(own + ": " + formula);
                        }
                    }
                }
            }
        }
        return found;
    }

    private static boolean isInput(CalcDocument document, String page, String address)
            throws com.sun.star.uno.Exception {
        XSpreadsheet there =
                Opened.as(XSpreadsheet.class, document.uno().getSheets().getByName(page));
        Object style = Opened.property(there.getCellRangeByName(address), "CellStyle");
        return style.toString().matches(INPUT_STYLE);
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

    /** Looks at all cells that are formatted alike together: a few dozen sorts on a page, instead of thousands of cells. */
    private static void inputsAreStyledUnlockedAndRuled(CalcDocument document, XSpreadsheet page)
            throws com.sun.star.uno.Exception {
        var sorts = Opened.as(XUniqueCellFormatRangesSupplier.class, Opened.used(page))
                .getUniqueCellFormatRanges();
        for (int i = 0; i < sorts.getCount(); i++) {
            XSheetCellRanges cells = Opened.as(XSheetCellRanges.class, sorts.getByIndex(i));
            String where = cells.getRangeAddressesAsString();
            boolean open = !((CellProtection) Opened.property(cells, "CellProtection")).IsLocked;
            assertEquals(open, Opened.property(cells, "CellStyle").toString().matches(INPUT_STYLE), where);
            // A hint beside a cell of a grid would cover its neighbors.
            if (open && !isInGrid(document, cells)) {
                Object rule = Opened.property(cells, "Validation");
                assertTrue((boolean) Opened.property(rule, "ShowInputMessage"), where + " has no hint");
                assertFalse(Opened.property(rule, "InputMessage").toString().isBlank(), where);
                // Value, text, and nothing else: 16 is a formula (CellFlags).
                String formulas = Opened.as(XCellRangesQuery.class, cells)
                        .queryContentCells((short) 16)
                        .getRangeAddressesAsString();
                assertEquals("", formulas, "a formula in an input cell would be typed over");
            }
        }
    }

    private static boolean isInGrid(CalcDocument document, XSheetCellRanges cells) throws com.sun.star.uno.Exception {
        Optional<CellRangeAddress> grid = grid(document);
        return grid.isPresent()
                && Arrays.stream(cells.getRangeAddresses()).allMatch(range -> isWithin(range, grid.get()));
    }

    private static boolean isWithin(CellRangeAddress range, CellRangeAddress grid) {
        return range.Sheet == grid.Sheet
                && range.StartColumn >= grid.StartColumn
                && range.EndColumn <= grid.EndColumn
                && range.StartRow >= grid.StartRow
                && range.EndRow <= grid.EndRow;
    }

    /** The cells that a class fills with readings, for which every sheet that has some uses the same name. */
    private static Optional<CellRangeAddress> grid(CalcDocument document) throws com.sun.star.uno.Exception {
        XNamedRanges names = Opened.as(XNamedRanges.class, Opened.property(document.uno(), "NamedRanges"));
        if (!names.hasByName("grid")) {
            return Optional.empty();
        }
        Object cells =
                Opened.as(XCellRangeReferrer.class, names.getByName("grid")).getReferredCells();
        return Optional.of(Opened.as(XCellRangeAddressable.class, cells).getRangeAddress());
    }

    /**
     * On a protected page Enter goes down to the next cell that is not locked, and from the last of a column to the first of the
     * next column that has one. So the columns of a grid hold nothing else that can be typed into.
     */
    private static void enterStaysInTheGrid(CalcDocument document) throws com.sun.star.uno.Exception {
        Optional<CellRangeAddress> found = grid(document);
        if (found.isEmpty()) {
            return;
        }
        CellRangeAddress grid = found.get();
        XSpreadsheet page = Opened.pages(document).get(grid.Sheet);
        var sorts = Opened.as(XUniqueCellFormatRangesSupplier.class, Opened.used(page))
                .getUniqueCellFormatRanges();
        for (int i = 0; i < sorts.getCount(); i++) {
            XSheetCellRanges cells = Opened.as(XSheetCellRanges.class, sorts.getByIndex(i));
            if (!((CellProtection) Opened.property(cells, "CellProtection")).IsLocked) {
                for (CellRangeAddress range : cells.getRangeAddresses()) {
                    // Going into a grid from cells above its first column is no harm.
                    int first = grid.StartColumn + (isAbove(range, grid) ? 1 : 0);
                    assertTrue(
                            isWithin(range, grid) || range.EndColumn < first || range.StartColumn > grid.EndColumn,
                            "Enter would run into " + cells.getRangeAddressesAsString());
                }
            }
        }
    }

    private static boolean isAbove(CellRangeAddress range, CellRangeAddress grid) {
        return range.EndRow < grid.StartRow && range.EndColumn == grid.StartColumn;
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
