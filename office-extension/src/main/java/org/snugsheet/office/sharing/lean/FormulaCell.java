package org.snugsheet.office.sharing.lean;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A cell of a sheet that holds a formula, and where it stands in the XML. A page of steps has tens of thousands; so they are looked for by hand,
 * which takes a fraction of what patterns do.
 *
 * @param start where it begins
 * @param end where its value ends; what is behind stays as it is
 * @param tag the start tag of the cell
 * @param formula the element with its formula
 * @param value the element with its value; empty if there is none
 */
record FormulaCell(int start, int end, String tag, String formula, String value) {

    private static final String CELL = "<c r=\"";
    private static final String TYPE = " t=\"";
    private static final List<String> PLAIN = List.of("<f>", "<f aca=\"false\">");
    private static final String END = "</f>";

    /** All of them, in the order of the sheet. */
    static List<FormulaCell> of(String sheet) {
        List<FormulaCell> cells = new ArrayList<>();
        int at = sheet.indexOf(CELL);
        while (at >= 0) {
            int behindTag = behind(sheet, ">", at);
            if (sheet.startsWith("<f", behindTag)) {
                int behindFormula = behind(sheet, ">", behindTag);
                if (sheet.charAt(behindFormula - 2) != '/') {
                    behindFormula = behind(sheet, END, behindFormula);
                }
                int end = behindValue(sheet, behindFormula);
                cells.add(new FormulaCell(
                        at,
                        end,
                        sheet.substring(at, behindTag),
                        sheet.substring(behindTag, behindFormula),
                        sheet.substring(behindFormula, end)));
                behindTag = end;
            }
            at = sheet.indexOf(CELL, behindTag);
        }
        return cells;
    }

    /** A sheet in which some cells are written otherwise. */
    static String replaced(String sheet, List<FormulaCell> cells, Function<FormulaCell, String> written) {
        StringBuilder other = new StringBuilder(sheet.length());
        int at = 0;
        for (FormulaCell cell : cells) {
            other.append(sheet, at, cell.start).append(written.apply(cell));
            at = cell.end;
        }
        return other.append(sheet, at, sheet.length()).toString();
    }

    private static int behindValue(String sheet, int at) {
        if (sheet.startsWith("<v/>", at)) {
            return at + "<v/>".length();
        }
        return sheet.startsWith("<v>", at) ? behind(sheet, "</v>", at) : at;
    }

    private static int behind(String sheet, String sign, int from) {
        int at = sheet.indexOf(sign, from);
        return at < 0 ? sheet.length() : at + sign.length();
    }

    /** The letters of its name: {@code AB} of {@code AB12}. */
    String column() {
        int end = CELL.length();
        while (Character.isLetter(tag.charAt(end))) {
            end++;
        }
        return tag.substring(CELL.length(), end);
    }

    /** The number in its name. */
    int row() {
        int from = CELL.length() + column().length();
        return Integer.parseInt(tag, from, tag.indexOf('"', from), 10);
    }

    /** The formula itself, if it is neither that of an array nor shared; empty otherwise. */
    String plain() {
        for (String begin : PLAIN) {
            if (formula.startsWith(begin)) {
                return formula.substring(begin.length(), formula.length() - END.length());
            }
        }
        return "";
    }

    /** Itself as it is. */
    String whole() {
        return tag + formula + value;
    }

    /** Itself without its value, and what kind that is. */
    String withoutValue() {
        int type = tag.lastIndexOf(TYPE);
        boolean isLast = type >= 0 && tag.indexOf('"', type + TYPE.length()) == tag.length() - 2;
        return (isLast ? tag.substring(0, type) + ">" : tag) + formula;
    }
}
