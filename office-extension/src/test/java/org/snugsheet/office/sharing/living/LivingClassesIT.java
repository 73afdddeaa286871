package org.snugsheet.office.sharing.living;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.star.sheet.XCellRangeData;
import com.sun.star.table.XCellRange;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.harness.WithoutExtension;
import org.snugsheet.office.uno.Uno;

/**
 * The classes of {@link LivingClassesTest}, worked out by an office without the extension and by Gnumeric, where it is installed.
 * {@code -Dliving.classes=1000} for many.
 */
@ExtendWith(SharedOffice.class)
class LivingClassesIT {

    private static final int CLASSES = Integer.getInteger("living.classes", 4);
    private static final long SEED = Long.getLong("living.seed", 20261127);

    /** So many in one file: opening a file takes its time, and so does a large one. */
    private static final int IN_ONE = 20;

    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?([eE][-+]?[0-9]+)?");

    private static final System.Logger LOG = System.getLogger(LivingClassesIT.class.getName());

    private final Office plain;

    LivingClassesIT(@WithoutExtension Office plain) {
        this.plain = plain;
    }

    /** Works out a file with the pages of classes, and has what is in it compared. */
    @FunctionalInterface
    private interface Program {
        void workOut(Path file, List<ClassPages> classes, ClassComparison comparison)
                throws IOException, InterruptedException;
    }

    @Test
    void anOfficeWithoutTheExtensionTellsTheSame(@TempDir Path folder) throws IOException, InterruptedException {
        tellsTheSame("office", folder, (file, classes, comparison) -> {
            try (CalcDocument book = plain.open(file)) {
                book.calculate();
                for (ClassPages pages : classes) {
                    Object[][] seen = block(book, pages.steps());
                    comparison.compare(
                            pages, cell -> shown(book, seen, pages.steps().name() + "." + cell));
                }
            }
        });
    }

    @Test
    void gnumericTellsTheSame(@TempDir Path folder) throws IOException, InterruptedException {
        assumeTrue(Gnumeric.isThere(), "Gnumeric’s ssconvert is not installed: the office only was tried");
        tellsTheSame("Gnumeric", folder, (file, classes, comparison) -> {
            Map<String, List<String>> sheets = Gnumeric.workOut(file, Files.createTempDirectory(folder, "gnumeric"));
            for (ClassPages pages : classes) {
                List<String> lines = sheets.getOrDefault(pages.steps().name(), List.of());
                comparison.compare(
                        pages, cell -> shown(lines, Formulas.place(cell, "").orElseThrow()));
            }
        });
    }

    private static void tellsTheSame(String name, Path folder, Program program)
            throws IOException, InterruptedException {
        Random random = new Random(SEED);
        ClassComparison comparison = new ClassComparison();
        for (int from = 0; from < CLASSES; from += IN_ONE) {
            List<ClassPages> classes = ClassPages.of(random, SEED, from, Math.min(CLASSES, from + IN_ONE));
            XlsxBook book = new XlsxBook();
            for (ClassPages pages : classes) {
                book.add(pages.typed());
                book.add(pages.steps());
            }
            Path file = folder.resolve("classes.xlsx");
            book.write(file);
            program.workOut(file, classes, comparison);
            LOG.log(System.Logger.Level.INFO, name + ", " + comparison.told());
        }
        assertEquals(List.of(), comparison.differences());
        assertTrue(comparison.compared() > 20 * CLASSES, comparison::told);
    }

    /** All cells of a page at once: one by one they take longer than to be worked out. */
    private Object[][] block(CalcDocument book, StepsPage page) {
        int right = page.rows().values().stream()
                .mapToInt(NavigableMap::lastKey)
                .max()
                .orElseThrow();
        return plain.call(
                "reading " + page.name(),
                () -> Uno.as(
                                XCellRangeData.class,
                                Uno.as(XCellRange.class, book.uno().getSheets().getByName(page.name()))
                                        .getCellRangeByPosition(
                                                0, 0, right, page.rows().lastKey()))
                        .getDataArray());
    }

    /** In a block an error is no object, whichever it is. */
    private static Object shown(CalcDocument book, Object[][] block, String address) {
        Seen.Cells cell = Formulas.place(address, "").orElseThrow();
        Object seen = block[cell.top()][cell.left()];
        return seen instanceof Double || seen instanceof String
                ? seen
                : book.at(address).shown();
    }

    /** Gnumeric’s text does not tell a number from a text of digits; no text that is compared consists of digits. */
    private static Object shown(List<String> lines, Seen.Cells cell) {
        String[] line = cell.top() < lines.size() ? lines.get(cell.top()).split("\t", -1) : new String[0];
        String shown = cell.left() < line.length ? line[cell.left()] : "";
        return NUMBER.matcher(shown).matches() ? (Object) Double.valueOf(shown) : shown;
    }
}
