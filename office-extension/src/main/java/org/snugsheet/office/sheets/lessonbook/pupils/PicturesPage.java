package org.snugsheet.office.sheets.lessonbook.pupils;

import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.lessonbook.layout.BookPage;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.uno.CellName;

/** For children of 5 to 7, who need not read: a sheet of paper for each group, with jars, thermometers and faces to draw on. */
public final class PicturesPage extends BookPage {

    /** Three thermometers beside each other, each five columns wide; five words, each three columns wide. */
    private static final int COLUMNS = 15;

    private static final String LAST = CellName.column(COLUMNS - 1);

    private static final int THIRD = COLUMNS / 3;
    private static final int FIFTH = COLUMNS / 5;
    private static final double COLUMN = PupilPaper.WIDTH / COLUMNS;

    // Where the two jars of the guess begin.
    private static final int GUESS = 8;

    // The rows of a sheet of paper.
    private static final int DRAW = 2;
    private static final int JARS = 3;
    private static final int GUESS_WORDS = 4;
    private static final int COLOR = 5;
    private static final int CLOCKS = 6;
    private static final int MARKS = 7;
    private static final int BULBS = MARKS + PaperMarks.MARKS;
    private static final int FACES = BULBS + 1;
    private static final int FACES_ROW = FACES + 1;
    private static final int PICTURES = FACES_ROW + 1;
    private static final int PICTURE_WORDS = PICTURES + 1;
    private static final int ROWS = PICTURE_WORDS + 1;

    private static final List<Phrase> VOCABULARY =
            List.of(PupilWords.WARM, PupilWords.COLD, PupilWords.JAR, PupilWords.THERMOMETER, PupilWords.ICE);

    private static final double MARK_HEIGHT = 7.2;
    private static final float INSTRUCTION = 17;
    private static final float NUMBERS = 14;

    /**
     * The page.
     *
     * @param page the page that is written
     * @param plan how large the book is
     * @param book the book
     */
    public PicturesPage(Page page, BookPlan plan, Book book) {
        super(page, plan, book, LAST);
    }

    /**
     * Writes it.
     *
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public void write() throws com.sun.star.uno.Exception {
        page.width("A1:O1", COLUMN);
        // Heights and paper before anything stands in the rows: later the office would look for heights of its own and
        // how all falls on paper.
        for (int jar = 0; jar < plan.jars(); jar++) {
            heights(paper(jar));
        }
        new PrintSetup(PrintSetup.Way.PORTRAIT, "").withBreaks().applyStyle(page);
        lines(paper(0));
        page.repeatBelow("A1:O" + ROWS, plan.jars());
        for (int jar = 0; jar < plan.jars(); jar++) {
            numbers(paper(jar));
        }
        pictures();
        PrintSetup.print(page, "A1:" + LAST + ROWS * plan.jars());
        page.protect();
    }

    private PupilPaper paper(int jar) {
        return new PupilPaper(page, language, jar, ROWS, COLUMNS);
    }

    /** What is the same for each group but for the drawings. */
    private void lines(PupilPaper paper) throws com.sun.star.uno.Exception {
        paper.top(4);
        page.size(paper.cell(0, 1), INSTRUCTION);
        instruction(paper, 0, GUESS - 1, DRAW, PupilWords.DRAW_JAR);
        instruction(paper, GUESS, COLUMNS - 1, DRAW, PupilWords.GUESS);
        word(paper, GUESS, GUESS + 2, GUESS_WORDS, PupilWords.WARM);
        word(paper, GUESS + 4, GUESS + 6, GUESS_WORDS, PupilWords.COLD);
        instruction(paper, 0, COLUMNS - 1, COLOR, PupilWords.COLOR);
        for (int left = 0; left < COLUMNS; left += THIRD) {
            paper.merged(left + 2, left + THIRD - 1, CLOCKS, CellStyleName.LARGE);
            String column = paper.cells(left + 1, left + 1, MARKS, BULBS - 1);
            page.look(column, CellStyleName.CHILD_NUMBER).size(column, NUMBERS);
        }
        instruction(paper, 0, COLUMNS - 1, FACES, PupilWords.CIRCLE_FACE);
        for (int i = 0; i < VOCABULARY.size(); i++) {
            word(paper, i * FIFTH, i * FIFTH + FIFTH - 1, PICTURE_WORDS, VOCABULARY.get(i));
        }
    }

    private void numbers(PupilPaper paper) throws com.sun.star.uno.Exception {
        paper.group();
        String[] minutes = {
            "MIN(planned)", "IF(COUNT(planned)<3;\"\";INDEX(planned;ROUND((COUNT(planned)+1)/2;0)))", "MAX(planned)"
        };
        for (int i = 0; i < minutes.length; i++) {
            int left = i * THIRD;
            page.formula(paper.cell(left + 2, CLOCKS), "=IFERROR(" + minutes[i] + "&\" min\";\"\")");
            for (int number = 1; number <= PaperMarks.MARKS; number++) {
                boolean isTop = number == PaperMarks.MARKS;
                page.formula(
                        paper.cell(left + 1, BULBS - number),
                        "=IFERROR(" + paper.mark(number) + "&\"" + (isTop ? " °\"&" + paper.ownScale() : "\"")
                                + ";\"\")");
            }
        }
    }

