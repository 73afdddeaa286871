package org.snugsheet.office.sharing.living;

import java.util.List;
import org.snugsheet.office.words.Language;

/**
 * The steps that read a column of minutes. Times that may be times of day are refused, as {@code org.snugsheet.engine.reading.TimeColumn}
 * does; where that needs more than a formula, a little more strictly.
 */
final class TimeSteps {

    private TimeSteps() {}

    /**
     * Writes the steps.
     *
     * @param cells its cells, as formulas call them
     */
    static Block write(StepsPage page, String title, List<String> cells, Language language) {
        Block block = new Block(page, title, cells.size());
        block.later("trouble", language.words(LivingWords.TROUBLE));
        TypedSteps.column(block, "typed", LivingWords.TYPED, LivingWords.READ, line -> cells.get(line), language);
        block.column(
                "minutes",
                language.words(LivingWords.MINUTES),
                "=IF([typedUnit.]=\"\";[typed.];" + TypedSteps.UNREADABLE + ")");
        block.column("order", language.words(LivingWords.USED), "=IF(ISNUMBER([minutes.]);[#];\"\")");
        block.value("n", language.words(LivingWords.COUNT), "=COUNT([order])");
        block.column(
                "sorted",
                language.words(LivingWords.MINUTES),
                "=IF([#]<=[n];INDEX([minutes];SMALL([order];[#]));\"\")");
        block.column(
                "step",
                language.words(LivingWords.STEP),
                line -> line == 0 ? "=\"\"" : "=IF([#]<=[n];IF([sorted.]>[sorted-];[sorted.]-[sorted-];\"\");\"\")");
        block.value(
                "usual",
                language.words(LivingWords.USUAL_STEP),
                "=IF(COUNT([step])=0;0;SMALL([step];INT((COUNT([step])+1)/2)))");
        block.value("span", language.words(LivingWords.SPAN), "=IF([n]=0;0;MAX([sorted])-MIN([sorted]))");
        // 41 too many is what a full hour looks like in such numbers.
        block.column(
                "hour",
                language.words(LivingWords.FULL_HOUR),
                line -> line == 0
                        ? "=0"
                        : "=IF(ISNUMBER([step.]);IF(AND([sorted-]>=100;ABS([step.]-[usual]-40)<0.01*[usual]+0.000000001);1;0);0)");
        block.column(
                "parts",
                language.words(LivingWords.PARTS),
                "=IF(ISNUMBER([sorted.]);IF(ABS([sorted.]*60-ROUND([sorted.]*60;0))<0.000001;0;1);0)");
        block.write(
                "trouble",
                "="
                        + FitSteps.reason(new String[][] {
                            {"ISERROR(SUM([minutes]))", language.words(LivingWords.ERROR_CELL)},
                            {
                                "COUNTIF([minutes];" + TypedSteps.UNREADABLE + ")>0",
                                language.words(LivingWords.TIME_UNREADABLE)
                            },
                            {
                                "AND([n]>1;OR([usual]<0.25;SUM([hour])>0;AND([span]<3;SUM([parts])>0)))",
                                language.words(LivingWords.NOT_MINUTES)
                            }
                        }));
        return block;
    }
}
