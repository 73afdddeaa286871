package org.snugsheet.office.sharing.living;

import org.snugsheet.office.words.Language;

/**
 * The steps that say how well a jar’s curve is known with a thermometer of some mark, after {@code StandardErrors} and {@code ReadingErrors} of
 * {@code org.snugsheet.engine.cooling}; and the conditions that depend on the mark.
 */
final class ErrorSteps {

    /** Two good thermometers may differ by a kelvin, as {@code OneRateProblem} says. */
    private static final String TWO_THERMOMETERS = "1";

    private final Block block;
    private final Block fit;
    private final Language language;

    private ErrorSteps(Block block, Block fit, Language language) {
        this.block = block;
        this.fit = fit;
        this.language = language;
    }

    /**
     * Writes the steps.
     *
     * @param fit the steps of the curve
     * @param mark the mark, as formulas call it; empty if it was left out
     */
    static Block write(StepsPage page, String title, Block fit, Block wander, String mark, Language language) {
        Block block = new Block(page, title, 0);
        ErrorSteps steps = new ErrorSteps(block, fit, language);
        steps.know(wander);
        steps.write(mark);
        return block;
    }

    private String words(LivingWords words) {
        return language.words(words);
    }

    private void know(Block wander) {
        for (String name : new String[] {
            "k", "a", "n", "ssr", "qq", "qSum", "scale", "exact", "first", "span", "above", "below", "level", "misfit",
            "center", "ee"
        }) {
            block.known(name, fit.at(name));
        }
        block.known("pSum", fit.at("pSum")).known("pp", fit.at("pp")).known("pq", fit.at("pq"));
        block.known("unmarked", fit.at("trouble"));
        for (String name : new String[] {"wanders", "wanderFreedom", "wanderRate", "wanderPp", "wanderPq"}) {
            block.known(name, wander.at(name));
        }
    }

    private void write(String mark) {
        block.later("trouble", words(LivingWords.TROUBLE));
        block.later("rate", words(LivingWords.RATE));
        block.later("rateError", words(LivingWords.RATE_ERROR));
        block.later("half", words(LivingWords.HALF_TIME));
        block.later("halfError", words(LivingWords.HALF_TIME_ERROR));
        block.later("start", words(LivingWords.START));
        block.later("startError", words(LivingWords.START_ERROR));
        block.later("misfitShown", words(LivingWords.MISFIT));
        block.later("surroundings", words(LivingWords.LEVEL));
        block.later("surroundingsError", words(LivingWords.LEVEL_ERROR));
        String usual = "IF([scale]=\"F\";2;1)";
        block.value(
                "markTyped",
                words(LivingWords.MARK),
                mark.isEmpty() ? "=" + usual : "=IF(LEN(" + mark + ")=0;" + usual + ";" + mark + ")");
        block.value("mark", words(LivingWords.MARK_KELVINS), "=" + TypedSteps.kelvins("[markTyped]", "[scale]"));
        block.value("residual", words(LivingWords.RESIDUAL_VARIANCE), "=[ssr]/([n]-2)");
        block.value("rounding", words(LivingWords.ROUNDING_VARIANCE), "=[mark]^2/12");
        block.value("plain", words(LivingWords.VARIANCE), "=MAX([residual];[rounding])");
        block.value("kept", words(LivingWords.NOT_SCATTERED), "=EXP(-4*PI()^2*MAX([residual]-[rounding];0)/[mark]^2)");
        block.value("together", words(LivingWords.TOGETHER), "=IF([kept]>0.001;[kept]*[rounding];0)");
        block.value("isWandering", words(LivingWords.WANDERS), "=IF([together]=0;[wanders];0)");
        block.value("freedom", words(LivingWords.FREEDOM), "=IF([isWandering]=1;[wanderFreedom];[n]-2)");
        block.value("unsure", words(LivingWords.AROUND_UNSURE), "=IF([exact]=1;0;[mark]/SQRT(12))");
        block.value(
                "own",
                words(LivingWords.OWN_ERROR),
                "=SQRT(IF([isWandering]=1;MAX([plain]*[qq];[wanderRate]);[plain]*[qq]))");
        block.value("common", words(LivingWords.COMMON_ERROR), "=-[qSum]*[unsure]");
        block.value("both", words(LivingWords.RATE_ERROR), "=SQRT([own]^2+[common]^2)");
        // The curve at minute 0: how it moves with the amplitude and with the constant.
        block.value("byA", words(LivingWords.SHARE_LEFT_AT_LAST), "=EXP([k]*[first])");
        block.value("byK", words(LivingWords.ACROSS), "=[a]*[first]*[byA]");
        block.value("startSquares", words(LivingWords.PULL_START_SQUARES), "=" + quadratic("[pp]", "[pq]", "[qq]"));
        block.value(
                "startOwn",
                words(LivingWords.OWN_ERROR),
                "=SQRT(IF([isWandering]=1;MAX([plain]*[startSquares];"
                        + quadratic("[wanderPp]", "[wanderPq]", "[wanderRate]") + ");[plain]*[startSquares]))");
        block.value("startCommon", words(LivingWords.COMMON_ERROR), "=(1-[byA]*[pSum]-[byK]*[qSum])*[unsure]");
        answers();
    }

    /** A sum of squares of weights that are a sum of two, from those of each and of both. */
    private static String quadratic(String pp, String pq, String qq) {
        return "[byA]^2*" + pp + "+2*[byA]*[byK]*" + pq + "+[byK]^2*" + qq;
    }

    private void answers() {
        String[][] reasons = {
            {"[unmarked]<>\"\"", "\"&[unmarked]&\""},
            {"NOT(ISNUMBER([markTyped]))", words(LivingWords.NO_MARK)},
            {"NOT([mark]>0)", words(LivingWords.NO_MARK)},
            {"MAX([above];[below])<=[mark]", words(LivingWords.SETTLED_ALREADY)},
            {"MIN([above];[below])>MAX([mark];" + TWO_THERMOMETERS + ")", words(LivingWords.BEYOND)},
            {"AND([k]<0;[k]+2*[both]<0)", words(LivingWords.MOVES_AWAY)},
            {"ISERROR([both])", words(LivingWords.NO_CURVE)}
        };
        block.write("trouble", "=" + FitSteps.reason(reasons));
        block.write("rate", "=IF([trouble]=\"\";[k];NA())");
        block.write("rateError", "=IF([trouble]=\"\";[both];NA())");
        // AND would hand on an error of the curve instead of refusing.
        block.write("half", "=IF([trouble]=\"\";IF([k]>[both];LN(2)/[k];NA());NA())");
        block.write("halfError", "=IF(ISNUMBER([half]);[half]*[both]/[k];NA())");
        block.write(
                "start",
                "=IF([trouble]=\"\";IF(ABS([first])<=[span];" + TypedSteps.fromCelsius("([level]+[a]*[byA])", "[scale]")
                        + ";NA());NA())");
        block.write(
                "startError",
                "=IF(ISNUMBER([start]);" + TypedSteps.fromKelvins("SQRT([startOwn]^2+[startCommon]^2)", "[scale]")
                        + ";NA())");
        block.write("misfitShown", "=IF([trouble]=\"\";" + TypedSteps.fromKelvins("[misfit]", "[scale]") + ";NA())");
        block.write("surroundings", "=IF([trouble]=\"\";" + TypedSteps.fromCelsius("[level]", "[scale]") + ";NA())");
        block.write(
                "surroundingsError", "=IF([trouble]=\"\";" + TypedSteps.fromKelvins("[unsure]", "[scale]") + ";NA())");
    }
}
