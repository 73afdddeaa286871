package org.snugsheet.office.sheets.lessonbook.behind;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.NamedRanges;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.JarsRows;
import org.snugsheet.office.sheets.lessonbook.layout.Names;

/** The order of the wraps, from the jars that are in no doubt, and how much each loses in the lesson. */
final class RankingBehind {

    private final Page page;
    private final BookPlan plan;
    private final JarsRows rows;
    private final NamedRanges names;

    RankingBehind(Page page, BookPlan plan, NamedRanges names) {
        this.page = page;
        this.plan = plan;
        this.rows = new JarsRows(plan);
        this.names = names;
    }

    void write() throws com.sun.star.uno.Exception {
        String[][] columns = {
            {Names.PLACES, "I"},
            {Names.RANKED, "J"},
            {Names.JARS_OF, "K"},
            {Names.RANKED_HALF, "L"},
            {Names.SHARED_WITH, "M"},
            {Names.LOST, "N"},
            {Names.LOST_FROM, "O"},
            {Names.LOST_TO, "P"},
            {Names.TIMES_AS_LONG, "Q"}
        };
        for (String[] each : columns) {
            names.fixed(each[0], page, rows.ofRanking(each[1]));
            page.text(each[1] + rows.rankingHead(), each[0]).look(each[1] + rows.rankingHead(), CellStyleName.HEAD);
        }
        page.growingTable(rows.ranking(), "COOL.RANK(times;trusted;jar_heads;around;mark;scale;spread)");
        for (int i = 0; i < plan.jars(); i++) {
            int row = rows.rankingHead() + 1 + i;
            // Those without a place are held back, and are listed with their jars.
            of(row, "I", "A" + row);
            of(row, "J", "B" + row + "&\"\"");
            of(row, "K", "C" + row);
            of(row, "L", "IF(ISNUMBER(G" + row + ");G" + row + ";\"\")");
            of(row, "M", "H" + row + "&\"\"");
            of(row, "N", lost("D", row));
            of(row, "O", lost("E", row));
            of(row, "P", lost("F", row));
            of(
                    row,
                    "Q",
                    "IFERROR(MAX($D$" + (rows.rankingHead() + 1) + ":$D$" + (rows.rankingHead() + plan.jars()) + ")/D"
                            + row + ";\"\")");
        }
    }

    private void of(int row, String column, String formula) throws com.sun.star.uno.Exception {
        page.formula(column + row, "=IF(ISNUMBER(A" + row + ");" + formula + ";\"\")");
        page.look(column + row, CellStyleName.RESULT);
    }

    private static String lost(String rate, int row) {
        return "IFERROR(TEMP.CHANGE(start-COOL.TEMP(lesson;start;cold;" + rate + row + ";scale);scale;shown);\"\")";
    }
}
