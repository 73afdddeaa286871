package org.snugsheet.office.sharing;

/** Names of cells. */
final class CellName {

    private static final int LETTERS = 26;

    private CellName() {}

    /** The name of a cell, {@code A1} for column 0 and row 0. */
    static String of(int column, int row) {
        StringBuilder letters = new StringBuilder();
        for (int rest = column + 1; rest > 0; rest = (rest - 1) / LETTERS) {
            letters.insert(0, (char) ('A' + (rest - 1) % LETTERS));
        }
        return letters.toString() + (row + 1);
    }
}
