package org.snugsheet.office.sharing.living;

import org.snugsheet.office.words.Language;

/**
 * The steps that tell whether readings wander together, and what the curve is known to if they do, after {@code Wander} and
 * {@code Autoregression} of {@code org.snugsheet.engine.cooling}. What those do with matrices follows here from sums of products of
 * readings that lie some places apart, since each error keeps a share of the one before it.
 */
final class WanderSteps {

    /** The correlations of neighbors that are tried: from 0 to 0.97 in twelve steps. */
    static final int SHARES = 13;

    private static final String FEWEST = "8";

    private WanderSteps() {}

    /** The powers of each share, which all jars of as many readings use. */
    static Block powers(StepsPage page, int lines, Language language) {
        Block block = new Block(page, language.words(LivingWords.POWERS_TITLE), lines);
        for (int share = 0; share < SHARES; share++) {
            String rho = "0.97*" + share + "/12";
            block.column(
                    "power" + share,
                    language.say(LivingWords.POWERS_OF, 0.97 * share / 12),
                    line -> line == 0 ? "=1" : "=(" + rho + ")^" + line);
        }
        return block;
    }

    /** The sums of products, and whether neighbors agree more than by chance. */
    static Block write(StepsPage page, String title, Block fit, Block powers, Language language) {
        int n = fit.lines();
        Block lags = new Block(page, title, n);
        for (String name : new String[] {"n", "ee", "length", "r", "ssr", "a", "center"}) {
            lags.known(name, fit.at(name));
        }
        lags.column("b", language.words(LivingWords.ALONG), line -> "=" + fit.at("e", line) + "/SQRT([ee])");
        lags.column("c", language.words(LivingWords.ACROSS), line -> "=" + fit.at("across", line) + "/SQRT([length])");
        for (String each : new String[] {"b", "c"}) {
            lags.column(
                    each + "Back",
                    language.words(LivingWords.BACKWARD),
                    "=IF([#]<=[n];INDEX([" + each + "];[n]+1-[#]);0)");
        }
        lags.column("places", language.words(LivingWords.LAGS), "=[#]-1");
        lags.column("bb", language.words(LivingWords.LAGS), line -> lag(lags, "b", "b", line));
        lags.column("bc", language.words(LivingWords.LAGS), line -> lag(lags, "b", "c", line));
        lags.column("cc", language.words(LivingWords.LAGS), line -> lag(lags, "c", "c", line));
        chance(lags, fit, language);
        shares(lags, new Block(page, title, SHARES), powers, language);
        return lags;
    }

    /** The sum of products of readings some places apart, counted in both directions. */
    private static String lag(Block lags, String one, String other, int apart) {
        int left = lags.lines() - apart;
        String ahead = "SUMPRODUCT(" + lags.at(one, 0, left) + ";" + lags.at(other, apart, left) + ")";
        if (apart == 0) {
            return "=" + ahead;
        }
        return one.equals(other)
                ? "=2*" + ahead
                : "=" + ahead + "+SUMPRODUCT(" + lags.at(other, 0, left) + ";" + lags.at(one, apart, left) + ")";
    }

