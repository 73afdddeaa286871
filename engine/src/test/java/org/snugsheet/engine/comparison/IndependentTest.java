package org.snugsheet.engine.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IndependentTest {

    /** Triangles of Pythagoras, ordinary ones and those whose squares no number can hold. */
    @ParameterizedTest
    @CsvSource({
        "3, 4, 5",
        "0, 0, 0",
        "-5, 12, 13",
        "3e-9, 4e-9, 5e-9",
        "3e-200, 4e-200, 5e-200",
        "3e200, 4e200, 5e200",
        "Infinity, 1, Infinity",
        "NaN, 1, NaN"
    })
    void theyAddByTheirSquares(double one, double other, double both) {
        double room = Double.isFinite(both) ? Math.max(1e-300, 1e-15 * both) : 1;
        assertEquals(both, Independent.together(one, other), room);
    }
}
