package org.snugsheet.office.sharing.living;

import org.snugsheet.office.words.Language;

/**
 * The steps of one jar’s cooling curve in given surroundings, after {@code org.snugsheet.engine.cooling}: the readings without their gaps, a
 * straight line through the logarithms, Newton’s steps from there to the least squares, and how far each reading moves the curve.
 */
final class FitSteps {

    /** From the straight line, four are enough for most lessons. */
    static final int STEPS = 9;

    private final Block block;
    private final Block ice;
    private final Language language;

    private FitSteps(Block block, Block ice, Language language) {
        this.block = block;
        this.ice = ice;
        this.language = language;
    }

    /**
     * Writes the steps.
     *
     * @param ice the words for melting ice
     * @param times the steps that read its times
     * @param jar what its readings, surroundings and scale are
     */
    static Block write(StepsPage page, String title, Block ice, Block times, Jar jar, Language language) {
        Block block = new Block(page, title, jar.lines());
        FitSteps steps = new FitSteps(block, ice, language);
        block.known("timesTrouble", times.at("trouble"));
        steps.read(times, jar);
        steps.line();
        steps.newton();
        steps.curve();
        steps.judge();
        return block;
    }

    /** What a jar’s fit is worked out from, as formulas call it. */
    record Jar(int lines, java.util.List<String> readings, String surroundings, String scale) {
        Jar {
            readings = java.util.List.copyOf(readings);
        }
    }

    private String words(LivingWords words) {
        return language.words(words);
    }

    private void read(Block times, Jar jar) {
        block.later("trouble", words(LivingWords.TROUBLE));
        block.later("rate", words(LivingWords.RATE));
        block.later("start", words(LivingWords.AMPLITUDE));
        block.later("misfit", words(LivingWords.MISFIT));
        block.value("scaleRaw", words(LivingWords.TYPED), TypedSteps.kept(jar.scale()));
        block.value("scale", words(LivingWords.SCALE), TypedSteps.scale("[scaleRaw]"));
        TypedSteps.value(
                block, "around", LivingWords.AROUND_TYPED, LivingWords.AROUND_READ, jar.surroundings(), language);
        block.value(
                "exact",
                words(LivingWords.EXACT),
                "=IF([aroundText]=\"\";0;IF(" + TypedSteps.isListed("[aroundText]", ice.at("word")) + ";1;0))");
        block.value(
                "level",
                words(LivingWords.LEVEL),
                "=IF([exact]=1;0;" + TypedSteps.celsius("[around]", "[aroundUnit]", "[scale]") + ")");
        TypedSteps.column(
                block,
                "degrees",
                LivingWords.TYPED,
                LivingWords.READ,
                line -> jar.readings().get(line),
                language);
        block.column(
                "celsius",
                words(LivingWords.CELSIUS),
                "=" + TypedSteps.celsius("[degrees.]", "[degreesUnit.]", "[scale]"));
        block.column(
                "used",
                words(LivingWords.USED),
                line -> "=IF(OR([celsius.]=\"\";" + times.at("minutes", line) + "=\"\");\"\";[#])");
        block.value("n", words(LivingWords.COUNT), "=COUNT([used])");
        block.value(
                "typed",
                words(LivingWords.HOW_MANY_TYPED),
                "=COUNT([celsius])+COUNTIF([celsius];" + TypedSteps.UNREADABLE + ")");
        block.column("row", words(LivingWords.ROW), "=IF([#]<=[n];SMALL([used];[#]);\"\")");
        String minutes = times.at("minutes");
        block.column("clock", words(LivingWords.MINUTES), "=IF([row.]=\"\";\"\";INDEX(" + minutes + ";[row.]))");
        block.value("first", words(LivingWords.FIRST), "=" + block.at("clock", 0));
        block.value("span", words(LivingWords.SPAN), "=MAX([clock])-MIN([clock])");
        block.column("t", words(LivingWords.SINCE), "=IF(ISNUMBER([clock.]);[clock.]-[first];0)");
        block.column("d", words(LivingWords.DIFFERENCE), "=IF([row.]=\"\";0;INDEX([celsius];[row.])-[level])");
        block.value("above", words(LivingWords.MOST_ABOVE), "=MAX(0;MAX([d]))");
        block.value("below", words(LivingWords.MOST_BELOW), "=MAX(0;-MIN([d]))");
    }

    /** A straight line through the logarithms, each with the square of its difference as weight. */
    private void line() {
        block.value("side", words(LivingWords.SIDE), "=IF([above]>=[below];1;-1)");
        block.column("w", words(LivingWords.WEIGHT), "=IF([d.]*[side]>0;[d.]^2;0)");
        block.column("ln", words(LivingWords.LOGARITHM), "=IF([w.]>0;LN(ABS([d.]));0)");
        block.value("meanT", words(LivingWords.MEAN_TIME), "=SUMPRODUCT([w];[t])/SUM([w])");
        block.value(
                "line",
                words(LivingWords.LINE),
                "=-(SUMPRODUCT([w];[t];[ln])-[meanT]*SUMPRODUCT([w];[ln]))/(SUMPRODUCT([w];[t];[t])-[meanT]*SUMPRODUCT([w];[t]))");
    }

