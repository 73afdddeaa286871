package org.snugsheet.office.sheets.lessonbook.pupils;

import org.snugsheet.engine.Phrase;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.lessonbook.layout.BookPage;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.uno.CellName;

/** For children of 7 to 11: a sheet of paper for each group, with a table and squared paper in the scale of its thermometer. */
public final class NumbersPage extends BookPage {

    /** Left of the squares are two columns for numbers and one for half of the first number along the bottom. */
    private static final int LEFT = 3;

    private static final int PARTS = 5;
    private static final int ACROSS = PARTS * (PaperMarks.MINUTE_MARKS - 1);
    private static final int UP = PARTS * (PaperMarks.MARKS - 1);
    private static final int COLUMNS = LEFT + ACROSS + 2;
    private static final String LAST = CellName.column(COLUMNS - 1);
    private static final double NUMBER_COLUMN = 10;
    private static final double COLUMN = (PupilPaper.WIDTH - NUMBER_COLUMN) / (COLUMNS - 1);

    // Boxes to write readings into: so many beside each other, each so many columns wide.
    private static final int BOXES = 10;
    private static final int BOX = ACROSS / BOXES;

    // The rows of a sheet of paper, and how high they are.
    private static final int THINK = 2;
    private static final int BECAUSE = 3;
    private static final int FAIR = 4;
    private static final int WRITE = 6;
    private static final int TABLE = 7;
    private static final double TITLE_HEIGHT = 11;
    private static final double NAME_HEIGHT = 10;
    private static final double LINE_HEIGHT = 9.5;
    private static final double FAIR_HEIGHT = 8;
    private static final float TO_TICK = 13;
    private static final double WORDS_HEIGHT = 9;
    private static final double MINUTES_HEIGHT = 6.5;
    private static final double BOX_HEIGHT = 9;

    private final int tableRows;
    private final int cross;
    private final int squares;
    private final int minutes;
    private final int rows;

    /**
     * The page.
     *
     * @param page the page that is written
     * @param plan how large the book is
     * @param book the book
     */
    public NumbersPage(Page page, BookPlan plan, Book book) {
        super(page, plan, book, LAST);
        this.tableRows = (plan.readings() + BOXES - 1) / BOXES;
        this.cross = TABLE + 2 * tableRows;
        // Half of the uppermost number stands above the squares.
        this.squares = cross + 2;
        this.minutes = squares + UP;
        this.rows = minutes + 5;
    }

    /**
     * Writes it.
     *
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public void write() throws com.sun.star.uno.Exception {
        page.width("A1", NUMBER_COLUMN).width("B1:" + LAST + "1", COLUMN);
        // Heights and paper before anything stands in the rows: later the office would look for heights of its own and
        // how all falls on paper.
        for (int jar = 0; jar < plan.jars(); jar++) {
            heights(paper(jar));
        }
        new PrintSetup(PrintSetup.Way.PORTRAIT, "").withBreaks().applyStyle(page);
        lines(paper(0));
        page.repeatBelow("A1:" + LAST + rows, plan.jars());
        for (int jar = 0; jar < plan.jars(); jar++) {
            numbers(paper(jar));
        }
        PrintSetup.print(page, "A1:" + LAST + rows * plan.jars());
        page.protect();
    }

    private PupilPaper paper(int jar) {
        return new PupilPaper(page, language, jar, rows, COLUMNS);
    }

    /** What is the same for each group. */
    private void lines(PupilPaper paper) throws com.sun.star.uno.Exception {
        paper.top(2 * BOX + LEFT);
        prediction(paper);
        fairTest(paper);
        table(paper);
        squaredPaper(paper);
        question(paper, minutes + 1, PupilWords.SAY_NOW);
        question(paper, minutes + 3, PupilWords.EXIT);
    }

    private void heights(PupilPaper paper) throws com.sun.star.uno.Exception {
        double square = square();
        paper.high(0, TITLE_HEIGHT)
                .high(1, NAME_HEIGHT)
                .high(THINK, BECAUSE, LINE_HEIGHT)
                .high(FAIR, FAIR + 1, FAIR_HEIGHT)
                .high(WRITE, WORDS_HEIGHT);
        for (int line = 0; line < tableRows; line++) {
            paper.high(tableRow(line), MINUTES_HEIGHT).high(tableRow(line) + 1, BOX_HEIGHT);
        }
        paper.high(cross, WORDS_HEIGHT)
                .high(cross + 1, 2 * square)
                .high(squares, minutes - 1, square)
                .high(minutes, MINUTES_HEIGHT)
                .high(minutes + 1, WORDS_HEIGHT)
                .high(minutes + 2, LINE_HEIGHT)
                .high(minutes + 3, WORDS_HEIGHT)
                .high(minutes + 4, LINE_HEIGHT);
    }

    private void numbers(PupilPaper paper) throws com.sun.star.uno.Exception {
        paper.group();
        for (int line = 0; line < tableRows; line++) {
            page.formula(paper.cell(0, tableRow(line) + 1), "=\"°\"&" + paper.ownScale());
            for (int i = 0; i < inLine(line); i++) {
                page.formula(
                        paper.cell(LEFT + i * BOX, tableRow(line)),
                        "=INDEX(planned;" + (line * inARow() + i + 1) + ")");
            }
        }
        for (int number = 1; number <= PaperMarks.MARKS; number++) {
            page.formula(
                    paper.cell(0, firstRowOf(number)),
                    "=IFERROR(" + paper.mark(number) + "&\""
                            + (number == PaperMarks.MARKS ? " °\"&" + paper.ownScale() : "\"") + ";\"\")");
        }
        for (int number = 1; number <= PaperMarks.MINUTE_MARKS; number++) {
            page.formula(
                    paper.cell(line(number) - half(number), minutes),
                    "=INDEX(" + PaperMarks.MINUTE_NAME + ";" + number + ")"
                            + (number == PaperMarks.MINUTE_MARKS ? "&\" min\"" : ""));
        }
    }

