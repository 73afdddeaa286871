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

    /**
     * What a check works with.
     *
     * @param stays a formula that is 1 as long as what was found on the day of the copy holds
     * @param changed one that is more than 0 if something has changed since
     * @param fit the steps of the curve
     * @param errors those of its errors
     * @param far those that look for a reading far from the curve
     */
    record Jar(String stays, String changed, Block fit, Block errors, Block far) {}

    static Table write(
            StepsPage page, String title, Block kept, Object[][] then, Jar jar, boolean asTable, Language language) {
        int lines = asTable ? Math.max(LEAST, then.length + 1) : 1;
        Block block = new Block(page, title, lines);
        Block far = jar.far();
        block.known("trouble", jar.errors().at("trouble"))
                .known("far", far.at("far"))
                .known("line", far.at("line"))
                .known("celsius", jar.fit().at("celsius"));
        block.value("stays", language.words(LivingWords.STAYS), "=" + jar.stays());
        HotSteps hot = HotSteps.write(block, jar, language);
        String where = "\""
                + language.words(LivingWords.FAR_SAID)
                        .replace("{0}", "\"&[line]&\"")
                        .replace("{1}", "\"&" + far.at("minute") + "&\"")
                + "\"";
        String said = "IF([trouble]<>\"\";[trouble];IF([far]=1;" + where + ";"
                + Formulas.text(language.words(LivingWords.CHANGED)) + "))";
        if (!asTable) {
            block.column(
                    "a0",
                    language.words(LivingWords.ANSWER),
                    "=IF([hot]=1;" + hot.sentence() + ";IF([stays]=1;" + kept.at("k0", 0) + ";" + said + "))");
            return block.table("a0", 1);
        }
        String tooFew = Formulas.text(language.words(LivingWords.TOO_FEW));
        // Too few readings are no slip; they only need more.
        String kind = "IF(OR(AND([trouble]=\"\";[far]=0);[trouble]=" + tooFew + ");"
                + Formulas.text(language.words(ProblemWords.CAUTION)) + ";"
                + Formulas.text(language.words(ProblemWords.SURE)) + ")";
        // What is no temperature stands there as an x.
        String row = "IF([trouble]=\"\";[line];IF([trouble]="
                + Formulas.text(language.words(LivingWords.READING_UNREADABLE)) + ";MATCH(\"x\";[celsius];0);\"\"))";
        String[] fresh = {row, said, kind, "\"\""};
        String[] dangers = {
            "[hotLine]", hot.whatIsWrong(), Formulas.text(language.words(ProblemWords.CAN_HURT)), hot.whatToDo()
        };
        for (int column = 0; column < fresh.length; column++) {
            String name = "k" + column;
            String now = fresh[column];
            String danger = dangers[column];
            boolean isKept = column < then[0].length;
            block.column("a" + column, language.words(LivingWords.ANSWER), line -> {
                String before = isKept && line < then.length ? kept.at(name, line) : "NA()";
                if (line == 0) {
                    return "=" + before;
                }
                // What can hurt comes first, and moves all else one line down.
                String above = isKept && line - 1 < then.length ? kept.at(name, line - 1) : "NA()";
                String first = line == 1 ? danger : "IF([stays]=1;" + above + ";" + (line == 2 ? now : "NA()") + ")";
                String otherwise = "IF([stays]=1;" + before + ";" + (line == 1 ? now : "NA()") + ")";
                return "=IF([hot]=1;" + first + ";" + otherwise + ")";
            });
        }
        return block.table("a0", fresh.length);
    }
}
