package org.snugsheet.office.explaining;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;

/** A formula over the readings of a jar, explained through the menu. */
final class Explained {

    private Explained() {}

    /** A jar with a gap in its third reading; the times are in A1:A5, the readings in B1:B5, the surroundings in C1. */
    static CalcDocument jar(Office office) {
        CalcDocument sheet = office.newDocument();
        sheet.numbersDown("A1", 0, 5, 10, 15, 20)
                .numbersDown("B1", 40, 34)
                .numbersDown("B4", 26, 24)
                .number("C1", 10);
        return sheet;
    }

    /** What is said of this formula in D1. */
    static String explained(Office office, CalcDocument sheet, String formula) {
        sheet.formula("D1", formula);
        Menu.select(office, sheet, "D1");
        return Menu.choose(office, sheet, MenuItem.EXPLAIN, Menu.QUIET);
    }

    static void assertStarts(String words, String said) {
        assertTrue(said.startsWith(words), said);
    }

    static void assertHas(String words, String said) {
        assertTrue(said.contains(words), said);
    }
}
