package org.snugsheet.office.sharing.living;

import org.snugsheet.office.functions.check.ProblemWords;
import org.snugsheet.office.sharing.living.Translator.Table;
import org.snugsheet.office.words.Language;

/**
 * The steps of CHECK.READINGS and CHECK.ALL. As long as the readings are those that were checked, they answer what was found then; a jar with
 * a slip keeps that finding until somebody has changed the reading itself. When readings have changed, they answer with what the steps of the
 * curve refuse, with a reading that is far from the curve, or say that nothing else looked at them.
 */
final class CheckSteps {

    private static final int LEAST = 6;

    private CheckSteps() {}

    static Table write(
            StepsPage page,
            String title,
            Block kept,
            Object[][] then,
            String stays,
            Block errors,
            Block far,
            boolean asTable,
            Language language) {
        int lines = asTable ? Math.max(LEAST, then.length) : 1;
        Block block = new Block(page, title, lines);
        block.known("trouble", errors.at("trouble")).known("far", far.at("far")).known("line", far.at("line"));
        block.value("stays", language.words(LivingWords.STAYS), "=" + stays);
        String where = "\""
                + language.words(LivingWords.FAR_SAID)
                        .replace("{0}", "\"&[line]&\"")
                        .replace("{1}", "\"&" + far.at("minute") + "&\"")
                + "\"";
        String said = "IF([trouble]<>\"\";[trouble];IF([far]=1;" + where + ";"
                + Formulas.text(language.words(LivingWords.CHANGED)) + "))";
        if (!asTable) {
            block.column(
                    "a0", language.words(LivingWords.ANSWER), "=IF([stays]=1;" + kept.at("k0", 0) + ";" + said + ")");
            return block.table("a0", 1);
        }
        String tooFew = Formulas.text(language.words(LivingWords.TOO_FEW));
        // Too few readings are no slip; they only need more.
        String kind = "IF(OR(AND([trouble]=\"\";[far]=0);[trouble]=" + tooFew + ");"
                + Formulas.text(language.words(ProblemWords.CAUTION)) + ";"
                + Formulas.text(language.words(ProblemWords.SURE)) + ")";
        String[] fresh = {"IF([trouble]=\"\";[line];\"\")", said, kind, "\"\""};
        for (int column = 0; column < fresh.length; column++) {
            String name = "k" + column;
            String now = fresh[column];
            boolean isKept = column < then[0].length;
            block.column("a" + column, language.words(LivingWords.ANSWER), line -> {
                String before = isKept && line < then.length ? kept.at(name, line) : "NA()";
                return line == 0 ? "=" + before : "=IF([stays]=1;" + before + ";" + (line == 1 ? now : "NA()") + ")";
            });
        }
        return block.table("a0", fresh.length);
    }
}
