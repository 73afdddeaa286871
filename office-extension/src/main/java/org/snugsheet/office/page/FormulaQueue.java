package org.snugsheet.office.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Formulas that wait until all names of a document are there. For each new name the office takes every formula apart and puts it together
 * again, which takes long and, in LibreOffice 7.4, can end the office.
 */
public final class FormulaQueue {

    /** Something that is written. */
    @FunctionalInterface
    interface Step {
        void write() throws com.sun.star.uno.Exception;
    }

    private final List<Step> waiting = new ArrayList<>();

    void add(Step step) {
        waiting.add(step);
    }

    /**
     * Writes what waits, in the order in which it came.
     *
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void write() throws com.sun.star.uno.Exception {
        List<Step> now = List.copyOf(waiting);
        waiting.clear();
        for (Step step : now) {
            step.write();
        }
    }
}