    private static void chance(Block lags, Block fit, Language language) {
        int n = lags.lines();
        String second = n > 2 ? lags.at("bb", 2) : "0";
        String secondC = n > 2 ? lags.at("cc", 2) : "0";
        lags.later("wanders", language.words(LivingWords.WANDERS));
        lags.value("bFirst", language.words(LivingWords.ENDS), "=" + lags.at("b", 0));
        lags.value("cFirst", language.words(LivingWords.ENDS), "=" + lags.at("c", 0));
        lags.value("rFirst", language.words(LivingWords.ENDS), "=" + fit.at("r", 0));
        lags.value("bLast", language.words(LivingWords.ENDS), "=INDEX([b];[n])");
        lags.value("cLast", language.words(LivingWords.ENDS), "=INDEX([c];[n])");
        lags.value("rLast", language.words(LivingWords.ENDS), "=INDEX([r];[n])");
        lags.value("rr", language.words(LivingWords.LAGS), products(fit.at("r", 0, n - 1), fit.at("r", 1, n - 1)));
        lags.value(
                "br",
                language.words(LivingWords.LAGS),
                products(lags.at("b", 0, n - 1), fit.at("r", 1, n - 1)) + "+"
                        + products(fit.at("r", 0, n - 1), lags.at("b", 1, n - 1))
                                .substring(1));
        lags.value(
                "cr",
                language.words(LivingWords.LAGS),
                products(lags.at("c", 0, n - 1), fit.at("r", 1, n - 1)) + "+"
                        + products(fit.at("r", 0, n - 1), lags.at("c", 1, n - 1))
                                .substring(1));
        lags.known("bb1", lags.at("bb", 1)).known("bc1", lags.at("bc", 1)).known("cc1", lags.at("cc", 1));
        lags.value("seen", language.words(LivingWords.NEIGHBORS), "=[rr]/[ssr]");
        lags.value("mean", language.words(LivingWords.BY_CHANCE), "=-([bb1]+[cc1])/2/([n]-2)");
        String neighbors = "((1-[bLast]^2)+(1-[bFirst]^2)+" + second + ")/4";
        String neighborsC = "((1-[cLast]^2)+(1-[cFirst]^2)+" + secondC + ")/4";
        lags.value(
                "spread",
                language.words(LivingWords.BY_CHANCE_VARIANCE),
                "=2*(([n]-1)/2-2*" + neighbors + "-2*" + neighborsC
                        + "+([bb1]/2)^2+2*([bc1]/2)^2+([cc1]/2)^2-([n]-2)*[mean]^2)/(([n]-2)*[n])");
        lags.value("share", language.words(LivingWords.BETA), "=([mean]+1)/2");
        lags.value("size", language.words(LivingWords.BETA), "=[share]*(1-[share])/([spread]/4)-1");
        lags.value(
                "chance",
                language.words(LivingWords.CHANCE),
                "=IF([seen]>[mean]+1.5*SQRT([spread]);1-BETADIST(([seen]+1)/2;[share]*[size];(1-[share])*[size]);1)");
    }

    private static String products(String one, String other) {
        return "=SUMPRODUCT(" + one + ";" + other + ")";
    }

