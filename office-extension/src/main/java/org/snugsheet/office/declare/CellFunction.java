package org.snugsheet.office.declare;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Declares a method as a cell function.
 *
 * <p>The method’s name is stored in files and can never change; {@link #name()} is what people type.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface CellFunction {

    /**
     * The place among the methods of its interface, from 0, without gaps: reflection knows no order, the office needs one.
     *
     * @return the place
     */
    int order();

    /**
     * The name people type.
     *
     * @return such as {@code COOL.RATE}
     */
    String name();

    /**
     * What it does, in a sentence with the unit of the answer.
     *
     * @return the description
     */
    String text();

    /**
     * The formula it works out, in symbols that are the same in every language.
     *
     * @return such as {@code R = d/λ}; empty where there is none
     */
    String formula() default "";

    /**
     * Where formula or figures come from: standards by number, papers by author and year.
     *
     * @return one or several, with a semicolon between; empty where the answer itself says so, or nothing has to be believed
     */
    String source() default "";

    /**
     * A formula that works, with its numbers inside.
     *
     * @return a formula in English spelling
     */
    String example();

    /**
     * What the example answers.
     *
     * @return the text of the answer, or its number to the digits shown
     */
    String answer();

    /**
     * A formula that is refused; empty for a function that never refuses.
     *
     * @return a formula in English spelling
     */
    String refused() default "";

    /**
     * Why {@link #refused()} is refused.
     *
     * @return the reason in a few words
     */
    String because() default "";
}
