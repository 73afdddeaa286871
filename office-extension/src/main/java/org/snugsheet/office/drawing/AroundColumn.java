package org.snugsheet.office.drawing;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The surroundings, read as often as the jars. A fit wants as many of them as there are times, so they have room below them as well.
 *
 * @param cells their cells
 * @param times the cells of the times
 */
record AroundColumn(String cells, String times) {

    private static final Pattern ONE_COLUMN =
            Pattern.compile("(?i)(?:.*\\.)?\\$?([A-Z]{1,3})\\$?([0-9]+):\\$?([A-Z]{1,3})\\$?([0-9]+)");

    /** Whether surroundings are such a column, and neither one temperature for all times nor a range that fits no times. */
    static boolean is(String surroundings, int rows) {
        Matcher range = ONE_COLUMN.matcher(surroundings);
        return rows > 1
                && range.matches()
                && range.group(1).equalsIgnoreCase(range.group(3))
                && Integer.parseInt(range.group(4)) - Integer.parseInt(range.group(2)) == rows - 1;
    }

    /** The formula of one cell, counted from 1. Once the times have got a row that these have not, nobody knows which belong together. */
    String formula(int row) {
        String one = "INDEX(" + cells + ";" + row + ")";
        return "=IF(OR(" + row + ">ROWS(" + cells + ");ROWS(" + cells + ")<>ROWS(" + times + "));\"\";IF(ISBLANK(" + one
                + ");\"\";" + one + "))";
    }
}
