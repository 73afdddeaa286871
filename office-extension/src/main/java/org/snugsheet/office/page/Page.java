package org.snugsheet.office.page;

import com.sun.star.awt.FontWeight;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeMovement;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellOrientation;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.table.XTableRows;
import com.sun.star.text.XText;
import com.sun.star.text.XTextCursor;
import com.sun.star.util.XMergeable;
import com.sun.star.util.XProtectable;
import java.util.Optional;
import org.snugsheet.office.uno.Uno;

/**
 * One sheet of a document, being filled. Cells and ranges have addresses such as {@code B8} and {@code B8:F16}; the
 * methods hand back the page, so that they can be strung together.
 */
public final class Page {
    private static final int HUNDREDTHS_PER_MILLIMETER = 100;

    private final XSpreadsheetDocument document;
    private final XSpreadsheet sheet;
    private final String name;
    private final Optional<FormulaQueue> queue;
    private final Paper paper;
    private final XCellRangeAddressable place;
    private final XTableRows rows;
    private final WaitingCells cells;
    private final WaitingFormats formats;
    private boolean isToBeProtected;

    /**
     * A page to be filled at once.
     *
     * @param document the document
     * @param sheet its sheet
     * @param name the name on its tab
     */
    public Page(XSpreadsheetDocument document, XSpreadsheet sheet, String name) {
        this(document, sheet, name, Optional.empty(), Paper.A4);
    }

    private Page(
            XSpreadsheetDocument document, XSpreadsheet sheet, String name, Optional<FormulaQueue> queue, Paper paper) {
        this.document = document;
        this.sheet = sheet;
        this.name = name;
        this.queue = queue;
        this.paper = paper;
        this.place = Uno.as(XCellRangeAddressable.class, sheet);
        this.rows = Uno.as(XColumnRowRange.class, sheet).getRows();
        this.cells = new WaitingCells(sheet);
        this.formats = new WaitingFormats(document, sheet);
    }

    /**
     * The same page, whose cells and lock wait until the queue is written: what is written together is written sooner.
     *
     * @param later the queue
     * @return the page
     */
    public Page with(FormulaQueue later) {
        Page waiting = new Page(document, sheet, name, Optional.of(later), paper);
        later.add(waiting);
        return waiting;
    }

    /**
     * The same page, which will be printed on other paper.
     *
     * @param other the paper
     * @return the page, on which nothing waits yet
     */
    public Page on(Paper other) {
        return new Page(document, sheet, name, queue, other);
    }

    /** What it is printed on. */
    Paper paper() {
        return paper;
    }

    /**
     * Writes what waits on this page and on those that share its queue.
     *
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page writeFormulas() throws com.sun.star.uno.Exception {
        if (queue.isPresent()) {
            queue.get().write();
        }
        return this;
    }

    /** Writes what waits on this page but for its formulas, so that the office knows how large its cells are. */
    void writeCells() throws com.sun.star.uno.Exception {
        cells.writeValues();
        if (!formats.isEmpty()) {
            formats.write(place.getRangeAddress().Sheet, cells.freeRow());
        }
    }

    void finish() throws com.sun.star.uno.Exception {
        cells.writeFormulas();
        if (isToBeProtected) {
            Uno.as(XProtectable.class, sheet).protect("");
            isToBeProtected = false;
        }
    }

    private Page unlessQueued() throws com.sun.star.uno.Exception {
        if (queue.isEmpty()) {
            writeCells();
            finish();
        }
        return this;
    }

