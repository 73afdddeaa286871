package org.snugsheet.office.page;

import com.sun.star.table.CellRangeAddress;

/** A part of the table that a function answers with. */
public final class TablePart {

    private TablePart() {}

    /**
     * Picks from a table as many rows and columns as some cells have.
     *
     * @param page the page of the cells
     * @param address the cells that will show them
     * @param function a function that answers with a table, without the equals sign
     * @param row the first row of the table that is picked, counted from 1
     * @param column its first column, counted from 1
     * @return the formula, without the equals sign, to be put into these cells by {@link Page#table}
     */
    public static String of(Page page, String address, String function, int row, int column) {
        CellRangeAddress size = page.place(address);
        // The numbers of rows and columns, as the office counts them on any page.
        String rows = "ROW($A$" + row + ":$A$" + (row + size.EndRow - size.StartRow) + ")";
        String columns =
                "COLUMN($" + letter(column) + "$1:$" + letter(column + size.EndColumn - size.StartColumn) + "$1)";
        return "INDEX(" + function + ";" + rows + ";" + columns + ")";
    }

    private static char letter(int column) {
        return (char) ('A' + column - 1);
    }
}
