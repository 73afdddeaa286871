package org.snugsheet.office.sharing.lean;

import java.util.ArrayList;
import java.util.List;

/**
 * The cells of its own sheet that a formula of an .xlsx names. Read sign by sign: texts, names, functions and numbers may look like cells within
 * ({@code LOG10(A1)}, {@code 1E5}).
 */
final class NamedCells {

    private static final String QUOTE = "&quot;";
    private static final String APOSTROPHE = "&apos;";
    private static final int MOST_LETTERS = 3;
    private static final int MOST_DIGITS = 7;

    private final String formula;
    private final List<Named> named = new ArrayList<>();
    private boolean isFar;

    /**
     * A cell and where its name stands in the formula, with dollar signs.
     *
     * @param column its letters
     * @param row its number
     */
    record Named(int start, int end, String column, int row) {}

    /**
     * Reads a formula.
     *
     * @param formula without its equals sign, as the XML of a sheet has it
     */
    NamedCells(String formula) {
        this.formula = formula;
        int at = 0;
        while (at < formula.length() && !isFar) {
            at = behind(at);
        }
    }

    /** Whether it names another sheet; its cells are not known then. */
    boolean isFar() {
        return isFar;
    }

    /** The cells in their order. */
    List<Named> all() {
        return named;
    }

    /** What is at a place, and where the next begins. */
    private int behind(int at) {
        char sign = formula.charAt(at);
        if (sign == '&') {
            return behindEntity(at);
        }
        if (sign == '$' || isUpper(at)) {
            int end = behindCell(at);
            if (end > at) {
                return end;
            }
        }
        if (Character.isLetter(sign) || sign == '_' || sign == '\\') {
            int end = behindWord(at + 1);
            isFar |= is(end, '!') && sign != '\\';
            return end;
        }
        return isDigit(at) ? behindNumber(at) : at + 1;
    }

    private int behindEntity(int at) {
        if (formula.startsWith(QUOTE, at)) {
            int end = formula.indexOf(QUOTE, at + 1);
            return end < 0 ? formula.length() : end + QUOTE.length();
        }
        isFar |= formula.startsWith(APOSTROPHE, at) && formula.indexOf(APOSTROPHE + "!", at + 1) > 0;
        return at + 1;
    }

    /** Takes in a cell; what is none ends where it begins. */
    private int behindCell(int start) {
        int letters = is(start, '$') ? start + 1 : start;
        int at = letters;
        while (isUpper(at)) {
            at++;
        }
        String column = formula.substring(letters, at);
        int digits = is(at, '$') ? at + 1 : at;
        int end = digits;
        while (isDigit(end)) {
            end++;
        }
        boolean isCell = !column.isEmpty()
                && column.length() <= MOST_LETTERS
                && end > digits
                && end - digits <= MOST_DIGITS
                && !isInWord(end)
                && !is(end, '(')
                && !is(end, '!');
        if (!isCell) {
            return start;
        }
        named.add(new Named(start, end, column, Integer.parseInt(formula.substring(digits, end))));
        return end;
    }

    private int behindWord(int from) {
        int at = from;
        while (isInWord(at)) {
            at++;
        }
        return at;
    }

    /** The sign and the digits behind an {@code E} are no part of what could be taken for a cell. */
    private int behindNumber(int from) {
        int at = from;
        while (isDigit(at) || is(at, '.')) {
            at++;
        }
        return is(at, 'E') ? behindWord(at) : at;
    }

    private boolean is(int at, char sign) {
        return at < formula.length() && formula.charAt(at) == sign;
    }

    private boolean isUpper(int at) {
        return at < formula.length() && formula.charAt(at) >= 'A' && formula.charAt(at) <= 'Z';
    }

    private boolean isDigit(int at) {
        return at < formula.length() && formula.charAt(at) >= '0' && formula.charAt(at) <= '9';
    }

    private boolean isInWord(int at) {
        return at < formula.length() && (Character.isLetterOrDigit(formula.charAt(at)) || is(at, '_') || is(at, '.'));
    }
}
