package org.snugsheet.office.dialog;

/** Tells the user what is wrong with the answers. */
@FunctionalInterface
public interface Trouble {
    /**
     * Tells it.
     *
     * @param sentence what is wrong and what to do
     * @throws com.sun.star.uno.Exception if the office fails
     */
    void tell(String sentence) throws com.sun.star.uno.Exception;
}
