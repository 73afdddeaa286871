package org.snugsheet.office.sheets.readings;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;

/**
 * A page behind a sheet about one jar: what was typed as the functions take it, with clock times as minutes, and what the checks
 * find. Nobody types here.
 *
 * @see AsRead
 */
public final class OneJarRead {

    /** One jar as the COOL functions take it. */
    public static final String JAR = "times;temps;surroundings;mark;scale";

    /** Where the message speaks of a finding, not of what comes next. */
    public static final String HAS_FINDING =
            "AND(COUNTA(typed_readings)>0;LEN(surroundings)>0;OR(check<>\"OK\";caution&hot<>\"\"))";

    /** Where the message speaks of water that is too hot for pupils. */
    public static final String IS_HOT = "hot<>\"\"";

    private static final int FOUND = 18;

    private OneJarRead() {}

    /**
     * Adds the page, and the names {@code times}, {@code temps} and {@code check}.
     *
     * @param book the document
     * @param typed the page that is typed on
     * @param grid where
     * @return the page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static Page add(Book book, Page typed, Grid grid) throws com.sun.star.uno.Exception {
        Page page = book.lastPage(AsRead.NAME);
        AsRead.writeTop(page, grid);
        int below = grid.lastRow() + 2;
        book.names()
                .fixed("typed_times", typed, grid.minutes())
                .fixed("typed_readings", typed, grid.readings())
                .fixed("grid", typed, grid.typed())
                .fixed("times", page, grid.minutes())
                .fixed("temps", page, grid.readings());
        AsRead.mirror(book, page, grid);
        page.text(grid.times() + "" + below, "Can they be used?").look(grid.times() + "" + below, CellStyleName.LABEL);
        new JarFindings(page, "", "temps")
                .write(book, grid.first() + "" + below, 'A', below + 4, FOUND, "(" + JAR + ")");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, "Behind the readings").applyUnprinted(page);
        return page;
    }

    /** What to do next, or the first finding; before both, that the water is too hot. */
    public static String message() {
        return "=IF(hot=\"\";\"\";" + ReadingsMessage.asSeen("hot")
                + "&\" \")&IF(COUNTA(typed_readings)=0;\"Type what your thermometer read.\";IF(LEN(surroundings)=0;"
                + "\"How warm is it around the jar? Type it into its box.\";IF(check<>\"OK\";"
                + ReadingsMessage.asSeen("check") + ";IF(caution<>\"\";" + ReadingsMessage.asSeen("caution")
                + ";IF(hot=\"\";\"OK: these\";\"These\")&\" readings can be used.\"))))";
    }

    /**
     * Colors what a finding speaks of, where it was typed.
     *
     * @param typed the page that is typed on
     * @param grid where
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void mark(Page typed, Grid grid) throws com.sun.star.uno.Exception {
        Highlight.when(
                typed,
                grid.readings(),
                "AND(" + HAS_FINDING + ";SUMPRODUCT((found_row=(ROW()-" + grid.head() + ")&\"\")*(found<>\"OK\"))>0)",
                CellStyleName.FOUND);
    }
}
