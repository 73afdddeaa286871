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
import com.sun.star.util.XProtectable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeFailure;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.uno.DocumentFile;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Declined;
import org.snugsheet.office.words.Language;

/** The file of a copy: with passwords, over another file, and where none can be written. */
@ExtendWith(SharedOffice.class)
class CopyFileIT {

    private static final byte[] OLD = {'o', 'l', 'd'};

    @ParameterizedTest
    @ValueSource(strings = {"ods", "xlsx"})
    void aCopyOfALockedDocumentIsLockedToo(String ending, Office office, @TempDir Path folder) throws IOException {
        Path copy = folder.resolve("copy." + ending);
        try (Locked locked = Locked.document(office, folder)) {
            String told = refused(
                    office,
                    () -> CopyFile.of(office.uno(), locked.document(), url(copy), Optional.empty(), Progress.UNSEEN));
            assertTrue(told.contains("has a password, so the copy needs one too"), told);
            assertFalse(Files.exists(copy));
            office.call(
                    "sharing",
                    () -> CopyFile.of(
                            office.uno(), locked.document(), url(copy), Optional.of("other"), Progress.UNSEEN));
        }
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
        try (Locked locked = Locked.document(office, folder)) {
            String told = refused(
                    office,
                    () -> CopyFile.of(
                            office.uno(), locked.document(), url(copy), Optional.of("other"), Progress.UNSEEN));
            assertTrue(told.contains("Choose .ods or .xlsx"), told);
            assertFalse(Files.exists(copy));
        }
    }

    /** What the twin of a locked document leaves in the temporary folder is never readable; looked at while it is there. */
    @Test
    void nothingReadableLiesInTheTemporaryFolder(Office office, @TempDir Path folder) throws Exception {
        Path temporary = Path.of(System.getProperty("java.io.tmpdir"));
        try (Locked locked = Locked.document(office, folder)) {
            List<Path> seen = new CopyOnWriteArrayList<>();
            Thread looker = new Thread(() -> look(temporary, folder, seen));
            looker.start();
            XSpreadsheetDocument twin = office.call(
                    "doubling",
                    () -> Uno.as(XSpreadsheetDocument.class, DocumentFile.twin(office.uno(), locked.document())));
            looker.interrupt();
            looker.join();
            assertEquals(
                    0.5,
                    office.call(
                            "reading",
                            () -> Uno.sheets(twin)
                                    .get(0)
                                    .getCellByPosition(0, 0)
                                    .getValue()));
            close(office, twin);
            // Others may have files of this name there as well; ours is the one with the words.
            assertTrue(seen.stream()
                    .anyMatch(copy -> entry(copy, "META-INF/manifest.xml").contains("encryption-data")));
            assertTrue(
                    seen.stream().noneMatch(copy -> entry(copy, "content.xml").contains("Secret wool")));
        }
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

    @Test
    void aCopyThatFailsLeavesTheOldFile(Office office, @TempDir Path folder) throws IOException {
        Path copy = folder.resolve("copy.ods");
        Files.write(copy, OLD);
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", "WRAP.LAYER(20;0.04)");
            office.call("protecting", () -> {
                Uno.as(XProtectable.class, Uno.sheets(sheet.uno()).get(0)).protect("secret");
                return true;
            });
            assertTrue(choose(office, sheet, copy).contains("has a password. Take it off first."));
        }
        assertEquals("old", Files.readString(copy));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(copy), left.toList());
        }
    }

    @Test
    void aTakenNameOfThePageIsNoHindrance(Office office, @TempDir Path folder) {
        Path copy = folder.resolve("copy.ods");
        String page = SharingWords.PAGE.english();
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", "WRAP.LAYER(20;0.04)");
            office.call("adding", () -> {
                sheet.uno().getSheets().insertNewByName(page, (short) 1);
                return true;
            });
            sheet.text(page + ".A1", "mine");
            choose(office, sheet, copy);
        }
        try (CalcDocument sheet = office.open(copy)) {
            assertEquals(List.of("Sheet1", page, page + " 2"), sheet.sheetNames());
            Menu.choose(office, sheet, MenuItem.BRING_BACK, Menu.QUIET);
            assertEquals(List.of("Sheet1", page), sheet.sheetNames());
            assertEquals("mine", sheet.at(page + ".A1").text());
        }
    }

    @Test
    void theOpenFileIsNoTarget(Office office, @TempDir Path folder) throws IOException {
        Path own = folder.resolve("own.ods");
        Path link = folder.resolve("link.ods");
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", "WRAP.LAYER(20;0.04)").saveAs(own, FileFormat.ODS);
        }
        Files.createSymbolicLink(link, own);
        byte[] before = Files.readAllBytes(own);
        try (CalcDocument sheet = office.open(own)) {
            assertTrue(choose(office, sheet, own).contains("is open. Choose another name"));
            assertTrue(choose(office, sheet, link).contains("is open. Choose another name"));
        }
        assertTrue(java.util.Arrays.equals(before, Files.readAllBytes(own)));
    }

    @Test
    void whereNothingCanBeWrittenIsToldInWords(Office office, @TempDir Path folder) {
        Path copy = folder.resolve("missing").resolve("copy.ods");
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", "WRAP.LAYER(20;0.04)");
            String told = choose(office, sheet, copy);
            assertTrue(told.startsWith("The copy could not be written to “" + copy + "”."), told);
            assertFalse(told.contains("impl_store"), told);
        }
    }

    /** Where the written copy cannot take its place, nothing of it is left beside. */
    @Test
    void aCopyThatCannotBeMovedIntoItsPlaceLeavesNothing(Office office, @TempDir Path folder) throws IOException {
        Path taken = Files.createDirectory(folder.resolve("copy.ods"));
        Path inside = Files.write(taken.resolve("inside"), OLD);
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", "WRAP.LAYER(20;0.04)");
            String told = Menu.choose(
                    office,
                    sheet,
                    MenuItem.SHARE,
                    Uno.named("Target", url(taken).replaceFirst("/$", "")),
                    Menu.QUIET);
            assertTrue(told.startsWith("The copy could not be written to"), told);
        }
        assertEquals("old", Files.readString(inside));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(taken), left.toList());
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "XLSX"})
    void theCopyIsAsReadableAsAnyFile(FileFormat format, Office office, @TempDir Path folder) throws IOException {
        Path copy = folder.resolve("copy." + format.extension());
        Path like = Files.createFile(folder.resolve("like"));
        try (CalcDocument sheet = office.newDocument()) {
            sheet.formula("A1", "WRAP.LAYER(20;0.04)");
            choose(office, sheet, copy);
        }
        assertEquals(Files.getPosixFilePermissions(like), Files.getPosixFilePermissions(copy));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(2, left.count());
        }
    }

    private static String choose(Office office, CalcDocument sheet, Path copy) {
        return Menu.choose(office, sheet, MenuItem.SHARE, Uno.named("Target", url(copy)), Menu.QUIET);
    }

    private static String url(Path file) {
        return DocumentFile.address(file);
    }

    private static String refused(Office office, java.util.concurrent.Callable<?> work) {
        RuntimeException refusal = assertThrows(RuntimeException.class, () -> office.call("something refused", work));
        Throwable said = refusal instanceof OfficeFailure ? refusal.getCause() : refusal;
        return assertInstanceOf(Declined.class, said).sentence(Language.ENGLISH);
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
            CopyFileIT.close(office, document);
        }
    }
}
