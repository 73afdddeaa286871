package org.snugsheet.office.sharing;

import com.sun.star.awt.FontWeight;
import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.text.XText;
import java.util.List;
import java.util.stream.Collectors;
import org.snugsheet.office.functions.OurFunctions;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DocumentLanguage;
import org.snugsheet.office.words.Language;

/** The page of a copy that says how each of its numbers was worked out. */
final class WorkedOutPage {

    private static final int HEAD_ROW = 3;
    private static final int[] WIDTHS = {3600, 2400, 10000, 13000};

    private WorkedOutPage() {}

    static void add(XSpreadsheetDocument copy, List<KeptFormula> formulas) throws com.sun.star.uno.Exception {
        Language language = DocumentLanguage.of(Uno.as(XPropertySet.class, copy));
        String name = language.words(SharingWords.PAGE);
        XSpreadsheets sheets = copy.getSheets();
        sheets.insertNewByName(name, (short) sheets.getElementNames().length);
        XSpreadsheet page = Uno.as(XSpreadsheet.class, sheets.getByName(name));
        write(page, 0, 0, name);
        write(page, 0, 1, language.words(SharingWords.INTRODUCTION));
        SharingWords[] heads = {SharingWords.SHEET, SharingWords.CELLS, SharingWords.FORMULA, SharingWords.MEANING};
        for (int i = 0; i < heads.length; i++) {
            write(page, i, HEAD_ROW, language.words(heads[i]));
        }
        for (int i = 0; i < formulas.size(); i++) {
            KeptFormula formula = formulas.get(i);
            int row = HEAD_ROW + 1 + i;
            write(page, 0, row, formula.sheet());
            write(page, 1, row, formula.cells());
            write(page, 2, row, OurFunctions.asTyped(formula.formula()));
            write(page, 3, row, meaning(formula, language));
        }
        look(page, formulas.size());
    }

    static void remove(XSpreadsheetDocument copy) throws com.sun.star.uno.Exception {
        // Made in the language the document had then, whatever it has now.
        for (Language language : Language.values()) {
            String name = language.words(SharingWords.PAGE);
            if (copy.getSheets().hasByName(name)) {
                copy.getSheets().removeByName(name);
            }
        }
    }

    private static String meaning(KeptFormula formula, Language language) {
        return OurFunctions.calledBy(formula.formula()).stream()
                .map(function -> function.name() + ": " + function.text(language))
                .collect(Collectors.joining(" "));
    }

    private static void write(XSpreadsheet page, int column, int row, String text) throws com.sun.star.uno.Exception {
        Uno.as(XText.class, page.getCellByPosition(column, row)).setString(text);
    }

    private static void look(XSpreadsheet page, int formulas) throws com.sun.star.uno.Exception {
        for (int i = 0; i < WIDTHS.length; i++) {
            Object column = Uno.as(XColumnRowRange.class, page).getColumns().getByIndex(i);
            Uno.as(XPropertySet.class, column).setPropertyValue("Width", WIDTHS[i]);
        }
        set(page.getCellRangeByPosition(0, 0, 0, 0), "CharWeight", FontWeight.BOLD);
        set(page.getCellRangeByPosition(0, 0, 0, 0), "CharHeight", 16f);
        set(page.getCellRangeByPosition(0, HEAD_ROW, WIDTHS.length - 1, HEAD_ROW), "CharWeight", FontWeight.BOLD);
        XCellRange all = page.getCellRangeByPosition(0, HEAD_ROW, WIDTHS.length - 1, HEAD_ROW + formulas);
        set(all, "IsTextWrapped", true);
        set(all, "VertJustify", com.sun.star.table.CellVertJustify2.TOP);
        XCellRange intro = page.getCellRangeByPosition(0, 1, WIDTHS.length - 1, 1);
        Uno.as(com.sun.star.util.XMergeable.class, intro).merge(true);
        set(intro, "IsTextWrapped", true);
        set(intro, "VertJustify", com.sun.star.table.CellVertJustify2.TOP);
        Object row = Uno.as(XColumnRowRange.class, page).getRows().getByIndex(1);
        Uno.as(XPropertySet.class, row).setPropertyValue("Height", 1500);
    }

    private static void set(XCellRange range, String property, Object value) throws com.sun.star.uno.Exception {
        Uno.as(XPropertySet.class, range).setPropertyValue(property, value);
    }
}
