package org.snugsheet.office.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.reading.Entry;

class LineTest {

    private static final int MOST = 3;

    @Test
    void theCellsOfAColumnOrARowAreReadInOrder() {
        List<Entry> both = List.of(Entry.of("wool"), Entry.of(40));
        assertEquals(both, Cells.line(new Object[][] {{"wool"}, {40.0}}));
        assertEquals(both, Cells.line(new Object[][] {{"wool", 40.0}}));
        assertEquals(both, Cells.line(new String[][] {{"wool", "40"}}), "a number that came as text is one again");
    }

    /** Whoever selects a column by its letter selects a million blanks too. */
    @Test
    void blanksAreNotCounted() {
        Object[][] cells = column("", 100);
        for (int row = 10; row < 10 + MOST; row++) {
            cells[row] = new Object[] {"fleece"};
        }
        List<Entry> line = Cells.line(cells, MOST);
        assertEquals(100, line.size());
        assertEquals(MOST, line.stream().filter(Entry.of("fleece")::equals).count());
    }

    @Test
    void moreThanAllowedAreRefusedUnread() {
        Object[][] cells = column(SingleCellTest.UNREAD, MOST + 1);
        InvalidInputException refusal = assertThrows(InvalidInputException.class, () -> Cells.line(cells, MOST));
        assertEquals(Problem.TOO_MANY_CELLS, refusal.problem());
        assertEquals(List.of(MOST + 1, MOST), refusal.finding().arguments());
    }

    @Test
    void moreThanASchoolReadsAreRefusedUnread() {
        Object[][] cells = column(SingleCellTest.UNREAD, Cells.MOST + 1);
        assertEquals(
                Problem.TOO_MANY_CELLS,
                assertThrows(InvalidInputException.class, () -> Cells.line(cells))
                        .problem());
    }

    private static Object[][] column(Object cell, int rows) {
        Object[][] column = new Object[rows][];
        Arrays.fill(column, new Object[] {cell});
        return column;
    }
}