    /** Where the slope of the sum of squares by the constant is zero; the amplitude follows the constant exactly. */
    private void newton() {
        block.known("k0", block.at("line"));
        LivingWords[] feet = {
            LivingWords.SUM_E_D,
            LivingWords.SUM_T_E_D,
            LivingWords.SUM_T2_E_D,
            LivingWords.SUM_E2,
            LivingWords.SUM_T_E2,
            LivingWords.SUM_T2_E2,
            LivingWords.SLOPE,
            LivingWords.BEND,
            LivingWords.NEXT
        };
        for (int i = 0; i < feet.length; i++) {
            block.footNamed(i, words(feet[i]));
        }
        for (int step = 0; step < STEPS; step++) {
            String e = "e" + step;
            String s = String.valueOf(step);
            block.column(
                    e, language.say(LivingWords.SHARE_LEFT, step + 1), "=IF([row.]=\"\";0;EXP(-[k" + s + "]*[t.]))");
            String[] formulas = {
                "=SUMPRODUCT([e];[d])",
                "=SUMPRODUCT([e];[t];[d])",
                "=SUMPRODUCT([e];[t];[t];[d])",
                "=SUMPRODUCT([e];[e])",
                "=SUMPRODUCT([e];[e];[t])",
                "=SUMPRODUCT([e];[e];[t];[t])",
                "=[f4]/[f3]-[f1]/[f0]",
                "=2*([f4]/[f3])^2-2*[f5]/[f3]+[f2]/[f0]-([f1]/[f0])^2",
                "=[k]-[f6]/[f7]"
            };
            for (int i = 0; i < formulas.length; i++) {
                String own = formulas[i].replace("[e]", "[" + e + "]").replace("[k]", "[k" + s + "]");
                String name = i == formulas.length - 1 ? "k" + (step + 1) : "f" + s + "x" + i;
                block.foot(name, e, i, own.replaceAll("\\[f(\\d)]", "[f" + s + "x$1]"));
            }
        }
    }

    private void curve() {
        block.known("k", block.at("k" + STEPS));
        block.column("e", words(LivingWords.SHARE_LEFT_AT_LAST), "=IF([row.]=\"\";0;EXP(-[k]*[t.]))");
        block.value("ee", words(LivingWords.SUM_E2), "=SUMPRODUCT([e];[e])");
        block.value("a", words(LivingWords.AT_FIRST), "=SUMPRODUCT([e];[d])/[ee]");
        block.value("center", words(LivingWords.CENTER), "=SUMPRODUCT([e];[e];[t])/[ee]");
        block.column("r", words(LivingWords.RESIDUAL), "=[d.]-[a]*[e.]");
        block.column("across", words(LivingWords.ACROSS), "=IF([row.]=\"\";0;-[a]*[e.]*([t.]-[center]))");
        block.value("ssr", words(LivingWords.SQUARES), "=SUMSQ([r])");
        block.value("length", words(LivingWords.ACROSS_SQUARES), "=SUMSQ([across])");
        block.column("q", words(LivingWords.PULL_RATE), "=[across.]/[length]");
        block.column("p", words(LivingWords.PULL_AMPLITUDE), "=[e.]/[ee]+[a]*[center]*[q.]");
        block.value("qq", words(LivingWords.PULL_RATE_SQUARES), "=SUMSQ([q])");
        block.value("qSum", words(LivingWords.PULL_RATE_SUM), "=SUM([q])");
        block.value("pp", words(LivingWords.PULL_AMPLITUDE_SQUARES), "=SUMSQ([p])");
        block.value("pq", words(LivingWords.PULL_BOTH), "=SUMPRODUCT([p];[q])");
        block.value("pSum", words(LivingWords.PULL_AMPLITUDE_SUM), "=SUM([p])");
    }

    private void judge() {
        block.value(
                "settled",
                words(LivingWords.SETTLED),
                "=IF(AND(ABS([k" + STEPS + "]-[k" + (STEPS - 1) + "])<=1E-11*ABS([k])+1E-13/[span];[f" + (STEPS - 1)
                        + "x7]<0;8.9E-16*SQRT(SUMSQ([celsius]))*[span]<SQRT([length]));1;0)");
        int n = block.lines();
        block.column(
                "later",
                words(LivingWords.LATER),
                line -> line == 0 ? "=1" : "=IF([row.]=\"\";1;IF([clock.]>[clock-];1;0))");
        String[][] reasons = {
            {"ISERROR(SUM([celsius]))", words(LivingWords.ERROR_CELL)},
            {"[scale]=\"x\"", words(LivingWords.NO_SCALE)},
            {"[timesTrouble]<>\"\"", "\"&[timesTrouble]&\""},
            {"[aroundRaw]=\"\"", words(LivingWords.AROUND_BLANK)},
            {"NOT(ISNUMBER([level]))", words(LivingWords.AROUND_UNREADABLE)},
            {"COUNTIF([celsius];\"x\")>0", words(LivingWords.READING_UNREADABLE)},
            {"[n]<3", words(LivingWords.TOO_FEW)},
            {"OR(MIN([celsius])<-273.15;[level]<-273.15)", words(LivingWords.TOO_COLD)},
            {"SUM([later])<" + n, words(LivingWords.NOT_RISING)},
            {"ISERROR([settled])", words(LivingWords.NO_CURVE)},
            {"[settled]=0", words(LivingWords.NO_CURVE)}
        };
        block.write("trouble", "=" + reason(reasons));
        block.write("rate", "=IF([trouble]=\"\";[k];NA())");
        block.write("start", "=IF([trouble]=\"\";[a];NA())");
        block.write("misfit", "=IF([trouble]=\"\";SQRT([ssr]/[n]);NA())");
    }

    static String reason(String[][] reasons) {
        StringBuilder formula = new StringBuilder();
        for (String[] one : reasons) {
            formula.append("IF(").append(one[0]).append(";\"").append(one[1]).append("\";");
        }
        return formula + "\"\"" + ")".repeat(reasons.length);
    }
}
