package org.snugsheet.engine.lesson;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;

/** The check on how long a lesson lasts. */
final class LessonTime {

    private static final double SECONDS_PER_MINUTE = 60;

    /** A day; common practice, no source. */
    private static final double LONGEST = 24 * 60 * SECONDS_PER_MINUTE;

    private LessonTime() {}

    static double require(double seconds) {
        if (!(seconds > 0) || Double.isInfinite(seconds)) {
            throw InvalidInputException.of(
                    Problem.NOT_POSITIVE, QuantityName.TIME_OF_THE_LESSON, seconds / SECONDS_PER_MINUTE);
        }
        if (seconds > LONGEST) {
            throw InvalidInputException.of(
                    Problem.LESSON_TOO_LONG, seconds / SECONDS_PER_MINUTE, LONGEST / SECONDS_PER_MINUTE);
        }
        return seconds;
    }
}
