package org.snugsheet.engine.slips;

import java.util.OptionalInt;
import org.snugsheet.engine.Finding;

/**
 * One slip found in what was typed, with the suggested mend in its sentence. Nothing is ever changed by itself.
 *
 * @param kind what kind it is
 * @param certainty how sure it is that something is wrong there, from 0 to 1: the chance of the slip against that of a clean column,
 *     as {@code RobustFit} counts it
 * @param finding what to say of it
 */
public record Slip(SlipKind kind, double certainty, Finding finding) {

    /**
     * The row to blame.
     *
     * @return the row, counted from 1; empty when it is not one row’s trouble
     */
    public OptionalInt row() {
        return finding.row();
    }
}
