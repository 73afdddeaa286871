package org.snugsheet.office.sheets.lessonbook.pupils;

import java.util.List;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.NamedRanges;
import org.snugsheet.office.page.Page;

/**
 * The numbers beside the thermometers and the squared paper of the pupils, worked out once for each scale: from just below the surroundings
 * to above the start, in steps of 5 °C or 10 °F, so that a fifth of a step is a mark of a thermometer for the classroom. Jars may have
 * thermometers of either scale.
 */
public final class PaperMarks {

    /** How many numbers there are from the coldest to the warmest. */
    static final int MARKS = 11;

    /** How many numbers there are along the bottom of squared paper. */
    static final int MINUTE_MARKS = 7;

    /** The numbers; a column for °C and one for °F. */
    static final String MARK_NAME = "paper_marks";

    /** The minutes along the bottom. */
    static final String MINUTE_NAME = "paper_minutes";

    // Beside the settings and the lists, and to the right of all that grows with the jars.
    private static final String[] COLUMNS = {"AM", "AN"};
    private static final String MINUTES = "AO";
    private static final int COLDEST = 2;
    private static final int WARMEST = 3;
    private static final int STEP = 4;
    private static final int FIRST = 5;

    /** Minutes that a class counts in, each of which five squares share. */
    private static final List<Integer> STEPS = List.of(1, 2, 3, 5, 10, 15, 20, 30, 60);

    private final Page page;
    private final NamedRanges names;

    /**
     * The marks of the papers.
     *
     * @param page the page behind the others
     * @param names the names of its cells
     */
    public PaperMarks(Page page, NamedRanges names) {
        this.page = page;
        this.names = names;
    }

    /**
     * Writes it.
     *
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public void write() throws com.sun.star.uno.Exception {
        degrees(Scale.CELSIUS, COLUMNS[0], 5, "40");
        degrees(Scale.FAHRENHEIT, COLUMNS[1], 10, "104");
        names.fixed(MARK_NAME, page, COLUMNS[0] + FIRST + ":" + COLUMNS[1] + (FIRST + MARKS - 1));
        page.text(MINUTES + "1", MINUTE_NAME).look(MINUTES + "1", CellStyleName.LABEL);
        page.formula(MINUTES + STEP, "=" + minuteStep());
        for (int mark = 0; mark < MINUTE_MARKS; mark++) {
            page.formula(MINUTES + (FIRST + mark), "=" + mark + "*" + MINUTES + STEP);
        }
        names.fixed(MINUTE_NAME, page, MINUTES + FIRST + ":" + MINUTES + (FIRST + MINUTE_MARKS - 1));
    }

    private void degrees(Scale scale, String column, int step, String usual) throws com.sun.star.uno.Exception {
        String letter = scale == Scale.FAHRENHEIT ? "\"F\"" : "\"C\"";
        page.text(column + "1", MARK_NAME + " °" + letter.charAt(1)).look(column + "1", CellStyleName.LABEL);
        page.formula(column + COLDEST, "=TEMP.CONVERT(cold;scale;" + letter + ")");
        page.formula(column + WARMEST, "=IFERROR(TEMP.CONVERT(start;scale;" + letter + ");" + usual + ")");
        // A reading may lie a mark beside what was expected; twice the step where the days are very cold.
        page.formula(
                column + STEP,
                "=IF(" + column + WARMEST + "+1<=" + lowest(column, String.valueOf(step)) + "+" + step * (MARKS - 1)
                        + ";" + step + ";" + 2 * step + ")");
        page.formula(column + FIRST, "=" + lowest(column, column + STEP));
        for (int mark = 1; mark < MARKS; mark++) {
            page.formula(column + (FIRST + mark), "=" + column + (FIRST + mark - 1) + "+" + column + STEP);
        }
    }

    private static String lowest(String column, String step) {
        return "INT((" + column + COLDEST + "-0.5)/" + step + ")*" + step;
    }

    private static String minuteStep() {
        int last = STEPS.get(STEPS.size() - 1);
        String formula = "CEILING(lesson/" + (MINUTE_MARKS - 1) + ";" + last + ")";
        for (int i = STEPS.size() - 1; i >= 0; i--) {
            int step = STEPS.get(i);
            formula = "IF(lesson<=" + step * (MINUTE_MARKS - 1) + ";" + step + ";" + formula + ")";
        }
        return formula;
    }
}
