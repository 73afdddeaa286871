package org.snugsheet.office.sharing.living;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.Problem;
import org.snugsheet.office.functions.cooling.VerdictWords;
import org.snugsheet.office.words.Language;

/**
 * The steps of COOL.VERDICT, after {@code Fieller}, {@code Welch} and {@code Verdict} of {@code org.snugsheet.engine.comparison}: whether two jars differ,
 * and the smallest and the largest ratio of their constants that the readings allow. For given degrees of freedom the limits solve a
 * quadratic equation; the degrees of freedom at a limit are those of the limit before, until it stands still, which secants hasten.
 */
final class VerdictSteps {

    /** How often the limits are improved; they stand still after a few times. */
    private static final int ROUNDS = 16;

    private static final Pattern NUMBER = Pattern.compile("\\{(\\d),number,[^}]*}");

    private final Block block;
    private final Language language;

    private VerdictSteps(Block block, Language language) {
        this.block = block;
        this.language = language;
    }

    static Block write(
            StepsPage page,
            String title,
            RankCall.JarSteps one,
            RankCall.JarSteps other,
            String spread,
            Language language) {
        Block block = new Block(page, title, ROUNDS);
        VerdictSteps steps = new VerdictSteps(block, language);
        block.later("sentence", language.words(LivingWords.ANSWER));
        block.value(
                "spread",
                language.words(LivingWords.SPREAD),
                spread.isEmpty() ? "=0" : "=IF(LEN(" + spread + ")=0;0;" + spread + ")");
        steps.estimate("1", one);
        steps.estimate("2", other);
        block.value("least", language.words(LivingWords.FREEDOM), "=MIN([f1];[f2])");
        for (String each : new String[] {"1", "2"}) {
            block.value("d" + each, language.words(LivingWords.FREEDOM), "=IF([least]<3;[least];[f" + each + "])");
        }
        steps.quantile("alike", "1", true);
        block.value(
                "claimed",
                language.words(LivingWords.CLAIMED),
                "=IF(ABS([k1]-[k2])>[alike]*SQRT([e1]^2+[e2]^2+([c1]-[c2])^2);1;0)");
        steps.limit("low", LivingWords.LOWER, "-");
        steps.limit("high", LivingWords.UPPER, "+");
        steps.sentence(one, other);
        return block;
    }

    /** How many times slower the second of two jars cools, if that can be told. */
    static Translator.Table ratio(StepsPage page, String title, Block one, Block other, Language language) {
        Block block = new Block(page, title, 0);
        block.later("trouble", language.words(LivingWords.TROUBLE));
        block.value("k1", language.words(LivingWords.RATE), "=" + one.at("rate"));
        block.value("k2", language.words(LivingWords.RATE), "=" + other.at("rate"));
        block.value("s2", language.words(LivingWords.RATE_ERROR), "=" + other.at("rateError"));
        block.write(
                "trouble",
                "=IF(" + one.at("trouble") + "<>\"\";" + one.at("trouble") + ";IF(" + other.at("trouble") + "<>\"\";"
                        + other.at("trouble") + ";IF([k2]>[s2];\"\";"
                        + Formulas.text(language.words(Problem.SECOND_HARDLY_COOLS)) + ")))");
        block.value("ratio", language.words(LivingWords.RATIO), "=IF([trouble]=\"\";[k1]/[k2];NA())");
        return block.table("ratio");
    }

    private void estimate(String each, RankCall.JarSteps jar) {
        block.value(
                "k" + each, language.words(LivingWords.RATE), "=" + jar.fit().at("k"));
        String error = jar.compared().at("error");
        block.value(
                "e" + each,
                language.words(LivingWords.ERROR_TO_COMPARE),
                "=SQRT(" + error + "^2+([spread]*[k" + each + "])^2)");
        block.value(
                "f" + each,
                language.words(LivingWords.FREEDOM),
                "=" + jar.errors().at("freedom") + "/MAX(" + error + "/[e" + each + "];0.001)^4");
        block.value(
                "c" + each,
                language.words(LivingWords.COMMON_ERROR),
                "=" + jar.errors().at("common"));
    }

    /** Student’s quantile for the degrees of freedom that Welch’s test has at a ratio. */
    private void quantile(String name, String ratio, boolean isValue) {
        String both = "([e1]^2+(" + ratio + "*[e2])^2+([c1]-" + ratio + "*[c2])^2)";
        String p1 = "([e1]^2/" + both + ")";
        String p2 = "((" + ratio + "*[e2])^2/" + both + ")";
        String xi = Student.NORMAL + "^2";
        String beta = "(2*(3+" + xi + ")*(1+2*" + xi + ")/(3*(1+" + xi + ")))";
        String unsure = "(" + p1 + "*" + p2 + "*(" + p1 + "/[d1]-" + p2 + "/[d2])^2+MAX(0;1-" + p1 + "-" + p2 + ")*("
                + p1 + "*(" + p1 + "/[d1])^2+" + p2 + "*(" + p2 + "/[d2])^2))";
        String freedom = "=MAX(MIN([d1];[d2]);1/(" + p1 + "^2/[d1]+" + p2 + "^2/[d2]+" + beta + "*" + unsure + "))";
        String words = language.words(LivingWords.FREEDOM);
        String quantileWords = language.words(LivingWords.QUANTILE);
        if (isValue) {
            block.value(name + "Freedom", words, freedom);
            block.value(name, quantileWords, "=" + Student.quantile("[" + name + "Freedom]"));
        } else {
            block.column(name + "Freedom", words, freedom);
            block.column(name, quantileWords, "=" + Student.quantile("[" + name + "Freedom.]"));
        }
    }

