package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeSetup;
import org.snugsheet.office.harness.SharedOffice;

/** A sheet with every function, saved and opened again. */
@ExtendWith(SharedOffice.class)
class FilesIT {

    private static final List<String> FORMULAS = Families.functions().stream()
            .map(function -> function.function().example())
            .toList();

    private static final String CELLS = "A1:A" + FORMULAS.size();

    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "FODS", "XLSX"})
    void theSameFileComputesTheSameAgain(FileFormat format, Office office, @TempDir Path folder) {
        List<List<CellResult>> before;
        Path file = folder.resolve("sheet." + format.name().toLowerCase(Locale.ROOT));
        try (CalcDocument sheet = office.newDocument()) {
            before = sheet.formulasDown("A1", FORMULAS).calculateAll().all(CELLS);
            sheet.saveAs(file, format);
        }
        assertTrue(before.stream().noneMatch(row -> row.get(0).error() != 0));
        try (CalcDocument sheet = office.open(file)) {
            assertEquals(before, sheet.calculateAll().all(CELLS));
            for (int i = 0; i < FORMULAS.size(); i++) {
                FunctionDeclaration function = Families.functions().get(i);
                String stored = sheet.formulaAt("A" + (i + 1)).toUpperCase(Locale.ROOT);
                assertTrue(
                        stored.startsWith("=" + function.name() + "(")
                                || stored.startsWith("=" + function.storedName() + "("),
                        stored);
            }
        }
    }

    @Test
    void aGermanOfficeComputesTheSame(@TempDir Path folder, Office office) {
        Path file = folder.resolve("sheet.ods");
        List<List<CellResult>> english;
        try (CalcDocument sheet = office.newDocument()) {
            english = sheet.formulasDown("A1", FORMULAS).number("C1", 0.25).all(CELLS);
            sheet.saveAs(file, FileFormat.ODS);
        }
        OfficeSetup german = office.setup().inLocale(Locale.GERMANY);
        try (Office other = german.start();
                CalcDocument sheet = other.open(file)) {
            sheet.calculateAll();
            for (int i = 0; i < FORMULAS.size(); i++) {
                CellResult expected = english.get(i).get(0);
                CellResult actual = sheet.at("A" + (i + 1));
                if (expected instanceof CellResult.OfNumber number) {
                    assertEquals(number.number(), actual.number(), 1e-14 * Math.abs(number.number()));
                } else {
                    assertEquals(expected.text(), actual.text());
                }
            }
            // A comma is the decimal sign there, also for a number that travels as text.
            assertEquals("0,25", sheet.at("C1").shown());
            assertEquals(
                    32.45,
                    sheet.formula("D1", "TEMP.CONVERT(C1;\"C\";\"F\")").at("D1").number(),
                    1e-12);
        }
    }
}
