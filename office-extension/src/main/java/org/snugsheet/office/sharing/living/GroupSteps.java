package org.snugsheet.office.sharing.living;

import java.util.List;
import org.snugsheet.office.words.Language;

/**
 * The steps that take jars of one name together, after {@code org.snugsheet.engine.comparison.ReplicateGroup}, and put the wraps in order: one
 * line for each jar; in a line stands the wrap whose first jar it is.
 */
final class GroupSteps {

    private GroupSteps() {}

    /**
     * What is known of one jar.
     *
     * @param name its heading, as formulas call it
     * @param typed a formula for how many readings were typed, without its equals sign
     * @param trouble one for why its curve is not known; an empty text if it is
     * @param fit the steps of its curve
     * @param errors those of its errors
     * @param compared those of its error for comparisons
     * @param heldBack a formula that is 1 if it is left out, without its equals sign
     */
    record Jar(String name, String typed, String trouble, Block fit, Block errors, Block compared, String heldBack) {}

    static Block write(StepsPage page, String title, List<Jar> jars, String spread, Language language) {
        int count = jars.size();
        Block block = new Block(page, title, count);
        block.later("trouble", language.words(LivingWords.TROUBLE));
        block.value(
                "spread",
                language.words(LivingWords.SPREAD),
                spread.isEmpty() ? "=0" : "=IF(LEN(" + spread + ")=0;0;" + spread + ")");
        block.column(
                "name",
                language.words(LivingWords.NAME),
                line -> named(jars.get(line).name(), language.say(LivingWords.UNNAMED, line + 1)));
        block.column("key", language.words(LivingWords.NAME), "=LOWER([name.])");
        block.column(
                "ownScale",
                language.words(LivingWords.NAMES_SCALE),
                "=IF(OR(ISNUMBER(FIND(\"°C|\";UPPER([name.])&\"|\"));ISNUMBER(FIND(\"°F|\";UPPER([name.])&\"|\"));ISNUMBER(FIND(\"C)|\";UPPER([name.])&\"|\"));ISNUMBER(FIND(\"F)|\";UPPER([name.])&\"|\"));ISNUMBER(FIND(\"K)|\";UPPER([name.])&\"|\")));1;0)");
        block.column(
                "there",
                language.words(LivingWords.IS_THERE),
                line -> "=IF(AND(LEN(TRIM(" + jars.get(line).name() + "))=0;"
                        + jars.get(line).typed() + "=0);0;1)");
        block.column(
                "ok",
                language.words(LivingWords.RANKED),
                line -> "=IF(AND(" + jars.get(line).trouble() + "=\"\";"
                        + jars.get(line).heldBack() + "=0);1;0)");
        column(
                block,
                "v",
                language.words(LivingWords.RATE),
                jars,
                (jar) -> jar.fit().at("k"));
        column(
                block,
                "s",
                language.words(LivingWords.ERROR_TO_COMPARE),
                jars,
                jar -> jar.compared().at("error"));
        column(
                block,
                "nu",
                language.words(LivingWords.FREEDOM),
                jars,
                jar -> jar.errors().at("freedom"));
        column(
                block,
                "both",
                language.words(LivingWords.SHARED_ERROR),
                jars,
                jar -> jar.compared().at("shared"));
        column(
                block,
                "c",
                language.words(LivingWords.COMMON_ERROR),
                jars,
                jar -> jar.errors().at("common"));
        column(
                block,
                "half",
                language.words(LivingWords.HALF_TIME),
                jars,
                jar -> "IFERROR(" + jar.errors().at("half") + ";-1)");
        together(block, count, language);
        estimates(block, language);
        order(block, language);
        return block;
    }

    private interface Of {
        String in(Jar jar);
    }

    private static void column(Block block, String name, String said, List<Jar> jars, Of of) {
        block.column(name, said, line -> "=IF([ok.]=1;" + of.in(jars.get(line)) + ";0)");
    }

    private static String named(String heading, String otherwise) {
        return "=IF(LEN(TRIM(" + heading + "))=0;\"" + otherwise + "\";TRIM(" + heading + "))";
    }

