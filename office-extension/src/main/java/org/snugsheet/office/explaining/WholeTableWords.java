package org.snugsheet.office.explaining;

import org.snugsheet.engine.Phrase;

/** What is said when a whole table is asked for; patterns of a MessageFormat. */
public enum WholeTableWords implements Phrase {
    /** It worked. */
    SHOWN("The whole table is in {0}."),
    NO_TABLE(
            "The formula in cell {0} does not answer with a table. Choose a cell with a formula such as =COOL.REPORT(…), then try again."),
    NO_ANSWER("The formula in cell {0} cannot answer. Choose Explain this cell to hear why."),
    ONE_VALUE("The formula in cell {0} takes one value out of a table; the cell shows it whole."),
    IS_WHOLE("The whole table is already in {0}."),
    IN_THE_WAY(
            "The table needs the cells {0}, but there is something in {1}. Move that, or the formula, to where there is room."),
    MANY_IN_THE_WAY(
            "The table needs the cells {0}, but there is something in {1} and in {2} more of them. Move that, or the formula, to where there is room."),
    MERGED(
            "The table needs the cells {0}, but some of them are merged. Split them, or move the formula to where there is room."),
    NO_ROOM(
            "The table of cell {0} does not fit before the edge of the sheet. Move the formula to where there is room."),
    LOCKED("The sheet “{0}” is protected. Take the protection away with Tools ▸ Protect Sheet, then try again."),
    READ_ONLY("This document is open for reading only. Save it under another name, then try again.");

    private final String english;

    WholeTableWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
