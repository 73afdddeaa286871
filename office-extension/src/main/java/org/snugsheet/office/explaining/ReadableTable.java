package org.snugsheet.office.explaining;

import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import java.math.BigDecimal;
import java.util.Arrays;
import org.snugsheet.office.page.NumberCode;
import org.snugsheet.office.uno.Uno;

/**
 * How a table is shown that just came into somebody’s sheet: words in as many lines as they need, numbers with as many digits as a
 * person reads. The values stay whole, and a cell that somebody gave a look of its own keeps it.
 */
final class ReadableTable {

    private static final int DIGITS = 4;
    private static final int MOST_DECIMALS = 6;

    /** Numbers of one column whose sizes differ by more powers of ten are not comparable: each has its own decimals. */
    private static final int COMPARABLE = 2;

    /** So many letters go into three lines of a column of the usual width. */
    private static final int FEW_LETTERS = 36;

    /** In hundredths of a millimeter. */
    private static final int SENTENCE_WIDTH = 6000;

    /** The number format of a cell that nobody gave one. */
    private static final int GENERAL = 0;

    private ReadableTable() {}

    static void make(XSpreadsheetDocument document, XCellRange table) throws com.sun.star.uno.Exception {
        Object[][] values = Uno.as(XCellRangeData.class, table).getDataArray();
        int width = values[0].length;
        for (int column = 0; column < width; column++) {
            int at = column;
            showWords(table, values, column);
            int[] decimals = Arrays.stream(values)
                    .mapToInt(row -> row[at] instanceof Double number ? decimals(number) : 0)
                    .toArray();
            int most = Arrays.stream(decimals).max().orElse(0);
            boolean comparable =
                    Arrays.stream(decimals).filter(count -> count > 0).min().orElse(0) >= most - COMPARABLE;
            for (int row = 0; row < values.length; row++) {
                if (decimals[row] > 0) {
                    Object cell = table.getCellByPosition(column, row);
                    if (Integer.valueOf(GENERAL).equals(Uno.property(cell, "NumberFormat"))) {
                        String code = "0." + "0".repeat(comparable ? most : decimals[row]);
                        Uno.set(cell, "NumberFormat", NumberCode.key(document, code));
                    }
                }
            }
        }
    }

    /** Texts that the next cell would cut off get enough lines, and long ones a column wide enough for a sentence. */
    private static void showWords(XCellRange table, Object[][] values, int column) throws com.sun.star.uno.Exception {
        int longest = 0;
        for (int row = 0; row < values.length; row++) {
            boolean isCut = column < values[row].length - 1 && !"".equals(values[row][column + 1]);
            if (values[row][column] instanceof String words && (row == 0 || isCut)) {
                Uno.set(table.getCellByPosition(column, row), "IsTextWrapped", true);
                longest = Math.max(longest, words.length());
            }
        }
        if (longest > FEW_LETTERS) {
            Object whole = Uno.as(XColumnRowRange.class, table).getColumns().getByIndex(column);
            if ((Integer) Uno.property(whole, "Width") < SENTENCE_WIDTH) {
                Uno.set(whole, "Width", SENTENCE_WIDTH);
            }
        }
    }

    /** How many decimals show so many digits; none for a whole number. */
    static int decimals(double number) {
        if (number == Math.rint(number)) {
            return 0;
        }
        BigDecimal exact = BigDecimal.valueOf(Math.abs(number));
        int before = exact.precision() - exact.scale();
        return Math.min(MOST_DECIMALS, Math.max(1, DIGITS - before));
    }
}
