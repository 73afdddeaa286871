package org.snugsheet.office.sheets.lessonbook.notes;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.office.page.CellFrame;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.shared.SheetLines;
import org.snugsheet.office.words.Language;

/** What a teacher may want to know and to ask, on two sheets of paper. Nothing is worked out here. */
public final class NotesPage {

    private static final String COLUMN = "A";
    private static final double WIDTH = 190;
    private static final int POINTS = 10;
    // So many letters of that size stand in a line of that width, and each line is so high.
    private static final int LETTERS = 104;
    private static final double LINE = 4.15;
    private static final double GAP = 1.6;
    private static final double PICTURES = 33;

    private final Page page;
    private final Book book;
    private final Language language;
    private int row = 1;

    /**
     * The page.
     *
     * @param page the page that is written
     * @param book the book
     */
    public NotesPage(Page page, Book book) {
        this.page = page;
        this.book = book;
        this.language = book.language();
    }

    /**
     * Writes it.
     *
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public void write() throws com.sun.star.uno.Exception {
        page.width(cell(), WIDTH).height(cell(), 11);
        page.text(cell(), words(NoteWords.TITLE)).look(cell(), CellStyleName.TITLE);
        understanding();
        asking();
        pictures();
        page.newPaperAt(COLUMN + (row + 1));
        judging();
        safety();
        standards();
        new PrintSetup(PrintSetup.Way.PORTRAIT, words(NoteWords.TITLE))
                .withBreaks()
                .apply(page, "A1:" + cell());
        page.protect();
    }

    private void understanding() throws com.sun.star.uno.Exception {
        section(NoteWords.HEAT);
        note(NoteWords.WARM_TO_COLD, NoteWords.WARM_TO_COLD_TEXT);
        note(NoteWords.FASTER, NoteWords.FASTER_TEXT);
        note(NoteWords.WAYS, NoteWords.WAYS_TEXT);
        note(NoteWords.NO_HEAT, NoteWords.NO_HEAT_TEXT);
        section(NoteWords.THINK);
        note(NoteWords.SOCK, NoteWords.SOCK_TEXT);
        note(NoteWords.SNOWMAN, NoteWords.SNOWMAN_TEXT);
        note(NoteWords.COMES_IN, NoteWords.COMES_IN_TEXT);
        note(NoteWords.METAL, NoteWords.METAL_TEXT);
        note(NoteWords.LAYERS, NoteWords.LAYERS_TEXT);
        note(NoteWords.MORE_DEGREES, NoteWords.MORE_DEGREES_TEXT);
    }

    private void asking() throws com.sun.star.uno.Exception {
        section(NoteWords.QUESTIONS);
        note(NoteWords.BEFORE, NoteWords.BEFORE_TEXT);
        note(NoteWords.WHILE, NoteWords.WHILE_TEXT);
        note(NoteWords.AFTERWARDS, NoteWords.AFTERWARDS_TEXT);
        note(NoteWords.NEXT, NoteWords.NEXT_TEXT);
        note(NoteWords.EXIT, NoteWords.EXIT_TEXT);
    }

    private void pictures() throws com.sun.star.uno.Exception {
        section(NoteWords.WORDS);
        row++;
        page.height(cell(), PICTURES);
        new WordPictures(book, page, CellFrame.corner(page, cell())[1] + 2).draw();
    }

    private void judging() throws com.sun.star.uno.Exception {
        section(NoteWords.SURE);
        note(NoteWords.RANGE, NoteWords.RANGE_TEXT);
        note(NoteWords.TIED, NoteWords.TIED_TEXT);
        note(NoteWords.SMALLER, NoteWords.SMALLER_TEXT);
        section(NoteWords.FURTHER);
        note(NoteWords.CLOTHES, NoteWords.CLOTHES_TEXT);
        note(
                NoteWords.SHEETS,
                words(SheetLines.COATS) + "; " + words(SheetLines.DIARY) + "; " + words(SheetLines.DESIGN) + ".");
    }

    private void safety() throws com.sun.star.uno.Exception {
        section(NoteWords.SAFETY);
        note(
                NoteWords.WATER,
                words(NoteWords.WATER_TEXT) + " " + all(Caution.ADULT_POURS, Caution.HOT_TAP, Caution.SCALD));
        note(NoteWords.THINGS, all(Caution.GLASS, Caution.THERMOMETER));
        note(NoteWords.COLD_THINGS, all(Caution.ICE, Caution.LOW_PLACE, Caution.WET_FLOOR));
        note(NoteWords.STUFF, all(Caution.WRAPS, Caution.NOT_FOR_PUPILS));
        note(NoteWords.OUTDOORS, all(Caution.OUTDOORS, Caution.SCHOOL_RULES));
    }

    private void standards() throws com.sun.star.uno.Exception {
        section(NoteWords.STANDARDS);
        note(NoteWords.SCIENCE, NoteWords.SCIENCE_TEXT);
        note(NoteWords.MATHS, NoteWords.MATHS_TEXT);
        note(NoteWords.ELSEWHERE, NoteWords.ELSEWHERE_TEXT);
    }

    private String all(Caution... cautions) {
        return Arrays.stream(cautions).map(this::words).collect(Collectors.joining(" "));
    }

    private void section(NoteWords heading) throws com.sun.star.uno.Exception {
        row++;
        page.height(cell(), 8.5);
        page.text(cell(), words(heading)).look(cell(), CellStyleName.SECTION);
    }

    private void note(NoteWords begins, NoteWords goesOn) throws com.sun.star.uno.Exception {
        note(begins, words(goesOn));
    }

    /** As high as its words need, which differs from language to language. */
    private void note(NoteWords begins, String goesOn) throws com.sun.star.uno.Exception {
        row++;
        int letters = words(begins).length() + 1 + goesOn.length();
        int lines = (letters + LETTERS - 1) / LETTERS;
        page.height(cell(), GAP + LINE * lines);
        page.look(cell(), CellStyleName.NOTE).size(cell(), POINTS).paragraphs(cell(), words(begins), goesOn);
    }

    private String cell() {
        return COLUMN + row;
    }

    private String words(Phrase phrase) {
        return language.words(phrase);
    }
}
