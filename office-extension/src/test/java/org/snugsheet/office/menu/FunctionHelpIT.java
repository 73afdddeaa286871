package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.awt.Key;
import com.sun.star.awt.KeyEvent;
import com.sun.star.ui.XAcceleratorConfiguration;
import com.sun.star.ui.XModuleUIConfigurationManagerSupplier;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.uno.Uno;

/** F1 on a cell of Calc: Snugsheet’s where a Snugsheet function is, otherwise the office’s. */
@ExtendWith(SharedOffice.class)
class FunctionHelpIT {

    private final Office office;

    FunctionHelpIT(Office office) {
        this.office = office;
    }

    @Test
    void theKeyCallsUsInCalc() {
        String command = office.call("reading the keys of Calc", () -> {
            KeyEvent key = new KeyEvent();
            key.KeyCode = Key.F1;
            Object keys = office.service(
                            "com.sun.star.ui.ModuleUIConfigurationManagerSupplier",
                            XModuleUIConfigurationManagerSupplier.class)
                    .getUIConfigurationManager("com.sun.star.sheet.SpreadsheetDocument")
                    .getShortCutManager();
            return Uno.as(XAcceleratorConfiguration.class, keys).getCommandByKeyEvent(key);
        });
        assertEquals(FunctionHelp.ADDRESS, command);
    }

    @Test
    void onOneOfOurFunctionsItLeadsToItsPlaceInTheReference() throws IOException {
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("B2", "2*COOL.RATE.ERROR({0;5;10;15;20};{40;34;30;26;24};10)");
            Menu.select(office, sheet, "B2");
            assertTrue(isOurs(sheet));
            String[] place =
                    Menu.call(office, sheet, FunctionHelp.ADDRESS, Menu.QUIET).split("#", -1);
            assertEquals(2, place.length);
            assertTrue(
                    Files.readString(Path.of(URI.create(place[0]))).contains("<article id=\"" + place[1] + "\">"),
                    place[0]);
            assertEquals("cool-rate-error", place[1]);
        }
    }

    @Test
    void onAnyOtherCellItIsTheOffices() {
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", "SUM(1;2)").text("A2", "=COOL.RATE(").formula("A3", "\"WRAP.LAYER(1;2)\"");
            for (String cell : new String[] {"A1", "A2", "A3", "A4"}) {
                Menu.select(office, sheet, cell);
                assertFalse(isOurs(sheet), cell);
            }
        }
    }

    private boolean isOurs(CalcDocument sheet) {
        return Menu.answers(office, sheet, FunctionHelp.ADDRESS);
    }
}
