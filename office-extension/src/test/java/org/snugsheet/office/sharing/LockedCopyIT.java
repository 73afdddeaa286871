package org.snugsheet.office.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XModel;
import com.sun.star.frame.XStorable;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.util.XCloseable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeFailure;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.uno.DocumentFile;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;
import org.snugsheet.office.words.Language;

/**
 * A copy of a document that has a password. All tests copy the same one, which none of them changes: to lock and to open it takes the office two
 * seconds, for every part of the file has 100,000 rounds of its own from the password to the key.
 */
@ExtendWith(SharedOffice.class)
class LockedCopyIT {

    private static @Nullable Locked opened;

    @BeforeAll
    static void lock(Office office, @TempDir Path folder) {
        opened = Locked.document(office, folder);
    }

    @AfterAll
    static void close() {
        if (opened != null) {
            opened.close();
        }
    }

    private static XSpreadsheetDocument locked() {
        return Objects.requireNonNull(opened).document();
    }

    @ParameterizedTest
    @ValueSource(strings = {"ods", "xlsx"})
    void aCopyOfALockedDocumentIsLockedToo(String ending, Office office, @TempDir Path folder) throws IOException {
        Path copy = folder.resolve("copy." + ending);
        String told = refused(
                office, () -> CopyFile.of(office.uno(), locked(), url(copy), Optional.empty(), Progress.UNSEEN));
        assertTrue(told.contains("has a password, so the copy needs one too"), told);
        assertFalse(Files.exists(copy));
        office.call(
                "sharing", () -> CopyFile.of(office.uno(), locked(), url(copy), Optional.of("other"), Progress.UNSEEN));
        assertFalse(Files.readString(copy, StandardCharsets.ISO_8859_1).contains("Secret wool"));
        assertTrue(office.call("opening", () -> load(office, copy, "wrong")).isEmpty());
        XSpreadsheetDocument opened =
                office.call("opening", () -> load(office, copy, "other")).orElseThrow();
        assertEquals(
                0.5,
                office.call(
                        "reading",
                        () -> Uno.sheets(opened).get(0).getCellByPosition(0, 0).getValue()));
        close(office, opened);
    }

    @Test
    void aFlatFileCannotBeLocked(Office office, @TempDir Path folder) {
        Path copy = folder.resolve("copy.fods");
        String told = refused(
                office, () -> CopyFile.of(office.uno(), locked(), url(copy), Optional.of("other"), Progress.UNSEEN));
        assertTrue(told.contains("Choose .ods or .xlsx"), told);
        assertFalse(Files.exists(copy));
    }

    /** What the twin of a locked document leaves in the temporary folder is never readable; looked at while it is there. */
    @Test
    void nothingReadableLiesInTheTemporaryFolder(Office office, @TempDir Path folder) throws Exception {
        Path temporary = Path.of(System.getProperty("java.io.tmpdir"));
        List<Path> seen = new CopyOnWriteArrayList<>();
        Thread looker = new Thread(() -> look(temporary, folder, seen));
        looker.start();
        XSpreadsheetDocument twin = office.call(
                "doubling", () -> Uno.as(XSpreadsheetDocument.class, DocumentFile.twin(office.uno(), locked())));
        looker.interrupt();
        looker.join();
        assertEquals(
                0.5,
                office.call(
                        "reading",
                        () -> Uno.sheets(twin).get(0).getCellByPosition(0, 0).getValue()));
        close(office, twin);
        // Others may have files of this name there as well; the one looked for has the words.
        assertTrue(seen.stream()
                .anyMatch(copy -> entry(copy, "META-INF/manifest.xml").contains("encryption-data")));
        assertTrue(seen.stream().noneMatch(copy -> entry(copy, "content.xml").contains("Secret wool")));
    }

    /** A part of a packed file; empty while the file is not whole. */
    private static String entry(Path file, String name) {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            ZipEntry entry = zip.getEntry(name);
            if (entry == null) {
                return "";
            }
            try (InputStream part = zip.getInputStream(entry)) {
                return new String(part.readAllBytes(), StandardCharsets.UTF_8);
            }
        } catch (IOException unfinished) {
            return "";
        }
    }

    private static void look(Path temporary, Path folder, List<Path> seen) {
        while (!Thread.currentThread().isInterrupted()) {
            try (Stream<Path> files = Files.list(temporary)) {
                for (Path file : files.filter(
                                one -> one.getFileName().toString().matches("snugsheet.*\\.ods"))
                        .toList()) {
                    Path kept = folder.resolve("seen" + seen.size());
                    Files.copy(file, kept);
                    seen.add(kept);
                }
                Thread.sleep(5);
            } catch (IOException gone) {
                // Gone again while it was looked at.
            } catch (InterruptedException done) {
                return;
            }
        }
    }

    private static String url(Path file) {
        return DocumentFile.address(file);
    }

    private static String refused(Office office, java.util.concurrent.Callable<?> work) {
        RuntimeException refusal = assertThrows(RuntimeException.class, () -> office.call("something refused", work));
        Throwable said = refusal instanceof OfficeFailure ? refusal.getCause() : refusal;
        return assertInstanceOf(DeclinedException.class, said).sentence(Language.ENGLISH);
    }

    private static Optional<XSpreadsheetDocument> load(Office office, Path file, String password)
            throws com.sun.star.uno.Exception {
        PropertyValue[] how = {Uno.named("Hidden", true), Uno.named("Password", password)};
        try {
            return Optional.ofNullable(office.service("com.sun.star.frame.Desktop", XComponentLoader.class)
                            .loadComponentFromURL(url(file), "_blank", 0, how))
                    .map(loaded -> Uno.as(XSpreadsheetDocument.class, loaded));
        } catch (com.sun.star.lang.IllegalArgumentException | com.sun.star.io.IOException locked) {
            return Optional.empty();
        }
    }

    private static void close(Office office, XSpreadsheetDocument document) {
        office.call("closing", () -> {
            Uno.as(XCloseable.class, document).close(true);
            return true;
        });
    }

    /** A document that was opened with its password. */
    private record Locked(Office office, XSpreadsheetDocument document) implements AutoCloseable {

        static Locked document(Office office, Path folder) {
            Path file = folder.resolve("locked.ods");
            try (CalcDocument sheet = office.newDocument()) {
                sheet.formula("A1", "WRAP.LAYER(20;0.04)").text("A2", "Secret wool");
                office.call("locking", () -> {
                    PropertyValue[] how = {Uno.named("FilterName", "calc8"), Uno.named("Password", "secret")};
                    Uno.as(XStorable.class, Uno.as(XModel.class, sheet.uno())).storeToURL(url(file), how);
                    return true;
                });
            }
            return new Locked(
                    office,
                    office.call("opening", () -> load(office, file, "secret")).orElseThrow());
        }

        @Override
        public void close() {
            LockedCopyIT.close(office, document);
        }
    }
}