    private void limit(String name, LivingWords words, String sign) {
        String column = name + "Ratio";
        String next = name + "Next";
        // The columns call each other line by line: what is next in one line is the ratio of the following. A jar whose
        // readings are all the same has
        // a constant of exactly zero.
        block.column(
                column,
                language.words(LivingWords.RATIO),
                line -> line == 0 ? "=IF([k2]=0;1E9;[k1]/[k2])" : "=" + following(column, line));
        quantile(name + "T", "[" + column + ".]", false);
        String t = "[" + name + "T.]^2";
        String a = "([k2]^2-" + t + "*([e2]^2+[c2]^2))";
        String b = "([k1]*[k2]-" + t + "*[c1]*[c2])";
        String c = "([k1]^2-" + t + "*([e1]^2+[c1]^2))";
        String root = "(" + b + sign + "SQRT(MAX(0;" + b + "^2-" + a + "*" + c + ")))/" + a;
        block.column(
                next,
                language.words(words),
                sign.equals("-")
                        ? "=IF(" + c + "<=0;0;" + c + "/(" + b + "+SQRT(MAX(0;" + b + "^2-" + a + "*" + c + "))))"
                        : "=IF(" + a + "<=0;1E9;" + root + ")");
        block.known(name, block.at(next, ROUNDS - 1));
    }

    /**
     * The ratio of a line: what the line before came to, and from the third on where the straight line through the last two meets what it came
     * from. Without that, limits of few degrees of freedom swing to and fro for long.
     */
    private String following(String column, int line) {
        String next = block.columnAfter(3, line - 1);
        if (line == 1) {
            return next;
        }
        String ratio = block.at(column, line - 1);
        String before = block.at(column, line - 2);
        String off = "(" + next + "-" + ratio + ")";
        String offBefore = "(" + block.columnAfter(3, line - 2) + "-" + before + ")";
        String met = ratio + "-" + off + "*(" + ratio + "-" + before + ")/(" + off + "-" + offBefore + ")";
        return "IF(OR(" + next + "<=1E-8;" + next + ">=1E8;" + off + "=" + offBefore + ");" + next + ";IF(" + met
                + ">0;" + met + ";" + next + "))";
    }

    private void sentence(RankCall.JarSteps one, RankCall.JarSteps other) {
        String second = said(
                VerdictWords.SECOND,
                VerdictWords.SECOND_AT_LEAST,
                VerdictWords.SECOND_HARDLY,
                "[k2]>SQRT([e2]^2+[c2]^2)",
                "[high]>=1E8",
                "[k1]/[k2]",
                "[low]",
                "[high]");
        String first = said(
                VerdictWords.FIRST,
                VerdictWords.FIRST_AT_LEAST,
                VerdictWords.FIRST_HARDLY,
                "[k1]>SQRT([e1]^2+[c1]^2)",
                "[low]<=1E-8",
                "[k2]/[k1]",
                "1/[high]",
                "1/[low]");
        String counted = filled(VerdictWords.COUNTED_IN, "ROUND(100*[spread];0)&\"" + percent() + "\"");
        block.write(
                "sentence",
                "=IF(OR(" + one.errors().at("trouble") + "<>\"\";"
                        + other.errors().at("trouble")
                        + "<>\"\";NOT(ISNUMBER([spread]));[spread]<0;[spread]>=1);NA();IF(OR([claimed]=0;AND([low]<=1;[high]>=1));\""
                        + language.words(VerdictWords.CANNOT_TELL) + "\";IF([low]>1;" + second + ";" + first
                        + "))&IF([spread]=0;\"\";\" \"&" + counted + "))");
    }

    private String percent() {
        return language.locale().getLanguage().equals(Locale.ENGLISH.getLanguage()) ? "%" : "\u00a0%";
    }

    private String said(
            Phrase bounded, Phrase atLeast, Phrase hardly, String isDefined, String isOpen, String... values) {
        return "IF(" + isDefined + ";IF(" + isOpen + ";" + filled(atLeast, decimals(values[0]), decimals(values[1]))
                + ";"
                + filled(bounded, decimals(values[0]), decimals(values[1]), decimals(values[2])) + ");"
                + filled(hardly, decimals(values[1])) + ")";
    }

    /** One decimal, or two where there are two. */
    private static String decimals(String number) {
        return "IF(ROUND(" + number + ";2)=ROUND(" + number + ";1);FIXED(" + number + ";1;TRUE());FIXED(" + number
                + ";2;TRUE()))";
    }

    private String filled(Phrase pattern, String... values) {
        Matcher number = NUMBER.matcher(language.words(pattern));
        return "\""
                + number.replaceAll(
                        found -> Matcher.quoteReplacement("\"&" + values[Integer.parseInt(found.group(1))] + "&\""))
                + "\"";
    }
}
