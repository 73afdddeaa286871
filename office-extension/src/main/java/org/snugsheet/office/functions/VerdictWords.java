package org.snugsheet.office.functions;

import java.text.MessageFormat;
import java.util.Locale;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.comparison.Verdict;

/** A verdict as one sentence that a class can read. Each sentence is whole, so that it can be translated. */
final class VerdictWords {

    private static final String SECOND =
            "The second jar cools {0,number,0.0#} times slower than the first (between {1,number,0.0#} and {2,number,0.0#} times, 95 % sure).";
    private static final String SECOND_AT_LEAST =
            "The second jar cools {0,number,0.0#} times slower than the first ({1,number,0.0#} times or more, 95 % sure).";
    private static final String FIRST =
            "The first jar cools {0,number,0.0#} times slower than the second (between {1,number,0.0#} and {2,number,0.0#} times, 95 % sure).";
    private static final String FIRST_AT_LEAST =
            "The first jar cools {0,number,0.0#} times slower than the second ({1,number,0.0#} times or more, 95 % sure).";
    private static final String CANNOT_TELL =
            "These readings cannot tell which jar cools more slowly. Take more readings, or fill more jars.";

    private VerdictWords() {}

    static String of(Verdict verdict) {
        if (verdict instanceof Verdict.SecondSlower second) {
            return said(second.ratio().value(), second.interval(), SECOND, SECOND_AT_LEAST);
        }
        if (verdict instanceof Verdict.FirstSlower first) {
            return said(first.ratio().value(), first.interval(), FIRST, FIRST_AT_LEAST);
        }
        return CANNOT_TELL;
    }

    private static String said(double times, Interval limits, String bounded, String atLeast) {
        boolean open = Double.isInfinite(limits.high());
        return new MessageFormat(open ? atLeast : bounded, Locale.ENGLISH)
                .format(new Object[] {times, limits.low(), limits.high()});
    }
}
