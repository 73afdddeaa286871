package org.snugsheet.engine.quantity;

/** Times are plain numbers in seconds; sheets and people use minutes. */
public final class Time {

    /** Seconds in a minute. */
    public static final double SECONDS_PER_MINUTE = 60;

    private Time() {}
}
