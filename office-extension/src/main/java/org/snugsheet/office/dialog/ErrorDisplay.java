package org.snugsheet.office.dialog;

import com.sun.star.awt.XWindowPeer;

/** Tells the user what is wrong with the answers. */
@FunctionalInterface
public interface ErrorDisplay {
    /**
     * Tells it.
     *
     * @param above the window that asks
     * @param sentence what is wrong and what to do
     * @throws com.sun.star.uno.Exception if the office fails
     */
    void tell(XWindowPeer above, String sentence) throws com.sun.star.uno.Exception;
}
