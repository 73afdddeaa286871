package org.snugsheet.engine.slips;

import java.util.OptionalInt;
import org.snugsheet.engine.Finding;

/**
 * One slip found in what was typed; its message suggests a correction. Nothing is ever changed automatically.
 *
 * @param kind the kind of slip
 * @param certainty how certain it is that something is wrong there, from 0 to 1: the probability of the slip against that of
 *     a clean column, as {@code RobustFit} computes it
 * @param finding the message
 */
public record Slip(SlipKind kind, double certainty, Finding finding) {

    /**
     * The row to blame.
     *
     * @return the row, counted from 1; empty if the slip does not concern a single row
     */
    public OptionalInt row() {
        return finding.row();
    }
}
