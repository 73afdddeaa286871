package org.snugsheet.office.functions;

/** Where a cell is, counted from 0. */
record CellAddress(int row, int column) {

    /** A cell as it is written, such as {@code B3}. */
    static CellAddress of(String written) {
        int column = 0;
        int at = 0;
        while (Character.isLetter(written.charAt(at))) {
            column = 26 * column + written.charAt(at) - 'A' + 1;
            at++;
        }
        return new CellAddress(Integer.parseInt(written.substring(at)) - 1, column - 1);
    }

    /** The cell so many rows below and so many columns to the right. */
    CellAddress plus(int rows, int columns) {
        return new CellAddress(row + rows, column + columns);
    }

    @Override
    public String toString() {
        String letters = "";
        for (int left = column + 1; left > 0; left = (left - 1) / 26) {
            letters = (char) ('A' + (left - 1) % 26) + letters;
        }
        return letters + (row + 1);
    }
}
