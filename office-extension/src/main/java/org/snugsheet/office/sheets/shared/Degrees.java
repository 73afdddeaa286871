package org.snugsheet.office.sheets.shared;

/** Words with the cell named {@code scale} behind them, written as a capital, also where somebody types c or f. */
public final class Degrees {

    /** For a formula: a blank and the sign, such as “ °C”. */
    public static final String UNIT = "\" °\"&UPPER(scale)";

    private Degrees() {}

    /** A formula for a label such as “Around the jar, °C”, given its words with the blank at their end. */
    public static String label(String words) {
        return "=\"" + words + "°\"&UPPER(scale)";
    }

    /** The same with words behind the sign. */
    public static String label(String words, String rest) {
        return label(words) + "&\"" + rest + "\"";
    }
}
