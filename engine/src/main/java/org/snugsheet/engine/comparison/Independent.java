package org.snugsheet.engine.comparison;

/** Two standard errors that know nothing of each other. */
final class Independent {

    /** Squares of numbers between their roots neither vanish nor grow beyond all numbers. */
    private static final double SMALL = 1e-280;

    private static final double LARGE = 1e280;

    private Independent() {}

    /**
     * Their root sum of squares (JCGM 100:2008, GUM, 5.1.2). It is asked for thousands of times in one cell, and {@link Math#hypot} takes
     * far longer, for the sake of numbers that no error has.
     */
    static double together(double one, double other) {
        double squares = one * one + other * other;
        return squares > SMALL && squares < LARGE ? Math.sqrt(squares) : Math.hypot(one, other);
    }
}
