package org.snugsheet.sheets.builder;

/** A document that shows a teacher how something is done. */
public interface WorkedSheet {

    /**
     * The name of its file.
     *
     * @return the name, without an ending
     */
    String fileName();

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
