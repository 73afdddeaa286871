package org.snugsheet.office.sharing;

import org.snugsheet.engine.Phrase;

/** Why a kept formula is not brought back; patterns of a MessageFormat. */
enum RefusalWords implements Phrase {
    NO_FORMULA("It is no formula."),
    NONE_OF_OURS("It calls none of our functions."),
    OTHER_DOCUMENT("It reads another document."),
    OTHER_EXTENSION("It calls {0}, which another extension or a macro answers."),
    UNKNOWN("“{0}” is not known here."),
    NOT_LISTED("It calls {0}. A formula out of a file may not use that."),
    NOT_UNDERSTOOD("A part of it is not understood."),
    TYPED_OVER("Something else was typed there. It stays."),
    NO_NOTE("No cell has its note any more."),
    SHEET_GONE("The sheet “{0}” is gone."),
    PLACE_GONE("Its cell was deleted."),
    READINGS_GONE("Cells it works with were deleted."),
    MOVED("Its cell has moved, and this older copy does not keep where its readings are now.");

    private final String english;

    RefusalWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
