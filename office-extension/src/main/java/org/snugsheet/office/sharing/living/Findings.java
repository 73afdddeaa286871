package org.snugsheet.office.sharing.living;

import org.snugsheet.office.functions.check.ProblemWords;
import org.snugsheet.office.words.Language;

/** A line of what CHECK.ALL answers. */
final class Findings {

    private static final int KIND = 2;

    private Findings() {}

    /** Whether it holds its jar back. */
    static boolean isSlip(Object[] line, Language language) {
        return line.length > KIND
                && line[KIND] instanceof String kind
                && !kind.isEmpty()
                && !kind.equals(language.words(ProblemWords.CAUTION))
                && !kind.equals(language.words(ProblemWords.CAN_HURT));
    }

    /** The number of the reading it blames; 0 if it blames none. */
    static int row(Object[] line) {
        if (line[0] instanceof Double number) {
            return number.intValue();
        }
        return line[0] instanceof String text && text.matches("[0-9]{1,4}") ? Integer.parseInt(text) : 0;
    }
}
