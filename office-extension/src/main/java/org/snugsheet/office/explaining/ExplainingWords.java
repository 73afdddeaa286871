package org.snugsheet.office.explaining;

import org.snugsheet.engine.Phrase;

/** How a cell is explained; patterns of a MessageFormat. */
enum ExplainingWords implements Phrase {
    NO_FUNCTION_OF_OURS(
            "Cell {0} uses none of Snugsheet’s functions. Choose a cell with a formula such as =COOL.RATE(…), then try again."),
    UNKNOWN_NAME(
            "The formula in cell {0} has a name that is not known here. Check its spelling in the function reference."),
    HEAD("Cell {0}: {1}"),
    FORMULA("Its formula: {0}"),
    GIVEN("What it was given:"),
    ARGUMENT("• {0} is {1}, that is {2}. {3}"),
    CONSTANT("• {0} is {1}. {2}"),
    LEFT_OUT("• {0} is left out. {1}"),
    MANY("{0} … ({1} cells)"),
    BLANK("blank"),
    ERROR("an error"),
    ANSWERS("It answers: {0}"),
    IN_WORDS("In words for the class: {0}"),
    ANSWERS_TABLE("It answers with a table; this cell shows: {0}"),
    FIRST_HEAD(
            "It answers with a table of {0} rows and {1} columns, but this cell shows only its first head. Choose Snugsheet ▸ Show the whole table. Or enter the formula once more with Ctrl+Shift+Enter (on a Mac ⌘+Shift+Enter) in place of Enter."),
    WHOLE_FORMULA("With the rest of the formula the cell shows {0}."),
    REFUSED("It cannot answer. {0}"),
    HEADING("“{0}” looks like a heading, and headings are not read. Leave it out: {1} in place of {2}."),
    NEEDS_QUOTES(
            "{0} is neither a cell nor a name known here. If it is a word, it needs quotation marks round it: \"{0}\"."),
    SEVERAL_SHEETS("{0} goes through several sheets. Give cells of one sheet."),
    ERROR_GIVEN("It cannot answer, because {0} shows an error. Fix that first."),
    TOO_MANY("It was given {0} arguments but takes {1} at most. Count what is between the signs {2}"),
    TOO_FEW("It was given {0} arguments but needs {1}. Count what is between the signs {2}"),
    ANOTHER_PART("It can answer, but another part of the formula cannot, so the cell shows {0}."),
    ARRAY_NEEDED(
            "It can answer, but {0} works out many cells at once, and a formula does so only if it is entered with Ctrl+Shift+Enter (on a Mac ⌘+Shift+Enter) in place of Enter. As it is, the cell shows {1}."),
    ALSO("The cell also asks:"),
    ALSO_ASKED("• {0}"),
    ALSO_ANSWERED("• {0}: {1}");

    private final String english;

    ExplainingWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
