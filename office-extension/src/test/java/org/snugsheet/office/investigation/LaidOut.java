package org.snugsheet.office.investigation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.star.beans.PropertyValue;
import java.util.List;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;

/** A sheet of an investigation laid out through the menu, and what is on it. */
final class LaidOut {

    private static final String ALL = "A1:I80";

    private LaidOut() {}

    /** Lays one out; hands back what the user would be told. */
    static String layOut(Office office, CalcDocument sheet, PropertyValue... plan) {
        PropertyValue[] arguments = new PropertyValue[plan.length + 1];
        arguments[0] = Menu.QUIET;
        System.arraycopy(plan, 0, arguments, 1, plan.length);
        return Menu.choose(office, sheet, MenuItem.LAY_OUT, arguments);
    }

    static List<String> texts(CalcDocument sheet, String page) {
        return sheet.all(page + "." + ALL).stream()
                .flatMap(List::stream)
                .filter(CellResult.OfText.class::isInstance)
                .map(CellResult::text)
                .toList();
    }

    static void assertNoErrors(CalcDocument sheet, String page) {
        sheet.calculateAll();
        assertEquals(
                List.of(),
                sheet.all(page + "." + ALL).stream()
                        .flatMap(List::stream)
                        .filter(CellResult.OfError.class::isInstance)
                        .toList());
    }
}