    /**
     * The name on its tab.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Puts a text into a cell, unchanged.
     *
     * @param address the cell
     * @param text the text
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page text(String address, String text) throws com.sun.star.uno.Exception {
        cells.value(CellArea.of(address).corner(), text);
        return unlessQueued();
    }

    /**
     * Puts paragraphs into a cell, each with its first words in bold and a blank line before the next.
     *
     * @param address the cell
     * @param boldAndRest for each paragraph how it begins and how it goes on
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page paragraphs(String address, String... boldAndRest) throws com.sun.star.uno.Exception {
        cells.isWritten(CellArea.of(address).corner());
        XText text = Uno.as(XText.class, range(address).getCellByPosition(0, 0));
        text.setString("");
        XTextCursor cursor = text.createTextCursor();
        for (int i = 0; i < boldAndRest.length; i++) {
            boolean bold = i % 2 == 0;
            cursor.gotoEnd(false);
            Uno.set(cursor, "CharWeight", bold ? FontWeight.BOLD : FontWeight.NORMAL);
            String between = bold ? " " : i + 1 < boldAndRest.length ? "\n\n" : "";
            text.insertString(cursor, boldAndRest[i] + between, false);
        }
        return this;
    }

    /**
     * Puts a number into a cell.
     *
     * @param address the cell
     * @param value the number
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page number(String address, double value) throws com.sun.star.uno.Exception {
        cells.value(CellArea.of(address).corner(), value);
        return unlessQueued();
    }

    /**
     * Puts texts and numbers into cells, row by row.
     *
     * @param address the cells
     * @param values what each is to hold
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page values(String address, Object[][] values) throws com.sun.star.uno.Exception {
        CellArea area = CellArea.of(address);
        for (int row = 0; row < values.length; row++) {
            for (int column = 0; column < values[row].length; column++) {
                cells.value(CellArea.cell(area.left() + column, area.top() + row), values[row][column]);
            }
        }
        return unlessQueued();
    }

    /**
     * What cells hold, formulas that wait excepted.
     *
     * @param address the cells
     * @return texts and numbers, row by row
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Object[][] values(String address) throws com.sun.star.uno.Exception {
        writeCells();
        return Uno.as(XCellRangeData.class, range(address)).getDataArray();
    }

    /**
     * Puts the same formula into every cell of a range.
     *
     * @param address the cells
     * @param formula in English with semicolons; addresses in it are not shifted from cell to cell
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page formula(String address, String formula) throws com.sun.star.uno.Exception {
        cells.formula(CellArea.of(address), formula);
        return unlessQueued();
    }

    /**
     * Puts one formula into cells together, so that each shows its part of the table that the formula answers with.
     *
     * @param address the cells; those beyond the table show that nothing is there (#N/A)
     * @param formula in English with semicolons
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page table(String address, String formula) throws com.sun.star.uno.Exception {
        cells.table(CellArea.of(address), formula);
        return unlessQueued();
    }

    /**
     * Puts one formula into cells together, and leaves those empty that lie beyond the table it answers with. The function is
     * asked once for all of them.
     *
     * @param address the cells
     * @param function a function that answers with a table, in English with semicolons, without the equals sign
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page growingTable(String address, String function) throws com.sun.star.uno.Exception {
        return table(address, "=IFERROR(" + TablePart.of(this, address, function, 1, 1) + ";\"\")");
    }

    /**
     * Gives cells a style.
     *
     * @param address the cells
     * @param look the style
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page look(String address, CellStyleName look) throws com.sun.star.uno.Exception {
        return set(address, WaitingFormats.STYLE, look.styleName());
    }

    /**
     * Says how numbers are written.
     *
     * @param address the cells
     * @param code a format code in English, such as {@code 0.0}
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page numbers(String address, String code) throws com.sun.star.uno.Exception {
        return set(address, "NumberFormat", NumberCode.key(document, code));
    }

    /**
     * Lets long texts go on in another line of the same cell.
     *
     * @param address the cells
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page wrapped(String address) throws com.sun.star.uno.Exception {
        return set(address, "IsTextWrapped", true);
    }

    /**
     * Writes long texts smaller, until they fit into the width of their cells.
     *
     * @param address the cells
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page shrunk(String address) throws com.sun.star.uno.Exception {
        return set(address, "ShrinkToFit", true);
    }

    /**
     * Writes upward, for the heads of narrow columns.
     *
     * @param address the cells
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page turned(String address) throws com.sun.star.uno.Exception {
        return set(address, "Orientation", CellOrientation.BOTTOMTOP);
    }

    /**
     * Writes in another size than the look has.
     *
     * @param address the cells
     * @param points the size of the letters
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page size(String address, float points) throws com.sun.star.uno.Exception {
        return set(address, "CharHeight", points);
    }

    /**
     * Writes in the color of a row of points, so that the cells can be its legend.
     *
     * @param address the cells
     * @param ink how the points are drawn
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page ink(String address, SeriesColor ink) throws com.sun.star.uno.Exception {
        return set(address, "CharColor", ink.color());
    }

    /**
     * Makes one cell of several.
     *
     * @param address the cells
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page merge(String address) throws com.sun.star.uno.Exception {
        Uno.as(XMergeable.class, range(address)).merge(true);
        return this;
    }

    /**
     * Draws a line around cells together.
     *
     * @param address the cells
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page frame(String address) throws com.sun.star.uno.Exception {
        return set(address, "TableBorder2", CellStyle.FRAME);
    }

    private Page set(String address, String property, Object value) throws com.sun.star.uno.Exception {
        formats.set(CellArea.of(address), property, value);
        return unlessQueued();
    }

    /**
     * Sets the width of columns.
     *
     * @param address cells in these columns
     * @param millimeters the width of each
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page width(String address, double millimeters) throws com.sun.star.uno.Exception {
        Uno.set(Uno.as(XColumnRowRange.class, range(address)).getColumns(), "Width", hundredths(millimeters));
        // Otherwise each height that is set next is recorded with a copy of its rows.
        UndoPause.again(document);
        return this;
    }

    /**
     * Sets the height of rows.
     *
     * @param address cells in these rows
     * @param millimeters the height of each
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page height(String address, double millimeters) throws com.sun.star.uno.Exception {
        CellArea area = CellArea.of(address);
        Object high = area.rows() == 1
                ? rows.getByIndex(area.top())
                : Uno.as(XColumnRowRange.class, range(address)).getRows();
        Uno.set(high, "Height", hundredths(millimeters));
        return this;
    }

    /**
     * Repeats cells below themselves: texts, numbers, looks and merged cells, but neither heights nor formulas that wait.
     *
     * @param address the cells
     * @param times how often they are there in the end
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page repeatBelow(String address, int times) throws com.sun.star.uno.Exception {
        writeCells();
        CellArea first = CellArea.of(address);
        short number = place.getRangeAddress().Sheet;
        XCellRangeMovement copies = Uno.as(XCellRangeMovement.class, sheet);
        for (int time = 1; time < times; time++) {
            copies.copyRange(
                    new CellAddress(number, first.left(), first.top() + time * first.rows()), first.on(number));
        }
        cells.repeatBelow(first, times);
        return this;
    }

    /**
     * Begins a new sheet of paper at a row.
     *
     * @param address a cell of the row
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page newPaperAt(String address) throws com.sun.star.uno.Exception {
        Uno.set(rows.getByIndex(CellArea.of(address).top()), "IsStartOfNewPage", true);
        UndoPause.again(document);
        return this;
    }

    /**
     * Locks all cells but those with an input style. There is no password: it keeps from slips, not from people.
     *
     * @return this page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Page protect() throws com.sun.star.uno.Exception {
        isToBeProtected = true;
        return unlessQueued();
    }

    /**
     * The sheet.
     *
     * @return the sheet that is filled
     */
    public XSpreadsheet sheet() {
        return sheet;
    }

    /**
     * The document.
     *
     * @return the document it belongs to
     */
    public XSpreadsheetDocument document() {
        return document;
    }

    XCellRange range(String address) {
        return sheet.getCellRangeByName(address);
    }

    /**
     * Where cells are, counted from 0.
     *
     * @param address the cells
     * @return their place
     */
    public CellRangeAddress place(String address) {
        return CellArea.of(address).on(place.getRangeAddress().Sheet);
    }

    private static int hundredths(double millimeters) {
        return (int) Math.round(millimeters * HUNDREDTHS_PER_MILLIMETER);
    }
}
