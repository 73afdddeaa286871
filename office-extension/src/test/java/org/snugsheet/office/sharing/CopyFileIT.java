package org.snugsheet.office.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.util.XProtectable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.uno.DocumentFile;
import org.snugsheet.office.uno.Uno;

/** The file of a copy: with passwords, over another file, and where none can be written. */
@ExtendWith(SharedOffice.class)
class CopyFileIT {

    private static final byte[] OLD = {'o', 'l', 'd'};

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
}
