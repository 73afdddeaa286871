package org.snugsheet.office.sheets.lessonbook.behind;

import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.TablePart;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.JarsRows;
import org.snugsheet.office.uno.CellName;

/** What the chart of the answers draws: the readings and the curves with their limits, on the scale that is shown. */
final class CurvesBehind {

    private final Page page;
    private final BookPlan plan;
    private final JarsRows rows;

    CurvesBehind(Page page, BookPlan plan) {
        this.page = page;
        this.plan = plan;
        this.rows = new JarsRows(plan);
    }

    void write() throws com.sun.star.uno.Exception {
        minutes();
        for (int jar = 0; jar < plan.jars(); jar++) {
            curve(jar);
            readings(jar);
        }
        page.numbers("A" + rows.curvesHead() + ":" + CellName.column(3 * plan.jars()) + rows.end(), "0.0");
    }

    private void minutes() throws com.sun.star.uno.Exception {
        for (int step = 0; step < JarsRows.STEPS; step++) {
            page.formula(
                    "A" + (rows.curvesHead() + 1 + step),
                    "=IF(COUNT(times)<2;\"\";MIN(times)+" + step + "*(MAX(times)-MIN(times))/" + (JarsRows.STEPS - 1)
                            + ")");
        }
        page.table(rows.shownTimes(), "=times");
    }

    private void curve(int jar) throws com.sun.star.uno.Exception {
        int row = rows.jar(jar);
        String first = rows.curve(jar, 0).split(":")[0];
        String last = rows.curve(jar, 2).split(":")[1];
        String cells = first + ":" + last;
        page.formula(CellName.column(1 + 3 * jar) + rows.curvesHead(), "=B" + row);
        page.table(
                cells,
                "=IF(H" + row + "=2;IFERROR(TEMP.CONVERT("
                        + TablePart.of(
                                page,
                                cells,
                                "COOL.CURVE(" + rows.curveMinutes() + ";times;" + rows.readings(jar)
                                        + ";around;mark;scale)",
                                2,
                                1)
                        + ";scale;shown);\"\");\"\")");
    }

    private void readings(int jar) throws com.sun.star.uno.Exception {
        String column = CellName.column(1 + jar);
        // A jar that is held back has no points either.
        String state = "$H$" + rows.jar(jar);
        page.formula(column + rows.shownHead(), "=B" + rows.jar(jar));
        for (int i = 0; i < plan.readings(); i++) {
            String reading = column + (rows.block() + 1 + i);
            page.formula(
                    column + (rows.shownHead() + 1 + i),
                    "=IF(OR(LEN(" + reading + ")=0;AND(" + state + "<>2;" + state
                            + "<>4));\"\";IFERROR(TEMP.CONVERT(TEMP.READ(" + reading + ";scale);scale;shown);\"\"))");
        }
    }
}
