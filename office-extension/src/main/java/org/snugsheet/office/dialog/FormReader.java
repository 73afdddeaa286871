package org.snugsheet.office.dialog;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.office.words.DeclinedException;

/**
 * What the fields of a form say, taken together.
 *
 * @param <T> what the answers are
 */
@FunctionalInterface
public interface FormReader<T> {
    /**
     * Reads the fields.
     *
     * @return the answers
     * @throws com.sun.star.uno.Exception if the office fails
     * @throws DeclinedException if they do not go together
     * @throws InvalidInputException if one of them is no answer
     */
    T read() throws com.sun.star.uno.Exception;
}
