package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XNameAccess;
import com.sun.star.frame.XDispatch;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XModel;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.URL;
import com.sun.star.util.XURLTransformer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;

/** The lines of the menu, chosen through the office’s own dispatch. */
@ExtendWith(SharedOffice.class)
class MenuIT {

    private final Office office;

    MenuIT(Office office) {
        this.office = office;
    }

    @Test
    void theMenuStandsInCalcInOurOrder() {
        List<String> lines = office.call("reading the menu", () -> {
            Object configuration = office.service(
                            "com.sun.star.configuration.ConfigurationProvider", XMultiServiceFactory.class)
                    .createInstanceWithArguments("com.sun.star.configuration.ConfigurationAccess", new Object[] {
                        property(
                                "nodepath",
                                "/org.openoffice.Office.Addons/AddonUI/OfficeMenuBar/org.snugsheet.menu/Submenu")
                    });
            XNameAccess menu = UnoRuntime.queryInterface(XNameAccess.class, configuration);
            return Arrays.stream(menu.getElementNames())
                    .sorted()
                    .map(name -> title(menu, name))
                    .toList();
        });
        assertEquals(Arrays.stream(MenuItem.values()).map(MenuItem::english).toList(), lines);
    }

    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "FODS", "XLSX"})
    void aCopyToShareIsWrittenAndTheOriginalIsUntouched(FileFormat format, @TempDir Path folder) {
        Path copy = folder.resolve("copy." + format.extension());
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", "WRAP.LAYER(20;0.04)");
            choose(sheet, MenuItem.SHARE, property("Target", copy.toUri().toString()), property("Quiet", true));
            assertTrue(sheet.formulaAt("A1").contains("WRAP.LAYER"));
            assertEquals(1, sheet.sheetNames().size());
        }
        assertTrue(Files.exists(copy));
        try (CalcDocument sheet = office.open(copy)) {
            assertEquals("", sheet.formulaAt("A1"));
            assertEquals(0.5, sheet.at("A1").number());
            assertEquals(2, sheet.sheetNames().size());
            choose(sheet, MenuItem.BRING_BACK, property("Quiet", true));
            assertTrue(sheet.formulaAt("A1").contains("WRAP.LAYER"));
            assertEquals(1, sheet.sheetNames().size());
        }
    }

    @Test
    void whatCannotBeDoneChangesNothing(@TempDir Path folder) {
        Path text = folder.resolve("copy.txt");
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", "WRAP.LAYER(20;0.04)");
            choose(sheet, MenuItem.SHARE, property("Target", text.toUri().toString()), property("Quiet", true));
            choose(sheet, MenuItem.BRING_BACK, property("Quiet", true));
            choose(sheet, MenuItem.CAUTIONS, property("Quiet", true));
            assertFalse(Files.exists(text));
            assertEquals(0.5, sheet.at("A1").number());
        }
    }

    private void choose(CalcDocument sheet, MenuItem item, PropertyValue... arguments) {
        office.call("choosing " + item, () -> {
            URL[] address = {new URL()};
            address[0].Complete = item.address();
            office.service("com.sun.star.util.URLTransformer", XURLTransformer.class)
                    .parseStrict(address);
            XDispatchProvider window = UnoRuntime.queryInterface(
                    XDispatchProvider.class,
                    UnoRuntime.queryInterface(XModel.class, sheet.uno())
                            .getCurrentController()
                            .getFrame());
            XDispatch dispatch = window.queryDispatch(address[0], "_self", 0);
            dispatch.dispatch(address[0], arguments);
            return true;
        });
    }

    private static String title(XNameAccess menu, String name) {
        try {
            return String.valueOf(UnoRuntime.queryInterface(XNameAccess.class, menu.getByName(name))
                    .getByName("Title"));
        } catch (com.sun.star.uno.Exception missing) {
            throw new AssertionError(missing);
        }
    }

    private static PropertyValue property(String name, Object value) {
        PropertyValue property = new PropertyValue();
        property.Name = name;
        property.Value = value;
        return property;
    }
}
