package org.snugsheet.office.dialog;

import org.snugsheet.engine.Phrase;

/** The words on the buttons of every window of the menu, and messages about a field. */
enum DialogWords implements Phrase {
    ACCEPT("~OK"),
    CANCEL("~Cancel"),
    READ("~Close"),
    NOT_A_NUMBER("“{0}” is not a number. Type a plain number."),
    NOT_WHOLE("“{0}” is not a whole number. Type a number such as 3.");

    private final String english;

    DialogWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
