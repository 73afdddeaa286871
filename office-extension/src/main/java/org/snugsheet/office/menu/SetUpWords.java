package org.snugsheet.office.menu;

import org.snugsheet.engine.Phrase;

/** The line of the menu that works without Java, and what it tells. */
public enum SetUpWords implements Phrase {
    /** The line. The letter after ~ reaches it by the keyboard. */
    LINE("Is ~Java there?"),
    /** A class of the extension could be loaded. */
    READY("Snugsheet is ready: LibreOffice has found Java."),
    /** None could. */
    MISSING(
            "LibreOffice has found no Java that Snugsheet can use, so all its cells show Err:504 or #NULL!. Install Java 17 or newer, 64-bit"
                    + " for a 64-bit LibreOffice. Choose it under Tools ▸ Options ▸ LibreOffice ▸ Advanced, and start LibreOffice again.");

    private final String english;

    SetUpWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
