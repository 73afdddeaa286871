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
import org.snugsheet.office.harness.OfficeFailure;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
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
    void startABook() {
        try (CalcDocument sheet = office.newDocument()) {
            enlarge(sheet);
            choose(MenuItem.BOOK);
            screen.after(() -> screen.press(KeyEvent.VK_ESCAPE));
            choose(MenuItem.BOOK);
            screen.keep("book-1-asked");
            retype(BookWords.JARS, "none");
            screen.after(() -> screen.press(KeyEvent.VK_ENTER));
            screen.keep("book-2-refused");
            screen.after(() -> screen.press(KeyEvent.VK_ENTER));
            retype(BookWords.JARS, "5");
            screen.press(KeyEvent.VK_ENTER);
            String readings = language.words(BookWords.READINGS_PAGE);
            screen.await("the book", () -> isOpen(readings));
            screen.rest();
            screen.still();
            screen.keep("book-3-start");
            try (CalcDocument book = office.opened(readings)) {
                enlarge(book);
                enterRunsOnToTheNextColumn(book, readings);
                fillIn(book, readings);
                screen.still();
                screen.keep("book-4-found");
                for (int page = 5; page <= 8; page++) {
                    screen.press(KeyEvent.VK_CONTROL, KeyEvent.VK_PAGE_DOWN);
                    screen.still();
                    screen.keep("book-" + page);
                }
            }
        }
    }

    private static boolean isOpen(String page) {
        try {
            return office.opened(page).sheetNames().contains(page);
        } catch (OfficeFailure notYet) {
            return false;
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
            screen.keep("share-0-kind");
            screen.press(KeyEvent.VK_ENTER);
            screen.still();
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

    /** Typing on after the last reading of a column fills the first of the next, and no other cell. */
    private static void enterRunsOnToTheNextColumn(CalcDocument book, String page) {
        for (char column = 'C'; column < 'G'; column++) {
            Menu.goTo(office, book, "$'" + page + "'.$" + column + "$15");
            for (String typed : new String[] {"20", "42"}) {
                screen.type(typed);
                screen.press(KeyEvent.VK_ENTER);
            }
            screen.still();
            char next = (char) (column + 1);
            assertEquals(42, book.at(page + "." + next + "5").number(), "after " + column);
        }
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
    private static void fillIn(CalcDocument book, String page) {
        double[] rates = {0.06, 0.04, 0.03, 0.02, 0.02};
        String start = book.sheetNames().get(0);
        book.number(start + ".B11", Double.parseDouble(SURROUNDINGS));
        for (int jar = 0; jar < rates.length; jar++) {
            book.text(start + ".F" + (8 + jar), "wrap " + (jar + 1));
            book.numbersDown(page + "." + (char) ('C' + jar) + "5", readings(rates[jar]));
        }
        book.text(page + ".D8", "3o");
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
