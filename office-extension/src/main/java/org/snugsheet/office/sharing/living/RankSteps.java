package org.snugsheet.office.sharing.living;

import java.util.List;
import org.snugsheet.office.words.Language;

/**
 * The steps that compare every two wraps, after {@code Welch}, {@code Holm} and {@code Ranking} of {@code org.snugsheet.engine.comparison}, and
 * the table that COOL.RANK answers with.
 *
 * <p>Of k differences Holm’s procedure claims the first at a level of 0.05/k, the next at 0.05/(k − 1), and so on. Here all are tested at the
 * level that is next, again and again, until no more is claimed; so it need not be known at which level each would just be allowed.
 */
final class RankSteps {

    /** How often they are tested again; classes need two or three. */
    static final int ROUNDS = 8;

    private static final String FEWEST = "3";
    private static final String UNEVEN = "6";

    private RankSteps() {}

    /** The wraps in order, with what separates them. */
    static Block write(StepsPage page, String title, Block groups, Language language) {
        int count = groups.lines();
        Block order = new Block(page, title, count);
        order.known("groups", groups.at("groups")).known("groupTrouble", groups.at("trouble"));
        order.later("trouble", language.words(LivingWords.TROUBLE));
        order.column(
                "at",
                language.words(LivingWords.PLACE_OF),
                "=IF([#]<=[groups];MATCH([#];" + groups.at("place") + ";0);0)");
        for (String name : new String[] {"g", "e", "f", "o", "h", "m", "name"}) {
            order.column(
                    name,
                    language.words(heads(name)),
                    "=IF([at.]=0;" + (name.equals("name") ? "\"\"" : "0") + ";INDEX(" + groups.at(name) + ";[at.]))");
        }
        Block pairs = pairs(page, title, order, language);
        places(order, pairs, language);
        order.write(
                "trouble",
                "="
                        + FitSteps.reason(new String[][] {
                            {"[groupTrouble]<>\"\"", "\"&[groupTrouble]&\""},
                            {"ISERROR(" + pairs.at("settled") + ")", language.words(LivingWords.ERROR_CELL)},
                            {pairs.at("settled") + "=0", language.words(LivingWords.TOO_MANY_ROUNDS)}
                        }));
        order.column("low", language.words(LivingWords.LOWER), "=IF([at.]=0;\"\";MAX(0;[g.]-[margin.]))");
        order.column("high", language.words(LivingWords.UPPER), "=IF([at.]=0;\"\";[g.]+[margin.])");
        return order;
    }

    private static LivingWords heads(String name) {
        return switch (name) {
            case "g" -> LivingWords.RATE;
            case "e" -> LivingWords.ERROR_TO_COMPARE;
            case "f" -> LivingWords.FREEDOM;
            case "o" -> LivingWords.COMMON_ERROR;
            case "h" -> LivingWords.HALF_TIME;
            case "m" -> LivingWords.JARS_OF_IT;
            default -> LivingWords.NAME;
        };
    }

    /** One line for each pair: the second of the order with the first, the third with both, and so on. */
    private static Block pairs(StepsPage page, String title, Block order, Language language) {
        int count = order.lines();
        Block pairs = new Block(page, title, count * (count - 1) / 2);
        pairs.known("groups", order.at("groups"));
        int[] worse = new int[pairs.lines()];
        int[] better = new int[pairs.lines()];
        for (int w = 1, line = 0; w < count; w++) {
            for (int b = 0; b < w; b++, line++) {
                worse[line] = w;
                better[line] = b;
            }
        }
        pairs.column("is", language.words(LivingWords.IS_PAIR), line -> "=IF(" + (worse[line] + 1) + "<=[groups];1;0)");
        String[][] values = {{"g", "e", "f", "o"}, {"v", "s", "nu", "c"}};
        for (int i = 0; i < values[0].length; i++) {
            String from = values[0][i];
            pairs.column(values[1][i] + "1", language.words(heads(from)), line -> "=" + order.at(from, worse[line]));
            pairs.column(values[1][i] + "2", language.words(heads(from)), line -> "=" + order.at(from, better[line]));
        }
        pairs.column(
                "both",
                language.words(LivingWords.ERROR_OF_DIFFERENCE),
                "=IF([is.]=0;1;SQRT([s1.]^2+[s2.]^2+([c1.]-[c2.])^2))");
        pairs.column("t", language.words(LivingWords.IN_ERRORS), "=([v1.]-[v2.])/[both.]");
        pairs.column("least", language.words(LivingWords.FREEDOM), "=MAX(0.001;MIN([nu1.];[nu2.]))");
        for (String each : new String[] {"1", "2"}) {
            pairs.column("p" + each, language.words(LivingWords.SHARE_OF), "=([s" + each + ".]/[both.])^2");
            pairs.column(
                    "d" + each,
                    language.words(LivingWords.FREEDOM),
                    "=IF([is.]=0;1;IF([least.]<" + FEWEST + ";[least.];[nu" + each + ".]))");
        }
        pairs.column("free", language.words(LivingWords.FREEDOM), "=IF([is.]=0;1;1/([p1.]^2/[d1.]+[p2.]^2/[d2.]))");
        pairs.column(
                "unsure",
                language.words(LivingWords.SECOND_ORDER),
                "=[p1.]*[p2.]*([p1.]/[d1.]-[p2.]/[d2.])^2+MAX(0;1-[p1.]-[p2.])*([p1.]*([p1.]/[d1.])^2+[p2.]*([p2.]/[d2.])^2)");
        pairs.column(
                "uneven", language.words(LivingWords.SECOND_ORDER), "=" + UNEVEN + "/[least.]*ABS(1/[d1.]-1/[d2.])");
        pairs.value("all", language.words(LivingWords.DIFFERENCES), "=[groups]*([groups]-1)/2");
        pairs.known("claimed0", "0");
        for (int round = 1; round <= ROUNDS; round++) {
            round(pairs, round, language);
        }
        pairs.value(
                "settled",
                language.words(LivingWords.SETTLED),
                "=IF([claimed" + ROUNDS + "]=[claimed" + (ROUNDS - 1) + "];1;0)");
        return pairs;
    }

