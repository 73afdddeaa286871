package org.snugsheet.office.sharing;

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
}
