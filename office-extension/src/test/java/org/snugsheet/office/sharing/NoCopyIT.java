package org.snugsheet.office.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.star.frame.XModel;
import com.sun.star.util.XModifiable;
import com.sun.star.util.XProtectable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Full;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.uno.DocumentFile;
import org.snugsheet.office.uno.Uno;

/**
 * Where no copy can be made: what was in the target’s place is still there and nothing beside it, the open document is as it was, the
 * user is told in plain words, and the log holds a trace for somebody who is asked for help.
 */
@ExtendWith(SharedOffice.class)
class NoCopyIT {

    private static final String OLD = "old";

    @ParameterizedTest
    @ValueSource(strings = {"ods", "fods", "xlsx"})
    void onAFullDisk(String ending, Office office, @TempDir Path folder) throws IOException {
        try (Disk disk = Disk.mounted(folder.resolve("disk"), "size=16k")) {
            Path target = Files.writeString(disk.at().resolve("copy." + ending), OLD);
            assertNothingIsMade(office, target, "The copy could not be written to “" + target + "”. Look whether");
        }
    }

    @Test
    void inAFolderThatCanOnlyBeRead(Office office, @TempDir Path folder) throws IOException {
        try (Disk disk = Disk.mounted(folder.resolve("disk"), "size=1m")) {
            Path target = Files.writeString(disk.at().resolve("copy.ods"), OLD);
            disk.onlyToRead();
            assertNothingIsMade(office, target, "The copy could not be written to “" + target + "”. Look whether");
        }
    }

    @Test
    void belowAFileInsteadOfAFolder(Office office, @TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("file"), OLD);
        Path target = file.resolve("copy.ods");
        assertNothingIsMade(office, target, "The copy could not be written to “" + target + "”. Look whether");
        assertEquals(OLD, Files.readString(file));
    }

    @Test
    void whereThereIsNoFolder(Office office, @TempDir Path folder) throws IOException {
        Path target = folder.resolve("missing").resolve("copy.ods");
        assertNothingIsMade(office, target, "The copy could not be written to “" + target + "”. Look whether");
    }

    @Test
    void ofADocumentWhoseStructureHasAPassword(Office office, @TempDir Path folder) throws IOException {
        Path target = Files.writeString(folder.resolve("copy.ods"), OLD);
        try (CalcDocument sheet = filled(office)) {
            office.call("protecting", () -> {
                Uno.as(XProtectable.class, sheet.uno()).protect("secret");
                return true;
            });
            assertNothingIsMade(
                    office, sheet, target, "No sheet can be added to this document or taken out of it: its structure");
        }
    }

    @Test
    void ofADocumentWhoseSheetHasAPassword(Office office, @TempDir Path folder) throws IOException {
        Path target = Files.writeString(folder.resolve("copy.xlsx"), OLD);
        try (CalcDocument sheet = filled(office)) {
            office.call("protecting", () -> {
                Uno.as(XProtectable.class, Uno.sheets(sheet.uno()).get(0)).protect("secret");
                return true;
            });
            assertNothingIsMade(office, sheet, target, "The sheet “Sheet1” has a password. Take it off first.");
        }
    }

    private static void assertNothingIsMade(Office office, Path target, String told) throws IOException {
        long logged = Files.size(log(office));
        try (CalcDocument sheet = filled(office)) {
            assertNothingIsMade(office, sheet, target, told);
        }
        String trace = Files.readString(log(office)).substring((int) logged);
        assertTrue(trace.contains(CopyFile.class.getName()), "nothing in the log: " + trace);
        assertTrue(trace.contains("Exception"), trace);
    }

    private static void assertNothingIsMade(Office office, CalcDocument sheet, Path target, String told)
            throws IOException {
        Full before = Full.of(office, sheet);
        String state = state(office, sheet);
        Set<String> beside = beside(target);
        boolean wasThere = Files.isRegularFile(target);
        String said = Menu.choose(
                office, sheet, MenuItem.SHARE, Uno.named("Target", DocumentFile.address(target)), Menu.QUIET);
        assertTrue(said.startsWith(told), said);
        assertFalse(said.matches("(?s).*(SfxBaseModel|Exception|com\\.sun|java\\.|0x|Error Area).*"), said);
        assertEquals(before, Full.of(office, sheet));
        assertEquals(state, state(office, sheet));
        assertEquals(beside, beside(target));
        if (wasThere) {
            assertEquals(OLD, Files.readString(target));
        }
    }

    /** Whether it was changed, where it lies, and how many documents there are: none is left open, unseen. */
    private static String state(Office office, CalcDocument sheet) {
        return office.call("asking", () -> {
            int open = 0;
            var all = office.service("com.sun.star.frame.Desktop", com.sun.star.frame.XDesktop.class)
                    .getComponents()
                    .createEnumeration();
            while (all.hasMoreElements()) {
                all.nextElement();
                open++;
            }
            return Uno.as(XModifiable.class, sheet.uno()).isModified() + " "
                    + Uno.as(XModel.class, sheet.uno()).getURL() + " " + open;
        });
    }

    private static Set<String> beside(Path target) throws IOException {
        Path parent = Objects.requireNonNull(target.getParent());
        if (!Files.isDirectory(parent)) {
            return Set.of();
        }
        try (Stream<Path> files = Files.list(parent)) {
            return files.map(Path::toString).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static Path log(Office office) {
        return office.folder().resolve("office.log");
    }

    private static CalcDocument filled(Office office) {
        CalcDocument sheet = office.newDocument();
        return sheet.numbersDown("A1", 0, 5, 10, 15, 20)
                .numbersDown("B1", 40, 34, 30, 26, 24)
                .number("C1", 10)
                .formula("D1", "COOL.RATE(A1:A5;B1:B5;C1)")
                .arrayFormula("F1:H3", "COOL.CURVE(A2:A3;A1:A5;B1:B5;C1)");
    }

    /** A small disk in memory. Only root can have one, and not everywhere. */
    private record Disk(Path at) implements AutoCloseable {

        static Disk mounted(Path at, String options) throws IOException {
            Files.createDirectory(at);
            assumeTrue(
                    runs("mount", "-t", "tmpfs", "-o", options, "none", at.toString()),
                    "No small disk can be made here: mount wants root and a Linux that lets it");
            return new Disk(at);
        }

        void onlyToRead() {
            assertTrue(runs("mount", "-o", "remount,ro", at.toString()));
        }

        @Override
        public void close() {
            runs("umount", "-l", at.toString());
        }

        private static boolean runs(String... command) {
            try {
                Process process = new ProcessBuilder(command)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
                return process.waitFor(20, TimeUnit.SECONDS) && process.exitValue() == 0;
            } catch (IOException noSuchCommand) {
                return false;
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
                return false;
            }
        }
    }
}
