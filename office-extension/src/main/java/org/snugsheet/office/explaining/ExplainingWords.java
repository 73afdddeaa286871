package org.snugsheet.office.explaining;

import org.snugsheet.engine.Phrase;

/** How a cell is explained; patterns of a MessageFormat. */
enum ExplainingWords implements Phrase {
    NO_FUNCTION_OF_OURS(
            "In cell {0} none of our functions is at work. Choose a cell with a formula such as =COOL.RATE(…), then ask again."),
    UNKNOWN_NAME(
            "The formula in cell {0} has a name that is not known here. Compare its spelling with the function reference."),
    HEAD("Cell {0}: {1}"),
    GIVEN("What it was given:"),
    ARGUMENT("• {0} is {1}, that is {2}. {3}"),
    CONSTANT("• {0} is {1}. {2}"),
    LEFT_OUT("• {0} is left out. {1}"),
    MANY("{0} … ({1} cells)"),
    BLANK("blank"),
    ERROR("an error"),
    ANSWERS("It answers: {0}"),
    ANSWERS_TABLE("It answers with a table; in this cell stands: {0}"),
    REFUSED("It cannot answer. {0}"),
    ERROR_GIVEN("It cannot answer, because {0} shows an error. Mend that first."),
    TOO_MANY("It was given {0} arguments but takes {1} at most. Count the semicolons."),
    TOO_FEW("It was given {0} arguments but needs {1}. Count the semicolons."),
    ANOTHER_PART("It can answer, but another part of the formula cannot, so the cell shows {0}."),
    ALSO("The cell also asks {0}.");

    private final String english;

    ExplainingWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
