package org.snugsheet.office.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.reading.Entry;

class SingleCellTest {

    /** What a cell holds that nobody may look at. */
    static final Object UNREAD = new Object() {
        @Override
        public String toString() {
            throw new AssertionError("it was read");
        }
    };

    @Test
    void oneCellIsRead() {
        assertEquals(Entry.of(40), Cells.single(new Object[][] {{40.0}}));
    }

    /** A whole column where one cell belongs: none of its million cells is read before it is refused. */
    @ParameterizedTest
    @CsvSource({"2, 1, NOT_ONE_CELL", "1, 3, NOT_ONE_CELL", "2, 2, NOT_ONE_COLUMN", "0, 0, NOT_ONE_CELL"})
    void moreOrLessIsRefusedUnread(int rows, int columns, Problem problem) {
        Object[][] cells = new Object[rows][columns];
        for (Object[] row : cells) {
            Arrays.fill(row, UNREAD);
        }
        assertEquals(
                problem,
                assertThrows(InvalidInputException.class, () -> Cells.single(cells))
                        .problem());
    }
}
