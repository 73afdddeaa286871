package org.snugsheet.office.sheets.lessonbook.start;

import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.NamedRanges;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.lessonbook.layout.BookPage;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.sheets.lessonbook.layout.Names;

/** The first page: how the class measures, and what each jar is wrapped in. Everything else follows. */
public final class StartPage extends BookPage {

    private static final int FIRST = StartBox.FIRST_ROW;

    /** Where a teacher begins. */
    public static final String FIRST_BOX = "B" + FIRST;

    /** Where it is typed how cold it is. */
    public static final String SURROUNDINGS = StartBox.SURROUNDINGS.cell();

    private static final String LAST = "I";
    private static final int JARS_HEAD = 7;
    private static final int FIRST_JAR = JARS_HEAD + 1;
    private static final int MESSAGE = FIRST + StartBox.values().length + 1;

    /**
     * The page.
     *
     * @param page the page that is written
     * @param plan how large the book is
     * @param book the book
     */
    public StartPage(Page page, BookPlan plan, Book book) {
        super(page, plan, book, LAST);
    }

    /** Where the thickness of a wrap is typed. */
    public static String thickness(int jar) {
        return "G" + (FIRST_JAR + jar);
    }

    /** Names the boxes, before any formula speaks of them. */
    public void name() throws com.sun.star.uno.Exception {
        NamedRanges names = book.names();
        for (StartBox box : StartBox.values()) {
            names.fixed(box.boxName(), page, box.cell());
        }
        names.fixed("typed_wraps", page, ofJars("F"))
                .fixed("typed_thicknesses", page, ofJars("G"))
                .fixed("typed_scales", page, ofJars("H"));
    }

    private String ofJars(String column) {
        return column + FIRST_JAR + ":" + column + (FIRST_JAR + plan.jars() - 1);
    }

