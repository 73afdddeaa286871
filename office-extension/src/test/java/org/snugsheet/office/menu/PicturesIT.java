package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.awt.PosSize;
import com.sun.star.container.XNameReplace;
import com.sun.star.frame.XController;
import com.sun.star.frame.XModel;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.util.XChangesBatch;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.drawing.DrawingWords;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.investigation.InvestigationWords;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;
import org.snugsheet.office.words.OfficeLanguage;

/**
 * Pictures of every line of the menu, to be looked at by somebody who has changed a window: each line is chosen by keyboard in an
 * office on a real screen. See DEVELOPERS.md for the command; without {@code -Dpictures=folder} nothing is done.
 */
@EnabledIfSystemProperty(named = "pictures", matches = ".+")
class PicturesIT {

    private static final Locale SPOKEN = Locale.forLanguageTag(System.getProperty("pictures.language", "en-US"));

    private static final double[] MINUTES = {0, 3, 6, 9, 12, 15, 18, 21, 24, 27, 30};

    private static final boolean FAHRENHEIT = "US".equals(SPOKEN.getCountry());
    private static final String SURROUNDINGS = FAHRENHEIT ? "37" : "3";

    private static final String SCALE = FAHRENHEIT ? ";;\"F\")" : ")";

    private static Office office;
    private static Language language;
    private static Screen screen;

    @BeforeAll
    static void start() {
        office = SharedOffice.withExtension().inLocale(SPOKEN).withWindows().start();
        // The menu speaks it after the next start, and only where the office was installed with it.
        set("/org.openoffice.Office.Linguistic/General", "UILocale", SPOKEN.getLanguage());
        // Else each desktop has its own mind on it.
        set("/org.openoffice.Office.Common/View/Menu", "IsSystemIconsInMenus", false);
        set("/org.openoffice.Office.Common/View/Menu", "ShowIconsInMenues", true);
        office = office.restart();
        // Our windows speak it anyway.
        set("/org.openoffice.Setup/L10N", "ooLocale", SPOKEN.getLanguage());
        language = OfficeLanguage.of(office.uno());
        screen = new Screen(Path.of(System.getProperty("pictures")));
    }

    @AfterAll
    static void close() {
        office.close();
    }

    @Test
    void menu() {
        try (CalcDocument sheet = jars()) {
            enlarge(sheet);
            screen.after(PicturesIT::openMenu);
            screen.keep("menu");
            screen.press(KeyEvent.VK_ESCAPE);
            screen.press(KeyEvent.VK_ESCAPE);
        }
    }

    @Test
    void layOut() {
        try (CalcDocument sheet = office.newDocument()) {
            enlarge(sheet);
            choose(MenuItem.LAY_OUT);
            screen.after(() -> screen.press(KeyEvent.VK_ESCAPE));
            choose(MenuItem.LAY_OUT);
            screen.keep("lay-out-1-asked");
            assertEquals(1, sheet.sheetNames().size(), "Escape gives up");
            retype(InvestigationWords.MARK, "none");
            screen.after(() -> screen.press(KeyEvent.VK_ENTER));
            screen.keep("lay-out-2-refused");
            screen.after(() -> screen.press(KeyEvent.VK_ENTER));
            retype(InvestigationWords.MARK, "1");
            retype(InvestigationWords.SURROUNDINGS, SURROUNDINGS);
            screen.press(KeyEvent.VK_ENTER);
            screen.await("the sheet", () -> Menu.isOpen(office, sheet, 1));
            screen.rest();
            screen.keep("lay-out-3-told");
            screen.press(KeyEvent.VK_ENTER);
            screen.still();
            String page = sheet.sheetNames().get(1);
            typingBeginsAtTheSurroundings(sheet, page);
            enterRunsOnToTheNextColumn(sheet, page);
            fillIn(sheet, page);
            screen.still();
            screen.keep("lay-out-4-found");
            pages("lay-out-4-sheet", 5);
        }
    }

    @Test
    void draw() {
        try (CalcDocument sheet = jars()) {
            enlarge(sheet);
            Menu.select(office, sheet, "A1:C12");
            choose(MenuItem.DRAW);
            screen.keep("draw-1-asked");
            retype(DrawingWords.SURROUNDINGS, SURROUNDINGS);
            screen.press(KeyEvent.VK_ENTER);
            screen.await("the sheet", () -> Menu.isOpen(office, sheet, 1));
            screen.rest();
            screen.keep("draw-2-told");
            screen.press(KeyEvent.VK_ENTER);
            screen.still();
            pages("draw-3-sheet", 2);
        }
    }

