package org.snugsheet.office.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CellAreaTest {

    @ParameterizedTest
    @CsvSource({"A1, 0, 0, 0, 0", "B8, 1, 7, 1, 7", "B8:F16, 1, 7, 5, 15", "Z2:AA10, 25, 1, 26, 9", "BM1, 64, 0, 64, 0"
    })
    void anAddressSaysWhereItsCellsAre(String address, int left, int top, int right, int bottom) {
        assertEquals(new CellArea(left, top, right, bottom), CellArea.of(address));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "A", "A0", "$A$1", "A:A", "Plan.A1", "a1"})
    void otherTextsAreNoAddresses(String text) {
        assertThrows(IllegalArgumentException.class, () -> CellArea.of(text));
    }

    @ParameterizedTest
    @CsvSource({"A1:C3, C3:D4, true", "A1:C3, D1:E9, false", "A1:C3, A4:C4, false", "B2, A1:C3, true", "A1:C3, B2, true"
    })
    void areasMeetIfTheyShareACell(String one, String other, boolean meet) {
        assertEquals(meet, CellArea.of(one).meets(CellArea.of(other)));
        assertEquals(meet, CellArea.of(other).meets(CellArea.of(one)));
    }

    @Test
    void theSmallestAreaThatHoldsBoth() {
        assertEquals(CellArea.of("A2:E9"), CellArea.of("B2:E3").with(CellArea.of("A9")));
        assertEquals(CellArea.of("B12:E13"), CellArea.of("B2:E3").lower(10));
        assertEquals(CellArea.of("B2"), CellArea.of("B2:E3").corner());
    }
}
