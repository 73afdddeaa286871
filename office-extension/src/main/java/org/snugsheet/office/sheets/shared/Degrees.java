package org.snugsheet.office.sheets.shared;

import org.snugsheet.engine.Phrase;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.words.Language;

/** Words with the cell named {@code scale} among them, written as a capital, also where somebody types c or f. */
public final class Degrees {

    /** For a formula: the sign, such as “°C”. */
    public static final String SIGN = "\"°\"&UPPER(scale)";

    /** For a formula: a blank and the sign, such as “ °C”. */
    public static final String UNIT = "\" °\"&UPPER(scale)";

    /** For a formula: whether the thermometers show degrees Fahrenheit. */
    public static final String IS_FAHRENHEIT = "UPPER(scale)=\"F\"";

    private static final String MILLILITERS_PER_OUNCE = "29.5735";

    private Degrees() {}

    /**
     * A formula for a label such as “Around the jar, °C”.
     *
     * @param language the language
     * @param pattern words with {@code {0}} for the sign
     * @return the formula
     */
    public static String label(Language language, Phrase pattern) {
        return "=" + FormulaText.sentence(language, pattern, SIGN);
    }

    /**
     * A formula for the label of a box for milliliters of water, with the fluid ounces of the United States where the thermometers show
     * degrees Fahrenheit.
     *
     * @param language the language
     * @return the formula; it speaks of the names {@code volume} and {@code scale}
     */
    public static String waterLabel(Language language) {
        return "=IF(AND(" + IS_FAHRENHEIT + ";ISNUMBER(volume));"
                + FormulaText.sentence(language, SharedWords.WATER_CUPS, fluidOunces("volume")) + ";"
                + FormulaText.quoted(language, SharedWords.WATER) + ")";
    }

    /**
     * A formula for milliliters as fluid ounces of the United States, 29.5735 ml each (NIST Handbook 44, appendix C).
     *
     * @param milliliters a name or a cell
     * @return the formula, without the equals sign: a text with one decimal
     */
    public static String fluidOunces(String milliliters) {
        return "FIXED(" + milliliters + "/" + MILLILITERS_PER_OUNCE + ";1)";
    }
}
