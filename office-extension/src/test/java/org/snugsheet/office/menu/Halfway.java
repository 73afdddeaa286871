package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.sun.star.document.XUndoManagerSupplier;
import java.util.List;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.page.NewPage;
import org.snugsheet.office.uno.Uno;

/** A page whose filling fails half way. */
final class Halfway {

    private Halfway() {}

    static void assertLeavesNothing(Office office, CalcDocument sheet) {
        List<String> before = Written.body(sheet);
        String styles = Written.styles(sheet);
        assertThrows(
                com.sun.star.uno.Exception.class,
                () -> NewPage.in(office.uno(), sheet.uno(), "Half", "A1", page -> {
                    page.text("A1", "half").protect();
                    throw new com.sun.star.uno.Exception("no more");
                }));
        Written.assertAgain(before, sheet);
        assertEquals(styles, Written.styles(sheet));
    }

    /** How many steps can be undone. */
    static int steps(Office office, CalcDocument sheet) {
        return office.call(
                "counting steps",
                () -> Uno.as(XUndoManagerSupplier.class, sheet.uno())
                        .getUndoManager()
                        .getAllUndoActionTitles()
                        .length);
    }
}
