package org.snugsheet.office.sheets.readings;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.NamedRanges;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.words.Language;

/**
 * A page behind the others with the typed block as the functions take it, at the same cells: clock times are minutes since the
 * first of them. Nobody types here.
 */
public final class AsRead {

    // Not by MAXIFS: a copy to share goes to spreadsheet programs that do not know it.
    private static final String LARGEST_PART = "LARGE(typed_times;COUNTIF(typed_times;\">=1\")+1)";
    private static final String SMALLEST_PART = "SMALL(typed_times;COUNTIF(typed_times;\"<=0\")+1)";
    private static final String PARTS_OF_A_DAY = "typed_times;\">0\";typed_times;\"<1\"";

    private AsRead() {}

    public static void writeTop(Page page, Grid grid, Language language) throws com.sun.star.uno.Exception {
        page.text("A1", language.words(ReadWords.AS_READ_TITLE))
                .look("A1", CellStyleName.TITLE)
                .height("A1", 10);
        page.text("A2", language.say(ReadWords.AS_READ_PURPOSE, grid.block()));
        page.width("A1:Z1", 24);
    }

    /**
     * The names {@code by_clock} and {@code mixed_times}: whether {@code typed_times} are times of the day, or some of them are.
     *
     * @param names the names of the document
     */
    public static void nameClock(NamedRanges names) {
        // Somebody who types 9:05 types a part of a day, less than 1; texts such as 9.05 am are left to COOL.MINUTES,
        // too.
        // Readings of one lesson lie within a fifth of a day, or pass noon or midnight on a clock of twelve hours.
        names.computed(
                        "by_clock",
                        "OR(SUMPRODUCT(--ISTEXT(typed_times))>0;AND(COUNT(typed_times)>1;MAX(typed_times)<1;"
                                + "OR(MAX(typed_times)-MIN(typed_times)<0.2;"
                                + "INDEX(typed_times;COUNT(typed_times))<MAX(typed_times))))")
                // Two parts of a day close together beside a whole minute: no thermometer is read every few seconds
                // first.
                .computed(
                        "mixed_times",
                        "AND(COUNTIFS(" + PARTS_OF_A_DAY + ")>1;COUNTIF(typed_times;\">=1\")>0;IFERROR(" + LARGEST_PART
                                + "-" + SMALLEST_PART + ";1)<1/6)");
    }

    /** What is typed, at the same cells of another page, by the names {@code typed_times} and {@code typed_readings}. */
    public static void mirror(Book book, Page page, Grid grid) throws com.sun.star.uno.Exception {
        nameClock(book.names());
        page.look(grid.block(), CellStyleName.RESULT).look(grid.heads(), CellStyleName.HEAD);
        page.text(grid.times() + "" + grid.head(), book.language().words(ReadWords.MINUTES))
                .look(grid.times() + "" + grid.head(), CellStyleName.HEAD);
        page.table(
                grid.minutes(),
                "=IFERROR(IF(mixed_times;\"?\";IF(by_clock;COOL.MINUTES(typed_times);" + asTyped("typed_times") + "));"
                        + asTyped("typed_times") + ")");
        // An error that somebody typed spoils its own jar only.
        page.table(grid.readings(), "=IFERROR(" + asTyped("typed_readings") + ";\"?\")");
    }

    private static String asTyped(String cells) {
        return "IF(LEN(" + cells + ")=0;\"\";" + cells + ")";
    }

    /** The row behind all others, from which on more may be kept on this page. */
    public static String below(Grid grid) {
        return "A" + (grid.lastRow() + grid.rows() + 28 + 3 * grid.jars());
    }
}
