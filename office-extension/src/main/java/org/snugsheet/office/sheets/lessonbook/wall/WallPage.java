package org.snugsheet.office.sheets.lessonbook.wall;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.WhiskerBars;
import org.snugsheet.office.sheets.lessonbook.answers.AnswersBehind;
import org.snugsheet.office.sheets.lessonbook.answers.AnswersPage;
import org.snugsheet.office.sheets.lessonbook.layout.BookPage;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.sheets.lessonbook.layout.JarsRows;
import org.snugsheet.office.sheets.lessonbook.layout.Names;
import org.snugsheet.office.sheets.lessonbook.start.StartPage;
import org.snugsheet.office.uno.CellName;

/** For everybody, to be read from the last row: one sentence and big bars; on a second sheet the same bars empty, to color by hand. */
public final class WallPage extends BookPage {

    private static final int BOXES = AnswersBehind.BOXES;

    private static final String PLACE = "A";
    private static final String WRAP = "B";
    private static final String VALUE = "C";
    private static final int FIRST_BOX = 3;
    private static final String BARS = CellName.column(FIRST_BOX);
    private static final String LAST = CellName.column(FIRST_BOX + BOXES - 1);
    private static final int FIRST = 3;
    private static final float POINTS = 24;
    private static final int FEW = 8;

    private final Page behind;
    private final JarsRows rows;

    /**
     * The page.
     *
     * @param page the page that is written
     * @param behind the page behind the others
     * @param plan how large the book is
     * @param book the book
     */
    public WallPage(Page page, Page behind, BookPlan plan, Book book) {
        super(page, plan, book, LAST);
        this.behind = behind;
        this.rows = new JarsRows(plan);
    }

    /**
     * Writes it.
     *
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public void write() throws com.sun.star.uno.Exception {
        page.width("A1", 14).width("B1", 100).width("C1", 34).width(BARS + "1:" + LAST + "1", 5.5);
        int row = onTheWall();
        page.newPaperAt("A" + row);
        int last = toColor(row);
        new PrintSetup(PrintSetup.Way.LANDSCAPE, words(BookWords.TITLE))
                .withBreaks()
                .apply(page, "A1:" + LAST + last);
        page.protect();
    }

    private int onTheWall() throws com.sun.star.uno.Exception {
        across(1, CellStyleName.WALL).height("A1", plan.jars() > FEW ? 22 : 30);
        page.formula(
                "A1",
                "=IF(ranked_count=0;" + quoted(WallWords.NOT_YET) + ";IF(first_count=1;"
                        + sentence(WallWords.WINNER, "INDEX(ranked;1)") + ";IF(AND(first_count<4;LEN(first_names)<50);"
                        + sentence(WallWords.TIE, Names.FIRST_NAMES) + ";"
                        + sentence(WallWords.TIE_OF_MANY, Names.FIRST_COUNT) + "))&"
                        + AnswersPage.invented(language) + ")");
        across(2, CellStyleName.LARGE).size("A2", POINTS).height("A2", 11);
        page.formula("A2", ready(sentence(WallWords.HEAD, Names.LESSON, Names.SHOWN)));
        for (int i = 1; i <= plan.jars(); i++) {
            int row = FIRST + i - 1;
            page.height("A" + row, barHeight());
            page.look(PLACE + row + ":" + VALUE + row, CellStyleName.LARGE)
                    .size(PLACE + row + ":" + VALUE + row, POINTS);
            page.look(WRAP + row, CellStyleName.WALL_NAME).shrunk(WRAP + row);
            String isThere = "=IF(INDEX(ranked;" + i + ")=\"\";\"\";";
            page.formula(PLACE + row, "=INDEX(places;" + i + ")").formula(WRAP + row, "=INDEX(ranked;" + i + ")");
            page.formula(
                    VALUE + row,
                    isThere + "IF(ISNUMBER(INDEX(lost;" + i + "));FIXED(INDEX(lost;" + i
                            + ");1;TRUE())&\" °\"&shown;\"\"))");
        }
        int end = FIRST + plan.jars();
        new WhiskerBars(
                        words(WallWords.CHART),
                        words(WallWords.CHART_WORDS),
                        new Plot.Cells(behind, AnswersBehind.bars(rows)),
                        new Plot.Cells(behind, AnswersBehind.room(rows)),
                        new Plot.Cells(behind, AnswersBehind.shorter(rows)),
                        new Plot.Cells(behind, AnswersBehind.longer(rows)))
                .draw(book.office(), page, "Bars", BARS + FIRST + ":" + LAST + (end - 1));
        across(end, CellStyleName.MESSAGE).size("A" + end, POINTS).height("A" + end, plan.jars() > FEW ? 22 : 32);
        page.formula("A" + end, ready(sentence(WallWords.WHY, StartPage.degrees("start"))));
        return end + 1;
    }

    private double barHeight() {
        return plan.jars() > FEW ? 9.9 : 12.5;
    }

    private int toColor(int first) throws com.sun.star.uno.Exception {
        across(first, CellStyleName.WALL).height("A" + first, 13);
        page.formula("A" + first, ready(sentence(WallWords.COLOR, Names.SHOWN)));
        across(first + 1, CellStyleName.NOTE).size("A" + (first + 1), 16).height("A" + (first + 1), 10);
        page.formula("A" + (first + 1), ready(sentence(WallWords.BOX, "box_degrees&\" °\"&shown")));
        // The numbers are above the boxes, for there may be fewer bars than rows.
        int axis = first + 3;
        String label = BARS + (axis - 1) + ":" + LAST + (axis - 1);
        page.merge(label).look(label, CellStyleName.LARGE).size(label, 16).height(label, 8);
        page.formula(BARS + (axis - 1), ready(sentence(WallWords.AXIS, Names.SHOWN)));
        page.text("A" + axis, words(WallWords.NAME) + " ______________________________");
        page.look("A" + axis, CellStyleName.WALL_NAME).size("A" + axis, 16).height("A" + axis, 9);
        for (int box = 1; box < BOXES; box += 2) {
            String cells = CellName.column(FIRST_BOX + box - 1) + axis + ":" + CellName.column(FIRST_BOX + box) + axis;
            page.merge(cells).look(cells, CellStyleName.AT_THE_EDGE);
            page.formula(cells.split(":")[0], ready((box + 1) + "*box_degrees"));
        }
        for (int i = 1; i <= plan.jars(); i++) {
            int row = axis + i;
            page.height("A" + row, plan.jars() > FEW ? 11 : 16);
            String name = PLACE + row + ":" + VALUE + row;
            page.merge(name).look(name, CellStyleName.WALL_NAME).shrunk(name);
            page.formula(PLACE + row, "=INDEX(ranked;" + i + ")");
            Highlight.when(page, BARS + row + ":" + LAST + row, "INDEX(ranked;" + i + ")<>\"\"", CellStyleName.BOX);
        }
        return axis + plan.jars();
    }

    private static String ready(String formula) {
        return "=IF(ranked_count=0;\"\";" + formula + ")";
    }
}
