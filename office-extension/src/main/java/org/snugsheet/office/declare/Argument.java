package org.snugsheet.office.declare;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Describes an argument. Its name is the parameter’s; whether it may be left out follows from its type. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.PARAMETER)
public @interface Argument {

    /**
     * What to give, with the unit, and for an option what it is when left out: a constant of one of {@link Family#texts()}.
     *
     * @return the description
     */
    String value();
}
