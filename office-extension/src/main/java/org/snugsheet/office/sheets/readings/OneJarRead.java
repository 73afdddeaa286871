package org.snugsheet.office.sheets.readings;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.words.Language;

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
        Language language = book.language();
        Page page = book.lastPage(language.words(ReadWords.AS_READ_PAGE));
        AsRead.writeTop(page, grid, language);
        int below = grid.lastRow() + 2;
        book.names()
                .fixed("typed_times", typed, grid.minutes())
                .fixed("typed_readings", typed, grid.readings())
                .fixed("grid", typed, grid.typed())
                .fixed("times", page, grid.minutes())
                .fixed("temps", page, grid.readings());
        AsRead.mirror(book, page, grid);
        page.text(grid.times() + "" + below, language.words(ReadWords.CAN_BE_USED))
                .look(grid.times() + "" + below, CellStyleName.LABEL);
        new JarFindings(page, "", "temps")
                .write(book, grid.first() + "" + below, 'A', below + 4, FOUND, "(" + JAR + ")");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, language.words(ReadWords.BEHIND_READINGS)).applyUnprinted(page);
        return page;
    }

    /**
     * What to do next, or the first finding; before both, that the water is too hot.
     *
     * @param language the language of the functions
     * @return a formula
     */
    public static String message(Language language) {
        return "=IF(hot=\"\";\"\";" + ReadingsMessage.asSeen(language, "hot")
                + "&\" \")&IF(COUNTA(typed_readings)=0;" + FormulaText.quoted(language, ReadWords.TYPE)
                + ";IF(LEN(surroundings)=0;" + FormulaText.quoted(language, ReadWords.TYPE_COLD)
                + ";IF(check<>\"OK\";" + ReadingsMessage.asSeen(language, "check") + ";IF(caution<>\"\";"
                + ReadingsMessage.asSeen(language, "caution") + ";IF(hot=\"\";"
                + FormulaText.quoted(language, ReadWords.OK) + ";"
                + FormulaText.quoted(language, ReadWords.USED_ALL_THE_SAME) + ")))))";
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
