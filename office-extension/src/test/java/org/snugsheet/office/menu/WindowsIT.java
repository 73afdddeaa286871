package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyValue;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.OfficeSetup;
import org.snugsheet.office.harness.OfficeWithWindows;

/** The windows of the menu, read as they are shown and worked by the keyboard. */
@NeedsWindows
@ExtendWith(OfficeWithWindows.class)
class WindowsIT {

    private static final String MESSAGE = "Snugsheet";

    private static final String ASKED = "Start a lesson book";

    private final Office office;

    WindowsIT(Office office) {
        this.office = office;
    }

    static boolean theOfficeCanShowWindows() {
        return OfficeSetup.plain().canShowWindows();
    }

    @Test
    void aBookIsAskedForAndOpened() throws Exception {
        try (CalcDocument sheet = office.newDocument().locale("en-US")) {
            CompletableFuture<String> chosen = choose(sheet, MenuItem.BOOK);
            Seen form = Seen.window(office, ASKED);
            assertEquals(
                    "[Jars of the class, Minutes of reading, Minutes between readings, OK, Cancel]",
                    form.stops().toString());
            form.type("Jars of the class", "2.5");
            form.press("OK");
            Seen half = Seen.window(office, MESSAGE);
            assertSays(half, "“2.5” is not a whole number");
            half.press("OK");
            Seen.awaitGone(office, MESSAGE);
            form.type("Jars of the class", "13");
            form.press("OK");
            Seen many = Seen.window(office, MESSAGE);
            assertSays(many, "Plan 2 to 12 jars.");
            many.press("OK");
            Seen.awaitGone(office, MESSAGE);
            form.type("Jars of the class", "4");
            form.type("Minutes between readings", "5");
            form.press("OK");
            assertTrue(Seen.told(chosen).startsWith("Lesson book"));
            assertEquals(1, sheet.sheetNames().size(), "the document in front is left alone");
            try (CalcDocument book = office.opened("Readings")) {
                assertEquals("Start", book.sheetNames().get(0));
                assertEquals(4, book.at("Start.E11").number());
                assertEquals(new CellResult.Blank(), book.at("Start.E12"), "no fifth jar");
                assertEquals(30, book.at("Readings.A11").number(), "seven readings");
            }
        }
    }

    @Test
    void aCancelledWindowOpensNothing() throws Exception {
        try (CalcDocument sheet = office.newDocument()) {
            CompletableFuture<String> chosen = choose(sheet, MenuItem.BOOK);
            Seen.window(office, ASKED).press("Cancel");
            assertEquals("", Seen.told(chosen));
            Seen.awaitGone(office, ASKED);
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
