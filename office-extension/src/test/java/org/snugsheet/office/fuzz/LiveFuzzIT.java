package org.snugsheet.office.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeFailure;
import org.snugsheet.office.harness.SharedOffice;

/**
 * Property: whatever a sheet holds, a cell of a live office shows what plain Java answers – a number, a text, a table – or one of the
 * errors that the reference tells of, the same each time it is calculated; and the office lives.
 *
 * <p>{@code -Dfuzz.cells=200000} fills so many cells, {@code -Dfuzz.seed=7} others than the build does.
 */
@ExtendWith(SharedOffice.class)
class LiveFuzzIT {

    private static final int CELLS = Integer.getInteger("fuzz.cells", 1600);

    private static final long SEED = Long.getLong("fuzz.seed", 20_261_127);

    private static final int IN_A_ROUND = 200;

    private static final int MOST_SHOWN = 20;

    @Test
    void whateverASheetHoldsACellShowsWhatPlainJavaAnswers(Office office) {
        Duration usual = office.setup().patience();
        office.setPatience(usual.multipliedBy(5));
        List<String> faults = new ArrayList<>();
        for (int round = 0; round < CELLS / IN_A_ROUND && faults.size() < MOST_SHOWN; round++) {
            long seed = SEED + round;
            try {
                new LiveRound(office, seed)
                        .faults(IN_A_ROUND)
                        .forEach(fault -> faults.add("-Dfuzz.seed=" + seed + " " + fault));
            } catch (OfficeFailure failure) {
                throw new AssertionError("-Dfuzz.seed=" + seed + " -Dfuzz.cells=" + IN_A_ROUND, failure);
            }
        }
        office.setPatience(usual);
        assertEquals("", String.join("\n", faults));
        assertTrue(office.isAlive());
    }
}
