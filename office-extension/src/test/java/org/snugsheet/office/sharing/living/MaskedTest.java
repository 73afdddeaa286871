package org.snugsheet.office.sharing.living;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MaskedTest {

    private static final String SHEET = "jars";

    @Test
    void showsOtherCellsAsLongAsSomethingHolds() {
        Masked masked = of("=IF(H47=2;B10;\"\")", "=IF(H47=2;B11;\"\")").orElseThrow();
        assertEquals("$'jars'.H47=2", masked.condition());
        assertEquals(new Seen.Cells(SHEET, 1, 9, 1, 2), masked.source());
    }

    /** Another condition, another column, a row left out, something else where it does not hold, a cell that holds no formula. */
    @Test
    void isAsAllOfItsCellsAre() {
        assertEquals(Optional.empty(), of("=IF(H47=2;B10;\"\")", "=IF(H48=2;B11;\"\")"));
        assertEquals(Optional.empty(), of("=IF(H47=2;B10;\"\")", "=IF(H47=2;C11;\"\")"));
        assertEquals(Optional.empty(), of("=IF(H47=2;B10;\"\")", "=IF(H47=2;B12;\"\")"));
        assertEquals(Optional.empty(), of("=IF(H47=2;B10;0)", "=IF(H47=2;B11;0)"));
        assertEquals(Optional.empty(), of("=IF(H47=2;B10+1;\"\")", "=IF(H47=2;B11+1;\"\")"));
        assertEquals(Optional.empty(), of("41", "38"));
        assertEquals(Optional.empty(), Masked.of(List.of("=IF(H47=2;B10;\"\")"), SHEET, cells -> List.of("38")));
    }

    private static Optional<Masked> of(String... formulas) {
        return Masked.of(List.of(formulas), SHEET, cells -> List.of("=IF(LEN(typed)=0;\"\";typed)"));
    }
}
