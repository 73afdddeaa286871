package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.sheets.WorkedSheets;

/** The zip of a release: a sheet in each language, and one with degrees Fahrenheit. */
@ExtendWith(SharedOffice.class)
class ReleaseSheetsIT {

    @Test
    void eachLanguageHasItsFolder(Office office, @TempDir Path folder) throws IOException {
        Path zip = ReleaseSheets.beside(folder.resolve("snugsheet-1.2.3.oxt"));
        assertEquals("snugsheet-1.2.3-sheets.zip", zip.getFileName().toString());
        ReleaseSheets.pack(office, List.of(WorkedSheets.named("weather-diary").orElseThrow()), zip);
        try (ZipFile packed = new ZipFile(zip.toFile())) {
            assertEquals(
                    List.of("en-US", "en", "es", "fr", "de").stream()
                            .map(language -> language + "/weather-diary.ods")
                            .toList(),
                    packed.stream().map(ZipEntry::getName).toList());
            assertEquals("F", scale(office, packed, "en-US/weather-diary.ods", folder));
            assertEquals("C", scale(office, packed, "de/weather-diary.ods", folder));
        }
    }

    private static String scale(Office office, ZipFile packed, String name, Path folder) throws IOException {
        Path file = folder.resolve(name.replace('/', '-'));
        try (InputStream in = packed.getInputStream(packed.getEntry(name))) {
            Files.copy(in, file);
        }
        try (CalcDocument sheet = office.open(file)) {
            assertTrue(sheet.sheetNames().size() == 4, name);
            return sheet.at(sheet.sheetNames().get(0) + ".A8").text();
        }
    }
}
