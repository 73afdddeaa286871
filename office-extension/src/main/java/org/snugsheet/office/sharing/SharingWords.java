package org.snugsheet.office.sharing;

import org.snugsheet.engine.Phrase;

/** What is written into a copy to share, and why one cannot be made; patterns of a MessageFormat. */
enum SharingWords implements Phrase {
    PAGE("How this was worked out"),
    INTRODUCTION(
            "The numbers in this copy were worked out with Snugsheet, an extension for LibreOffice Calc. Here the formulas are kept; in their cells stand their answers. With the extension installed, “Bring the formulas back” puts them in again."),
    SHEET("sheet"),
    CELLS("cells"),
    FORMULA("formula"),
    MEANING("what it works out"),
    HAS_A_PASSWORD("The sheet “{0}” has a password. Take it off first."),
    IS_A_COPY("This is a copy to share already. Bring the formulas back first."),
    SHEET_IS_GONE("The sheet “{0}” is gone. Give it back its name first."),
    OTHER_ENDING("Let the name of the file end with .ods or .xlsx."),
    IS_NO_COPY("This document keeps no formulas of ours: it is no copy that was made to share.");

    private final String english;

    SharingWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
