package org.snugsheet.office.declare;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Says of an argument’s text what the temperature is of that it asks for. What can hurt in a call is found by this, so that no
 * function is forgotten.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.FIELD)
public @interface TemperatureOf {

    /**
     * What it is the temperature of.
     *
     * @return one of five, or anything
     */
    Matter value();

    /**
     * Why nothing can be said of a temperature of {@link Matter#ANYTHING}.
     *
     * @return the reason; empty for all others
     */
    String because() default "";

    /** What somebody may touch or stand in. */
    enum Matter {
        /** Water that pupils handle, or a jar full of it. */
        WATER,
        /** What jars stand in: a tub, a room, or the weather. */
        SURROUNDINGS,
        /** The air outdoors. */
        WEATHER,
        /** Readings of water, a column for each jar, with its names in another argument. */
        JARS,
        /** Readings of water with the names of the jars above them and the times beside them. */
        SHEET,
        /** Nobody can tell. */
        ANYTHING
    }
}
