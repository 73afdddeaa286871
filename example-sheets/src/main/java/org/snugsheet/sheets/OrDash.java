package org.snugsheet.sheets;

/**
 * Shows a dash where a formula has no answer. The dash is for show only: words beside it say what is wrong, which the code of
 * an error does not.
 */
final class OrDash {

    /** The dash, for a formula. */
    static final String DASH = "\"–\"";

    private OrDash() {}

    static String of(String formula) {
        return "=IFERROR(" + formula + ";" + DASH + ")";
    }
}
