package org.snugsheet.office.sheets.lessonbook.answers;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.NamedRanges;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.JarsRows;
import org.snugsheet.office.sheets.lessonbook.layout.Names;

/** What the answers and the wall say in words, and what the bars of the wall are drawn from; beside the ranking. */
public final class AnswersBehind {

    /** Boxes of a bar to color. */
    public static final int BOXES = 20;

    // Beside the ranking, whose columns end with Q.
    private static final String HALF_FROM = "R";
    private static final String HALF_TO = "S";
    private static final String BAR = "T";
    private static final String ROOM = "U";
    private static final String LESS = "V";
    private static final String MORE = "W";
    /** Beside the table of the jars. */
    private static final String LABEL = "R";

    private final Page page;
    private final BookPlan plan;
    private final JarsRows rows;
    private final NamedRanges names;

    /**
     * What the answers say.
     *
     * @param page the page behind the others
     * @param plan how large the book is
     * @param names the names of its cells
     */
    public AnswersBehind(Page page, BookPlan plan, NamedRanges names) {
        this.page = page;
        this.plan = plan;
        this.rows = new JarsRows(plan);
        this.names = names;
    }

    /** The cells with the lengths of the bars. */
    public static String bars(JarsRows rows) {
        return rows.ofRanking(BAR);
    }

    /** The cells with how far the chart must go. */
    public static String room(JarsRows rows) {
        return rows.ofRanking(ROOM);
    }

    /** The cells with what a bar may be shorter. */
    public static String shorter(JarsRows rows) {
        return rows.ofRanking(LESS);
    }

    /** The cells with what a bar may be longer. */
    public static String longer(JarsRows rows) {
        return rows.ofRanking(MORE);
    }

    /**
     * Writes it.
     *
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public void write() throws com.sun.star.uno.Exception {
        names.fixed(Names.HALF_FROM, page, rows.ofRanking(HALF_FROM))
                .fixed(Names.HALF_TO, page, rows.ofRanking(HALF_TO))
                .fixed(Names.JAR_LABELS, page, rows.ofJars(LABEL));
        head(HALF_FROM, Names.HALF_FROM);
        head(HALF_TO, Names.HALF_TO);
        head(BAR, Names.LOST);
        head(ROOM, "room");
        head(LESS, "shorter");
        head(MORE, "longer");
        for (int jar = 0; jar < plan.jars(); jar++) {
            int row = rows.jar(jar);
            page.formula(LABEL + row, "=IF(B" + row + "=\"\";\"\";A" + row + "&\" \"&B" + row + ")");
            ranked(rows.rankingHead() + 1 + jar);
        }
        said();
    }

    /** The larger the constant, the shorter the half-time. One that may be nothing sets no limit. */
    private void ranked(int row) throws com.sun.star.uno.Exception {
        of(row, HALF_FROM, "IF(F" + row + ">0;LN(2)/F" + row + ";\"\")");
        of(row, HALF_TO, "IF(E" + row + ">0;LN(2)/E" + row + ";\"\")");
        of(row, BAR, "N" + row);
        of(row, ROOM, "1.03*MAX(N" + row + ";P" + row + ")");
        // No bar can lose less than nothing.
        of(row, LESS, "MIN(N" + row + ";N" + row + "-O" + row + ")");
        of(row, MORE, "P" + row + "-N" + row);
    }

    private void of(int row, String column, String formula) throws com.sun.star.uno.Exception {
        page.formula(column + row, "=IF(ISNUMBER(A" + row + ");IFERROR(" + formula + ";\"\");\"\")");
        page.look(column + row, CellStyleName.RESULT);
    }

    private void head(String column, String words) throws com.sun.star.uno.Exception {
        page.text(column + rows.rankingHead(), words).look(column + rows.rankingHead(), CellStyleName.HEAD);
    }

    private void said() throws com.sun.star.uno.Exception {
        together("Y", Names.FIRST_NAMES, "=TEXTJOIN(\", \";TRUE();IF(places=1;ranked;\"\"))");
        together("Z", Names.HELD_NAMES, "=TEXTJOIN(\", \";TRUE();IF(states=3;jar_labels;\"\"))");
        together(
                "AA",
                Names.WAITING_NAMES,
                "=TEXTJOIN(\", \";TRUE();IF((states=1)+(states=4)+(states=5)>0;jar_labels;\"\"))");
        together("AB", Names.RANKED_COUNT, "=COUNT(places)");
        together("AC", Names.FIRST_COUNT, "=COUNTIF(places;1)");
        together(
                "AD",
                Names.BOX_DEGREES,
                "=IF(COUNT(lost)=0;\"\";IF(shown=\"F\";IF(MAX(lost)<=" + 2 * BOXES + ";2;5);IF(MAX(lost)<=" + BOXES
                        + ";1;2)))");
    }

    /** One answer from whole columns. */
    private void together(String column, String name, String formula) throws com.sun.star.uno.Exception {
        head(column, name);
        String cell = column + (rows.rankingHead() + 1);
        page.table(cell, formula).look(cell, CellStyleName.RESULT);
        names.fixed(name, page, cell);
    }
}
