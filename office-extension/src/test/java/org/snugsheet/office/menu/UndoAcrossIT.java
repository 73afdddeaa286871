package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyValue;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeWithWindows;
import org.snugsheet.office.uno.Uno;

/** Undo and Redo across several choices from the menu with typing between them: each state exactly, as often as one likes. */
@NeedsWindows
@ExtendWith(OfficeWithWindows.class)
class UndoAcrossIT {

    private static final int TIMES = 4;

    private final Office office;

    UndoAcrossIT(Office office) {
        this.office = office;
    }

    @Test
    void bringBackExplainWholeTableAndCopy(@TempDir Path folder) {
        Path copy = folder.resolve("copy.ods");
        try (CalcDocument sheet = readings()) {
            share(sheet, copy);
        }
        try (CalcDocument sheet = office.open(copy)) {
            List<Full> states = new ArrayList<>();
            states.add(Full.of(office, sheet));
            type(sheet, "B2", "33");
            states.add(Full.of(office, sheet));
            assertTrue(choose(sheet, MenuItem.BRING_BACK).startsWith("Formulas back in their cells: 2."));
            states.add(Full.of(office, sheet));
            goTo(sheet, "D1");
            assertTrue(choose(sheet, MenuItem.EXPLAIN).contains("COOL.RATE"));
            assertEquals(states.get(2), Full.of(office, sheet), "explaining changes nothing");
            type(sheet, "B3", "29");
            states.add(Full.of(office, sheet));
            type(sheet, "A12", "=COOL.REPORT(A1:A5;B1:B5;C1)");
            states.add(Full.of(office, sheet));
            goTo(sheet, "A12");
            choose(sheet, MenuItem.TABLE);
            states.add(Full.of(office, sheet));
            assertNotEquals(states.get(4), states.get(5), "the table is there");
            share(sheet, folder.resolve("another.ods"));
            assertEquals(states.get(5), Full.of(office, sheet), "a copy leaves the document as it is");
            for (int time = 0; time < TIMES; time++) {
                for (int i = states.size() - 2; i >= 0; i--) {
                    call(sheet, ".uno:Undo");
                    assertEquals(states.get(i), Full.of(office, sheet), "undone to " + i + ", time " + time);
                }
                for (int i = 1; i < states.size(); i++) {
                    call(sheet, ".uno:Redo");
                    assertEquals(states.get(i), Full.of(office, sheet), "done again to " + i + ", time " + time);
                }
            }
        }
    }

    private CalcDocument readings() {
        return office.newDocument()
                .numbersDown("A1", 0, 5, 10, 15, 20)
                .numbersDown("B1", 40, 34, 30, 26, 24)
                .number("C1", 10)
                .formula("D1", "COOL.RATE(A1:A5;B1:B5;C1)")
                .arrayFormula("F1:H3", "COOL.CURVE(A2:A3;A1:A5;B1:B5;C1)");
    }

    private void share(CalcDocument sheet, Path target) {
        choose(sheet, MenuItem.SHARE, Uno.named("Target", target.toUri().toString()));
    }

    private String choose(CalcDocument sheet, MenuItem item, PropertyValue... arguments) {
        List<PropertyValue> all = new ArrayList<>(List.of(arguments));
        all.add(Menu.QUIET);
        return Menu.choose(office, sheet, item, all.toArray(PropertyValue[]::new));
    }

    private void call(CalcDocument sheet, String address, PropertyValue... arguments) {
        Menu.asAPerson(office, () -> Menu.call(office, sheet, address, arguments));
    }

    private void goTo(CalcDocument sheet, String cell) {
        call(sheet, ".uno:GoToCell", Uno.named("ToPoint", "Sheet1." + cell));
    }

    private void type(CalcDocument sheet, String cell, String text) {
        goTo(sheet, cell);
        call(sheet, ".uno:EnterString", Uno.named("StringName", text));
    }
}
