package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XViewPane;
import com.sun.star.table.CellRangeAddress;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeSetup;
import org.snugsheet.office.harness.OfficeWithWindows;
import org.snugsheet.office.uno.Uno;

/** The windows of the menu, read as they are shown and worked by the keyboard. */
@NeedsWindows
@ExtendWith(OfficeWithWindows.class)
class WindowsIT {

    private static final String MESSAGE = "Snugsheet";

    private final Office office;

    WindowsIT(Office office) {
        this.office = office;
    }

    static boolean theOfficeCanShowWindows() {
        return OfficeSetup.plain().canShowWindows();
    }

    @Test
    void anInvestigationIsAskedForAndLaidOut() throws Exception {
        try (CalcDocument sheet = office.newDocument().locale("en-US")) {
            CompletableFuture<String> chosen = choose(sheet, MenuItem.LAY_OUT);
            Seen form = Seen.window(office, "Lay out an investigation");
            assertEquals(
                    "[Jars, Wraps, one per line, Minutes of reading, Minutes between readings, Scale of the thermometers, Smallest mark, degrees, "
                            + "Surroundings, degrees, OK, Cancel]",
                    form.stops().toString());
            form.type("Surroundings, degrees", "35");
            form.type("Smallest mark, degrees", "none");
            form.press("OK");
            Seen problem = Seen.window(office, MESSAGE);
            assertSays(problem, "“none” is not a number");
            problem.press("OK");
            Seen.awaitGone(office, MESSAGE);
            form.type("Smallest mark, degrees", "0.5");
            form.type("Jars", "2.5");
            form.press("OK");
            Seen half = Seen.window(office, MESSAGE);
            assertSays(half, "“2.5” is not a whole number");
            half.press("OK");
            Seen.awaitGone(office, MESSAGE);
            form.type("Jars", "4");
            form.type("Minutes between readings", "5");
            form.press("OK");
            Seen done = Seen.window(office, MESSAGE);
            assertSays(done, "for 4 jars, with the first 4 of your 5 wraps", MenuWords.STAYS_PUT.english());
            done.press("OK");
            assertTrue(Seen.told(chosen).contains("Investigation"));
            assertTrue(sheet.sheetNames().contains("Investigation"));
        }
    }

    /** In German some cautions take two lines; with eight jars the surroundings are below what most screens show. */
    @Test
    void typingBeginsAtTheSurroundingsBelowTheCautions() {
        try (CalcDocument sheet = office.newDocumentInView().locale("de-DE")) {
            Menu.choose(office, sheet, MenuItem.LAY_OUT, Menu.QUIET, Uno.named("Jars", 8));
            int surroundings = sheet.rowOf("Minuten", "Untersuchung.A1") - 3;
            office.call("looking where the cursor stands", () -> {
                CellRangeAddress chosen = Uno.as(
                                XCellRangeAddressable.class,
                                Uno.as(XModel.class, sheet.uno()).getCurrentSelection())
                        .getRangeAddress();
                assertEquals(1, chosen.Sheet);
                assertEquals(surroundings - 1, chosen.StartRow);
                assertEquals(surroundings - 1, chosen.EndRow);
                assertEquals(0, chosen.StartColumn);
                assertEquals(
                        0,
                        Uno.as(
                                        XViewPane.class,
                                        Uno.as(XModel.class, sheet.uno()).getCurrentController())
                                .getFirstVisibleRow());
                return true;
            });
        }
    }

    @Test
    void aCancelledWindowAddsNothing() throws Exception {
        try (CalcDocument sheet = office.newDocument()) {
            CompletableFuture<String> chosen = choose(sheet, MenuItem.LAY_OUT);
            Seen.window(office, "Lay out an investigation").press("Cancel");
            assertEquals("", Seen.told(chosen));
            assertEquals(1, sheet.sheetNames().size());
            Seen.awaitGone(office, "Lay out an investigation");
        }
    }

    @Test
    void curvesAreAskedForAndDrawn() throws Exception {
        try (CalcDocument sheet = jar()) {
            Menu.select(office, sheet, "A1:B6");
            CompletableFuture<String> chosen = choose(sheet, MenuItem.DRAW);
            Seen form = Seen.window(office, "Draw the curves");
            assertEquals(
                    "[Surroundings, Scale, Smallest mark, degrees, OK, Cancel]",
                    form.stops().toString());
            form.type("Surroundings", "C2");
            form.press("OK");
            Seen done = Seen.window(office, MESSAGE);
            assertSays(done, "on the sheet “Curves”", MenuWords.STAYS_PUT.english());
            done.press("OK");
            Seen.told(chosen);
            assertTrue(sheet.sheetNames().contains("Curves"));
        }
    }

    @Test
    void anExplanationIsRead() throws Exception {
        try (CalcDocument sheet = jar()) {
            sheet.formula("D1", "COOL.RATE(A2:A3;B2:B3;C2)");
            Menu.select(office, sheet, "D1");
            CompletableFuture<String> chosen = choose(sheet, MenuItem.EXPLAIN);
            Seen window = Seen.window(office, "Explain this cell");
            assertSays(window, "Only 2 of the readings can be used");
            window.press("Close");
            Seen.told(chosen);
        }
    }

    @Test
    void theCautionsAreToldInAMessage() throws Exception {
        try (CalcDocument sheet = office.newDocument()) {
            CompletableFuture<String> chosen = choose(sheet, MenuItem.CAUTIONS);
            Seen message = Seen.window(office, MESSAGE);
            assertSays(message, Caution.GLASS.english(), "Start no warmer than 43 °C (109 °F).");
            message.press("OK");
            Seen.told(chosen);
        }
    }

    /** Reads the window once: what is in a field is copied by the clipboard, which takes its time. */
    private static void assertSays(Seen window, String... parts) throws Exception {
        String text = window.text();
        for (String part : parts) {
            assertTrue(text.contains(part), text);
        }
    }

    /** The choice ends only when its last window is closed, so it is made beside the test. */
    private CompletableFuture<String> choose(CalcDocument sheet, MenuItem item, PropertyValue... arguments) {
        return Menu.chosenByAPerson(office, sheet, item, arguments);
    }

    private CalcDocument jar() {
        return office.newDocument()
                .text("A1", "min")
                .text("B1", "bare")
                .numbersDown("A2", 0, 5, 10, 15, 20)
                .numbersDown("B2", 40, 34, 30, 26, 24)
                .number("C2", 10);
    }
}