    /** Drawings that are alike follow each other, so that a file packs them well. */
    private void pictures() throws com.sun.star.uno.Exception {
        for (int jar = 0; jar < plan.jars(); jar++) {
            jarAndGuess(paper(jar));
        }
        for (int jar = 0; jar < plan.jars(); jar++) {
            thermometers(paper(jar));
        }
        for (int jar = 0; jar < plan.jars(); jar++) {
            faces(paper(jar));
        }
        for (int jar = 0; jar < plan.jars(); jar++) {
            vocabulary(paper(jar));
        }
    }

    private void heights(PupilPaper paper) throws com.sun.star.uno.Exception {
        paper.high(0, 12)
                .high(1, 11)
                .high(MARKS, BULBS - 1, MARK_HEIGHT)
                .high(DRAW, 10)
                .high(JARS, 46)
                .high(GUESS_WORDS, 7)
                .high(COLOR, 10)
                .high(CLOCKS, 17)
                .high(BULBS, 11.5)
                .high(FACES, 9)
                .high(FACES_ROW, 15)
                .high(PICTURES, 13)
                .high(PICTURE_WORDS, 7);
    }

    private void jarAndGuess(PupilPaper paper) throws com.sun.star.uno.Exception {
        double[] jar = paper.corner(0, JARS);
        Sketch large = new Sketch();
        new Pictures(large).jar(jar[0] + COLUMN * 3.5, jar[1] + 6, 36, 44);
        finish(large, PupilWords.JAR_TITLE, PupilWords.JAR_ALT);
        double[] guess = paper.corner(GUESS, JARS);
        double warm = guess[0] + COLUMN * 1.5;
        double cold = guess[0] + COLUMN * 5.5;
        Sketch two = new Sketch();
        new Pictures(two)
                .jar(warm, guess[1] + 15, 22, 29)
                .waves(warm, guess[1] + 10, 8)
                .jar(cold, guess[1] + 15, 22, 29)
                .flake(cold, guess[1] + 6, 4.5);
        finish(two, PupilWords.GUESS_TITLE, PupilWords.GUESS_ALT);
    }

    private void thermometers(PupilPaper paper) throws com.sun.star.uno.Exception {
        Sketch clocks = new Sketch();
        Sketch tubes = new Sketch();
        double[] clock = paper.corner(0, CLOCKS);
        double[] mark = paper.corner(0, MARKS);
        for (int third = 0; third < 3; third++) {
            double x = third * THIRD * COLUMN;
            new Pictures(clocks).clock(clock[0] + x + COLUMN, clock[1] + 8.5, 7.5);
            new Pictures(tubes).thermometer(mark[0] + x + COLUMN * 2.5 + 2, mark[1] + MARK_HEIGHT / 2, MARK_HEIGHT);
        }
        finish(clocks, PupilWords.CLOCKS_TITLE, PupilWords.CLOCKS_ALT);
        finish(tubes, PupilWords.THERMOMETERS_TITLE, PupilWords.THERMOMETERS_ALT);
    }

    private void faces(PupilPaper paper) throws com.sun.star.uno.Exception {
        double[] corner = paper.corner(0, FACES_ROW);
        Sketch faces = new Sketch();
        for (int third = 0; third < 3; third++) {
            double x = corner[0] + third * THIRD * COLUMN;
            new Pictures(faces)
                    .warmFace(x + COLUMN * 1.8, corner[1] + 7, 6)
                    .coldFace(x + COLUMN * 3.2, corner[1] + 7, 6);
        }
        finish(faces, PupilWords.FACES_TITLE, PupilWords.FACES_ALT);
    }

    private void vocabulary(PupilPaper paper) throws com.sun.star.uno.Exception {
        double[] corner = paper.corner(0, PICTURES);
        double fifth = FIFTH * COLUMN;
        double middle = corner[0] + fifth / 2;
        double y = corner[1];
        Sketch sketch = new Sketch();
        new Pictures(sketch)
                .waves(middle, y + 11, 8)
                .flake(middle + fifth, y + 7, 4.5)
                .jar(middle + 2 * fifth, y + 2.5, 8, 10)
                .smallThermometer(middle + 3 * fifth, y + 0.5, 12)
                .ice(middle + 4 * fifth, y + 11.5, 6);
        finish(sketch, PupilWords.WORDS_TITLE, PupilWords.WORDS_ALT);
    }

    private void instruction(PupilPaper paper, int from, int to, int row, Phrase words)
            throws com.sun.star.uno.Exception {
        paper.words(from, to, row, CellStyleName.CHILD, words);
        page.size(paper.cell(from, row), INSTRUCTION);
    }

    private void word(PupilPaper paper, int from, int to, int row, Phrase words) throws com.sun.star.uno.Exception {
        paper.words(from, to, row, CellStyleName.CHILD_WORD, words);
    }

    private void finish(Sketch sketch, Phrase title, Phrase inWords) throws com.sun.star.uno.Exception {
        sketch.finish(page, language.words(title), language.words(inWords));
    }
}
