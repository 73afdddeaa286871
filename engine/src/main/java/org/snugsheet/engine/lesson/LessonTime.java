package org.snugsheet.engine.lesson;

import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;

/** The check on how long a lesson lasts. */
final class LessonTime {

    private static final double SECONDS_PER_MINUTE = 60;

    private LessonTime() {}

    static double require(double seconds) {
        if (!(seconds > 0) || Double.isInfinite(seconds)) {
            throw Refusal.of(Trouble.NOT_POSITIVE, "time of the lesson", seconds / SECONDS_PER_MINUTE);
        }
        return seconds;
    }
}
