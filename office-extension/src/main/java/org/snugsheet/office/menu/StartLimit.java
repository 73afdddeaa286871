package org.snugsheet.office.menu;

import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.words.Language;

/** How warm the water may be at the start of a lesson. */
final class StartLimit {

    private StartLimit() {}

    /** Says it on both scales, in one sentence. */
    static String in(Language language) {
        return language.say(
                MenuWords.START_LIMIT,
                SafeStart.SCHOOL_LIMIT.in(Scale.CELSIUS),
                Math.floor(SafeStart.SCHOOL_LIMIT.in(Scale.FAHRENHEIT)));
    }
}
