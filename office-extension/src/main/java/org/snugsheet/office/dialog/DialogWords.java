package org.snugsheet.office.dialog;

import org.snugsheet.engine.Phrase;

/** What stands on the buttons of every window of ours. */
enum DialogWords implements Phrase {
    ACCEPT("~OK"),
    CANCEL("~Cancel"),
    READ("~Close");

    private final String english;

    DialogWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
