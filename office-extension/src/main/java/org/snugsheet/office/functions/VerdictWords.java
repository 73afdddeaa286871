package org.snugsheet.office.functions;

import java.text.MessageFormat;
import java.util.Locale;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.comparison.Ratio;
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
    private static final String SECOND_HARDLY =
            "The second jar hardly cools: {1,number,0.0#} times slower than the first, or slower still (95 % sure).";
    private static final String FIRST_HARDLY =
            "The first jar hardly cools: {1,number,0.0#} times slower than the second, or slower still (95 % sure).";
    private static final String CANNOT_TELL =
            "These readings cannot tell which jar cools more slowly. Take more readings, or fill more jars.";

    private VerdictWords() {}

    static String of(Verdict verdict) {
        if (verdict instanceof Verdict.SecondSlower second) {
            return said(second.ratio(), second.interval(), SECOND, SECOND_AT_LEAST, SECOND_HARDLY);
        }
        if (verdict instanceof Verdict.FirstSlower first) {
            return said(first.ratio(), first.interval(), FIRST, FIRST_AT_LEAST, FIRST_HARDLY);
        }
        return CANNOT_TELL;
    }

    private static String said(Ratio ratio, Interval limits, String bounded, String atLeast, String hardly) {
        if (!ratio.isTellable()) {
            // A jar whose rate may as well be zero is slower by no number of times.
            return new MessageFormat(hardly, Locale.ENGLISH).format(new Object[] {0, limits.low()});
        }
        boolean open = Double.isInfinite(limits.high());
        return new MessageFormat(open ? atLeast : bounded, Locale.ENGLISH)
                .format(new Object[] {ratio.value(), limits.low(), limits.high()});
    }
}
