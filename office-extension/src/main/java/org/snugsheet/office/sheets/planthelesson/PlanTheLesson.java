package org.snugsheet.office.sheets.planthelesson;

import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.NamedRanges;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.sheets.readings.JarFindings;
import org.snugsheet.office.sheets.shared.BitterCold;
import org.snugsheet.office.sheets.shared.Invented;
import org.snugsheet.office.sheets.shared.OrDash;
import org.snugsheet.office.sheets.shared.SheetLines;

/**
 * Plan the lesson: what to mix, how much ice, when to read, how many jars, and the curves to expect.
 *
 * <p>A plan is only made for water that pupils may touch. For hotter water the functions refuse, and the sheet shows why in
 * large letters; a dash replaces a missing number.
 *
 * @see RunSheet
 * @see BehindThePlan
 */
public final class PlanTheLesson implements WorkedSheet {

    static final String PAGE = "Plan";

    static final String LESSON =
            "PLAN.LESSON(lesson;volume;start;surroundings;bare;wrapped;hot;cold;tub;jars;room;mark)";

    private static final String TITLE = "Plan the lesson";
    private static final String INVENTED = "invented numbers";

    private static final int FIRST_INPUT = 9;

    @Override
    public String fileName() {
        return "plan-the-lesson";
    }

    @Override
    public Phrase menuLine() {
        return SheetLines.PLAN;
    }

