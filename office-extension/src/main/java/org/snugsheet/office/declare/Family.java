package org.snugsheet.office.declare;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Marks an interface whose methods are the cell functions of one family. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Family {

    /**
     * The service. Files store {@code SERVICE.METHOD} in capitals: it can never change.
     *
     * @return such as {@code snugsheet.Cool}
     */
    String service();

    /**
     * Where the texts of its arguments stand, as constants: their names are the keys of the translations.
     *
     * @return classes that hold nothing else
     */
    Class<?>[] texts();

    /**
     * What the family is about.
     *
     * @return a heading for the reference
     */
    String title();
}
