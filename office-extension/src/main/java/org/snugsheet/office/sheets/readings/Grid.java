package org.snugsheet.office.sheets.readings;

/**
 * The cells into which a class types when it read its thermometers and what they showed: a column of times, and beside it a column
 * for each jar. Above each jar is its name, which is typed elsewhere: Enter at the end of a column goes on to the first cell
 * of the next column that can be typed into, and that has to be a reading.
 *
 * @param times the column of the times
 * @param first the column of the first jar
 * @param last the column of the last jar
 * @param head the row of the names
 * @param rows how many readings each jar has room for
 */
public record Grid(char times, char first, char last, int head, int rows) {

    public int firstRow() {
        return head + 1;
    }

    public int lastRow() {
        return head + rows;
    }

    public int jars() {
        return last - first + 1;
    }

    public char column(int jar) {
        return (char) (first + jar);
    }

    public String minutes() {
        return cells(times, times, firstRow());
    }

    public String readings() {
        return cells(first, last, firstRow());
    }

    public String readings(char column) {
        return cells(column, column, firstRow());
    }

    public String heads() {
        return first + "" + head + ":" + last + head;
    }

    /** All that is typed: times and readings. */
    public String typed() {
        return cells(times, last, firstRow());
    }

    /** The same with the row of the names, as the functions take the readings of a whole sheet. */
    public String block() {
        return cells(times, last, head);
    }

    private String cells(char from, char to, int top) {
        return from + "" + top + ":" + to + lastRow();
    }
}
