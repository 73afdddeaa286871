package org.snugsheet.office.page;

import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import org.snugsheet.office.uno.Uno;

/** Named ranges: formulas say {@code times} and {@code readings}, not {@code A8:A16}. */
public final class NamedRanges {
    private final XNamedRanges ranges;

    private NamedRanges(XNamedRanges ranges) {
        this.ranges = ranges;
    }

    /**
     * The named ranges of a document.
     *
     * @param document the document
     * @return its names
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static NamedRanges of(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        return new NamedRanges(Uno.as(XNamedRanges.class, Uno.property(document, "NamedRanges")));
    }

    /**
     * NamedRanges cells that are the same wherever the name is used.
     *
     * @param name the name
     * @param page where the cells are
     * @param address the cells, such as {@code A8:A16}
     * @return these names
     */
    public NamedRanges fixed(String name, Page page, String address) {
        String cells = address.replaceAll("([A-Z]+)([0-9]+)", "\\$$1\\$$2");
        return add(name, page, cells, new CellAddress());
    }

    /**
     * NamedRanges cells of the column in which the name is used: in column C, {@code readings} are those of column C. So one
     * formula serves every jar and can be filled to the right.
     *
     * @param name the name
     * @param page where the cells are
     * @param address the cells of any one column, such as {@code B8:B16}
     * @return these names
     */
    public NamedRanges sameColumn(String name, Page page, String address) {
        String cells = address.replaceAll("([A-Z]+)([0-9]+)", "$1\\$$2");
        CellAddress seenFrom = new CellAddress();
        seenFrom.Column = page.place(address).StartColumn;
        seenFrom.Sheet = page.place(address).Sheet;
        return add(name, page, cells, seenFrom);
    }

    /**
     * NamedRanges what a formula finds, such as as much of a list as is filled.
     *
     * @param name the name
     * @param formula in English with semicolons, without the equals sign, with full addresses such as {@code $Jars.$A$1}
     * @return these names
     */
    public NamedRanges computed(String name, String formula) {
        ranges.addNewByName(name, formula, new CellAddress(), 0);
        return this;
    }

    private NamedRanges add(String name, Page page, String cells, CellAddress seenFrom) {
        ranges.addNewByName(name, "$'" + page.name() + "'." + cells, seenFrom, 0);
        return this;
    }
}
