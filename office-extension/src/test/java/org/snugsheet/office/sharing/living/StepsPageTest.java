package org.snugsheet.office.sharing.living;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Where blocks stand on the page of steps. */
class StepsPageTest {

    private static final int FIRST = 3;

    /** Two jars by turns, and something that is about neither. */
    @Test
    void allThatIsAboutOneJarStandsTogether() {
        StepsPage draft = new StepsPage("steps", FIRST);
        List<Integer> before = blocks(draft);
        assertEquals(List.of(3, 8, 13, 20, 25), before);
        StepsPage page = draft.inOrder();
        List<Integer> after = blocks(page);
        assertEquals(List.of(3, 13, 18, 8, 25), after);
        assertEquals(draft.rows().size(), page.rows().size());
        assertEquals(Optional.of("wool: its curve"), first(page, 3));
        assertEquals(Optional.of("wool: its errors"), first(page, 8));
        // One that was not there at first stands below all others.
        block(page, "more", 1);
        assertEquals(30, page.titles().get(after.size()));
    }

    private static Optional<Object> first(StepsPage page, int row) {
        return Optional.ofNullable(page.rows().get(row)).map(cells -> cells.get(0));
    }

    private static List<Integer> blocks(StepsPage page) {
        page.about("wool: its curve", "wool");
        page.about("wool: its errors", "wool");
        page.about("felt: its curve", "felt");
        page.about("felt: its errors", "felt");
        block(page, "wool: its curve", 1);
        block(page, "water", 1);
        block(page, "felt: its curve", 3);
        block(page, "wool: its errors", 1);
        block(page, "felt: its errors", 1);
        return page.titles();
    }

    private static void block(StepsPage page, String title, int lines) {
        new Block(page, title, lines).column("t", "minutes", "=[#]");
    }
}
