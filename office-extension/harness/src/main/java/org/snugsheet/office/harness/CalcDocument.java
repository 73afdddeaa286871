package org.snugsheet.office.harness;

import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellContentType;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import com.sun.star.util.XCloseable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * A spreadsheet open in an {@link Office}.
 *
 * <p>Cells have addresses of the first sheet, such as {@code B3}, or of any sheet, such as {@code Jars.B3}; ranges as
 * {@code B3:C9}. The methods that fill cells hand back the document, so that they can be strung together.
 */
public final class CalcDocument implements AutoCloseable {
    private static final int MOST_ROWS = 100;

    private final Office office;
    private final XComponent component;
    private final XSpreadsheetDocument document;
    private final Addresses addresses;

    CalcDocument(Office office, XComponent component) {
        this.office = office;
        this.component = component;
        this.document = UnoObjects.as(XSpreadsheetDocument.class, component);
        this.addresses = new Addresses(document);
    }

    /** Puts a number into a cell. */
    public CalcDocument number(String address, double value) {
        return change("filling " + address, () -> addresses.cell(address).setValue(value));
    }

    /** Puts a text into a cell, unchanged: {@code "21,5"} stays a text and {@code "=1"} too. */
    public CalcDocument text(String address, String value) {
        return change(
                "filling " + address,
                () -> UnoObjects.as(XText.class, addresses.cell(address)).setString(value));
    }

    /** Puts a formula into a cell, in English with semicolons; the equals sign may be left out. */
    public CalcDocument formula(String address, String formula) {
        return change("filling " + address, () -> addresses.cell(address).setFormula(withEquals(formula)));
    }

    /** Puts one array formula into a whole range. */
    public CalcDocument arrayFormula(String range, String formula) {
        return change(
                "filling " + range,
                () -> UnoObjects.as(XArrayFormulaRange.class, addresses.range(range))
                        .setArrayFormula(withEquals(formula)));
    }

    /** Fills a column downwards from a cell with numbers, in one call. */
    public CalcDocument numbersDown(String top, double... values) {
        return down(top, Arrays.stream(values).boxed().toArray());
    }

    /** Fills a column downwards from a cell with numbers, texts or both, in one call. */
    public CalcDocument down(String top, Object... values) {
        Object[][] rows = new Object[values.length][];
        for (int i = 0; i < values.length; i++) {
            rows[i] = new Object[] {values[i]};
        }
        return change(
                "filling from " + top,
                () -> UnoObjects.as(XCellRangeData.class, addresses.downFrom(top, rows.length))
                        .setDataArray(rows));
    }

    /** Fills a column downwards from a cell with formulas, in one call; the quickest way to many of them. */
    public CalcDocument formulasDown(String top, List<String> formulas) {
        String[][] rows =
                formulas.stream().map(one -> new String[] {withEquals(one)}).toArray(String[][]::new);
        return change(
                "filling from " + top,
                () -> UnoObjects.as(XCellRangeFormula.class, addresses.downFrom(top, rows.length))
                        .setFormulaArray(rows));
    }

    /** Recalculates every formula, also those that nothing has changed for. */
    public CalcDocument calculateAll() {
        return change(
                "calculating",
                () -> UnoObjects.as(XCalculatable.class, component).calculateAll());
    }

    /** Works out what changes have touched and what was never worked out, as a document does by itself while somebody types. */
    public CalcDocument calculate() {
        return change(
                "calculating",
                () -> UnoObjects.as(XCalculatable.class, component).calculate());
    }

    /** From now on nothing is worked out until {@link #calculate} is called: typing many cells goes quicker. */
    public CalcDocument calculatedOnlyWhenTold() {
        return change(
                "stopping calculation",
                () -> UnoObjects.as(XCalculatable.class, component).enableAutomaticCalculation(false));
    }

    /** Sets the language that the document is written in, such as {@code de-DE}; its cells are not recalculated. */
    public CalcDocument locale(String tag) {
        Locale locale = Locale.forLanguageTag(tag);
        return change(
                "setting the language",
                () -> UnoObjects.as(XPropertySet.class, component)
                        .setPropertyValue(
                                "CharLocale",
                                new com.sun.star.lang.Locale(locale.getLanguage(), locale.getCountry(), "")));
    }

    /** What a cell holds. */
    public CellResult at(String address) {
        return office.call("reading " + address, () -> read(addresses.cell(address)));
    }

    /**
     * What the cells of a range hold, row by row. They are read in one call but for what numbers look like and for errors, for each cell
     * costs several; so a text is the one that the cell holds, even where a format shows other words for it.
     */
    public List<List<CellResult>> all(String range) {
        return cells(range, true);
    }

    /** The same in one call but for errors: a number is not shown as in the sheet, but as Java writes it. */
    public List<List<CellResult>> values(String range) {
        return cells(range, false);
    }

