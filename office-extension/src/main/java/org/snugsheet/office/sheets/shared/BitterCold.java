package org.snugsheet.office.sheets.shared;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.words.Language;

/**
 * Says beside surroundings that are typed that children are at risk outdoors: from −18 °C (0 °F) on their bare skin, and from −27 °C
 * (−16 °F) on they stay in. The limits and their sources are those of the engine’s Frostbite.
 */
public final class BitterCold {

    private BitterCold() {}

    /**
     * Writes a hint that gives way to the caution.
     *
     * @param page the page
     * @param language what it is written in
     * @param cell where
     * @param around the name of the cell with the surroundings
     * @param scale a formula for the scale, C or F
     * @param hint what to say otherwise
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void hint(Page page, Language language, String cell, String around, String scale, String hint)
            throws com.sun.star.uno.Exception {
        String risk = colderThan(around, scale, -18, 0);
        page.formula(
                cell,
                "=IF(" + risk + ";IF(" + colderThan(around, scale, -27, -16)
                        + ";" + FormulaText.quoted(language, SharedWords.STAY_IN) + ";"
                        + FormulaText.quoted(language, SharedWords.FROSTBITE) + ");" + FormulaText.quoted(hint) + ")");
        Highlight.when(page, cell, risk, CellStyleName.SMALL_TROUBLE);
    }

    private static String colderThan(String around, String scale, int celsius, int fahrenheit) {
        return "IFERROR(N(TEMP.READ(" + around + ";" + scale + "))<=IF(UPPER(" + scale + ")=\"F\";" + fahrenheit + ";"
                + celsius + ");FALSE())";
    }
}
