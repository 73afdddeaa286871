package org.snugsheet.engine.slips;

/** Numbers to a few decimals, for a message. */
final class Decimals {

    private Decimals() {}

    /** The number to so many decimals. */
    static double rounded(double number, int decimals) {
        double factor = Math.pow(10, decimals);
        // The largest numbers have no decimals, and times the factor they would be more than a number can be.
        return Math.abs(number) > Double.MAX_VALUE / factor ? number : Math.rint(number * factor) / factor;
    }
}
