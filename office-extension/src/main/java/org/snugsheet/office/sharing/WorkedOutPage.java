package org.snugsheet.office.sharing;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNamed;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snugsheet.office.functions.FunctionIndex;
import org.snugsheet.office.sharing.living.Translator;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DocumentLanguage;
import org.snugsheet.office.words.Language;

/** The page of a copy that says how each of its numbers was worked out. */
final class WorkedOutPage {

    /** Where the page itself warns that readings have changed. */
    static final int WARNING_ROW = 2;

    /** Where its table begins. */
    static final int HEAD_ROW = 3;

    private static final List<String> PRINTED = List.of("_xlnm.Print_", "Excel_BuiltIn_Print_");

    private WorkedOutPage() {}

    /** An empty page with a free name, behind all others. */
    static XSpreadsheet add(XSpreadsheetDocument copy) throws com.sun.star.uno.Exception {
        String title = DocumentLanguage.of(Uno.as(XPropertySet.class, copy)).words(SharingWords.PAGE);
        XSpreadsheets sheets = copy.getSheets();
        String name = freeName(sheets, title);
        sheets.insertNewByName(name, (short) sheets.getElementNames().length);
        return Uno.as(XSpreadsheet.class, sheets.getByName(name));
    }

    /** A name that no sheet has: the title, with a number behind it if need be. */
    static String freeName(XSpreadsheets sheets, String title) {
        String name = title;
        for (int number = 2; sheets.hasByName(name); number++) {
            name = title + " " + number;
        }
        return name;
    }