    private List<List<CellResult>> cells(String range, boolean isAsSeen) {
        return office.call("reading " + range, () -> {
            XCellRange cells = addresses.range(range);
            Object[][] held = UnoObjects.as(XCellRangeData.class, cells).getDataArray();
            String[][] formulas = UnoObjects.as(XCellRangeFormula.class, cells).getFormulaArray();
            List<List<CellResult>> rows = new ArrayList<>();
            for (int row = 0; row < held.length; row++) {
                List<CellResult> line = new ArrayList<>();
                for (int column = 0; column < held[row].length; column++) {
                    if (formulas[row][column].isEmpty()) {
                        line.add(new CellResult.Blank());
                    } else if (held[row][column] instanceof String text) {
                        line.add(new CellResult.OfText(text));
                    } else if (held[row][column] instanceof Double number && Double.isFinite(number)) {
                        String look = isAsSeen ? shown(cells.getCellByPosition(column, row)) : String.valueOf(number);
                        line.add(new CellResult.OfNumber(number, look));
                    } else {
                        line.add(read(cells.getCellByPosition(column, row)));
                    }
                }
                rows.add(List.copyOf(line));
            }
            return List.copyOf(rows);
        });
    }

    /**
     * The first row of a column with this text, from 1.
     *
     * @param top the first cell to look at, such as {@code Jars.A1}
     */
    public int rowOf(String text, String top) {
        return office.call("looking for " + text, () -> {
            Object[][] column = UnoObjects.as(XCellRangeData.class, addresses.downFrom(top, MOST_ROWS))
                    .getDataArray();
            for (int row = 0; row < MOST_ROWS; row++) {
                if (text.equals(column[row][0])) {
                    return row + 1;
                }
            }
            throw new OfficeFailure(text + " is not below " + top);
        });
    }

    /** Where formulas show an error, on all sheets; empty if nowhere. */
    public List<String> failing() {
        return office.call("looking for errors", () -> {
            List<String> failing = new ArrayList<>();
            for (String name : sheetNames()) {
                XCellRangesQuery sheet = UnoObjects.as(
                        XCellRangesQuery.class, document.getSheets().getByName(name));
                String cells = sheet.queryFormulaCells(FormulaResult.ERROR).getRangeAddressesAsString();
                if (!cells.isEmpty()) {
                    failing.add(cells);
                }
            }
            return failing;
        });
    }

    /** The formula of a cell as the office stores it, in English with semicolons; "" when it has none. */
    public String formulaAt(String address) {
        return office.call("reading " + address, () -> {
            XCell cell = addresses.cell(address);
            return cell.getType() == CellContentType.FORMULA ? cell.getFormula() : "";
        });
    }

    /** Writes a copy; the document stays as it is and may go on being changed. An existing file is replaced. */
    public Path saveAs(Path file, FileFormat format) {
        return office.call("saving " + file, () -> {
            List<PropertyValue> arguments = new ArrayList<>();
            arguments.add(UnoObjects.argument("FilterName", format.filter()));
            arguments.add(UnoObjects.argument("Overwrite", true));
            if (format == FileFormat.CSV) {
                // Comma, quotation mark, UTF-8, from line 1: the token string of the CSV filter.
                arguments.add(UnoObjects.argument("FilterOptions", "44,34,76,1"));
            }
            UnoObjects.as(XStorable.class, component)
                    .storeToURL(Workspace.url(file.toAbsolutePath()), arguments.toArray(PropertyValue[]::new));
            return file;
        });
    }

    /** For whatever this class has no method for. */
    public XSpreadsheetDocument uno() {
        return document;
    }

    /** The names of the sheets, from left to right. */
    public List<String> sheetNames() {
        return office.call("listing sheets", () -> List.of(document.getSheets().getElementNames()));
    }

    /**
     * Closes without saving, in the office’s main thread as a person does: closed from outside, a document goes while that thread may
     * still have something to do for it.
     */
    @Override
    public void close() {
        if (office.isAlive()) {
            MainThread.of(office, "closing a document", () -> {
                UnoObjects.as(XCloseable.class, component).close(true);
                return this;
            });
        }
    }

    private CellResult read(XCell cell) throws com.sun.star.uno.Exception {
        CellContentType type = cell.getType();
        if (type == CellContentType.EMPTY) {
            return new CellResult.Blank();
        }
        String shown = shown(cell);
        if (cell.getError() != 0) {
            return new CellResult.OfError(cell.getError(), shown);
        }
        boolean isText = type == CellContentType.TEXT
                || (type == CellContentType.FORMULA
                        && UnoObjects.property(cell, "FormulaResultType2").equals(FormulaResult.STRING));
        return isText ? new CellResult.OfText(shown) : new CellResult.OfNumber(cell.getValue(), shown);
    }

    private static String shown(XCell cell) {
        return UnoObjects.as(XText.class, cell).getString();
    }

    private static String withEquals(String formula) {
        return formula.startsWith("=") ? formula : "=" + formula;
    }

    private CalcDocument change(String what, Change change) {
        office.call(what, () -> {
            change.run();
            return this;
        });
        return this;
    }

    /** A step that hands nothing back. */
    @FunctionalInterface
    private interface Change {
        void run() throws Exception;
    }
}
