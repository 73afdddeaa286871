package org.snugsheet.engine.comparison;

import java.util.Locale;

/** Numbers in the {@code toString} of results, for programmers; sheets format their own. */
final class Plain {

    private Plain() {}

    /** A number to four significant digits. */
    static String number(double value) {
        return String.format(Locale.ROOT, "%.4g", value);
    }

    /** A number with its standard error, which has two significant digits. */
    static String withError(double value, double error) {
        return number(value) + " ± " + String.format(Locale.ROOT, "%.2g", error);
    }
}