    @Test
    void explain() {
        try (CalcDocument sheet = jars()) {
            enlarge(sheet);
            sheet.formula("E1", "COOL.HALFTIME(A2:A12;B2:B12;" + SURROUNDINGS + SCALE)
                    .formula("E2", "COOL.RATE(A2:A3;B2:B3;" + SURROUNDINGS + SCALE);
            for (String cell : new String[] {"E1", "E2"}) {
                Menu.select(office, sheet, cell);
                choose(MenuItem.EXPLAIN);
                screen.keep("explain-" + cell);
                screen.after(() -> screen.press(KeyEvent.VK_ESCAPE));
            }
        }
    }

    @Test
    void showTheWholeTable() {
        try (CalcDocument sheet = jars()) {
            enlarge(sheet);
            sheet.formula("E1", "COOL.REPORT(A2:A12;B2:B12;" + SURROUNDINGS + SCALE)
                    .formula("E14", "COOL.HALFTIME(A2:A12;B2:B12;" + SURROUNDINGS + SCALE);
            Menu.select(office, sheet, "E1");
            choose(MenuItem.TABLE);
            screen.await("the table", () -> !(sheet.at("F2") instanceof CellResult.Blank));
            screen.still();
            screen.keep("table-1-shown");
            choose(MenuItem.TABLE);
            screen.keep("table-2-whole-already");
            screen.after(() -> screen.press(KeyEvent.VK_ESCAPE));
            Menu.select(office, sheet, "E14");
            choose(MenuItem.TABLE);
            screen.keep("table-3-none");
            screen.after(() -> screen.press(KeyEvent.VK_ESCAPE));
        }
    }

