package org.snugsheet.office.sharing.living;

import org.snugsheet.office.words.Language;

/**
 * The steps that say what rounding to the marks does to a curve beyond the errors of single readings, after {@code ReadingErrors},
 * {@code BoundedRoundingLimits} and {@code RoundingUncertainty} of {@code org.snugsheet.engine.cooling}: each pair of readings is compared.
 */
final class RoundingSteps {

    /** Stands for a limit that there is none of. */
    private static final String NONE = "1E9";

    private RoundingSteps() {}

    /** How alike the readings are rounded. Ends with the sums of the pulls of pairs. */
    static Block alike(StepsPage page, String title, Block fit, Block errors, Language language) {
        int n = fit.lines();
        Block block = known(new Block(page, title, n), fit, errors);
        block.column(
                "part",
                language.words(LivingWords.PART_OF_MARK),
                line -> "=IF(" + fit.at("row", line) + "=\"\";0;([level]+[a]*" + fit.at("e", line)
                        + ")/[mark]-INT(([level]+[a]*" + fit.at("e", line) + ")/[mark]))");
        for (int j = 0; j < n - 1; j++) {
            String column = "m" + j;
            String part = block.at("part", j);
            block.open(column, language.say(LivingWords.ROUNDED_ALIKE, j + 1));
            for (int i = j + 1; i < n; i++) {
                String apart = "ABS([part.]-" + part + ")";
                block.in(column, i, "=MAX(0;1-6*" + apart + "*(1-" + apart + "))");
            }
            String pairs = block.at(column, j + 1, n - 1 - j);
            String p = fit.at("p", j + 1, n - 1 - j);
            String q = fit.at("q", j + 1, n - 1 - j);
            block.foot("pp" + j, column, 0, "=" + fit.at("p", j) + "*SUMPRODUCT(" + pairs + ";" + p + ")");
            block.foot(
                    "pq" + j,
                    column,
                    1,
                    "=" + fit.at("p", j) + "*SUMPRODUCT(" + pairs + ";" + q + ")+" + fit.at("q", j) + "*SUMPRODUCT("
                            + pairs + ";" + p + ")");
            block.foot("qq" + j, column, 2, "=" + fit.at("q", j) + "*SUMPRODUCT(" + pairs + ";" + q + ")");
        }
        for (String each : new String[] {"pp", "pq", "qq"}) {
            block.value(
                    each + "Pairs",
                    language.words(LivingWords.PAIRS),
                    "=SUM(" + block.at(each + "0") + ":" + block.at(each + (n - 2)) + ")");
        }
        return block;
    }

    private static Block known(Block block, Block fit, Block errors) {
        for (String name : new String[] {"level", "a", "k", "n", "qq"}) {
            block.known(name, fit.at(name));
        }
        for (String name : new String[] {"mark", "together", "plain", "own", "freedom"}) {
            block.known(name, errors.at(name));
        }
        return block;
    }

