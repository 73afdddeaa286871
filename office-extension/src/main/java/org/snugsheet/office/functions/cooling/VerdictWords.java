package org.snugsheet.office.functions.cooling;

import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.comparison.Ratio;
import org.snugsheet.engine.comparison.Verdict;
import org.snugsheet.office.words.Language;

/** A verdict as one sentence that a class can read. */
public enum VerdictWords implements Phrase {
    /** The second is slower, between two limits. */
    SECOND(
            "The second jar takes {0,number,0.0#} times as long to cool as the first (between {1,number,0.0#} and {2,number,0.0#} times, 95 % sure)."),
    /** The second is slower, without an upper limit. */
    SECOND_AT_LEAST(
            "The second jar takes {0,number,0.0#} times as long to cool as the first ({1,number,0.0#} times or more, 95 % sure)."),
    /** The first is slower, between two limits. */
    FIRST(
            "The first jar takes {0,number,0.0#} times as long to cool as the second (between {1,number,0.0#} and {2,number,0.0#} times, 95 % sure)."),
    /** The first is slower, without an upper limit. */
    FIRST_AT_LEAST(
            "The first jar takes {0,number,0.0#} times as long to cool as the second ({1,number,0.0#} times or more, 95 % sure)."),
    /** The second may as well not cool. */
    SECOND_HARDLY(
            "The second jar hardly cools: it takes {0,number,0.0#} times as long as the first, or longer still (95 % sure)."),
    /** The first may as well not cool. */
    FIRST_HARDLY(
            "The first jar hardly cools: it takes {0,number,0.0#} times as long as the second, or longer still (95 % sure)."),
    /** What was counted in beside the readings. */
    COUNTED_IN("Counted in: jars wrapped alike may differ by {0,number,percent}."),
    /** No difference is claimed. */
    CANNOT_TELL("These readings cannot tell which jar cools more slowly. Take more readings, or fill more jars.");

    private final String english;

    VerdictWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }

    /** The sentence for two jars, and if a spread was counted in, another one that says so. */
    static String of(Verdict verdict, double spread, Language language) {
        String sentence = of(verdict, language);
        return spread == 0 ? sentence : sentence + " " + language.say(COUNTED_IN, spread);
    }

    private static String of(Verdict verdict, Language language) {
        if (verdict instanceof Verdict.SecondSlower second) {
            return said(second.ratio(), second.interval(), language, SECOND, SECOND_AT_LEAST, SECOND_HARDLY);
        }
        if (verdict instanceof Verdict.FirstSlower first) {
            return said(first.ratio(), first.interval(), language, FIRST, FIRST_AT_LEAST, FIRST_HARDLY);
        }
        return language.words(CANNOT_TELL);
    }

    private static String said(
            Ratio ratio, Interval limits, Language language, Phrase bounded, Phrase atLeast, Phrase hardly) {
        if (!ratio.isDefined()) {
            // A jar whose rate may as well be zero is slower by no number of times.
            return language.say(hardly, limits.low());
        }
        return language.say(
                Double.isInfinite(limits.high()) ? atLeast : bounded, ratio.value(), limits.low(), limits.high());
    }
}
