package org.snugsheet.office.sharing;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.table.XCellRange;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import org.snugsheet.office.functions.FunctionIndex;
import org.snugsheet.office.sharing.living.StepsPage;
import org.snugsheet.office.sharing.living.Translator;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DocumentLanguage;
import org.snugsheet.office.words.Language;

/** The formulas of a copy that goes on working, and the page of their steps. */
final class LivingFormulas {

    private static final String READ = "TEMP.READ(";
    private static final int FIRST_ROW = 3;
    private static final int BLOCK = 256;

    private final Map<KeptFormula, Translator.Living> living;
    private final Optional<StepsPage> page;

    private LivingFormulas(Optional<StepsPage> page, Map<KeptFormula, Translator.Living> living) {
        this.page = page;
        this.living = Map.copyOf(living);
    }

    /** None: all answers stay as they are. */
    static LivingFormulas none() {
        return new LivingFormulas(Optional.empty(), Map.of());
    }

    /** Translates what can be translated; nothing in the document is changed. */
    static LivingFormulas of(XSpreadsheetDocument copy, List<KeptFormula> found) throws com.sun.star.uno.Exception {
        Language language = DocumentLanguage.of(Uno.as(XPropertySet.class, copy));
        String name = WorkedOutPage.freeName(copy.getSheets(), language.words(SharingWords.STEPS));
        int reads = 0;
        for (KeptFormula formula : found) {
            String typed = FunctionIndex.asTyped(formula.formula());
            reads += typed.split(java.util.regex.Pattern.quote(READ), -1).length - 1;
        }
        try (SeenDocument seen = new SeenDocument(copy)) {
            StepsPage draft = new StepsPage(name, FIRST_ROW);
            translated(draft, seen, reads, language, found);
            StepsPage page = draft.inOrder();
            return new LivingFormulas(Optional.of(page), translated(page, seen, reads, language, found));
        }
    }

    private static Map<KeptFormula, Translator.Living> translated(
            StepsPage page, SeenDocument seen, int reads, Language language, List<KeptFormula> found) {
        Map<KeptFormula, Translator.Living> living = new HashMap<>();
        Translator translator = new Translator(page, seen, reads, language);
        for (KeptFormula formula : found) {
            translator
                    .translate(formula.sheet(), formula.formula(), formula.array())
                    .ifPresent(one -> living.put(formula, one));
        }
        return living;
    }

    Optional<Translator.Living> of(KeptFormula formula) {
        return Optional.ofNullable(living.get(formula));
    }

    /** Whether something stays as it was on the day of the copy. */
    boolean keeps(KeptFormula formula) {
        return of(formula).map(Translator.Living::keeps).orElse(true);
    }

    /** The name of the page of the steps; empty if there is none. */
    String pageName() {
        return living.isEmpty() ? "" : page.map(StepsPage::name).orElse("");
    }

    /** Adds the page of the steps, behind all others. */
    void writePage(XSpreadsheetDocument copy) throws com.sun.star.uno.Exception {
        if (living.isEmpty() || page.isEmpty()) {
            return;
        }
        StepsPage steps = page.get();
        XSpreadsheets sheets = copy.getSheets();
        sheets.insertNewByName(steps.name(), (short) sheets.getElementNames().length);
        XSpreadsheet sheet = Uno.as(XSpreadsheet.class, sheets.getByName(steps.name()));
        Language language = DocumentLanguage.of(Uno.as(XPropertySet.class, copy));
        new StepsLook(copy, sheet).of(steps);
        write(sheet, 0, new String[][] {
            {language.words(SharingWords.STEPS)}, {language.words(SharingWords.STEPS_INTRODUCTION)}
        });
        NavigableMap<Integer, NavigableMap<Integer, Object>> rows = steps.rows();
        int last = rows.isEmpty() ? 0 : rows.lastKey();
        for (int from = 0; from <= last; from += BLOCK) {
            String[][] cells = block(rows, from, Math.min(BLOCK, last - from + 1));
            if (cells.length > 0 && cells[0].length > 0) {
                write(sheet, from, cells, FIRST_ROW);
            }
        }
    }

    private static String[][] block(NavigableMap<Integer, NavigableMap<Integer, Object>> rows, int from, int count) {
        int width = 0;
        for (NavigableMap<Integer, Object> row : rows.subMap(from, from + count).values()) {
            width = Math.max(width, row.lastKey() + 1);
        }
        String[][] cells = new String[count][width];
        for (String[] row : cells) {
            Arrays.fill(row, "");
        }
        rows.subMap(from, from + count)
                .forEach((row, line) ->
                        line.forEach((column, content) -> cells[row - from][column] = content.toString()));
        return cells;
    }

    private static void write(XSpreadsheet sheet, int row, String[][] cells, int skipped)
            throws com.sun.star.uno.Exception {
        int first = row == 0 ? skipped : 0;
        if (first < cells.length) {
            write(sheet, row + first, Arrays.copyOfRange(cells, first, cells.length));
        }
    }

    private static void write(XSpreadsheet sheet, int row, String[][] cells) throws com.sun.star.uno.Exception {
        XCellRange range = sheet.getCellRangeByPosition(0, row, cells[0].length - 1, row + cells.length - 1);
        Uno.as(XCellRangeFormula.class, range).setFormulaArray(cells);
    }
}
