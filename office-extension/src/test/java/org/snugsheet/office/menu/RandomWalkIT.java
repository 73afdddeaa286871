package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.util.XProtectable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeWithWindows;
import org.snugsheet.office.uno.Uno;

/**
 * What a person may do in any order: type, choose from the menu, sort, insert a row, copy the sheet, lock it, save and open again, share
 * and bring back. After each step the office is alive, undo gives back exactly what was there, and redo what was there after it.
 *
 * <p>{@code -Dwalks=1000} goes that many ways, {@code -Dwalks.seed=7} others than the build does. A way that fails is told step by step.
 */
@NeedsWindows
@ExtendWith(OfficeWithWindows.class)
class RandomWalkIT {

    private static final int WALKS = Integer.getInteger("walks", 3);

    private static final long SEED = Long.getLong("walks.seed", 20_261_127);

    private static final int STEPS = 10;

    private static final List<String> TYPED = List.of(
            "40",
            "31.5",
            "98 °F",
            "9:05",
            "-4",
            "warm",
            "0",
            "1E300",
            "melting ice",
            "=COOL.RATE(A2:A7;B2:B7;E1)",
            "=COOL.RATE(A2:A3;B2:B3;E1)",
            "=CHECK.READINGS(A2:A7;C2:C7;E1)",
            "=1/0",
            "=COOL.RANK(A2:A7;B1:C7;E1)");

    private static final List<MenuItem> CHOICES = List.of(MenuItem.DRAW, MenuItem.EXPLAIN, MenuItem.TABLE);

    private final Office office;

    RandomWalkIT(Office office) {
        this.office = office;
    }

    @Test
    void nothingThatAPersonDoesEndsTheOfficeOrIsUndoneOtherwise(@TempDir Path folder) {
        int undone = 0;
        for (int walk = 0; walk < WALKS; walk++) {
            Random random = new Random(SEED + walk);
            List<String> way = new ArrayList<>();
            try (CalcDocument document = readings()) {
                WalkedSheet sheet = new WalkedSheet(office, document);
                for (int step = 0; step < STEPS; step++) {
                    undone += step(sheet, random, way, folder.resolve(walk + "-" + step)) ? 1 : 0;
                }
            } catch (RuntimeException | AssertionError failed) {
                throw new AssertionError("seed " + (SEED + walk) + ", " + String.join(" – ", way), failed);
            }
        }
        assertTrue(undone > WALKS, "hardly anything could be undone: " + undone);
    }

    /** One step, and if it can be undone, there and back twice. */
    private boolean step(WalkedSheet sheet, Random random, List<String> way, Path file) {
        List<String> before = sheet.held();
        int steps = sheet.steps();
        switch (random.nextInt(sheet.isLocked() ? 6 : 10)) {
            case 0, 1 -> choose(sheet, random, way);
            case 2 -> {
                way.add("share and bring back");
                sharedAndBack(sheet, file);
                assertHeld(before, sheet, "shared");
            }
            case 3 -> {
                way.add("save and open");
                Path saved = sheet.document().saveAs(file, random.nextBoolean() ? FileFormat.ODS : FileFormat.FODS);
                try (CalcDocument again = office.open(saved)) {
                    assertHeld(before, new WalkedSheet(office, again), "opened again");
                }
            }
            case 4 -> {
                way.add(sheet.isLocked() ? "unlock" : "lock");
                lock(sheet);
            }
            case 5 -> {
                way.add("copy the sheet");
                sheet.copySheet();
            }
            case 6 -> {
                way.add("sort");
                sheet.sort("A2:C7", random.nextInt(3), random.nextBoolean());
            }
            case 7 -> {
                way.add("insert a row");
                sheet.select("A" + (2 + random.nextInt(8)));
                sheet.call(".uno:InsertRowsBefore");
            }
            default -> {
                String cell = (char) ('A' + random.nextInt(8)) + "" + (1 + random.nextInt(12));
                String typed = TYPED.get(random.nextInt(TYPED.size()));
                way.add(cell + " " + typed);
                sheet.type(cell, typed);
            }
        }
        boolean canBeUndone = sheet.steps() > steps;
        List<String> after = sheet.held();
        for (int time = 0; canBeUndone && time < 2; time++) {
            sheet.call(".uno:Undo");
            assertHeld(before, sheet, "undone");
            sheet.call(".uno:Redo");
            assertHeld(after, sheet, "done again");
        }
        assertTrue(office.isAlive());
        return canBeUndone;
    }

    private void choose(WalkedSheet sheet, Random random, List<String> way) {
        MenuItem item = CHOICES.get(random.nextInt(CHOICES.size()));
        String cells = item == MenuItem.DRAW ? "A1:C7" : "G" + (1 + random.nextInt(8));
        way.add(item.english() + " of " + cells);
        sheet.select(cells);
        Menu.choose(office, sheet.document(), item, Menu.QUIET);
    }

    /** What comes back is what was shared. */
    private void sharedAndBack(WalkedSheet sheet, Path file) {
        Path copy = Path.of(file + ".ods");
        String told = Menu.share(office, sheet.document(), copy);
        if (!copy.toFile().exists()) {
            assertTrue(told.length() > 20, told);
            return;
        }
        List<String> before = sheet.held();
        try (CalcDocument document = office.open(copy)) {
            Menu.choose(office, document, MenuItem.BRING_BACK, Menu.QUIET);
            assertHeld(before, new WalkedSheet(office, document), "brought back");
        }
    }

    /** Only the lines that differ are told. */
    private static void assertHeld(List<String> expected, WalkedSheet sheet, String when) {
        List<String> now = sheet.held();
        assertEquals(
                String.join(
                        "\n",
                        expected.stream().filter(line -> !now.contains(line)).toList()),
                String.join(
                        "\n",
                        now.stream().filter(line -> !expected.contains(line)).toList()),
                when);
        assertEquals(expected, now, when);
    }

    private void lock(WalkedSheet sheet) {
        office.call("locking", () -> {
            XProtectable page = Uno.as(XProtectable.class, sheet.first());
            if (page.isProtected()) {
                page.unprotect("");
            } else {
                page.protect("");
            }
            return true;
        });
    }

    private CalcDocument readings() {
        return office.newDocumentInView()
                .text("A1", "min")
                .text("B1", "bare")
                .text("C1", "wool")
                .number("E1", 2)
                .numbersDown("A2", 0, 5, 10, 15, 20, 25)
                .numbersDown("B2", 40, 34, 30, 26, 24, 21)
                .numbersDown("C2", 40, 37, 35, 33, 31, 29)
                .formula("G1", "=COOL.RATE(A2:A7;B2:B7;E1)")
                .formula("G2", "=COOL.HALFTIME(A2:A7;C2:C7;E1)")
                .formula("G3", "=CHECK.READINGS(A2:A7;B2:B7;E1)")
                .formula("G4", "=TEMP.CONVERT(B2;\"C\";\"F\")+A3")
                .formula("G5", "=COOL.RATE(A2;B2;E1)")
                .formula("G6", "=SUM(B2:C7)")
                .arrayFormula("J1:K3", "=COOL.RANK(A2:A7;B1:C7;E1)");
    }
}
