package org.snugsheet.office.sharing.living;

import org.snugsheet.office.words.Language;

/**
 * The steps of a plain check for readings that were typed since the copy was made: whether one lies too far from the curve for chance, after
 * {@code org.snugsheet.engine.cooling.Outliers}, but at a level that hardly ever blames a good reading. It finds gross slips only.
 */
final class FarSteps {

    /** How often a good jar is blamed (common practice, no source). */
    private static final String LEVEL = "0.001";

    private FarSteps() {}

    /** Ends with the values far (1 if one is), line and minute of the farthest. */
    static Block write(StepsPage page, String title, Block fit, Block errors, Language language) {
        Block block = new Block(page, title, fit.lines());
        for (String name : new String[] {"n", "ssr", "ee", "length", "clock", "row"}) {
            block.known(name, fit.at(name));
        }
        block.known("mark", errors.at("mark"));
        String spare = "([n]-3)";
        block.value(
                "limit",
                language.words(LivingWords.FAR_LIMIT),
                "=IF([n]<4;1E300;" + spare + "*(1/BETAINV(" + LEVEL + "/[n];" + spare + "/2;0.5)-1))");
        block.column(
                "free",
                language.words(LivingWords.NOT_PULLED),
                line -> "=1-" + fit.at("e", line) + "^2/[ee]-" + fit.at("across", line) + "^2/[length]");
        block.column(
                "ratio",
                language.words(LivingWords.FAR_RATIO),
                line -> "=IF(OR(" + fit.at("row", line) + "=\"\";[n]<4;[free.]<=0.000001);0;" + fit.at("r", line)
                        + "^2/([limit]*[free.]*MAX(([ssr]-" + fit.at("r", line) + "^2/[free.])/" + spare
                        + ";[mark]^2/12)))");
        block.value("far", language.words(LivingWords.FAR), "=IF(ISERROR(MAX([ratio]));0;IF(MAX([ratio])>1;1;0))");
        block.value(
                "line",
                language.words(LivingWords.ROW),
                "=IF([far]=0;\"\";INDEX([row];MATCH(MAX([ratio]);[ratio];0)))");
        block.value(
                "minute",
                language.words(LivingWords.MINUTES),
                "=IF([far]=0;\"\";INDEX([clock];MATCH(MAX([ratio]);[ratio];0)))");
        return block;
    }
}
