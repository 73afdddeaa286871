package org.snugsheet.office.sharing;

import org.snugsheet.engine.Phrase;

/** What is written into a copy to share, and why one cannot be made; patterns of a MessageFormat. */
enum SharingWords implements Phrase {
    PAGE("How this was worked out"),
    INTRODUCTION(
            "The numbers in this copy were worked out with Snugsheet, an extension for LibreOffice Calc. Here the formulas are kept; in their cells stand their answers. With the extension installed, “Bring the formulas back…” puts them in again."),
    INTRODUCTION_LIVING(
            "This copy goes on working without Snugsheet, an extension for LibreOffice Calc: most answers follow what is typed, by the steps on the page “{0}”. The last column says which stay as they were when the copy was made. With the extension installed, “Bring the formulas back…” puts its formulas in again."),
    LONG_LIST("The list is long, so only the title and these lines are printed."),
    STEPS("Step by step"),
    STEPS_INTRODUCTION(
            "What the formulas of this copy work with. Nothing has to be typed here; each step is named, and its formula is in its cell. The units are minutes, °C and K. Only these two lines of it are printed."),
    STEPS_STAY("Nothing needs the page “{0}” any more. Delete it if nothing of yours is on it."),
    STALE_LIVING("Some answers are of what was typed on {0} and do not follow changes; the page “{1}” says which."),
    IN_THIS_COPY("in this copy"),
    GOES_ON("follows what is typed"),
    GOES_ON_IN_PART("follows what is typed in part; the rest stays as it was"),
    STAYS("stays as it was"),
    SHEET("sheet"),
    CELLS("cells"),
    FORMULA("formula"),
    MEANING("what it works out"),
    STALE("These answers are of the readings as they were on {0}; they do not follow changes."),
    NAME("a name"),
    NAME_BECOMES("In this copy the name stands for the value that the formula gave."),
    FORMAT("conditional format"),
    FORMAT_LEFT_OUT("A condition for the look of these cells. It is left out of this copy."),
    INPUT_CHECK("check of input"),
    INPUT_CHECK_LEFT_OUT("A check of what is typed into these cells. It is left out of this copy."),
    HAS_A_PASSWORD("The sheet “{0}” has a password. Take it off first."),
    STRUCTURE_HAS_A_PASSWORD(
            "No sheet can be added to this document or taken out of it: its structure has a password. Take it off first."),
    IS_A_COPY("This is a copy to share already. Bring the formulas back first."),
    IS_OPEN("“{0}” is open. Choose another name for the copy."),
    NEEDS_A_PASSWORD("This document has a password, so the copy needs one too. No copy was made."),
    NO_PASSWORD_THERE(
            "A file that ends with .fods cannot have a password, and this document has one. Choose .ods or .xlsx."),
    NOT_ASKED_BEFORE_CHANGES(
            "This document asks for a password before changes. A copy that ends with {0} could not ask for it. Choose {1}."),
    NOT_WRITTEN(
            "The copy could not be written to “{0}”. Look whether the folder may be written to and the disk has room. What was there before is unchanged."),
    NOT_COPIED("The office could not make a copy of this document. Look whether the disk has room."),
    UNDO("Bring the formulas back"),
    TO_WRITE("Formulas to be written into their cells: {0}."),
    NONE_TO_WRITE("No formula can be brought back."),
    STAY_OUT("Not written: {0}."),
    BROUGHT_BACK("Formulas back in their cells: {0}. Save the document to keep them."),
    PAGE_STAYS("The page “{0}” stays, because something was written on it or refers to it."),
    OTHER_ENDING("Let the name of the file end with .ods or .xlsx."),
    IS_NO_COPY("This document keeps no Snugsheet formulas: it is not a copy that was made to share.");

    private final String english;

    SharingWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
