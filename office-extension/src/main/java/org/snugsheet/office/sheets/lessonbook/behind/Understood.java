package org.snugsheet.office.sheets.lessonbook.behind;

import java.util.List;
import org.snugsheet.engine.insulation.Material;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.engine.lesson.Power;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.NamedRanges;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.sheets.lessonbook.layout.Names;
import org.snugsheet.office.sheets.lessonbook.start.StartWords;
import org.snugsheet.office.words.Language;

/**
 * What was understood of the boxes on the first page, each in a named cell, with the usual value where a box is blank; and the lists to
 * choose from.
 */
public final class Understood {

    /** What the list of wraps offers, as the engine names them; a class brings these from home. */
    private static final List<String> OFFERED = List.of(
            "wool",
            "fleece",
            "cotton cloth",
            "felt",
            "down",
            "newspaper",
            "shredded paper",
            "corrugated cardboard",
            "small bubble wrap",
            "polystyrene foam",
            "foam rubber",
            "aluminum foil",
            "leaves",
            "hay",
            "sawdust",
            "feathers");

    private static final String LIST_COLUMNS = "DEFGH";

    private final Page page;
    private final BookPlan plan;
    private final Language language;
    private final NamedRanges names;
    private int row = 1;

    /**
     * What was understood.
     *
     * @param page the page behind the others
     * @param plan how large the book is
     * @param book the book
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public Understood(Page page, BookPlan plan, Book book) throws com.sun.star.uno.Exception {
        this.page = page;
        this.plan = plan;
        this.language = book.language();
        this.names = book.names();
    }

    /**
     * Writes it.
     *
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public void write() throws com.sun.star.uno.Exception {
        page.text("A1", language.words(BehindWords.TITLE)).look("A1", CellStyleName.TITLE);
        page.width("A1", 30).width("B1:AR1", 22);
        lists();
        setting(Names.SCALE, "IF(ISNUMBER(SEARCH(\"F\";typed_scale));\"F\";\"C\")");
        setting(Names.SHOWN, "IF(LEN(typed_shown)=0;scale;IF(ISNUMBER(SEARCH(\"F\";typed_shown));\"F\";\"C\"))");
        setting(
                Names.MARK,
                "IF(ISNUMBER(typed_mark);IF(typed_mark>0;typed_mark;" + usual(1, 2) + ");" + usual(1, 2) + ")");
        setting(Names.PLACE, "IFERROR(MATCH(typed_place;offered_places;0);4)");
        setting(Names.WHERE, "CHOOSE(place;\"still water\";\"still water\";\"contact\";\"still air\")");
        setting(Names.START, read("typed_start", usual(40, 104)));
        setting(Names.VOLUME, quantity("typed_volume", "250"));
        setting(Names.LESSON, quantity("typed_lesson", String.valueOf(plan.minutes())));
        setting(Names.INTERVAL, quantity("typed_interval", String.valueOf(plan.interval())));
        setting(Names.HOT_TAP, read("typed_hot", usual(50, 122)));
        setting(Names.COLD_TAP, read("typed_cold", usual(12, 54)));
        setting(Names.ROOM, read("typed_room", usual(21, 70)));
        setting(Names.TUB, quantity("typed_tub", "MAX(4000;4*volume*COUNTIF(wraps;\"?*\"))"));
        setting(Names.KEPT_DRY, "IF(typed_dry=INDEX(yes_no;2);0;1)");
        setting(
                Names.TOO_HOT,
                "IF(ISNUMBER(start);IF(start>"
                        + usual(SafeStart.SCHOOL_LIMIT.celsius(), SafeStart.SCHOOL_LIMIT.in(Scale.FAHRENHEIT))
                        + ";1;0);0)");
        setting(Names.SPREAD, String.valueOf(Power.USUAL_SPREAD));
        // A cup with thermometers in it is read on the same scale; ice water needs none.
        setting("cold_typed", "IF(LEN(typed_surroundings)=0;\"\";IFERROR(TEMP.READ(typed_surroundings;scale);\"?\"))");
        setting("around_read", "COUNT(typed_around)");
        setting(Names.AROUND_KNOWN, "IF(OR(around_read>1;place=2;LEN(typed_surroundings)>0);1;0)");
        setting("melting_ice", "\"melting ice\"");
        setting(
                Names.COLD,
                "IF(around_read>1;AVERAGE(typed_around);IF(ISNUMBER(cold_typed);cold_typed;CHOOSE(place;" + usual(5, 41)
                        + ";" + usual(0, 32) + ";" + usual(0, 32) + ";" + usual(2, 36) + ")))");
        names.computed(
                Names.AROUND,
                "IF(around_read>1;typed_around;IF(place=2;melting_ice;IF(LEN(typed_surroundings)=0;\"\";typed_surroundings)))");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, language.words(BehindWords.TITLE)).applyUnprinted(page);
    }

    private static String usual(double celsius, double fahrenheit) {
        return "IF(scale=\"F\";" + fahrenheit + ";" + celsius + ")";
    }

    /** A temperature with or without its sign; a box that cannot be read is a question mark, which the functions refuse. */
    private static String read(String box, String otherwise) {
        return "IF(LEN(" + box + ")=0;" + otherwise + ";IFERROR(TEMP.READ(" + box + ";scale);\"?\"))";
    }

    private static String quantity(String box, String otherwise) {
        return "IF(ISNUMBER(" + box + ");IF(" + box + ">0;" + box + ";" + otherwise + ");" + otherwise + ")";
    }

    private void setting(String name, String formula) throws com.sun.star.uno.Exception {
        row++;
        page.text("A" + row, name).look("A" + row, CellStyleName.LABEL);
        page.look("B" + row, CellStyleName.RESULT);
        names.fixed(name, page, "B" + row);
        page.formula("B" + row, "=" + formula);
    }

    private void lists() throws com.sun.star.uno.Exception {
        list(0, "offered_scales", List.of("°C", "°F"));
        list(1, "offered_places", words(StartWords.TUB, StartWords.ICE_TUB, StartWords.SNOW, StartWords.COLD_AIR));
        list(2, "yes_no", words(StartWords.YES, StartWords.NO));
        List<String> wraps = new java.util.ArrayList<>(List.of(language.words(BookWords.BARE)));
        OFFERED.stream().map(Materials::find).map(this::shown).forEach(wraps::add);
        list(3, "offered_wraps", wraps);
        names.fixed("bare_word", page, LIST_COLUMNS.charAt(3) + "2");
    }

    private String shown(Material material) {
        return Materials.nameIn(material, language.locale());
    }

    private List<String> words(StartWords... some) {
        return java.util.Arrays.stream(some).map(language::words).toList();
    }

    private void list(int column, String name, List<String> entries) throws com.sun.star.uno.Exception {
        char letter = LIST_COLUMNS.charAt(column);
        page.text(letter + "1", name).look(letter + "1", CellStyleName.LABEL);
        for (int i = 0; i < entries.size(); i++) {
            page.text(letter + "" + (2 + i), entries.get(i));
        }
        names.fixed(name, page, letter + "2:" + letter + (1 + entries.size()));
    }
}
