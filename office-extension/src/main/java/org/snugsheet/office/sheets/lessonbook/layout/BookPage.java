package org.snugsheet.office.sheets.lessonbook.layout;

import org.snugsheet.engine.Phrase;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.words.Language;

/** A page of the book, or a part of one, and what all of them are written with. */
public abstract class BookPage {

    /** The page that is written. */
    protected final Page page;

    /** How large the book is. */
    protected final BookPlan plan;

    /** The book. */
    protected final Book book;

    /** The language of the book. */
    protected final Language language;

    private final String last;

    /**
     * A page.
     *
     * @param page the page that is written
     * @param plan how large the book is
     * @param book the book
     * @param last the last column that is printed
     */
    protected BookPage(Page page, BookPlan plan, Book book, String last) {
        this.page = page;
        this.plan = plan;
        this.book = book;
        this.language = book.language();
        this.last = last;
    }

    /**
     * A row as wide as the paper.
     *
     * @param row the row, from 1
     * @return its cells
     */
    protected final String row(int row) {
        return "A" + row + ":" + last + row;
    }

    /**
     * Makes a row one cell.
     *
     * @param row the row, from 1
     * @param look how the cell looks
     * @return the page
     * @throws com.sun.star.uno.Exception if the office fails
     */
    protected final Page across(int row, CellStyleName look) throws com.sun.star.uno.Exception {
        return page.merge(row(row)).look(row(row), look);
    }

    /**
     * Begins a part of the page.
     *
     * @param row the row, from 1
     * @param height its height in millimeters
     * @param words the heading
     * @throws com.sun.star.uno.Exception if the office fails
     */
    protected final void section(int row, double height, Phrase words) throws com.sun.star.uno.Exception {
        page.height("A" + row, height).look(row(row), CellStyleName.SECTION).text("A" + row, words(words));
    }

    /**
     * Begins a part of the page with a heading that depends on what was typed.
     *
     * @param row the row, from 1
     * @param height its height in millimeters
     * @param formula the heading, a formula
     * @throws com.sun.star.uno.Exception if the office fails
     */
    protected final void section(int row, double height, String formula) throws com.sun.star.uno.Exception {
        page.height("A" + row, height).look(row(row), CellStyleName.SECTION).formula("A" + row, "=" + formula);
    }

    /**
     * A sentence in brackets, so that it can stand within a formula.
     *
     * @param pattern the sentence
     * @param formulas what stands in its gaps
     * @return a formula
     */
    protected final String sentence(Phrase pattern, String... formulas) {
        return "(" + FormulaText.sentence(language, pattern, formulas) + ")";
    }

    /**
     * Words as a text of a formula.
     *
     * @param phrase the words
     * @return a formula
     */
    protected final String quoted(Phrase phrase) {
        return FormulaText.quoted(language, phrase);
    }

    /**
     * Words in the language of the book.
     *
     * @param phrase the words
     * @return the words
     */
    protected final String words(Phrase phrase) {
        return language.words(phrase);
    }
}
