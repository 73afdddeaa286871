package org.snugsheet.office.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.deployment.XPackage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.ErrorCodes;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeSetup;
import org.snugsheet.office.harness.SharedOffice;

/**
 * One profile through all that can happen to an installation: an old version, the present one over it, resting, awake,
 * removed, back. A document goes along; its formulas stay, and its values come back.
 */
class InstallationIT {

    private static final String US = "org.snugsheet";
    private static final Path OXT = Path.of(System.getProperty(SharedOffice.OXT_PROPERTY, ""));
    private static final String VERSION = System.getProperty("snugsheet.version", "");

    private static final List<String> FORMULAS = List.of(
            "=COOL.RATE({0;5;10;15;20};{40;34;30;26;24};10)", "=WRAP.LAYER(20;0.04)", "=CHECK.WRAP(20;\"wool\")");

    @Test
    void allThatCanHappenToAnInstallationLosesNothing(@TempDir Path folder) throws IOException {
        Path old = OlderVersion.of(OXT, VERSION, "0.0.9", folder.resolve("old.oxt"));
        Path document = folder.resolve("jars.ods");

        Office office = OfficeSetup.plain().start();
        try {
            office.extensions().add(old);
            office = office.restart();
            assertEquals("0.0.9", office.evaluate("=CHECK.VERSION()").text());
            List<List<CellResult>> values;
            try (CalcDocument sheet = office.newDocument()) {
                values = sheet.formulasDown("A1", FORMULAS).all("A1:A3");
                sheet.saveAs(document, FileFormat.ODS);
            }
            assertTrue(values.stream().noneMatch(row -> row.get(0).error() != 0), values.toString());

            office.extensions().add(OXT);
            office = office.restart();
            assertEquals(List.of(VERSION), versions(office), "the new version in the place of the old one");
            assertEquals(VERSION, office.evaluate("=CHECK.VERSION()").text());
            assertHolds(office, document, values);

            office.extensions().enable(US, false);
            office = office.restart();
            assertFalse(office.extensions().isAtWork(US));
            Path savedWithoutUs = savedWithoutUs(office, document, folder);

            office.extensions().enable(US, true);
            office = office.restart();
            assertTrue(office.extensions().isAtWork(US));
            assertHolds(office, savedWithoutUs, values);

            office.extensions().remove(US);
            office = office.restart();
            assertEquals(List.of(), versions(office));
            assertEquals(ErrorCodes.NAME, office.evaluate("=CHECK.VERSION()").error());
            assertEquals(List.of(), leftInProfile(office));

            office.extensions().add(OXT);
            office = office.restart();
            assertEquals(VERSION, office.evaluate("=CHECK.VERSION()").text());
            assertHolds(office, savedWithoutUs, values);
        } finally {
            office.close();
        }
    }

    private static List<String> versions(Office office) {
        return office.call(
                "reading versions",
                () -> office.extensions().named(US).stream()
                        .map(InstallationIT::version)
                        .toList());
    }

    private static String version(XPackage extension) {
        try {
            return extension.getVersion();
        } catch (com.sun.star.deployment.ExtensionRemovedException removed) {
            return "removed";
        }
    }

    private static void assertHolds(Office office, Path document, List<List<CellResult>> values) {
        try (CalcDocument sheet = office.open(document)) {
            assertEquals(values, sheet.calculateAll().all("A1:A3"));
            for (int row = 0; row < FORMULAS.size(); row++) {
                // A file holds the stored name, and the office shows that one or the one that was typed.
                String formula = sheet.formulaAt("A" + (row + 1)).replaceFirst("(?i)^=snugsheet\\.", "=");
                assertTrue(formula.equalsIgnoreCase(FORMULAS.get(row)), formula);
            }
        }
    }

    /** A colleague opens it while we are not there, and saves it. */
    private static Path savedWithoutUs(Office office, Path document, Path folder) {
        try (CalcDocument sheet = office.open(document)) {
            assertEquals(ErrorCodes.NAME, sheet.calculateAll().at("A1").error());
            return sheet.saveAs(folder.resolve("saved without us.ods"), FileFormat.ODS);
        }
    }

    /**
     * Files of the profile that name Snugsheet. The office itself keeps the unpacked old version of any extension that was ever
     * replaced, as a way back while it replaces it, in a folder for temporary files that it never empties: not for an extension to remove.
     */
    private static List<String> leftInProfile(Office office) throws IOException {
        Path profile = office.folder().resolve("profile");
        Path wayBack = profile.resolve("user/extensions/tmp");
        String own = office.folder().getFileName().toString();
        try (Stream<Path> all = Files.walk(profile)) {
            return all.filter(file -> Files.isRegularFile(file) && !file.startsWith(wayBack))
                    .filter(file -> text(file).replace(own, "").contains("snugsheet"))
                    .map(Path::toString)
                    .toList();
        }
    }

    private static String text(Path file) {
        try {
            return (file + "\n" + new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                    .toLowerCase(Locale.ROOT);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
