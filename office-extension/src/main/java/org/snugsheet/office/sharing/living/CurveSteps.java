package org.snugsheet.office.sharing.living;

import java.util.List;
import org.snugsheet.office.words.Language;

/** The steps of the table that COOL.CURVE answers with: the curve at each time wanted, and its 95 % band, after {@code CoolingIntervals}. */
final class CurveSteps {

    /** How the curve moves with the constant. */
    private static final String ACROSS = "(-[a]*([raw.]-[first])*[byA.])";

    private CurveSteps() {}

    /** When points are wanted, once for all jars. */
    static Block minutes(StepsPage page, String title, List<String> wanted, Language language) {
        return new Block(page, title, wanted.size())
                .column("raw", language.words(LivingWords.TYPED), line -> TypedSteps.kept(wanted.get(line)));
    }

    /**
     * Writes the steps; the columns curve, low and high are the table, their heads above them.
     *
     * @param minutes when points are wanted
     * @param heads the three heads of the table
     */
    static Block write(
            StepsPage page,
            String title,
            Block minutes,
            Block fit,
            Block errors,
            Block alike,
            List<String> heads,
            Language language) {
        Block block = new Block(page, title, minutes.lines() + 1);
        for (String name : new String[] {"level", "a", "k", "first", "scale", "pp", "pq", "qq", "pSum", "qSum"}) {
            block.known(name, fit.at(name));
        }
        for (String name : new String[] {
            "trouble", "plain", "together", "isWandering", "freedom", "unsure", "wanderPp", "wanderPq", "wanderRate"
        }) {
            block.known(name, errors.at(name));
        }
        for (String name : new String[] {"ppPairs", "pqPairs", "qqPairs"}) {
            block.known(name, alike.at(name));
        }
        block.value("quantile", language.words(LivingWords.QUANTILE), "=" + Student.quantile("[freedom]"));
        block.column(
                "raw",
                language.words(LivingWords.TYPED),
                line -> line == 0 ? "=\"\"" : "=" + minutes.at("raw", line - 1));
        column(block, "byA", language.words(LivingWords.SHARE_LEFT_AT_LAST), "EXP(-[k]*([raw.]-[first]))");
        column(block, "squares", language.words(LivingWords.PULL_START_SQUARES), quadratic("[pp]", "2*[pq]", "[qq]"));
        String own =
                "IF([isWandering]=1;MAX([plain]*[squares.];" + quadratic("[wanderPp]", "2*[wanderPq]", "[wanderRate]")
                        + ");[plain]*[squares.])*(1+IF([together]=0;0;[together]*MAX(0;2*("
                        + quadratic("[ppPairs]", "[pqPairs]", "[qqPairs]") + ")))/([plain]*[squares.]))";
        String common = "((1-[byA.]*[pSum]-" + ACROSS + "*[qSum])*[unsure])";
        column(
                block,
                "half",
                language.words(LivingWords.MARGIN),
                "SQRT([quantile]^2*" + own + "+(" + Student.NORMAL + "*" + common + ")^2)");
        answer(block, "curve", heads.get(0), "([level]+[a]*[byA.])");
        answer(block, "low", heads.get(1), "([level]+[a]*[byA.]-[half.])");
        answer(block, "high", heads.get(2), "([level]+[a]*[byA.]+[half.])");
        return block;
    }

    private static String quadratic(String pp, String pq, String qq) {
        return "[byA.]^2*" + pp + "+[byA.]*" + ACROSS + "*" + pq + "+" + ACROSS + "^2*" + qq;
    }

    private static void column(Block block, String name, String said, String formula) {
        block.column(name, said, line -> line == 0 ? "=\"\"" : "=IF(ISNUMBER([raw.]);" + formula + ";\"\")");
    }

    private static void answer(Block block, String name, String head, String celsius) {
        block.column(
                name,
                head,
                line -> line == 0
                        ? "=IF([trouble]=\"\";\"" + head + "\";NA())"
                        : "=IF([trouble]<>\"\";NA();IF([raw.]=\"\";\"\";IF(ISNUMBER([raw.]);"
                                + TypedSteps.fromCelsius(celsius, "[scale]") + ";NA())))");
    }
}
