package org.snugsheet.engine.lesson;

import org.snugsheet.engine.QuantityName;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;

/** The check on how long a lesson lasts. */
final class LessonTime {

    private static final double SECONDS_PER_MINUTE = 60;

    private LessonTime() {}

    static double require(double seconds) {
        if (!(seconds > 0) || Double.isInfinite(seconds)) {
            throw Refusal.of(Trouble.NOT_POSITIVE, QuantityName.TIME_OF_THE_LESSON, seconds / SECONDS_PER_MINUTE);
        }
        return seconds;
    }
}
