package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XNameAccess;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.sheets.WorkedSheets;
import org.snugsheet.office.uno.Uno;

/** The lines of the menu, chosen through the office’s own dispatch. */
@ExtendWith(SharedOffice.class)
class MenuIT {

    private final Office office;

    MenuIT(Office office) {
        this.office = office;
    }

    @Test
    void theMenuStandsInCalcInOurOrder() {
        Stream<Phrase> all = Stream.concat(
                Stream.concat(
                        Stream.of(MenuItem.BOOK, MenuWords.SHEETS),
                        Arrays.stream(MenuItem.values()).skip(1)),
                Stream.of(SetUpWords.LINE));
        assertEquals(all.map(Phrase::english).toList(), linesOf(""));
    }

    @Test
    void everyWorkedSheetHasALineOfItsOwn() {
        assertEquals(
                WorkedSheets.listed().stream()
                        .map(sheet -> sheet.menuLine().english())
                        .toList(),
                linesOf("/line1/Submenu"));
    }

    private List<String> linesOf(String submenu) {
        return office.call("reading the menu", () -> {
            Object configuration = office.service(
                            "com.sun.star.configuration.ConfigurationProvider", XMultiServiceFactory.class)
                    .createInstanceWithArguments("com.sun.star.configuration.ConfigurationAccess", new Object[] {
                        Uno.named(
                                "nodepath",
                                "/org.openoffice.Office.Addons/AddonUI/OfficeMenuBar/org.snugsheet.menu/Submenu"
                                        + submenu)
                    });
            XNameAccess menu = UnoRuntime.queryInterface(XNameAccess.class, configuration);
            return Arrays.stream(menu.getElementNames())
                    // As the office does: a longer name comes later.
                    .sorted(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()))
                    .map(name -> title(menu, name))
                    .toList();
        });
    }

    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "FODS", "XLSX"})
    void aCopyToShareIsWrittenAndTheOriginalIsUntouched(FileFormat format, @TempDir Path folder) {
        Path copy = folder.resolve("copy." + format.extension());
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", "WRAP.LAYER(20;0.04)");
            choose(sheet, MenuItem.SHARE, Uno.named("Target", copy.toUri().toString()), Menu.QUIET);
            assertTrue(sheet.formulaAt("A1").contains("WRAP.LAYER"));
            assertEquals(1, sheet.sheetNames().size());
        }
        assertTrue(Files.exists(copy));
        try (CalcDocument sheet = office.open(copy)) {
            assertEquals("", sheet.formulaAt("A1"));
            assertEquals(0.5, sheet.at("A1").number());
            assertEquals(2, sheet.sheetNames().size());
            choose(sheet, MenuItem.BRING_BACK, Menu.QUIET);
            assertTrue(sheet.formulaAt("A1").contains("WRAP.LAYER"));
            assertEquals(1, sheet.sheetNames().size());
        }
    }

    @Test
    void whatCannotBeDoneChangesNothing(@TempDir Path folder) {
        Path text = folder.resolve("copy.txt");
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", "WRAP.LAYER(20;0.04)");
            choose(sheet, MenuItem.SHARE, Uno.named("Target", text.toUri().toString()), Menu.QUIET);
            choose(sheet, MenuItem.BRING_BACK, Menu.QUIET);
            choose(sheet, MenuItem.CAUTIONS, Menu.QUIET);
            assertFalse(Files.exists(text));
            assertEquals(0.5, sheet.at("A1").number());
        }
    }

    /** A quiet choice opens nothing and tells the address; a package without the file says so. */
    @Test
    void theReferenceThatWasPackedIsFound() throws IOException {
        boolean packed;
        try (ZipFile oxt = new ZipFile(System.getProperty(SharedOffice.OXT_PROPERTY))) {
            packed = oxt.getEntry("reference/functions_en.html") != null;
        }
        try (CalcDocument sheet = office.newDocument()) {
            String told = choose(sheet, MenuItem.REFERENCE, Menu.QUIET);
            if (packed) {
                assertTrue(Files.exists(Path.of(URI.create(told))), told);
            } else {
                assertEquals(MenuWords.NO_REFERENCE.english(), told);
            }
        }
    }

    @Test
    void theCautionsAreTold() {
        try (CalcDocument sheet = office.newDocument()) {
            String told = choose(sheet, MenuItem.CAUTIONS, Menu.QUIET);
            assertTrue(told.contains(Caution.GLASS.english()), told);
            assertTrue(told.contains("Start no warmer than 43 °C (109 °F)."), told);
            assertTrue(told.contains(Caution.SCHOOL_RULES.english()), told);
        }
    }

    private String choose(CalcDocument sheet, MenuItem item, PropertyValue... arguments) {
        return Menu.choose(office, sheet, item, arguments);
    }

    private static String title(XNameAccess menu, String name) {
        try {
            return String.valueOf(UnoRuntime.queryInterface(XNameAccess.class, menu.getByName(name))
                    .getByName("Title"));
        } catch (com.sun.star.uno.Exception missing) {
            throw new AssertionError(missing);
        }
    }
}
