package org.snugsheet.office.sharing.living;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.office.words.Language;

/** What stays as it was on the day of the copy: answers without a translation, and what they were worked out from. */
final class KeptSteps {

    private KeptSteps() {}

    /** Cells as they were, so that a formula can say whether they have changed: 1 in the value “changed”. */
    static Block guard(StepsPage page, String title, List<String> now, List<Object> then, Language language) {
        Block block = new Block(page, title, now.size());
        block.column(
                "now",
                language.words(LivingWords.NOW),
                line -> "=IF(LEN(" + now.get(line) + ")=0;\"\";" + now.get(line) + ")");
        block.open("then", language.words(LivingWords.THEN));
        for (int line = 0; line < then.size(); line++) {
            block.constant("then", line, then.get(line));
        }
        block.column(
                "same",
                language.words(LivingWords.SAME),
                "=IF(ISERROR([now.]);IF(ISERROR([then.]);1;0);IF(ISERROR([then.]);0;IF(AND(ISNUMBER([now.]);ISNUMBER([then.]));IF(ABS([now.]-[then.])<=0.0000000001*ABS([then.]);1;0);IF(AND(NOT(ISNUMBER([now.]));NOT(ISNUMBER([then.]));[now.]=[then.]);1;0))))");
        block.value("changed", language.words(LivingWords.CHANGED_SINCE), "=IF(SUM([same])=" + now.size() + ";0;1)");
        return block;
    }

    /** Answers as they were, in the columns k0, k1 and so on. */
    static Block answers(StepsPage page, String title, Object[][] answers, Language language) {
        Block block = new Block(page, title, answers.length);
        for (int column = 0; column < answers[0].length; column++) {
            block.open("k" + column, language.words(LivingWords.THEN));
            for (int row = 0; row < answers.length; row++) {
                block.constant("k" + column, row, answers[row][column]);
            }
        }
        return block;
    }

    /** The same, refused as soon as something has changed, in the columns a0, a1 and so on. */
    static Block unlessChanged(
            StepsPage page, String title, Block kept, List<Block> guards, int columns, Language language) {
        Block block = new Block(page, title, kept.lines());
        String changed = changed(guards);
        for (int column = 0; column < columns; column++) {
            String from = "k" + column;
            block.column(
                    "a" + column,
                    language.words(LivingWords.THEN_OR_NOTHING),
                    line -> "=IF(" + changed + "=0;" + kept.at(from, line) + ";NA())");
        }
        return block;
    }

    /** How many of some guards have changed. */
    static String changed(List<Block> guards) {
        List<String> all = new ArrayList<>();
        guards.forEach(guard -> all.add(guard.at("changed")));
        return "(" + String.join("+", all) + ")";
    }
}