    /** Which jars have one name: 1 in the column of a jar and the line of another. */
    private static void together(Block block, int count, Language language) {
        for (int j = 0; j < count; j++) {
            String key = block.at("key", j);
            String ok = block.at("ok", j);
            block.column(
                    "same" + j,
                    language.say(LivingWords.SAME_AS, j + 1),
                    "=IF(AND([ok.]=1;" + ok + "=1;[key.]=" + key + ");1;0)");
            String same = block.at("same" + j);
            block.foot("m" + j, "same" + j, 0, "=SUM(" + same + ")");
            block.foot("mean" + j, "same" + j, 1, "=IF([m" + j + "]=0;0;SUMPRODUCT(" + same + ";[v])/[m" + j + "])");
            block.foot(
                    "shared" + j, "same" + j, 2, "=IF([m" + j + "]=0;0;SUMPRODUCT(" + same + ";[both])/[m" + j + "])");
            block.foot("common" + j, "same" + j, 3, "=IF([m" + j + "]=0;0;SUMPRODUCT(" + same + ";[c])/[m" + j + "])");
            block.foot("read" + j, "same" + j, 4, "=SUMPRODUCT(" + same + ";[s];[s])");
            block.foot("first" + j, "same" + j, 5, "=IF([m" + j + "]=0;0;MATCH(1;" + same + ";0))");
        }
        block.column("s4", language.words(LivingWords.FOURTH), "=IF([ok.]=1;[s.]^4/[nu.];0)");
        for (int j = 0; j < count; j++) {
            block.column(
                    "off" + j,
                    language.say(LivingWords.OFF_MEAN, j + 1),
                    "=IF([same" + j + ".]=1;[v.]-[mean" + j + "];0)");
            block.foot("squares" + j, "off" + j, 0, "=SUMSQ(" + block.at("off" + j) + ")");
            block.foot("read4" + j, "off" + j, 1, "=SUMPRODUCT(" + block.at("same" + j) + ";[s4])");
        }
        block.footNamed(0, language.words(LivingWords.GROUP_SUMS));
    }

    private static void estimates(Block block, Language language) {
        column(block, "m", language.words(LivingWords.JARS_OF_IT), "=IF([first@]=[#];[m@];0)");
        column(block, "g", language.words(LivingWords.RATE), "=IF([m.]=0;0;[mean@])");
        column(block, "alike", language.words(LivingWords.ALL_ALIKE), "=IF(SQRT([squares@])<=1E-14*ABS([g.]);1;0)");
        column(block, "readNu", language.words(LivingWords.FREEDOM), "=IF(OR([m.]<2;[read4@]=0);1;[read@]^2/[read4@])");
        column(block, "readError", language.words(LivingWords.BY_READINGS), "=IF([m.]=0;0;SQRT([read@])/[m.])");
        column(block, "groupNu", language.words(LivingWords.FREEDOM), "=MAX(1;[m.]-1)");
        column(
                block,
                "groupError",
                language.words(LivingWords.BY_SPREAD),
                "=IF([m.]<2;0;SQRT([squares@]/([m.]-1)/[m.]+(" + Student.NORMAL + "/" + Student.quantile("[groupNu.]")
                        + "*[shared@])^2))");
        column(
                block,
                "byReadings",
                language.words(LivingWords.READINGS_DECIDE),
                "=IF(" + Student.quantile("[readNu.]") + "*[readError.]>=" + Student.NORMAL + "*[shared@];1;0)");
        // Infinitely many degrees of freedom are written as a number that no table tells from them.
        column(block, "known", language.words(LivingWords.BY_SPREAD), "=[spread]*[v.]");
        column(
                block,
                "e",
                language.words(LivingWords.ERROR_TO_COMPARE),
                "=IF([m.]=0;0;IF([m.]=1;SQRT([s.]^2+[known.]^2);IF([alike.]=1;IF([byReadings.]=1;[readError.];[shared@]);[groupError.])))");
        column(
                block,
                "f",
                language.words(LivingWords.FREEDOM),
                "=IF([m.]=0;1;IF([m.]=1;IF([known.]=0;[nu.];IF([s.]/[e.]<1E-3;1E12;[nu.]/([s.]/[e.])^4));IF([alike.]=1;IF([byReadings.]=1;[readNu.];1E12);[groupNu.])))");
        column(block, "o", language.words(LivingWords.COMMON_ERROR), "=IF([m.]=1;[c.];[common@])");
        column(
                block,
                "h",
                language.words(LivingWords.HALF_TIME),
                "=IF([m.]=1;[half.];IF([g.]>SQRT([e.]^2+[o.]^2);LN(2)/[g.];-1))");
    }

    /** The sign @ stands for the number of the line, counted from 0: sums of a jar stand below its column. */
    private static void column(Block block, String name, String said, String formula) {
        block.column(name, said, line -> formula.replace("@", String.valueOf(line)));
    }

    private static void order(Block block, Language language) {
        block.value("groups", language.words(LivingWords.WRAPS), "=COUNT(" + block.nextColumn() + ")");
        block.column("sortable", language.words(LivingWords.RATE), "=IF([m.]=0;\"\";[g.])");
        block.column(
                "place",
                language.words(LivingWords.PLACE_OF),
                line -> "=IF([m.]=0;0;RANK([g.];[sortable];1)"
                        + (line == 0 ? "" : "+COUNTIF(" + block.at("sortable", 0, line) + ";[g.])") + ")");
        block.write(
                "trouble",
                "="
                        + FitSteps.reason(new String[][] {
                            {"NOT(ISNUMBER([spread]))", language.words(LivingWords.NO_SPREAD)},
                            {"OR([spread]<0;[spread]>=1)", language.words(LivingWords.NO_SPREAD)},
                            {"SUM([ownScale])>0", language.words(LivingWords.OWN_SCALE)},
                            {"ISERROR(SUM([place]))", language.words(LivingWords.ERROR_CELL)},
                            {"[groups]<2", language.words(LivingWords.NOTHING_TO_RANK)}
                        }));
    }
}