    /**
     * Writes it.
     *
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public void write() throws com.sun.star.uno.Exception {
        sizes();
        // While the page is empty: later the office would look how it falls on paper.
        new PrintSetup(PrintSetup.Way.LANDSCAPE, words(StartWords.TITLE)).applyStyle(page);
        top();
        boxes();
        beside();
        jars();
        message();
        rules();
        PrintSetup.print(page, "A1:" + LAST + MESSAGE);
        page.protect();
    }

    private void sizes() throws com.sun.star.uno.Exception {
        page.width("A1", 50).width("B1", 37).width("C1", 44).width("D1", 3).width("E1", 13);
        page.width("F1", 37).width("G1", 19).width("H1", 24).width("I1", 32);
        page.height("A1", 10)
                .height("A2", 11)
                .height("A3", 19)
                .height("A4", 1.5)
                .height("A5", 6)
                .height("A6", 7.5);
        page.height("A" + FIRST + ":A" + (MESSAGE - 1), 8.6)
                .height("A" + (MESSAGE - 1), 2)
                .height("A" + MESSAGE, 12);
    }

    private void top() throws com.sun.star.uno.Exception {
        page.text("A1", words(StartWords.TITLE)).look("A1", CellStyleName.TITLE);
        across(2, CellStyleName.PURPOSE).text("A2", words(StartWords.PURPOSE));
        across(3, CellStyleName.CAUTION).paragraphs("A3", words(BookWords.CAUTION_WORD), words(StartWords.CAUTION));
        page.look("A5", CellStyleName.SAMPLE).text("A5", words(StartWords.BOXES));
        page.text("B5", words(StartWords.BOXES_TYPE)).look("B5:" + LAST + "5", CellStyleName.FOLLOWS);
        page.look("A6:C6", CellStyleName.SECTION).text("A6", words(StartWords.LESSON));
        page.look("E6:" + LAST + "6", CellStyleName.SECTION).text("E6", words(StartWords.JARS));
    }

    private void boxes() throws com.sun.star.uno.Exception {
        for (StartBox box : StartBox.values()) {
            page.text("A" + box.row(), words(box.label())).look("A" + box.row(), CellStyleName.LABEL);
            page.look(box.cell(), CellStyleName.INPUT).shrunk(box.cell());
            page.look("C" + box.row(), CellStyleName.HINT).wrapped("C" + box.row());
        }
        page.text(StartBox.SCALE.cell(), book.setting().scale() == Scale.FAHRENHEIT ? "°F" : "°C");
        page.text(StartBox.PLACE.cell(), words(StartWords.COLD_AIR));
    }

    /** What is taken, beside each box: a blank one has its usual value, and one that cannot be read says so. */
    private void beside() throws com.sun.star.uno.Exception {
        hint(StartBox.MARK, "mark&\" °\"&scale");
        hint(StartBox.SHOWN, "\"°\"&shown");
        hint(
                StartBox.SURROUNDINGS,
                "IF(around_read>1;" + sentence(StartWords.READ_OVER_TIME, degrees("cold"))
                        + ";IF(AND(place=2;LEN(typed_surroundings)=0);"
                        + sentence(StartWords.ICE_IS_ZERO, degrees("cold"))
                        + ";IF(LEN(typed_surroundings)=0;" + sentence(StartWords.TYPE_ON_THE_DAY, degrees("cold"))
                        + ";IF(cold_typed=\"?\";" + sentence(StartWords.NOT_READ, "\"2\"") + ";IF(" + coldTo(-27, -16)
                        + ";"
                        + sentence(StartWords.STAY_IN, degrees("cold")) + ";IF(" + coldTo(-18, 0) + ";"
                        + sentence(StartWords.FROSTBITE, degrees("cold")) + ";" + degrees("cold") + "))))))");
        String limit = "IF(scale=\"F\";\"" + (int) Math.floor(SafeStart.SCHOOL_LIMIT.in(Scale.FAHRENHEIT)) + " °F\";\""
                + (int) SafeStart.SCHOOL_LIMIT.celsius() + " °C\")";
        hint(
                StartBox.START,
                "IF(start=\"?\";" + sentence(StartWords.NOT_READ, "\"40\"") + ";IF(too_hot=1;"
                        + sentence(StartWords.TOO_HOT, limit) + ";" + degrees("start") + "))");
        hint(
                StartBox.VOLUME,
                "IF(shown=\"F\";" + sentence(StartWords.CUPS, "volume", fluidOunces("volume")) + ";volume&\" ml\")");
        hint(StartBox.LESSON, "lesson&\" min\"");
        hint(
                StartBox.INTERVAL,
                "IF(lesson/interval>=" + plan.readings() + ";"
                        + sentence(StartWords.TOO_MANY, String.valueOf(plan.readings()))
                        + ";"
                        + sentence(
                                StartWords.READ_AT,
                                "COUNT(planned)",
                                "\"0, \"&interval&\", \"&2*interval&\" … \"&MAX(planned)")
                        + ")");
        String scalding = "IF(scale=\"F\";" + SafeStart.ADULTS_ONLY.in(Scale.FAHRENHEIT) + ";"
                + SafeStart.ADULTS_ONLY.celsius() + ")";
        hint(
                StartBox.HOT,
                "IF(hot_tap=\"?\";" + sentence(StartWords.NOT_READ, "\"50\"") + ";IF(hot_tap>=" + scalding + ";"
                        + sentence(StartWords.ADULTS_ONLY, degrees("hot_tap")) + ";"
                        + sentence(StartWords.MEASURED, degrees("hot_tap")) + "))");
        temperature(StartBox.COLD, Names.COLD_TAP, "12");
        temperature(StartBox.ROOM, Names.ROOM, "21");
        hint(
                StartBox.TUB,
                "IF(place>2;" + quoted(StartWords.NO_TUB) + ";IF(shown=\"F\";"
                        + sentence(StartWords.CUPS, "tub", fluidOunces("tub")) + ";tub&\" ml\"))");
        hint(StartBox.DRY, "IF(place>2;" + quoted(StartWords.NO_TUB) + ";INDEX(yes_no;2-kept_dry))");
        Highlight.when(page, "C" + StartBox.SURROUNDINGS.row(), coldTo(-18, 0), CellStyleName.HOT);
        for (StartBox box : new StartBox[] {StartBox.START, StartBox.HOT}) {
            String hot = box == StartBox.START ? "too_hot=1" : "AND(ISNUMBER(hot_tap);hot_tap>=" + scalding + ")";
            Highlight.when(page, "C" + box.row(), hot, CellStyleName.HOT);
        }
        for (StartBox box :
                new StartBox[] {StartBox.SURROUNDINGS, StartBox.START, StartBox.HOT, StartBox.COLD, StartBox.ROOM}) {
            Highlight.when(
                    page,
                    box.cell(),
                    "AND(LEN(" + box.boxName() + ")>0;ISERROR(TEMP.READ(" + box.boxName() + ";scale)))",
                    CellStyleName.FOUND);
        }
    }

    /** See COLD.FROSTBITE for the sources of these limits. */
    private static String coldTo(int celsius, int fahrenheit) {
        return "IF(scale=\"F\";cold<=" + fahrenheit + ";cold<=" + celsius + ")";
    }

    private void temperature(StartBox box, String name, String example) throws com.sun.star.uno.Exception {
        hint(
                box,
                "IF(" + name + "=\"?\";" + sentence(StartWords.NOT_READ, "\"" + example + "\"") + ";" + degrees(name)
                        + ")");
    }

    private void hint(StartBox box, String formula) throws com.sun.star.uno.Exception {
        page.formula("C" + box.row(), "=IFERROR(" + formula + ";\"\")");
    }

    private static String fluidOunces(String milliliters) {
        return "ROUND(" + milliliters + "/29.5735;0)";
    }

