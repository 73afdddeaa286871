package org.snugsheet.office.investigation;

import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.words.Language;

/** How warm the water may be at the start of a lesson. */
public final class StartLimit {

    private StartLimit() {}

    /**
     * Says it on both scales.
     *
     * @param language the language to say it in
     * @return one sentence
     */
    public static String in(Language language) {
        return language.say(
                InvestigationWords.START_LIMIT,
                SafeStart.SCHOOL_LIMIT.in(Scale.CELSIUS),
                Math.floor(SafeStart.SCHOOL_LIMIT.in(Scale.FAHRENHEIT)));
    }
}