    private void prediction(PupilPaper paper) throws com.sun.star.uno.Exception {
        int half = LEFT + ACROSS / 2;
        paper.words(0, half - 1, THINK, CellStyleName.CHILD, PupilWords.THINK)
                .merged(half, COLUMNS - 1, THINK, CellStyleName.PENCIL_LINE);
        int because = LEFT + BOX;
        paper.words(0, because - 1, BECAUSE, CellStyleName.CHILD, PupilWords.BECAUSE)
                .merged(because, COLUMNS - 1, BECAUSE, CellStyleName.PENCIL_LINE);
    }

    /** What to tick, in two rows of three. */
    private void fairTest(PupilPaper paper) throws com.sun.star.uno.Exception {
        Phrase[] words = {
            PupilWords.FAIR,
            PupilWords.SAME_WATER,
            PupilWords.SAME_START,
            PupilWords.SAME_PLACE,
            PupilWords.SAME_TIMES,
            PupilWords.LID
        };
        int[] from = {0, 11, 23, COLUMNS};
        for (int i = 0; i < words.length; i++) {
            int row = FAIR + i / 3;
            paper.words(from[i % 3], from[i % 3 + 1] - 1, row, CellStyleName.CHILD, words[i]);
            page.size(paper.cell(from[i % 3], row), TO_TICK);
        }
    }

    private void table(PupilPaper paper) throws com.sun.star.uno.Exception {
        paper.words(0, COLUMNS - 1, WRITE, CellStyleName.CHILD, PupilWords.WRITE);
        for (int line = 0; line < tableRows; line++) {
            int row = tableRow(line);
            paper.merged(0, LEFT - 1, row, CellStyleName.CHILD_WORD)
                    .merged(0, LEFT - 1, row + 1, CellStyleName.CHILD_WORD);
            page.text(paper.cell(0, row), "min");
            for (int i = 0; i < inLine(line); i++) {
                int column = LEFT + i * BOX;
                paper.merged(column, column + BOX - 1, row, CellStyleName.CHILD_WORD)
                        .merged(column, column + BOX - 1, row + 1, CellStyleName.BOX);
            }
        }
    }

    private static int tableRow(int line) {
        return TABLE + 2 * line;
    }

    private int inARow() {
        return (plan.readings() + tableRows - 1) / tableRows;
    }

    private int inLine(int line) {
        return Math.min(inARow(), plan.readings() - line * inARow());
    }

    private void squaredPaper(PupilPaper paper) throws com.sun.star.uno.Exception {
        paper.words(0, COLUMNS - 1, cross, CellStyleName.CHILD, PupilWords.CROSSES);
        int right = LEFT + ACROSS - 1;
        page.look(paper.cells(LEFT, right, squares, minutes - 1), CellStyleName.SQUARES);
        for (int i = 0; i < UP; i += PARTS) {
            page.frame(paper.cells(LEFT, right, squares + i, squares + i + PARTS - 1));
        }
        for (int i = 0; i < ACROSS; i += PARTS) {
            page.frame(paper.cells(LEFT + i, LEFT + i + PARTS - 1, squares, minutes - 1));
        }
        for (int number = 1; number <= PaperMarks.MARKS; number++) {
            int last = number == 1 ? minutes : minutes - (number - 1) * PARTS + 1;
            String cells = paper.cells(0, 1, firstRowOf(number), last);
            page.look(cells, CellStyleName.CHILD_NUMBER).merge(cells);
        }
        for (int number = 1; number <= PaperMarks.MINUTE_MARKS; number++) {
            int line = line(number);
            paper.merged(line - half(number), line + half(number) - 1, minutes, CellStyleName.CHILD_WORD);
        }
    }

    /** The cell above the uppermost line is as high as two squares, the one below the lowest about so. */
    private int firstRowOf(int number) {
        int line = minutes - (number - 1) * PARTS;
        return number == PaperMarks.MARKS ? line - 1 : line - 2;
    }

    /** The column right of a number along the bottom. */
    private static int line(int number) {
        return LEFT + (number - 1) * PARTS;
    }

    /** Beside the lowest number there is room for one column only. */
    private static int half(int number) {
        return number == 1 ? 1 : 2;
    }

    /** As high as a square can be so that all of it fits on one sheet of paper. */
    private double square() {
        double others = TITLE_HEIGHT
                + NAME_HEIGHT
                + 2 * LINE_HEIGHT
                + 2 * FAIR_HEIGHT
                + WORDS_HEIGHT
                + tableRows * (MINUTES_HEIGHT + BOX_HEIGHT)
                + WORDS_HEIGHT
                + MINUTES_HEIGHT
                + 2 * (WORDS_HEIGHT + LINE_HEIGHT);
        return Math.floor(10 * (PupilPaper.HEIGHT - others) / (UP + 2)) / 10;
    }

    private void question(PupilPaper paper, int row, Phrase words) throws com.sun.star.uno.Exception {
        paper.words(0, COLUMNS - 1, row, CellStyleName.CHILD, words)
                .merged(0, COLUMNS - 1, row + 1, CellStyleName.PENCIL_LINE);
        // The office cuts a page off above a last row that holds nothing itself.
        page.text(paper.cell(0, row + 1), " ");
    }
}
