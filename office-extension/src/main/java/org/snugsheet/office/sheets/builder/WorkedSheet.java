package org.snugsheet.office.sheets.builder;

import java.util.EnumSet;
import java.util.Set;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.words.Language;

/** A document that shows a teacher how something is done. */
public interface WorkedSheet {

    /**
     * What its file and macros call it, the same in every language.
     *
     * @return the name, without an ending
     */
    String fileName();

    /**
     * Its line in the menu.
     *
     * @return its title and in a few words what it is for
     */
    Phrase menuLine();

    /**
     * The languages that it can be written in.
     *
     * @return the languages, English among them
     */
    default Set<Language> languages() {
        return EnumSet.of(Language.ENGLISH);
    }

    /**
     * Fills a new document.
     *
     * @param book the document
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    void fill(Book book) throws com.sun.star.uno.Exception;

    /**
     * Where its results are.
     *
     * @return the cells, the first column with labels and the first row with names
     */
    String results();
}
