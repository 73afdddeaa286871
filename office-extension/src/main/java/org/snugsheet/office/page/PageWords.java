package org.snugsheet.office.page;

import org.snugsheet.engine.Phrase;

/** Why a page cannot be added. */
enum PageWords implements Phrase {
    /** The structure of the document is locked. */
    NO_MORE_SHEETS(
            "No sheet can be added here, because the sheets of this document are locked. Unlock them with Tools ▸ Protect Spreadsheet Structure, then choose this again.");

    private final String english;

    PageWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
