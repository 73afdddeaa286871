package org.snugsheet.office.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AreaTest {

    @ParameterizedTest
    @ValueSource(strings = {"A1", "Z9", "AA10", "AMJ1048576", "B3:E9", "XFD1:XFD1048576"})
    void aNameOfCellsIsReadAsItIsWritten(String cells) {
        assertEquals(cells, Area.read(2, cells).orElseThrow().cellNames());
        assertEquals(2, Area.read(2, cells).orElseThrow().sheet());
    }

    /** Columns are counted like the office does (OpenDocument 1.3, part 4, 5.8): Z is the 26th, AA the 27th. */
    @Test
    void columnsAreCountedWithLetters() {
        assertEquals(new Area(0, 25, 0, 26, 1), Area.read(0, "Z1:AA2").orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "A", "1", "A0", "$A$1", "a1", "A1:", "A1:B", "Sheet1.A1", "ABCD1", "A12345678", "=A1"})
    void nothingElseIsOne(String crafted) {
        assertEquals(Optional.empty(), Area.read(0, crafted));
    }
}
