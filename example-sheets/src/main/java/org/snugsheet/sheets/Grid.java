package org.snugsheet.sheets;

/**
 * The cells into which a class types when it read its thermometers and what they showed: a column of times, and beside it a column
 * for each jar. Above each jar stands its name, which is typed elsewhere: Enter at the end of a column goes on to the first cell
 * of the next column that can be typed into, and that has to be a reading.
 *
 * @param times the column of the times
 * @param first the column of the first jar
 * @param last the column of the last jar
 * @param head the row of the names
 * @param rows how many readings each jar has room for
 */
record Grid(char times, char first, char last, int head, int rows) {

    int firstRow() {
        return head + 1;
    }

    int lastRow() {
        return head + rows;
    }

    int jars() {
        return last - first + 1;
    }

    char column(int jar) {
        return (char) (first + jar);
    }

    String minutes() {
        return cells(times, times, firstRow());
    }

    String readings() {
        return cells(first, last, firstRow());
    }

    String readings(char column) {
        return cells(column, column, firstRow());
    }

    String heads() {
        return first + "" + head + ":" + last + head;
    }

    /** All that is typed: times and readings. */
    String typed() {
        return cells(times, last, firstRow());
    }

    /** The same with the row of the names, as the functions take the readings of a whole sheet. */
    String block() {
        return cells(times, last, head);
    }

    private String cells(char from, char to, int top) {
        return from + "" + top + ":" + to + lastRow();
    }
}