    @Test
    void shareAndBringBack() {
        try (CalcDocument sheet = jars()) {
            enlarge(sheet);
            sheet.formula("E1", "COOL.HALFTIME(A2:A12;B2:B12;" + SURROUNDINGS + SCALE);
            choose(MenuItem.SHARE);
            screen.keep("share-1-asked");
            Path copy = office.folder().resolve("copy.ods");
            screen.press(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
            screen.type(copy.toString());
            screen.press(KeyEvent.VK_ENTER);
            screen.await("the copy", () -> copy.toFile().exists());
            screen.rest();
            screen.keep("share-2-told");
            screen.press(KeyEvent.VK_ENTER);
            screen.still();
            try (CalcDocument shared = office.open(copy)) {
                enlarge(shared);
                screen.keep("share-3-copy");
                screen.press(KeyEvent.VK_CONTROL, KeyEvent.VK_PAGE_DOWN);
                screen.still();
                screen.keep("share-4-copy-page");
                choose(MenuItem.BRING_BACK);
                screen.keep("bring-back-1-asked");
                screen.after(() -> screen.press(KeyEvent.VK_ENTER));
                screen.keep("bring-back-2-told");
                screen.press(KeyEvent.VK_ENTER);
                screen.still();
                assertTrue(shared.formulaAt("E1").contains("HALFTIME"), shared.formulaAt("E1"));
            }
        }
    }

    @Test
    void cautions() {
        try (CalcDocument sheet = jars()) {
            enlarge(sheet);
            choose(MenuItem.CAUTIONS);
            screen.keep("cautions");
            screen.after(() -> screen.press(KeyEvent.VK_ESCAPE));
        }
    }

    @Test
    void setUp() {
        try (CalcDocument sheet = jars()) {
            enlarge(sheet);
            screen.after(PicturesIT::openMenu);
            screen.after(() -> screen.press(Screen.letterOf(language.words(SetUpWords.LINE))));
            screen.keep("set-up");
            screen.press(KeyEvent.VK_ENTER);
            screen.still();
        }
    }

    @Test
    void reference() {
        try (CalcDocument sheet = jars()) {
            enlarge(sheet);
            choose(MenuItem.REFERENCE);
            screen.keep("reference");
            screen.press(KeyEvent.VK_ESCAPE);
            screen.still();
        }
    }

    /** Where the cursor is at first, Enter leads on. */
    private static void typingBeginsAtTheSurroundings(CalcDocument sheet, String page) {
        int mark = sheet.rowOf(language.words(InvestigationWords.MINUTES_HEAD), page + ".A1") - 2;
        for (String typed : new String[] {SURROUNDINGS, "2"}) {
            screen.type(typed);
            screen.press(KeyEvent.VK_ENTER);
        }
        screen.still();
        assertEquals(
                Double.parseDouble(SURROUNDINGS),
                sheet.at(page + ".A" + (mark - 1)).number());
        assertEquals(2, sheet.at(page + ".A" + mark).number());
    }

    /** Typing on after the last reading of a column fills the first of the next, and no other cell. */
    private static void enterRunsOnToTheNextColumn(CalcDocument sheet, String page) {
        int head = sheet.rowOf(language.words(InvestigationWords.MINUTES_HEAD), page + ".A1");
        int last = head + MINUTES.length;
        List<List<CellResult>> others = sheet.all(page + ".A1:A" + last);
        Menu.goTo(office, sheet, "A" + last);
        for (String typed : new String[] {"30", "41"}) {
            screen.type(typed);
            screen.press(KeyEvent.VK_ENTER);
        }
        screen.still();
        assertEquals(41, sheet.at(page + ".B" + (head + 1)).number());
        for (char column = 'B'; column < 'F'; column++) {
            Menu.goTo(office, sheet, column + String.valueOf(last));
            for (String typed : new String[] {"20", "42"}) {
                screen.type(typed);
                screen.press(KeyEvent.VK_ENTER);
            }
            screen.still();
            char next = (char) (column + 1);
            assertEquals(42, sheet.at(page + "." + next + (head + 1)).number(), "after " + column);
        }
        assertEquals(others, sheet.all(page + ".A1:A" + last), "names, times and surroundings are what they were");
    }

    private static void choose(MenuItem item) {
        screen.after(PicturesIT::openMenu);
        screen.press(Screen.letterOf(language.words(item)));
        screen.still();
    }

    private static void openMenu() {
        screen.lead(language.words(MenuWords.TITLE));
    }

    private static void retype(Phrase label, String text) {
        screen.lead(language.words(label));
        screen.press(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
        screen.type(text);
    }

    private static void pages(String name, int count) {
        for (int page = 1; page <= count; page++) {
            screen.keep(name + "-" + page);
            screen.press(KeyEvent.VK_PAGE_DOWN);
            screen.still();
        }
    }

    /** Two jars that cannot be told apart, and a slip for the checks to find. */
    private static void fillIn(CalcDocument sheet, String page) {
        double[] rates = {0.06, 0.04, 0.03, 0.02, 0.02};
        int head = sheet.rowOf(language.words(InvestigationWords.MINUTES_HEAD), page + ".A1");
        for (int jar = 0; jar < rates.length; jar++) {
            sheet.numbersDown(page + "." + (char) ('B' + jar) + (head + 1), readings(rates[jar]));
        }
        sheet.text(page + ".C" + (head + 4), "3o");
    }

    private static CalcDocument jars() {
        return office.newDocument()
                .text("A1", "min")
                .text("B1", "bare")
                .text("C1", "wool")
                .numbersDown("A2", MINUTES)
                .numbersDown("B2", readings(0.045))
                .numbersDown("C2", readings(0.02));
    }

    private static double[] readings(double rate) {
        double[] read = new double[MINUTES.length];
        for (int i = 0; i < read.length; i++) {
            double warm = 3 + 38 * Math.exp(-rate * MINUTES[i]);
            read[i] = Math.rint(FAHRENHEIT ? 1.8 * warm + 32 : warm);
        }
        return read;
    }

    private static void enlarge(CalcDocument sheet) {
        office.call("enlarging the window", () -> {
            XController controller = Uno.as(XModel.class, sheet.uno()).getCurrentController();
            controller
                    .getFrame()
                    .getContainerWindow()
                    .setPosSize(0, 0, screen.width(), screen.height(), PosSize.POSSIZE);
            return true;
        });
        screen.still();
    }

    private static void set(String node, String name, Object value) {
        office.call("setting " + name, () -> {
            Object settings = office.service(
                            "com.sun.star.configuration.ConfigurationProvider", XMultiServiceFactory.class)
                    .createInstanceWithArguments(
                            "com.sun.star.configuration.ConfigurationUpdateAccess",
                            new Object[] {Uno.named("nodepath", node)});
            Uno.as(XNameReplace.class, settings).replaceByName(name, value);
            Uno.as(XChangesBatch.class, settings).commitChanges();
            return true;
        });
    }
}
