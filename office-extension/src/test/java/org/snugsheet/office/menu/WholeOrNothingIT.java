package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.util.XProtectable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.uno.Uno;

/** A choice that adds a page works whole, also where sheets are locked, or leaves the document as it was. */
@ExtendWith(SharedOffice.class)
class WholeOrNothingIT {

    private static final String DRAWN = "The curves are on the sheet “";

    private final Office office;

    WholeOrNothingIT(Office office) {
        this.office = office;
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "secret"})
    void pagesAreAddedBesideALockedSheet(String password) throws Exception {
        try (CalcDocument sheet = readings(office.newDocument())) {
            office.call("locking", () -> {
                Uno.as(XProtectable.class, Uno.sheets(sheet.uno()).get(0)).protect(password);
                return true;
            });
            Menu.select(office, sheet, "A1:B6");
            assertSaid(DRAWN, choose(sheet, MenuItem.DRAW));
            assertEquals(List.of("Sheet1", "Curves"), sheet.sheetNames());
            office.call("looking at the sheets", () -> {
                assertTrue(Uno.as(XProtectable.class, Uno.sheets(sheet.uno()).get(0))
                        .isProtected());
                return true;
            });
        }
    }

    @Test
    void everyChoiceCanBeMadeAgainAndAgain() throws Exception {
        try (CalcDocument sheet = readings(office.newDocument())) {
            for (int time = 0; time < 3; time++) {
                Menu.select(office, sheet, "A1:B6");
                assertSaid(DRAWN, choose(sheet, MenuItem.DRAW));
            }
            office.call("deleting sheets", () -> {
                sheet.uno().getSheets().removeByName("Curves");
                return true;
            });
            Menu.select(office, sheet, "A1:B6");
            // Whether there is a curve yet is not the question here.
            assertSaid(DRAWN + "Curves”.", choose(sheet, MenuItem.DRAW));
        }
    }

    /** A document whose sheets nobody may add to says so, and is what it was. */
    @Test
    void lockedSheetsOfADocumentStayAsTheyAre() {
        try (CalcDocument sheet = readings(office.newDocument())) {
            office.call("locking", () -> {
                Uno.as(XProtectable.class, sheet.uno()).protect("");
                return true;
            });
            List<String> before = Written.body(sheet);
            String styles = Written.styles(sheet);
            Menu.select(office, sheet, "A1:B6");
            assertSaid("No sheet can be added here", choose(sheet, MenuItem.DRAW));
            Written.assertAgain(before, sheet);
            assertEquals(styles, Written.styles(sheet));
        }
    }

    /** Whatever fails half way: no empty tab, no style. */
    @Test
    void whatFailsHalfWayLeavesNothing() {
        try (CalcDocument sheet = readings(office.newDocument())) {
            Halfway.assertLeavesNothing(office, sheet);
            assertEquals(0, Halfway.steps(office, sheet));
        }
    }

    @Test
    void aFaultIsToldInWordsAndLogged(@TempDir Path folder) throws Exception {
        try (CalcDocument sheet = readings(office.newDocument())) {
            Path file = Files.writeString(folder.resolve("file"), "no folder");
            String told = Menu.choose(
                    office, sheet, MenuItem.SHARE, Menu.QUIET, Uno.named("Target", file.toUri() + "/copy.ods"));
            assertSaid("The copy could not be written to", told);
            assertFalse(told.contains("Exception"), told);
            String log = Files.readString(office.folder().resolve("office.log"));
            assertTrue(log.contains("Not written"), log);
            assertTrue(log.contains("at org.snugsheet.office.sharing.CopyFile"), log);
        }
    }

    private String choose(CalcDocument sheet, MenuItem item) {
        return Menu.choose(office, sheet, item, Menu.QUIET);
    }

    private static void assertSaid(String begin, String said) {
        assertTrue(said.startsWith(begin), said);
    }

    private static CalcDocument readings(CalcDocument sheet) {
        return sheet.text("A1", "min")
                .text("B1", "bare")
                .numbersDown("A2", 0, 5, 10, 15, 20)
                .numbersDown("B2", 40, 34, 30, 26, 24);
    }
}
