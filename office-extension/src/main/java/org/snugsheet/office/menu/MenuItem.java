package org.snugsheet.office.menu;

import java.util.Arrays;
import java.util.Optional;
import org.snugsheet.engine.Phrase;

/** The lines of the menu, from top to bottom. The letter after ~ reaches the line by the keyboard. */
public enum MenuItem implements Phrase {
    /** One document for a lesson, from the plan to the wall. */
    BOOK("line0", "lesson-book", "Start a ~lesson book…"),
    /** A chart of the selected block. */
    DRAW("line2", "draw", "~Draw the curves…"),
    /** What a formula does, what it was given, why it refuses. */
    EXPLAIN("line3", "explain", "~Explain this cell"),
    /** All of a table, where the cell of its formula shows one head. */
    TABLE("line4", "table", "Show the ~whole table"),
    /** A copy for colleagues without this extension. */
    SHARE("line5", "share", "~Make a copy to share…"),
    /** The way back. */
    BRING_BACK("line6", "bring-back", "~Bring the formulas back…"),
    /** Every function with its arguments. */
    REFERENCE("line7", "reference", "~Function reference"),
    /** What can hurt. */
    CAUTIONS("line8", "cautions", "~Cautions");

    /** Begins the address of every line. */
    public static final String PROTOCOL = "org.snugsheet:";

    private final String position;
    private final String path;
    private final String english;

    MenuItem(String position, String path, String english) {
        this.position = position;
        this.path = path;
        this.english = english;
    }

    /**
     * The line that belongs to an address.
     *
     * @param address such as {@code org.snugsheet:share}
     * @return the line, if there is one
     */
    public static Optional<MenuItem> of(String address) {
        return Arrays.stream(values())
                .filter(item -> item.address().equals(address))
                .findFirst();
    }

    /**
     * What the office calls when the line is chosen.
     *
     * @return its address
     */
    public String address() {
        return PROTOCOL + path;
    }

    /**
     * Its place in the menu, as a name that sorts. The office goes by the length of a name first.
     *
     * @return such as {@code line2}; {@code line1} is the menu of the worked sheets
     */
    public String position() {
        return position;
    }

    @Override
    public String english() {
        return english;
    }
}
