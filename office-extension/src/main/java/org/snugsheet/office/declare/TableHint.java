package org.snugsheet.office.declare;

import org.snugsheet.engine.Phrase;

/** How a function that answers with a table is entered; Enter alone shows the first head of the table. */
public enum TableHint implements Phrase {
    /** Both ways. */
    HOW(
            "To see it all: Ctrl+Shift+Enter (on a Mac ⌘+Shift+Enter) in place of Enter, a tick at Array in the function wizard, or Snugsheet ▸ Show the whole table.");

    private final String english;

    TableHint(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
