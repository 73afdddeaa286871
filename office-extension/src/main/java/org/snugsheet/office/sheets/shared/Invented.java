package org.snugsheet.office.sheets.shared;

import com.sun.star.table.CellRangeAddress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.words.Language;

/**
 * Says that numbers are invented for as long as they are: a page behind the others keeps what the sheet began with, and the name
 * {@code invented} is true as long as any of these columns is unchanged.
 */
public final class Invented {

    private Invented() {}

    /**
     * Words that mark a heading.
     *
     * @param language the language
     * @return for a formula: a blank and the words, or nothing
     */
    public static String words(Language language) {
        return "IF(invented;" + FormulaText.quoted(" " + language.words(SharedWords.INVENTED)) + ";\"\")";
    }

    /**
     * A formula for a heading.
     *
     * @param language the language
     * @param words what it says when nothing is invented
     * @return the formula
     */
    public static String heading(Language language, Phrase words) {
        return "=" + FormulaText.quoted(language, words) + "&" + words(language);
    }

    /**
     * Keeps what cells hold now.
     *
     * @param book the document
     * @param behind the page on which to keep it
     * @param corner the upper left cell to keep it at, with free columns to its right
     * @param typed the page with the cells
     * @param addresses the cells, each range as many columns as can be typed over one by one
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void keep(Book book, Page behind, String corner, Page typed, String... addresses)
            throws com.sun.star.uno.Exception {
        CellRangeAddress at = behind.place(corner);
        behind.text(corner, book.language().words(SharedWords.KEPT)).look(corner, CellStyleName.SECTION);
        List<String> columns = new ArrayList<>();
        int column = at.StartColumn;
        for (String address : addresses) {
            CellRangeAddress from = typed.place(address);
            for (int each = from.StartColumn; each <= from.EndColumn; each++) {
                String cells = CellName.of(each, from.StartRow) + ":" + CellName.of(each, from.EndRow);
                Object[][] held = typed.values(cells);
                if (Arrays.stream(held).allMatch(row -> "".equals(row[0]))) {
                    continue;
                }
                int top = at.StartRow + 2;
                int end = top + held.length - 1;
                String kept = CellName.of(column, top) + ":" + CellName.of(column, end);
                behind.values(kept, held).look(kept, CellStyleName.RESULT);
                String there = "$'" + typed.name() + "'." + cells;
                columns.add("SUMPRODUCT(--(" + there + "<>" + kept + "))=0");
                column++;
            }
        }
        String cell = CellName.of(at.StartColumn, at.StartRow + 1);
        behind.formula(cell, "=OR(" + String.join(";", columns) + ")").look(cell, CellStyleName.RESULT);
        book.names().fixed("invented", behind, cell);
    }
}
