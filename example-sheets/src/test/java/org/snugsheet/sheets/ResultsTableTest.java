package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.snugsheet.office.harness.CellResult;

/** Cells as lines of text. */
class ResultsTableTest {
    @Test
    void columnsLineUpAndBlankRowsAreLeftOut() {
        List<List<CellResult>> cells = List.of(
                List.of(new CellResult.Blank(), new CellResult.OfText("sock"), new CellResult.OfText("fleece")),
                List.of(new CellResult.Blank(), new CellResult.Blank(), new CellResult.Blank()),
                List.of(
                        new CellResult.OfText("Half-time"),
                        new CellResult.OfNumber(81.6, "82"),
                        new CellResult.OfError(502, "Err:502")));
        assertEquals(List.of("           sock   fleece", "Half-time    82  Err:502"), ResultsTable.lines(cells));
    }
}
