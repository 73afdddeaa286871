package org.snugsheet.office.menu;

import org.snugsheet.engine.Phrase;

/** What the menu tells and asks; patterns of a MessageFormat. */
public enum MenuWords implements Phrase {
    TITLE("Snu~gsheet"),
    SHEETS("Worked ~sheets"),
    /** Among the cautions. */
    START_LIMIT("Start no warmer than {0} °C ({1} °F)."),
    OPENING("Opening the worked sheet"),
    NO_SUCH_WORKED_SHEET("There is no worked sheet “{0}”. There are: {1}."),
    SHARED(
            "The copy is saved as {1}. Formulas that are now values: {0}. Each is kept in a note and on the page “How this was worked out”."),
    SHARED_LIVING(
            "The copy is saved as {1}. It goes on working without Snugsheet. Formulas in it that were ours: {0}. The page “How this was worked out” says which of them follow what is typed, and which stay as they are."),
    COPY_KIND_ASKED(
            "A copy with answers only looks the same everywhere and does not follow changes. A copy that goes on working follows them without Snugsheet, for cooling curves, their order and temperatures; the rest stays as it is."),
    COPY_KIND("~The copy has"),
    ANSWERS_ONLY("answers only"),
    GOES_ON_WORKING("formulas that go on working"),
    NOTHING_TO_SHARE("This document has none of our formulas. Share it as it is. The file {1} is a plain copy."),
    FAILED(
            "That did not work. Save your work, close LibreOffice, start it again and choose this once more. Somebody who helps you can find the details in what LibreOffice writes to its console."),
    REFERENCE_OPENED("The function reference opens in the web browser. If no browser comes up, open this file: {0}"),
    STAYS_PUT("Undo cannot take this sheet away again. To be rid of it, delete the sheet."),
    NO_SHEET("Open a spreadsheet first."),
    NO_CELL("Choose a cell first."),
    NO_REFERENCE("The function reference is not installed here. Install the extension again."),
    EXPLAINED("Explain this cell"),
    WHERE_TO("Make a copy to share"),
    SHEET("sheet"),
    COPY_NAME("{0} to share"),
    BRING_BACK("Bring the formulas back"),
    BRING_BACK_ASKED(
            "This is what will be written. Formulas out of a file can be anybody’s: go on only if you know where it comes from."),
    COPY_TITLE("Make a copy to share"),
    COPY_PASSWORD_ASKED("This document has a password. Give one for the copy; the people who get it need it."),
    PASSWORD("~Password"),
    PASSWORD_AGAIN("Password ~again"),
    PASSWORD_EMPTY("Type a password."),
    PASSWORDS_DIFFER("The two passwords differ.");

    private final String english;

    MenuWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
