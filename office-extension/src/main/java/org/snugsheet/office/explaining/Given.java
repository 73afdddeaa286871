package org.snugsheet.office.explaining;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What one argument of a call was given.
 *
 * @param written the argument as it stands in the formula; empty if it was left out
 * @param rows its values row by row, each a number, a text, or an empty text for a blank cell; empty if it was left out or
 *     could not be looked up
 * @param oneCell whether it is a single value and no range
 * @param error the first cell that shows an error, by its name, if there is one
 */
record Given(String written, List<List<Object>> rows, boolean oneCell, Optional<String> error) {

    static final Given LEFT_OUT = new Given("", List.of(), true, Optional.empty());

    static Given of(String written, Object[][] rows, boolean oneCell, Optional<String> error) {
        return new Given(written, Arrays.stream(rows).map(Arrays::asList).toList(), oneCell, error);
    }

    boolean isLeftOut() {
        return written.isEmpty();
    }

    boolean isKnown() {
        return isLeftOut() || !rows.isEmpty();
    }

    List<Object> values() {
        return rows.stream().flatMap(List::stream).toList();
    }
}
