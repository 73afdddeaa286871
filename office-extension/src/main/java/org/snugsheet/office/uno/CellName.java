package org.snugsheet.office.uno;

/** Names of cells. */
public final class CellName {

    private static final int LETTERS = 26;

    private CellName() {}

    /**
     * The name of a cell.
     *
     * @param column counted from 0
     * @param row counted from 0
     * @return {@code A1} for column 0 and row 0
     */
    public static String of(int column, int row) {
        return column(column) + (row + 1);
    }

    /**
     * The name of a column.
     *
     * @param column counted from 0
     * @return {@code A} for column 0
     */
    public static String column(int column) {
        StringBuilder letters = new StringBuilder();
        for (int rest = column + 1; rest > 0; rest = (rest - 1) / LETTERS) {
            letters.insert(0, (char) ('A' + (rest - 1) % LETTERS));
        }
        return letters.toString();
    }

    /**
     * The number of a column.
     *
     * @param letters its name, such as {@code AB}
     * @return counted from 0
     */
    public static int number(String letters) {
        int number = 0;
        for (int i = 0; i < letters.length(); i++) {
            number = number * LETTERS + letters.charAt(i) - 'A' + 1;
        }
        return number - 1;
    }
}