    @Override
    public String results() {
        return PAGE + ".E8:G16";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(PAGE);
        defineNames(book.names(), page);
        setSizes(page);
        writeTop(page);
        writeInputs(page);
        writeAnswers(page);
        writeNotes(page);
        rule(page);
        Page run = RunSheet.add(book);
        Page behind = BehindThePlan.add(book);
        Invented.keep(book, behind, "R4", page, "B" + FIRST_INPUT + ":B20");
        BehindThePlan.curves(behind).draw(book.office(), page, "expected_curves", "A22:G22");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, TITLE).apply(page, "A1:G22");
        page.protect();
        run.protect();
        behind.protect();
        book.describe(
                TITLE,
                "Warm water, ice, readings and jars for a lesson on cooling",
                "A worked sheet of Snugsheet with " + INVENTED
                        + ": what to mix, how much ice, when to read, how many jars of each wrap, and a run sheet to"
                        + " print for the teacher.",
                "lesson plan",
                "cooling curve",
                "insulation",
                "worked sheet",
                INVENTED);
        book.openAt(page, "B" + FIRST_INPUT);
    }

    private static void defineNames(NamedRanges names, Page page) {
        String[] inputs = {
            "lesson", "volume", "start", "surroundings", "hot", "cold", "tub", "jars", "room", "mark", "bare", "wrapped"
        };
        for (int i = 0; i < inputs.length; i++) {
            names.fixed(inputs[i], page, "B" + (FIRST_INPUT + i));
        }
        names.fixed("safe", page, "A6").fixed("interval", page, "F13").fixed("readings", page, "F14");
    }

    private static void setSizes(Page page) throws com.sun.star.uno.Exception {
        page.width("A1", 56).width("B1", 22).width("C1", 76).width("D1", 4);
        page.width("E1", 66).width("F1", 26).width("G1", 122);
        page.height("A1", 10)
                .height("A2", 7)
                .height("A3", 10.5)
                .height("A4", 1.5)
                .height("A5", 6);
        page.height("A6", 13).height("A7", 2).height("A8", 7).height("A9:A20", 8.5);
        page.height("A21", 2).height("A22", 82);
    }

    private static void writeTop(Page page) throws com.sun.star.uno.Exception {
        page.text("A1", TITLE).look("A1", CellStyleName.TITLE);
        page.merge("A2:G2").look("A2:G2", CellStyleName.PURPOSE);
        page.text(
                "A2",
                "Type what you have at hand: see what to mix, how much ice to bring, when to read and how many jars it"
                        + " takes. The next page is a run sheet to print.");
        page.merge("A3:G3").look("A3:G3", CellStyleName.CAUTION);
        page.paragraphs(
                "A3",
                "Caution:",
                "tap water can scald: an adult mixes and pours, and checks the start with a thermometer before a pupil"
                        + " touches a jar. Use plastic or sturdy glass without cracks. Ice hurts bare hands, and wet"
                        + " floors are slippery. Your school’s policy and local rules come first.");
        page.text("A5", "a boxed cell").look("A5", CellStyleName.SAMPLE);
        page.text(
                        "B5",
                        "is for you to type in. Everything else works itself out and is locked against slips; there is"
                                + " no password (Tools, Protect Sheet).")
                .look("B5:G5", CellStyleName.FOLLOWS);
        page.merge("A6:G6").look("A6:G6", CellStyleName.PURPOSE);
        page.formula("A6", "=IFERROR(PLAN.SAFE(start);\"Type the start as a temperature in °C, such as 40.\")");
        Highlight.when(page, "A6:G6", BehindThePlan.TOO_HOT, CellStyleName.ALARM);
    }

    private static void writeInputs(Page page) throws com.sun.star.uno.Exception {
        page.look("A8:C8", CellStyleName.SECTION).formula("A8", Invented.heading("1  The lesson"));
        page.look("A9:A20", CellStyleName.LABEL)
                .look("B9:B20", CellStyleName.INPUT)
                .look("C9:C20", CellStyleName.HINT);
        input(page, 9, "Reading lasts, minutes", 30, "from the first reading to the last");
        input(page, 10, "Water in one jar, milliliters", 250, "as much as a teacup holds");
        // Warm tap water: common practice, no source.
        input(page, 11, "Water at the start, °C", 40, "no more than 43 °C; see the words above");
        input(page, 12, "Surroundings, °C", 5, "");
        BitterCold.hint(page, "C12", "surroundings", "\"C\"", "the air over a tray of snow, or a tub of cold water");
        input(page, 13, "Hot tap, °C", 55, "");
        String hotTap = "IFERROR(N(TEMP.READ(hot;\"C\"))>=" + SafeStart.ADULTS_ONLY.celsius() + ";FALSE())";
        page.formula(
                "C13",
                "=IF(" + hotTap + ";\"from 60 °C (140 °F) on an adult mixes it, away from pupils\";"
                        + "\"measured by an adult; blank: no mixing\")");
        Highlight.when(page, "C13", hotTap, CellStyleName.HOT);
        input(page, 14, "Cold tap, °C", 12, "let it run first; blank: no mixing");
        page.text("A15", "Water in the tub, milliliters")
                .text("C15", "blank: a tray of snow, or the open; for a tub such as 4000");
        input(page, 16, "Jars in the tub", 6, "all of them count");
        input(page, 17, "Room, °C", 21, "the air around the tub");
        input(page, 18, "Smallest mark, °C", 1, "from one line of the thermometer to the next");
        String earlier = "from an earlier lesson: COOL.RATE";
        input(page, 19, "Cooling constant, bare, per minute", 0.05, earlier);
        input(page, 20, "Cooling constant, wrapped", 0.03, "the same, or WRAP.EXPECT");
    }

    private static void input(Page page, int row, String label, double value, String hint)
            throws com.sun.star.uno.Exception {
        page.text("A" + row, label).number("B" + row, value).text("C" + row, hint);
    }

    private static void writeAnswers(Page page) throws com.sun.star.uno.Exception {
        page.look("E8:G8", CellStyleName.SECTION)
                .text("E8", "2  The plan")
                .text("F8", "answer")
                .text("G8", "how it is worked out");
        page.look("E9:E16", CellStyleName.LABEL)
                .look("F9:F16", CellStyleName.ANSWER)
                .look("G9:G16", CellStyleName.HINT);
        page.wrapped("G9:G16").numbers("F9:F16", "0").numbers("F12", "0.0");
        String between = "The start must lie between the two taps. Without taps there is no mixing.";
        answer(
                page,
                9,
                "Hot water for one jar, ml",
                "PLAN.MIX.HOT(hot;cold;start;volume)",
                "Hot water times its fall in temperature is cold water times its rise.",
                between);
        answer(
                page,
                10,
                "Cold water for one jar, ml",
                "PLAN.MIX.COLD(hot;cold;start;volume)",
                "The rest of the jar. Stir, read, and put right with a little of either: the jug takes some heat.",
                between);
        answer(
                page,
                11,
                "Ice that melts at 0 °C, grams",
                "PLAN.ICE(tub;surroundings;jars;volume;start;bare;lesson;room)",
                "Heat of the tub down to 0 °C, of the jars and from the room, over the heat that melts ice. Take half"
                        + " as much again. Use gloves or a spoon.",
                "A tray of snow needs none worked out. For a tub, type its water, the jars and the room.");
        answer(
                page,
                12,
                "Difference shows after, minutes",
                "PLAN.TELLAPART(bare;wrapped;start;surroundings;mark)",
                "(Start − surroundings) × the difference of the two curves is one mark of the thermometer by then.",
                "They never differ by a mark. Start warmer, never above " + JarFindings.LIMIT
                        + ", wrap thicker, or take a finer thermometer.");
        answer(
                page,
                13,
                "Read every … minutes",
                "PLAN.INTERVAL(bare;start;surroundings;lesson;;mark)",
                "As seldom as still tells the cooling constant of the bare jar to 5 %, but five readings at least.",
                "Even a reading every minute would not do. Read for longer, or start warmer, never above "
                        + JarFindings.LIMIT + ".");
        answer(
                page,
                14,
                "Readings in all",
                "PLAN.READINGS(bare;start;surroundings;lesson;;mark)",
                "Minutes of the lesson over minutes between readings, and the one at minute 0.",
                "See the line above.");
        answer(
                page,
                15,
                "Jars of each wrap",
                "PLAN.REPEATS(bare;wrapped;start;surroundings;lesson;interval;;;mark)",
                "So many tell bare from wrapped in four lessons of five, if jars of one wrap differ by a tenth.",
                "Not even 20 jars of each would do. Wrap thicker, or read for longer.");
        answer(
                page,
                16,
                "The bare jar can be read for, minutes",
                "PLAN.LONGEST(bare;start;surroundings;mark)",
                "Logarithm of (start − surroundings) over a mark, divided by the cooling constant. Then it is within a"
                        + " mark of its surroundings.",
                "The jar must start warmer than its surroundings by more than a mark, and never above "
                        + JarFindings.LIMIT + ".");
        Highlight.when(
                page, "G9:G16", "AND($F1=" + OrDash.DASH + ";OR(ROW()<>11;LEN(tub)>0))", CellStyleName.TROUBLE_MESSAGE);
    }

    // The dash is for show only: the words beside it say why there is no number.
    private static void answer(Page page, int row, String label, String function, String inWords, String why)
            throws com.sun.star.uno.Exception {
        page.text("E" + row, label).formula("F" + row, OrDash.of(function));
        page.formula(
                "G" + row,
                "=IF(F" + row + "<>" + OrDash.DASH + ";\"" + inWords + "\";IF(" + BehindThePlan.TOO_HOT
                        + ";\"No plan: the start is too hot for pupils. See the words above.\";\"" + why + "\"))");
    }

    private static void writeNotes(Page page) throws com.sun.star.uno.Exception {
        page.look("E17:G17", CellStyleName.SECTION).text("E17", "What to look for");
        page.merge("E18:G20").look("E18:G20", CellStyleName.NOTE);
        page.text(
                "E18",
                "The later the difference shows, the less a short lesson can tell. If it shows after the lesson, or"
                        + " takes more jars than you have, read for longer, wrap thicker, or take a finer thermometer. Do"
                        + " not take hotter water than the words above allow. The chart shows what to expect; what the"
                        + " class reads may differ, and that is worth asking about.");
    }

    private static void rule(Page page) throws com.sun.star.uno.Exception {
        InputRules.on(page)
                .aboveZero("B9", "Reading lasts", "Minutes from the first reading to the last.")
                .aboveZero("B10", "Water in one jar", "Milliliters in each jar.")
                .hint("B11", "Water at the start", "Degrees Celsius, no more than 43. An adult checks it.")
                .hint("B12", "Surroundings", "Degrees Celsius around the jars: tub, snow or air.")
                .hint("B13", "Hot tap", "Degrees Celsius. An adult measures it. Blank: no mixing.")
                .hint("B14", "Cold tap", "Degrees Celsius, after it ran a while. Blank: no mixing.")
                .aboveZero("B15", "Water in the tub", "Milliliters. Blank: the jars stand in the open.")
                .atLeast("B16", 1, "Jars in the tub", "How many stand in it at once: a whole number.")
                .hint("B17", "Room", "Degrees Celsius of the air in the room.")
                .aboveZero("B18", "Smallest mark", "Degrees from one line of the thermometer to the next: 1, 2 or 0.5.")
                .aboveZero(
                        "B19:B20",
                        "Cooling constant",
                        "Per minute, from an earlier lesson: COOL.RATE in the sheet of the wrapped jars.");
    }
}
