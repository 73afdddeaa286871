package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeSetup;
import org.snugsheet.office.harness.Patience;
import org.snugsheet.office.harness.SharedOffice;

/**
 * What a person may do in any order: type, paste, choose from the menu, sort, insert and delete rows, copy and rename the sheet, lock it,
 * save and open again, share and bring back. After each step the office is alive, undo gives back exactly what was there, and redo what was
 * there after it.
 *
 * <p>{@code -Dwalks=1000} goes that many ways, {@code -Dwalks.seed=7} others than the build does. A way that fails is told step by step,
 * and the next one is gone all the same, until ten have failed. Where the office waits for ever it is killed, and a new one started.
 */
@NeedsWindows
class RandomWalkIT {

    private static final int WALKS = Integer.getInteger("walks", 3);

    private static final long SEED = Long.getLong("walks.seed", 20_261_127);

    private static final int MOST_FAILURES = 10;

    /** Far longer than any step takes. */
    private static final Duration STEP = Duration.ofSeconds(60);

    @Test
    void nothingThatAPersonDoesEndsTheOfficeOrIsUndoneOtherwise(@TempDir Path folder) {
        OfficeSetup setup = SharedOffice.withExtension().withWindows();
        List<AssertionError> failures = new ArrayList<>();
        int undone = 0;
        Office office = setup.start();
        try {
            for (int walk = 0; walk < WALKS && failures.size() < MOST_FAILURES; walk++) {
                if (!office.isAlive()) {
                    office.close();
                    office = setup.start();
                }
                office.setPatience(Patience.scaled(STEP));
                RandomWalk way = new RandomWalk(office, SEED + walk, folder.resolve(String.valueOf(walk)));
                try {
                    undone += way.go();
                } catch (RuntimeException | AssertionError failed) {
                    failures.add(new AssertionError("seed " + (SEED + walk) + ", " + way, failed));
                }
            }
        } finally {
            office.close();
        }
        if (!failures.isEmpty()) {
            AssertionError all = new AssertionError(String.join(
                    "\n",
                    failures.stream()
                            .map(failure -> failure.getMessage() + ": " + failure.getCause())
                            .toList()));
            failures.forEach(all::addSuppressed);
            throw all;
        }
        // One way alone may be gone on a locked sheet.
        assertTrue(undone > WALKS || WALKS < 3, "hardly anything could be undone: " + undone);
    }
}