    /** A temperature of the book as it is shown. */
    public static String degrees(String name) {
        return "ROUND(TEMP.CONVERT(" + name + ";scale;shown);0)&\" °\"&shown";
    }

    private void jars() throws com.sun.star.uno.Exception {
        StartWords[] heads = {
            StartWords.JAR_HEAD,
            StartWords.WRAP_HEAD,
            StartWords.THICK_HEAD,
            StartWords.OWN_HEAD,
            StartWords.EXPECT_HEAD
        };
        page.look("E" + JARS_HEAD + ":" + LAST + JARS_HEAD, CellStyleName.NARROW_HEAD);
        for (int i = 0; i < heads.length; i++) {
            page.text((char) ('E' + i) + "" + JARS_HEAD, words(heads[i]));
        }
        for (int jar = 0; jar < plan.jars(); jar++) {
            int row = FIRST_JAR + jar;
            page.formula("E" + row, "=INDEX(numbers;" + (jar + 1) + ")").look("E" + row, CellStyleName.COUNT);
            page.look("F" + row + ":H" + row, CellStyleName.INPUT);
            page.text("F" + row, plan.wraps().get(jar)).size("F" + row, 9).wrapped("F" + row);
            page.look("I" + row, CellStyleName.HINT);
            String wrap = "INDEX(wraps;" + (jar + 1) + ")";
            String rate = "INDEX(expected;" + (jar + 1) + ")";
            page.formula(
                    "I" + row,
                    "=IF(" + wrap + "=\"\";\"\";IF(" + rate + "=\"\";" + quoted(StartWords.UNKNOWN) + ";IFERROR("
                            + sentence(
                                    StartWords.ENDS_AT,
                                    degrees("COOL.TEMP(lesson;start;plan_around;" + rate + ";scale)"),
                                    "lesson")
                            + ";\"\")))");
            page.wrapped("I" + row);
        }
    }

    private void message() throws com.sun.star.uno.Exception {
        across(MESSAGE, CellStyleName.MESSAGE);
        page.formula(
                "A" + MESSAGE,
                "=IF(too_hot=1;PLAN.SAFE(start;scale);IF(COUNTIF(wraps;\"?*\")<2;" + quoted(StartWords.NAME_TWO) + ";"
                        + quoted(StartWords.NEXT) + "))");
        Highlight.when(page, "A" + MESSAGE + ":" + LAST + MESSAGE, "too_hot=1", CellStyleName.HOT);
    }

    private void rules() throws com.sun.star.uno.Exception {
        InputRules rules = InputRules.on(page);
        rules.only(StartBox.SCALE.cell(), "offered_scales", words(StartWords.SCALE), words(StartWords.SCALE_HINT))
                .aboveZero(StartBox.MARK.cell(), words(StartWords.MARK), words(StartWords.MARK_HINT))
                .only(StartBox.SHOWN.cell(), "offered_scales", words(StartWords.SHOWN), words(StartWords.SHOWN_HINT))
                .only(StartBox.PLACE.cell(), "offered_places", words(StartWords.PLACE), words(StartWords.PLACE_HINT))
                .hint(StartBox.SURROUNDINGS.cell(), words(StartWords.SURROUNDINGS), words(StartWords.SURROUNDINGS_HINT))
                .hint(StartBox.START.cell(), words(StartWords.START), words(StartWords.START_HINT))
                .aboveZero(StartBox.VOLUME.cell(), words(StartWords.VOLUME), words(StartWords.VOLUME_HINT))
                .aboveZero(StartBox.LESSON.cell(), words(StartWords.LESSON_LASTS), words(StartWords.LESSON_HINT))
                .aboveZero(StartBox.INTERVAL.cell(), words(StartWords.INTERVAL), words(StartWords.INTERVAL_HINT))
                .hint(StartBox.HOT.cell(), words(StartWords.HOT_TAP), words(StartWords.TAP_HINT))
                .hint(StartBox.COLD.cell(), words(StartWords.COLD_TAP), words(StartWords.TAP_HINT))
                .hint(StartBox.ROOM.cell(), words(StartWords.ROOM), words(StartWords.ROOM_HINT))
                .aboveZero(StartBox.TUB.cell(), words(StartWords.TUB_VOLUME), words(StartWords.TUB_HINT))
                .only(StartBox.DRY.cell(), "yes_no", words(StartWords.KEPT_DRY), words(StartWords.DRY_HINT))
                .choice(ofJars("F"), "offered_wraps", words(StartWords.WRAP_HEAD), words(StartWords.WRAP_HINT))
                .aboveZero(ofJars("G"), words(StartWords.THICK_HEAD), words(StartWords.THICK_HINT))
                .only(ofJars("H"), "offered_scales", words(StartWords.OWN_HEAD), words(StartWords.OWN_HINT));
    }
}
