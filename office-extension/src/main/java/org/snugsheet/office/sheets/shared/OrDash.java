package org.snugsheet.office.sheets.shared;

/**
 * Shows a dash where a formula has no answer. The dash is for show only: words beside it say what is wrong, which the code of
 * an error does not.
 */
public final class OrDash {

    /** The dash, for a formula. */
    public static final String DASH = "\"–\"";

    private OrDash() {}

    public static String of(String formula) {
        return "=IFERROR(" + formula + ";" + DASH + ")";
    }
}
