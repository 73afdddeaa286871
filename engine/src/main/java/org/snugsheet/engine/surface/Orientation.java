package org.snugsheet.engine.surface;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.table.Keywords;

/** Which way a surface looks. */
public enum Orientation {
    /** Upright: the side of a jar. */
    SIDE,
    /** Lying, and looking up: the lid. */
    UP,
    /** Horizontal, facing down: the base of a jar that stands on feet or hangs. */
    DOWN;

    /**
     * Finds a direction by its word.
     *
     * @param text {@code side}, {@code up} or {@code down}, or {@code lid} or {@code base}; case does not matter
     * @return the direction
     * @throws InvalidInputException if it is not one of them
     */
    public static Orientation parse(String text) {
        return switch (Keywords.FACING.plain(text)) {
            case "side", "wall" -> SIDE;
            case "up", "lid", "top" -> UP;
            case "down", "base", "bottom" -> DOWN;
            default -> throw InvalidInputException.of(Problem.UNKNOWN_FACING, text);
        };
    }
}
