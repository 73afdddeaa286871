package org.snugsheet.engine.insulation;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.table.Keywords;

/** Which of several published figures to use where sources disagree. */
public enum Figure {
    /** The lowest that a source gives. */
    LOW,
    /** The middle of what sources give. */
    TYPICAL,
    /** The highest that a source gives. */
    HIGH;

    /**
     * Finds a figure by its word.
     *
     * @param text {@code low}, {@code typical} or {@code high}, or that word in another language
     * @return the figure
     * @throws InvalidInputException if it is not one of them
     */
    public static Figure parse(String text) {
        return switch (Keywords.FIGURE.plain(text)) {
            case "low" -> LOW;
            case "typical" -> TYPICAL;
            case "high" -> HIGH;
            default -> throw InvalidInputException.of(Problem.UNKNOWN_WHICH, text.strip());
        };
    }
}
