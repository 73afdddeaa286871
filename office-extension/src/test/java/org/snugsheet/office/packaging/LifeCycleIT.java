package org.snugsheet.office.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyValue;
import com.sun.star.document.XDocumentRecovery;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.ErrorCodes;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeFailure;
import org.snugsheet.office.harness.OfficeSetup;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.uno.Uno;

/**
 * A profile below a folder with blanks and umlauts in its name, and what can happen to a document there: another one beside it, Snugsheet
 * switched off while it is open, the office killed while it calculates. What happens to an installation is in {@link InstallationIT}.
 */
class LifeCycleIT {

    private static final String US = "org.snugsheet";
    private static final Path OXT = Path.of(System.getProperty(SharedOffice.OXT_PROPERTY, ""));

    private static final String RATE = "=COOL.RATE({0;5;10;15;20};{40;34;30;26;24};10)";

    /** Fitted to these readings by SciPy’s curve_fit: see the engine’s src/test/scipy. */
    private static final double FITTED = 0.0395946704844;

    /** Enough that the office is busy when it ends. */
    private static final int MANY = 5_000;

    @Test
    void whateverHappensToTheOfficeADocumentKeepsItsFormulas(@TempDir Path temporary) throws Exception {
        Path folder = Files.createDirectories(temporary.resolve("Frau Möller & Söhne (4 b)"));
        Office office = OfficeSetup.plain().at(folder).start();
        try {
            office.extensions().add(OXT);
            office = office.restart();
            assertTrue(office.folder().startsWith(folder.toRealPath()));
            twoDocumentsKeepToThemselves(office, folder);
            aCopyHasAPreview(office, folder);
            office = switchedOffAndOn(office);
            office = killedAndRecovered(office);
        } finally {
            office.close();
        }
    }

    /** Each answers in its own language, and goes on when the other one is closed. */
    private static void twoDocumentsKeepToThemselves(Office office, Path folder) {
        try (CalcDocument english = office.newDocument().locale("en-US")) {
            Path file;
            try (CalcDocument german = office.newDocument().locale("de-DE")) {
                english.number("A1", 40)
                        .formula("B1", "COOL.TEMP(20;A1;10;0.04)")
                        .formula("C1", "CHECK.WRAP(20;\"x\")");
                german.number("A1", 30)
                        .formula("B1", "COOL.TEMP(20;A1;10;0.04)")
                        .formula("C1", "CHECK.WRAP(20;\"x\")");
                // Newton’s law: 10 + (T − 10)·exp(−0.04·20)
                assertEquals(10 + 30 * Math.exp(-0.8), english.at("B1").number(), 1e-9);
                assertEquals(10 + 20 * Math.exp(-0.8), german.at("B1").number(), 1e-9);
                assertFalse(english.at("C1").text().equals(german.at("C1").text()));
                english.number("A1", 35);
                assertEquals(10 + 20 * Math.exp(-0.8), german.at("B1").number(), 1e-9);
                file = german.saveAs(folder.resolve("Gläser im Schnee.ods"), FileFormat.ODS);
            }
            assertEquals(
                    10 + 25 * Math.exp(-0.8), english.calculateAll().at("B1").number(), 1e-9);
            try (CalcDocument again = office.open(file)) {
                assertEquals(
                        10 + 20 * Math.exp(-0.8), again.calculateAll().at("B1").number(), 1e-9);
            }
        }
    }

    /** The small picture of the first page that a file manager shows; the offices of other tests draw none. */
    private static void aCopyHasAPreview(Office office, Path folder) throws IOException {
        Path copy = folder.resolve("Kopie für Söhne.ods");
        try (CalcDocument document = office.newDocument().formula("A1", RATE)) {
            Menu.share(office, document, copy);
        }
        try (ZipFile parts = new ZipFile(copy.toFile())) {
            assertNotNull(parts.getEntry("Thumbnails/thumbnail.png"));
        }
        try (CalcDocument again = office.open(copy)) {
            assertEquals(FITTED, again.at("A1").number(), 1e-9);
        }
    }

    /** The cell shows an error of its own, but the formula stays, and so its value comes back. */
    private static Office switchedOffAndOn(Office office) {
        Path saved;
        try (CalcDocument open = office.newDocument()) {
            open.formula("A1", RATE);
            office.extensions().enable(US, false);
            assertEquals(
                    ErrorCodes.NO_ADD_IN, open.calculateAll().at("A1").error(), () -> String.valueOf(open.at("A1")));
            assertTrue(open.formulaAt("A1").toUpperCase(Locale.ROOT).contains("COOL.RATE("), open.formulaAt("A1"));
            saved = open.saveAs(office.folder().resolve("saved while switched off.ods"), FileFormat.ODS);
            office.extensions().enable(US, true);
        }
        Office next = office.restart();
        try (CalcDocument again = next.open(saved)) {
            assertEquals(FITTED, again.calculateAll().at("A1").number(), 1e-9);
        }
        return next;
    }

    /** What the office keeps every few minutes holds the formulas and brings them back, whatever it was busy with when it ended. */
    private static Office killedAndRecovered(Office office) throws Exception {
        Path kept = office.folder().resolve("kept by the office.ods");
        CalcDocument document = office.newDocument();
        document.formulasDown("A1", Collections.nCopies(MANY, RATE)).text("B1", "bare jar, invented");
        office.call("keeping it as the office’s own timer does", () -> {
            Uno.as(XDocumentRecovery.class, document.uno())
                    .storeToRecoveryFile(
                            kept.toUri().toString().replaceFirst("^file:/+", "file:///"), new PropertyValue[0]);
            return kept;
        });
        List<ProcessHandle> processes = office.processes();
        CompletableFuture<Void> killed = CompletableFuture.runAsync(
                () -> processes.forEach(ProcessHandle::destroyForcibly),
                CompletableFuture.delayedExecutor(500, TimeUnit.MILLISECONDS));
        assertThrows(OfficeFailure.class, () -> {
            while (!killed.isDone()) {
                document.calculateAll();
            }
            document.calculateAll();
        });
        killed.get(1, TimeUnit.MINUTES);

        Office next = office.restart();
        try (CalcDocument recovered = next.open(kept)) {
            assertEquals("bare jar, invented", recovered.at("B1").text());
            assertEquals(FITTED, recovered.calculateAll().at("A1").number(), 1e-9);
            assertEquals(FITTED, recovered.at("A" + MANY).number(), 1e-9);
        }
        return next;
    }
}
