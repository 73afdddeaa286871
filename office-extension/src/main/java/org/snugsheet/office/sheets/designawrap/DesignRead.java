package org.snugsheet.office.sheets.designawrap;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.readings.AsRead;
import org.snugsheet.office.sheets.readings.Grid;
import org.snugsheet.office.sheets.readings.JarFindings;
import org.snugsheet.office.sheets.readings.ReadWords;
import org.snugsheet.office.words.Language;

/**
 * A page behind {@link DesignAWrap}: what the class typed as the functions take it, with clock times as minutes, and what the
 * checks say of each jar. Nobody types here.
 *
 * @see AsRead
 */
final class DesignRead {

    private static final int FOUND = 12;

    private DesignRead() {}

    static Page add(Book book, Page typed) throws com.sun.star.uno.Exception {
        Grid grid = DesignAWrap.GRID;
        Language language = book.language();
        Page page = book.lastPage(language.words(ReadWords.AS_READ_PAGE));
        AsRead.writeTop(page, grid, language);
        int below = grid.lastRow() + 2;
        book.names()
                .fixed("typed_times", typed, grid.minutes())
                .fixed("typed_readings", typed, grid.readings())
                .fixed("grid", typed, grid.typed())
                .fixed("times", page, grid.minutes())
                .fixed("bare", page, grid.readings('G'))
                .fixed("wrapped", page, grid.readings('H'));
        AsRead.mirror(book, page, grid);
        page.text("F" + below, language.words(ReadWords.CAN_BE_USED)).look("F" + below, CellStyleName.LABEL);
        for (String jar : new String[] {"bare", "wrapped"}) {
            String column = jar.equals("bare") ? "G" : "H";
            String of = "(times;" + jar + ";cold;mark;scale)";
            new JarFindings(page, "_" + jar, jar)
                    .write(book, column + below, jar.equals("bare") ? 'A' : 'G', below + 4, FOUND, of);
        }
        new PrintSetup(PrintSetup.Way.LANDSCAPE, language.words(ReadWords.BEHIND_READINGS)).applyUnprinted(page);
        return page;
    }

    /** Colors what a finding speaks of, where it was typed. */
    static void mark(Page typed) throws com.sun.star.uno.Exception {
        Grid grid = DesignAWrap.GRID;
        for (String jar : new String[] {"bare", "wrapped"}) {
            Highlight.when(
                    typed,
                    grid.readings(jar.equals("bare") ? 'G' : 'H'),
                    "AND(SUMPRODUCT(--(LEN(" + jar + ")>0))>0;SUMPRODUCT(--(found_row_" + jar + "=(ROW()-" + grid.head()
                            + ")&\"\"))>0)",
                    CellStyleName.FOUND);
        }
    }
}
