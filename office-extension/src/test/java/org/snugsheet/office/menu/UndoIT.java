package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.star.beans.PropertyValue;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeWithWindows;
import org.snugsheet.office.uno.Uno;

/** Undo and Redo after choices from the menu, in a real office: they never end it. */
@NeedsWindows
@ExtendWith(OfficeWithWindows.class)
class UndoIT {

    private static final String UNDO = ".uno:Undo";
    private static final String REDO = ".uno:Redo";

    private final Office office;

    UndoIT(Office office) {
        this.office = office;
    }

    /** The office cannot undo a whole page safely: nothing is left to undo, and the page stays. */
    @Test
    void addingAPageLeavesNothingToUndo() {
        try (CalcDocument sheet = readings(office.newDocumentInView())) {
            Menu.select(office, sheet, "A1:B6");
            choose(sheet, MenuItem.DRAW);
            assertEquals(0, Halfway.steps(office, sheet));
            List<String> page = Written.body(sheet);
            call(sheet, UNDO);
            call(sheet, REDO);
            Written.assertAgain(page, sheet);
        }
    }

    /** What is typed afterward can be undone as usual. */
    @Test
    void typingIntoTheReadingsIsUndone() {
        try (CalcDocument sheet = readings(office.newDocumentInView())) {
            Menu.select(office, sheet, "A1:B6");
            choose(sheet, MenuItem.DRAW);
            call(sheet, ".uno:GoToCell", argument("ToPoint", "$Sheet1.$B$7"));
            call(sheet, ".uno:EnterString", argument("StringName", "41"));
            assertEquals(41, sheet.at("Sheet1.B7").number());
            for (int time = 0; time < 3; time++) {
                call(sheet, UNDO);
                call(sheet, UNDO);
                assertEquals(new CellResult.Blank(), sheet.at("Sheet1.B7"));
                call(sheet, REDO);
                assertEquals(41, sheet.at("Sheet1.B7").number());
            }
        }
    }

    private String choose(CalcDocument sheet, MenuItem item) {
        return Menu.choose(office, sheet, item, Menu.QUIET);
    }

    private void call(CalcDocument sheet, String address, PropertyValue... arguments) {
        Menu.asAPerson(office, () -> Menu.call(office, sheet, address, arguments));
    }

    private static PropertyValue argument(String name, Object value) {
        return Uno.named(name, value);
    }

    private static CalcDocument readings(CalcDocument sheet) {
        return sheet.text("A1", "min")
                .text("B1", "bare")
                .numbersDown("A2", 0, 5, 10, 15, 20)
                .numbersDown("B2", 40, 34, 30, 26, 24);
    }
}