    private static void shares(Block lags, Block block, Block powers, Language language) {
        for (String name : new String[] {
            "n", "ssr", "rr", "bb1", "cc1", "bc1", "br", "cr", "bFirst", "cFirst", "rFirst", "bLast", "cLast", "rLast",
            "ee", "length", "a", "center", "b", "c", "bBack", "cBack", "bb", "bc", "cc", "places"
        }) {
            block.known(name, lags.at(name));
        }
        // The names are the symbols of the two classes.
        String[][] columns = {
            {"lb", "=SQRT(" + weighted("1", "b", "b", "[bb1]") + ")"},
            {"lbc", "=" + weighted("0", "b", "c", "[bc1]") + "/[lb.]"},
            {"lc", "=SQRT(" + weighted("1", "c", "c", "[cc1]") + "-[lbc.]^2)"},
            {"sb", "=" + weighted("0", "b", "r", "[br]") + "/[lb.]"},
            {"sc", "=(" + weighted("0", "c", "r", "[cr]") + "-[lbc.]*[sb.])/[lc.]"},
            {"left", "=MAX(" + weighted("[ssr]", "r", "r", "2*[rr]") + "-[sb.]^2-[sc.]^2;2.3E-308)"},
            {"likely", "=-(([n]-1)*LN(1-{rho}^2)+2*LN([lb.])+2*LN([lc.])+([n]-2)*LN([left.]))/2"},
            {"weight", "=EXP([likely.]-MAX([likely]))"},
            {"kbb", "=SUMPRODUCT([bb];{powers})"},
            {"kbc", "=SUMPRODUCT([bc];{powers})"},
            {"kcc", "=SUMPRODUCT([cc];{powers})"},
            {"bSquare", squared("[kbb.]", "bb", "b")},
            {"cSquare", squared("[kcc.]", "cc", "c")},
            // With the trace of the square of all correlations, a geometric sum.
            {
                "free",
                "=([n]-[kbb.]-[kcc.])^2/([n]+2*{rho}^2*(([n]-1)-[n]*{rho}^2+({rho}^2)^[n])/(1-{rho}^2)^2-2*[bSquare.]-2*[cSquare.]+[kbb.]^2+2*[kbc.]^2+[kcc.]^2)"
            },
            {"qc", "=1/SQRT([length])/[lc.]"},
            {"pc", "=([a]*[center]/SQRT([length])-[lbc.]/SQRT([ee])/[lb.])/[lc.]"},
            {"pOff", "=[sb.]/SQRT([ee])/[lb.]+[pc.]*[sc.]"},
            {"qq", "=[left.]/([n]-2)*[qc.]^2+([qc.]*[sc.])^2"},
            {"pq", "=[left.]/([n]-2)*[pc.]*[qc.]+[pOff.]*[qc.]*[sc.]"},
            {"pp", "=[left.]/([n]-2)*(1/[ee]/[lb.]^2+[pc.]^2)+[pOff.]^2"}
        };
        for (String[] column : columns) {
            block.column(
                    column[0],
                    language.words(head(column[0])),
                    line -> column[1]
                            .replace("{rho}", powers.at("power" + line, 1))
                            .replace("{powers}", powers.at("power" + line)));
        }
        String all = "/SUM([weight])";
        String[][] values = {
            {"wanderFreedom", "free"},
            {"wanderRate", "qq"},
            {"wanderPq", "pq"},
            {"wanderPp", "pp"}
        };
        for (String[] value : values) {
            block.value(
                    value[0],
                    language.words(LivingWords.IF_WANDERING),
                    "=SUMPRODUCT([weight];[" + value[1] + "])" + all);
            lags.known(value[0], block.at(value[0]));
        }
        lags.known("likely", block.at("likely"));
        lags.write(
                "wanders",
                "=IF([n]<" + FEWEST + ";0;IF([ssr]>0;IF(ISERROR(SUM([likely]));0;IF([chance]<1/50;1;0));0))");
    }

    private static LivingWords head(String column) {
        return switch (column) {
            case "lb" -> LivingWords.SIZE_ALONG;
            case "lbc" -> LivingWords.OVERLAP;
            case "lc" -> LivingWords.SIZE_ACROSS;
            case "sb" -> LivingWords.PART_ALONG;
            case "sc" -> LivingWords.PART_ACROSS;
            case "left" -> LivingWords.LEFT_OVER;
            case "likely" -> LivingWords.LIKELIHOOD;
            case "weight" -> LivingWords.SHARE_WEIGHT;
            case "kbb", "kbc", "kcc" -> LivingWords.ALL_LAGS;
            case "bSquare", "cSquare" -> LivingWords.ALL_LAGS_SQUARED;
            case "qc" -> LivingWords.PULL_ACROSS;
            case "pc", "pOff" -> LivingWords.PULL_ALONG;
            case "qq" -> LivingWords.RATE_VARIANCE;
            case "pq" -> LivingWords.BOTH_VARIANCE;
            case "pp" -> LivingWords.AMPLITUDE_VARIANCE;
            default -> LivingWords.FREEDOM;
        };
    }

    /** A product of two columns with the inverse of the correlations, which couples neighbors only. */
    private static String weighted(String sum, String one, String other, String lags) {
        return "((1+{rho}^2)*" + sum + "-{rho}^2*([" + one + "First]*[" + other + "First]+[" + one + "Last]*[" + other
                + "Last])-{rho}*" + lags + ")/(1-{rho}^2)";
    }

    /** The square of a column that the correlations were applied to: as if it had no ends, less what is beyond them. */
    private static String squared(String sum, String lags, String column) {
        return "=(1+2*{rho}^2/(1-{rho}^2))*" + sum + "+SUMPRODUCT([" + lags
                + "];{powers};[places])-{rho}^2/(1-{rho}^2)*(SUMPRODUCT([" + column + "];{powers})^2+SUMPRODUCT(["
                + column + "Back];{powers})^2)";
    }
}
