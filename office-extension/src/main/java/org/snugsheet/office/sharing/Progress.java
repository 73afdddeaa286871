package org.snugsheet.office.sharing;

import com.sun.star.task.XStatusIndicator;
import java.util.Optional;

/** Is told how far something is that takes a while. */
@FunctionalInterface
public interface Progress {

    /** Nobody looks. */
    Progress UNSEEN = (done, all) -> {};

    /**
     * Tells it.
     *
     * @param done how many are done
     * @param all of how many
     */
    void at(int done, int all);

    /** The office’s own bar, for its part of the work; empty if nobody looks. */
    default Optional<XStatusIndicator> bar() {
        return Optional.empty();
    }
}
