package org.snugsheet.engine.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EditDistanceTest {

    /** Sources: kitten/sitting and Saturday/Sunday are the usual textbook pairs (from memory); the rest by counting. */
    @ParameterizedTest
    @CsvSource({
        "kitten, sitting, 3",
        "saturday, sunday, 3",
        "'', '', 0",
        "'', wool, 4",
        "wool, wool, 0",
        "wol, wool, 1",
        "wool, wolo, 1",
        "fleece, felcee, 2",
        "ca, abc, 3"
    })
    void slipsAreCounted(String a, String b, int slips) {
        assertEquals(slips, EditDistance.between(a, b));
        assertEquals(slips, EditDistance.between(b, a));
    }
}