    private static void round(Block pairs, int round, Language language) {
        String before = "[claimed" + (round - 1) + "]";
        String level = "level" + round;
        pairs.value(level, language.say(LivingWords.LEVEL_OF_ROUND, round), "=0.05/MAX(1;[all]-" + before + ")");
        pairs.value("xi" + round, language.words(LivingWords.NORMAL_QUANTILE), "=NORMSINV(1-[" + level + "]/2)^2");
        String xi = "[xi" + round + "]";
        pairs.value(
                "beta" + round,
                language.words(LivingWords.SECOND_ORDER),
                "=2*(3+" + xi + ")*(1+2*" + xi + ")/(3*(1+" + xi + "))");
        pairs.column(
                "free" + round,
                language.words(LivingWords.FREEDOM),
                "=MAX(MIN([d1.];[d2.]);1/(1/[free.]+[beta" + round + "]*(1+[uneven.]*MAX(0;0.05/[" + level
                        + "]-1))*[unsure.]))");
        pairs.column(
                "claim" + round,
                language.words(LivingWords.CLAIMED),
                "=IF([is.]=0;0;IF(" + Student.twoSided("[t.]", "[free" + round + ".]") + "<=[" + level + "];1;0))");
        pairs.value("claimed" + round, language.words(LivingWords.CLAIMED), "=SUM(" + pairs.at("claim" + round) + ")");
    }

    /** From the best down: on the place of those just above, unless it is separated from one of them. */
    private static void places(Block order, Block pairs, Language language) {
        int count = order.lines();
        String claims = "claim" + ROUNDS;
        order.column("top", language.words(LivingWords.PLACE_OF), line -> {
            if (line == 0) {
                return "=1";
            }
            StringBuilder claimed = new StringBuilder();
            for (int b = 0; b < line; b++) {
                claimed.append(b == 0 ? "" : "+")
                        .append("IF([top-]<=" + (b + 1) + ";" + pairs.at(claims, line * (line - 1) / 2 + b) + ";0)");
            }
            return "=IF(" + claimed + ">0;[#];[top-])";
        });
        order.column("close", language.words(LivingWords.TOO_CLOSE), line -> {
            StringBuilder names = new StringBuilder();
            for (int other = 0; other < count; other++) {
                if (other != line) {
                    int w = Math.max(line, other);
                    String claim = pairs.at(claims, w * (w - 1) / 2 + Math.min(line, other));
                    names.append(names.length() == 0 ? "" : "&")
                            .append("IF(OR(" + (w + 1) + ">[groups];" + claim + "=1);\"\";\", \"&"
                                    + order.at("name", other) + ")");
                }
            }
            return "=IF([at.]=0;\"\";MID(" + names + ";3;9999))";
        });
        order.column(
                "margin",
                language.words(LivingWords.MARGIN),
                "=IF([at.]=0;0;SQRT((" + Student.quantile("[f.]") + "*[e.])^2+(" + Student.NORMAL + "*[o.])^2))");
    }

    /** The table of COOL.RANK: the wraps in order, then the jars that are held back, with the reason. */
    static Block table(
            StepsPage page,
            String title,
            Block order,
            Block groups,
            List<String> heads,
            List<String> reasons,
            String hardly,
            Language language) {
        int count = order.lines();
        Block table = new Block(page, title, count + 1);
        table.known("trouble", order.at("trouble")).known("groups", order.at("groups"));
        table.column(
                "out",
                language.words(LivingWords.HELD_BACK_LINE),
                line -> line == 0
                        ? "=0"
                        : "=IF(OR(" + groups.at("ok", line - 1) + "=1;" + groups.at("there", line - 1) + "=0);\"\";"
                                + line + ")");
        table.column(
                "jar",
                language.words(LivingWords.HELD_BACK_LINE),
                line -> line == 0
                        ? "=0"
                        : "=IF(AND([#]-1>[groups];[#]-1-[groups]<=COUNT([out])-1);SMALL([out];[#]-[groups]);0)");
        table.column(
                "why", language.words(LivingWords.TROUBLE), line -> line == 0 ? "=\"\"" : "=" + reasons.get(line - 1));
        String[] inside = {"top", "name", "m", "g", "low", "high", "h", "close"};
        for (int column = 0; column < inside.length; column++) {
            String name = inside[column];
            String head = heads.get(column);
            String held = name.equals("name")
                    ? "IF([jar.]=0;NA();INDEX(" + groups.at("name") + ";[jar.]))"
                    : "IF([jar.]=0;NA();" + (name.equals("close") ? "INDEX([why];[jar.]+1)" : "\"\"") + ")";
            table.column("out" + name, head, line -> {
                if (line == 0) {
                    return "=IF([trouble]=\"\";\"" + head + "\";NA())";
                }
                String cell = order.at(name, line - 1);
                String shown = name.equals("h") ? "IF(" + cell + "<0;\"" + hardly + "\";" + cell + ")" : cell;
                return "=IF([trouble]<>\"\";NA();IF([#]-1<=[groups];" + shown + ";" + held + "))";
            });
        }
        return table;
    }
}
