package org.snugsheet.office.sharing;

import com.sun.star.sheet.XCellRangeData;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.snugsheet.office.uno.Uno;

/**
 * What the cells of a formula show, row by row: a number, a text, or {@link NoAnswer} for an error.
 *
 * @param rows the rows
 */
record ShownValues(List<List<Object>> rows) {

    /** What is kept of cells that go on changing. That something is kept says that their place may be followed. */
    static final ShownValues CHANGING = new ShownValues(List.of(List.of(NoAnswer.INSTANCE)));

    /** An error stays one, so that totals and charts do not swallow it, and one that every office knows. */
    private static final String NOTHING = "=NA()";

    /** A cell that is no blank, for COUNTA and for sums that refuse a text. */
    private static final String EMPTY_TEXT = "=\"\"";

    /** Files hold fifteen digits. */
    private static final double DIGITS = 1e-14;

    private static final String ROW = "\n";
    private static final String CELL = "\t";

    private enum NoAnswer {
        INSTANCE
    }

    static ShownValues of(XCellRange range) {
        return of(Uno.as(XCellRangeData.class, range).getDataArray());
    }

    static ShownValues of(Object[][] data) {
        List<List<Object>> rows = new ArrayList<>();
        for (Object[] row : data) {
            List<Object> answers = new ArrayList<>();
            for (Object value : row) {
                answers.add(value instanceof Double || value instanceof String ? value : NoAnswer.INSTANCE);
            }
            rows.add(answers);
        }
        return new ShownValues(rows);
    }

    /** What is written into a cell for one of the answers: a number, a text, or a formula. */
    Object content(int row, int column) {
        Object answer = rows.get(row).get(column);
        if (answer instanceof Double || (answer instanceof String text && !text.isEmpty())) {
            return answer;
        }
        return answer instanceof String ? EMPTY_TEXT : NOTHING;
    }

    /** Whether that is a formula. */
    boolean isFormula(int row, int column) {
        Object answer = rows.get(row).get(column);
        return !(answer instanceof Double) && !(answer instanceof String text && !text.isEmpty());
    }

    static void write(XCell cell, Object content, boolean isFormula) {
        if (content instanceof Double number) {
            cell.setValue(number);
        } else if (isFormula) {
            cell.setFormula(String.valueOf(content));
        } else {
            Uno.as(XText.class, cell).setString(String.valueOf(content));
        }
    }

    /** Whether the cells still hold these answers, as values and not by a formula of somebody’s. */
    boolean standIn(SheetBlocks sheet, Area area) throws com.sun.star.uno.Exception {
        Object[][] now = sheet.values(area);
        String[][] written = sheet.formulas(area);
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < rows.get(row).size(); column++) {
                if (!isSame(rows.get(row).get(column), now[row][column], written[row][column])) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean isSame(Object answer, Object now, String written) {
        if (answer instanceof Double number) {
            return now instanceof Double other
                    && Math.abs(number - other) <= DIGITS * Math.abs(number)
                    && !written.startsWith("=");
        }
        if (answer instanceof String text) {
            boolean isFormula = written.startsWith("=") && !text.startsWith("=");
            return now instanceof String other
                    && text.equals(other.replaceAll("[\t\n\r]", " "))
                    && (!isFormula || (text.isEmpty() && written.equals(EMPTY_TEXT)));
        }
        // Other offices write the brackets of NA() in their own way.
        return (!(now instanceof Double || now instanceof String) && written.startsWith("=NA("))
                || written.equals("#N/A");
    }

    /** Whether the cells hold values of any kind, or what is written for an error, and no formula of anybody’s. */
    static boolean areValues(SheetBlocks sheet, Area area) throws com.sun.star.uno.Exception {
        for (String[] row : sheet.formulas(area)) {
            for (String written : row) {
                if (written.startsWith("=") && !written.startsWith("=NA(") && !written.equals(EMPTY_TEXT)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** As a text. */
    String written() {
        return rows.stream()
                .map(row -> row.stream().map(ShownValues::written).collect(Collectors.joining(CELL)))
                .collect(Collectors.joining(ROW));
    }

    /** Read from such a text. */
    static ShownValues read(String written) {
        List<List<Object>> rows = new ArrayList<>();
        for (String row : written.split(ROW, -1)) {
            List<Object> answers = new ArrayList<>();
            for (String answer : row.split(CELL, -1)) {
                answers.add(answer(answer));
            }
            rows.add(answers);
        }
        return new ShownValues(rows);
    }

    private static String written(Object answer) {
        if (answer instanceof Double number) {
            return "n" + number;
        }
        return answer instanceof String text ? "t" + text.replaceAll("[\t\n\r]", " ") : "-";
    }

    private static Object answer(String written) {
        if (written.startsWith("n")) {
            try {
                return Double.valueOf(written.substring(1));
            } catch (NumberFormatException crafted) {
                return NoAnswer.INSTANCE;
            }
        }
        return written.startsWith("t") ? written.substring(1) : NoAnswer.INSTANCE;
    }
}