    /**
     * Writes what people read. Styles first, while the rows are empty, and the hidden columns before: each change makes the office lay
     * out every text of a row to see how high it is.
     */
    static void fill(
            XSpreadsheetDocument copy,
            XSpreadsheet page,
            List<KeptFormula> formulas,
            List<CallsOutsideCells.Call> leftOut,
            Map<KeptFormula, Translator.Living> translated,
            String steps)
            throws com.sun.star.uno.Exception {
        boolean isLiving = !steps.isEmpty();
        Language language = DocumentLanguage.of(Uno.as(XPropertySet.class, copy));
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                language.words(SharingWords.SHEET),
                language.words(SharingWords.CELLS),
                language.words(SharingWords.FORMULA),
                language.words(SharingWords.MEANING),
                language.words(SharingWords.IN_THIS_COPY)));
        for (KeptFormula formula : formulas) {
            rows.add(List.of(
                    formula.sheet(),
                    formula.cells(),
                    FunctionIndex.asTyped(formula.formula()),
                    meaning(formula.formula(), language),
                    language.words(state(formula, translated))));
        }
        for (CallsOutsideCells.Call call : leftOut) {
            rows.add(List.of(
                    call.where(),
                    language.words(call.kind()),
                    FunctionIndex.asTyped(call.formula()),
                    call.told(language),
                    ""));
        }
        // The last column is for a copy that goes on working: in another one all answers stay.
        int columns = isLiving ? WorkedOutLook.COLUMNS : WorkedOutLook.STATE_COLUMN;
        List<List<String>> table =
                rows.stream().map(row -> row.subList(0, columns)).toList();
        int last = HEAD_ROW + table.size() - 1;
        WorkedOutLook.look(copy, page, columns, last);
        String introduction = isLiving
                ? language.say(SharingWords.INTRODUCTION_LIVING, steps)
                : language.words(SharingWords.INTRODUCTION);
        boolean isLong = WorkedOutLook.isLong(table);
        // While the page is empty: later the office would look how it falls on paper.
        XCellRange printed = isLong
                ? page.getCellRangeByPosition(0, 0, WorkedOutLook.STATE_COLUMN - 1, 1)
                : page.getCellRangeByPosition(0, 0, columns - 1, last);
        WorkedOutLook.setUpForPaper(
                copy,
                page,
                language,
                Uno.as(XCellRangeAddressable.class, printed).getRangeAddress());
        write(page, 0, language.words(SharingWords.PAGE));
        write(page, 1, isLong ? introduction + " " + language.words(SharingWords.LONG_LIST) : introduction);
        Uno.as(XCellRangeData.class, page.getCellRangeByPosition(0, HEAD_ROW, columns - 1, last))
                .setDataArray(table.stream().map(List::toArray).toArray(Object[][]::new));
    }

    private static SharingWords state(KeptFormula formula, Map<KeptFormula, Translator.Living> translated) {
        Translator.Living living = translated.get(formula);
        return living == null
                ? SharingWords.STAYS
                : living.keeps() ? SharingWords.GOES_ON_IN_PART : SharingWords.GOES_ON;
    }

    /**
     * What a page holds that was written by us, to know it again: its name and a fingerprint of its words.
     *
     * @param page the page
     */
    static String fingerprint(XSpreadsheet page) throws com.sun.star.uno.Exception {
        Area used = FollowedCells.used(page);
        Object[][] data = Uno.as(
                        XCellRangeData.class,
                        page.getCellRangeByPosition(0, 0, FollowedCells.DIFFERENT - 1, used.bottom()))
                .getDataArray();
        StringBuilder words = new StringBuilder();
        for (int row = 0; row < data.length; row++) {
            for (Object value : data[row]) {
                // The warning comes and goes by itself.
                words.append(row == WARNING_ROW ? "" : value).append('\t');
            }
            words.append('\n');
        }
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest(words.toString().replaceAll("\\s+$", "").getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest) + " "
                    + Uno.as(XNamed.class, page).getName();
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /**
     * The page of a copy.
     *
     * @param fingerprint what the copy keeps of it; empty in an early copy, whose page was made in the language the document had
     *     then, whatever it has now
     */
    static Optional<XSpreadsheet> of(XSpreadsheetDocument copy, String fingerprint) throws com.sun.star.uno.Exception {
        List<String> names = new ArrayList<>();
        if (fingerprint.isEmpty()) {
            for (Language language : Language.values()) {
                names.add(language.words(SharingWords.PAGE));
            }
        } else {
            names.add(fingerprint.substring(fingerprint.indexOf(' ') + 1));
        }
        for (String name : names) {
            if (copy.getSheets().hasByName(name)) {
                return Optional.of(Uno.as(XSpreadsheet.class, copy.getSheets().getByName(name)));
            }
        }
        return Optional.empty();
    }

    /** Whether somebody wrote on the page or refers to it. */
    static boolean isSomebodys(XSpreadsheetDocument copy, XSpreadsheet page, String fingerprint)
            throws com.sun.star.uno.Exception {
        return isInUse(copy, page, Uno.as(XNamed.class, page).getName())
                || (!fingerprint.isEmpty() && !fingerprint.equals(fingerprint(page)));
    }

    /** Whether there are notes or drawings on it, or formulas or names elsewhere look at it. */
    private static boolean isInUse(XSpreadsheetDocument copy, XSpreadsheet page, String name)
            throws com.sun.star.uno.Exception {
        if (Notes.annotated(page).length > 0
                || Uno.as(XDrawPageSupplier.class, page).getDrawPage().getCount() > 0) {
            return true;
        }
        String called = Area.quoted(name) + ".";
        for (Map.Entry<String, XNamedRange> named : DefinedNames.of(copy).entrySet()) {
            if (!isForPaper(named.getKey(), name)
                    && named.getValue().getContent().contains(called)) {
                return true;
            }
        }
        for (XSpreadsheet sheet : Uno.sheets(copy)) {
            if (!Uno.as(XNamed.class, sheet).getName().equals(name) && isCalled(called, sheet)) {
                return true;
            }
        }
        return false;
    }

    /** An .xlsx says by a name of the page itself what is printed; the second way to write it is that of LibreOffice 26. */
    private static boolean isForPaper(String name, String page) {
        return PRINTED.stream().anyMatch(printed -> name.startsWith(page + "." + printed));
    }

    /** The office’s own search for dependents ends at the edge of a sheet. */
    private static boolean isCalled(String called, XSpreadsheet sheet) throws com.sun.star.uno.Exception {
        CellRangeAddress[] blocks = Uno.as(XCellRangesQuery.class, sheet)
                .queryContentCells((short) CellFlags.FORMULA)
                .getRangeAddresses();
        for (CellRangeAddress block : blocks) {
            XCellRange range =
                    sheet.getCellRangeByPosition(block.StartColumn, block.StartRow, block.EndColumn, block.EndRow);
            for (String[] row : Uno.as(XCellRangeFormula.class, range).getFormulaArray()) {
                for (String formula : row) {
                    if (formula.contains(called)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static String meaning(String formula, Language language) {
        return FunctionIndex.calledBy(formula).stream()
                .map(function -> function.name() + ": " + function.text(language))
                .collect(Collectors.joining(" "));
    }

    private static void write(XSpreadsheet page, int row, String text) throws com.sun.star.uno.Exception {
        Uno.as(XText.class, page.getCellByPosition(0, row)).setString(text);
    }
}