    /** The constant with an error that includes rounding: for comparisons. */
    static Block conservative(StepsPage page, String title, Block fit, Block errors, Block alike, Language language) {
        int n = fit.lines();
        Block block = known(new Block(page, title, n), fit, errors);
        block.known("pairs", alike.at("qqPairs"));
        block.value("half", language.words(LivingWords.HALF_A_MARK), "=[mark]/2*(1+1E-9)");
        block.column(
                "d",
                language.words(LivingWords.DIFFERENCE),
                line -> "=IF(" + fit.at("row", line) + "=\"\";\"\";IF([a]<0;-1;1)*" + fit.at("d", line) + ")");
        block.column(
                "low",
                language.words(LivingWords.BAR_FROM),
                "=IF([d.]=\"\";\"\";IF([d.]>[half];LN([d.]-[half]);-" + NONE + "))");
        block.column(
                "high", language.words(LivingWords.BAR_TO), "=IF([d.]=\"\";\"\";IF([d.]+[half]>0;LN([d.]+[half]);0))");
        for (int j = 0; j < n - 1; j++) {
            pair(block, fit, "slow" + j, j, language.say(LivingWords.SLOWEST, j + 1), "low", "high");
            pair(block, fit, "fast" + j, j, language.say(LivingWords.FASTEST, j + 1), "high", "low");
        }
        for (int j = 0; j < n - 1; j++) {
            block.foot("slowest" + j, "slow" + j, 0, "=MAX(" + block.at("slow" + j, j + 1, n - 1 - j) + ")");
            block.foot("slowestSeen" + j, "slow" + j, 1, "=COUNT(" + block.at("slow" + j, j + 1, n - 1 - j) + ")");
            block.foot("fastest" + j, "fast" + j, 0, "=MIN(" + block.at("fast" + j, j + 1, n - 1 - j) + ")");
        }
        StringBuilder slowest = new StringBuilder("-" + NONE);
        StringBuilder fastest = new StringBuilder(NONE);
        for (int j = 0; j < n - 1; j++) {
            String seen = block.at("slowestSeen" + j);
            slowest.append(";IF(")
                    .append(seen)
                    .append(">0;")
                    .append(block.at("slowest" + j))
                    .append(";-")
                    .append(NONE)
                    .append(")");
            fastest.append(";IF(")
                    .append(seen)
                    .append(">0;")
                    .append(block.at("fastest" + j))
                    .append(";")
                    .append(NONE)
                    .append(")");
        }
        // In halves, since some programs take thirty arguments at most.
        block.value("from", language.words(LivingWords.BARS_FROM), extreme("MAX", slowest.toString()));
        block.value("to", language.words(LivingWords.BARS_TO), extreme("MIN", fastest.toString()));
        block.value("through", language.words(LivingWords.THROUGH_ALL), "=IF(AND(MIN([d])+[half]>0;[from]<=[to]);1;0)");
        block.value(
                "reach",
                language.words(LivingWords.REACH),
                "=IF([through]=1;MAX(0;[k]-[from];IF([to]>" + NONE + "/1E6;0;[to]-[k]));0)");
        block.value("squares", language.words(LivingWords.PULL_RATE_SQUARES), "=[qq]");
        block.value("repeated", language.words(LivingWords.PAIRS), "=IF([together]=0;0;MAX(0;2*[pairs]))");
        block.value(
                "raised",
                language.words(LivingWords.RAISED_ERROR),
                "=[own]*SQRT(1+[together]*[repeated]/([plain]*[squares]))");
        block.value(
                "error",
                language.words(LivingWords.ERROR_TO_COMPARE),
                "=MAX([raised];[reach]/" + Student.quantile("[freedom]") + ")");
        block.value(
                "shared",
                language.words(LivingWords.SHARED_ERROR),
                "=MAX(SQRT([together]*([squares]+[repeated]));[reach]/" + Student.NORMAL + ")");
        return block;
    }

    private static void pair(Block block, Block fit, String column, int j, String said, String one, String other) {
        block.open(column, said);
        String earlier = block.at(one, j);
        for (int i = j + 1; i < block.lines(); i++) {
            block.in(
                    column,
                    i,
                    "=IF([d.]=\"\";\"\";(" + earlier + "-[" + other + ".])/(" + fit.at("t", i) + "-" + fit.at("t", j)
                            + "))");
        }
    }

    private static String extreme(String function, String list) {
        String[] all = list.split(";(?=IF)");
        StringBuilder formula = new StringBuilder("=" + function + "(" + all[0]);
        for (int from = 1; from < all.length; from += 20) {
            formula.append(';').append(function).append('(');
            for (int i = from; i < Math.min(from + 20, all.length); i++) {
                formula.append(i == from ? "" : ";").append(all[i]);
            }
            formula.append(')');
        }
        return formula + ")";
    }
}
