package org.snugsheet.office.sheets.teachersnotes;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;

/** The texts of {@link TeachersNotes}. */
final class NotesToRead {

    /** The last row of the first page. */
    static final int LAST_ROW = 18;

    private NotesToRead() {}

    static void onFirstPage(Page page, int row) throws com.sun.star.uno.Exception {
        section(page, "E", row, "What heat does", 46);
        page.paragraphs(
                "A" + (row + 1),
                "From warm to cold, by itself.",
                "Heat goes from the warmer thing to the colder one until both are equally warm. Cold does not go"
                        + " anywhere.",
                "Faster, the greater the difference.",
                "A jar that is twice as much warmer than the snow loses heat twice as fast. So its curve starts steep"
                        + " and grows flat, and each half-time takes half of what is left.",
                "In four ways.",
                "Through things that touch (conduction), with moving air or water (convection), as radiation, and with"
                        + " water that evaporates. A lid stops much of the last; a wrap holds air still and slows the"
                        + " first two.",
                "A wrap makes no heat.",
                "It only slows heat down, both ways: a sock keeps an ice lolly cold as well.");
        section(page, "E", row + 2, "What children often think, and what may help", 88);
        page.paragraphs(
                "A" + (row + 3),
                "“A sock makes the jar warm.”",
                "Put a thermometer alone into a sock for ten minutes. Does it rise? Then wrap a jar of ice water.",
                "“A coat would melt the snowman.”",
                "Wrap one of two equal snowballs, and see which one lasts. The coat keeps heat out as well as in.",
                "“The cold comes in.”",
                "Ask what moves. The bath beside the jar grows warmer: something came out.",
                "“Metal and glass are colder than wool.”",
                "Let them feel, then read: all things in one room are as warm as the room. Metal takes the heat of the"
                        + " hand away faster.",
                "“More layers are always better.”",
                "Often, but not when they are pressed flat, or wet: then there is less still air in them.",
                "“The jar that lost more degrees has the worse wrap.”",
                "Not if it began warmer. Compare half-times, or begin alike.",
                "“Heat and temperature are the same.”",
                "A thimble and a bucket at 40 °C: which one warms more snow?");
    }

    static Page secondPage(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page("More notes");
        page.width("A1", 184);
        page.height("A1", 10);
        page.text("A1", "Questions, uncertainty, standards, safety").look("A1", CellStyleName.TITLE);
        section(page, "A", 2, "Questions to ask", 50);
        page.paragraphs(
                "A3",
                "Before:",
                "Which wrap will win, and why do you think so? What must be the same for all jars, so that the test is"
                        + " fair? Where will the heat go? What would a jar without a wrap tell us?",
                "While reading:",
                "Is it cooling as fast as at the beginning? What will the next reading be? What do you do with a"
                        + " reading that cannot be right?",
                "Afterwards:",
                "How sure are we? What would happen if we did it again? Could two wraps be equally good? What do the"
                        + " best wraps have in common? Where do you meet this at home, and which animal does it too?",
                "With numbers:",
                "When was half of the difference to the snow gone? And half of what was left then?");
        section(page, "A", 4, "How to read the ±", 66);
        page.paragraphs(
                "A5",
                "± is the standard error.",
                "If you did the same again and again, about two answers in three would lie within ± of the true one,"
                        + " and nineteen in twenty within twice the ±. “95 % sure” is that wider range, made wider still"
                        + " when readings are few.",
                "Where does it come from?",
                "From how far the readings lie from the curve, and from the marks of the thermometer: nobody reads"
                        + " between them.",
                "What makes it smaller?",
                "More readings, a longer time, a finer thermometer, a greater difference to the surroundings, and"
                        + " above all more jars of the same wrap: jars differ even when readings do not.",
                "What does it leave out?",
                "What no reading shows: a room that drifts while nobody reads it, a thermometer that reads high or had"
                        + " not settled, reading down to the mark. Each can shift a cooling constant by some per cent;"
                        + " CHECK.FAIR says by how many for your jars. So hold all thermometers in one glass of water"
                        + " first.",
                "“Cannot tell” is a result.",
                "It says that this test was too small for this difference, not that there is none.");
        section(page, "A", 6, "Standards by number (from memory, wording shortened)", 42);
        page.paragraphs(
                "A7",
                "Science, US:",
                "K-2-ETS1-3 (compare two designs by tests), 2-PS1-2 (which material suits a purpose), 3-5-ETS1-1 to"
                        + " 3-5-ETS1-3 (a design problem, several solutions, fair tests), 4-PS3-2 (energy moves from place"
                        + " to place by heat among others), MS-PS3-3 (design a device that slows or speeds the transfer of"
                        + " heat), MS-PS3-4 (energy, matter, mass and temperature).",
                "Mathematics, US:",
                "5.G.A.2 (graph points in the first quadrant), 6.SP.B.5 (summarize numbers in their context).",
                "Elsewhere:",
                "look for fair tests, thermal insulators, reading scales and line graphs in your own curriculum.");
        section(page, "A", 8, "Safety", 108);
        page.paragraphs(
                "A9",
                "Warm water:",
                "tap water of about 40 °C (104 °F) is enough. No warmer than 43 °C (109 °F), the limit that UK school"
                        + " guidance gives for water pupils can reach (Building Bulletin 87). Kettles and boiling water"
                        + " stay out of the lesson. An adult mixes, pours, and checks with a thermometer.",
                "A scald:",
                "cool running water on it at once, for 20 minutes (UK National Health Service, from memory), and call"
                        + " for help.",
                "Wraps:",
                "ask about allergies first: wool, feathers, fur, hay, latex. Plastic bags and film stay off faces,"
                        + " foam beads and small parts out of mouths. Glass wool, rock wool and loft insulation only if an"
                        + " adult seals them in; old vermiculite never: it can hold asbestos. No found feathers, raw fur"
                        + " or moldy leaves; wash hands after soil. Blunt scissors, or an adult cuts.",
                "Where jars stand:",
                "low, in a tray of snow on a low table, not on a high or open windowsill.",
                "Glass:",
                "use plastic, or sturdy glass without cracks; carry it with both hands; never pour warm water into icy"
                        + " glass. An adult sweeps up what breaks. No mercury thermometers; a thermometer is not for"
                        + " stirring.",
                "Snow and ice:",
                "hands in ice hurt soon: gloves or a spoon, and only for moments. Nobody eats it. Floors with water or"
                        + " snow on them are slippery: wipe at once. ",
                "Outdoors:",
                "children cool faster than adults. From about −18 °C (0 °F) of wind chill on, bare skin is at risk;"
                        + " from −27 °C (−16 °F) on, stay in (COLD.FROSTBITE names the sources). Cover faces and fingers,"
                        + " and go in before anybody shivers.",
                "Who decides:",
                "your school’s policy, local rules and the adults in the room. These notes do not replace them.");
        new PrintSetup(PrintSetup.Way.PORTRAIT, "Teacher’s notes: more").apply(page, "A1:A9");
        return page;
    }

    private static void section(Page page, String last, int row, String heading, double millimeters)
            throws com.sun.star.uno.Exception {
        page.height("A" + row, 8).height("A" + (row + 1), millimeters);
        page.look("A" + row + ":" + last + row, CellStyleName.SECTION).text("A" + row, heading);
        String cells = "A" + (row + 1) + ":" + last + (row + 1);
        if (!last.equals("A")) {
            page.merge(cells);
        }
        page.look(cells, CellStyleName.NOTE);
    }
}
