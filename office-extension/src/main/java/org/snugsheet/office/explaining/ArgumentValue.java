package org.snugsheet.office.explaining;

import com.sun.star.table.CellRangeAddress;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.Phrase;

/**
 * What one argument of a call was given.
 *
 * @param written the argument as the formula bar shows it; empty if it was left out
 * @param rows its values row by row, each a number, a text, or an empty text for a blank cell; empty if it was left out or
 *     could not be looked up
 * @param oneCell whether it is a single value and no range
 * @param error the first cell that shows an error, by its name, if there is one
 * @param place the cells, if it is a range of them
 * @param fault what is wrong with how it is written, before any cell is looked at
 * @param manyAtOnce whether many cells are worked out at once, which only an array formula does
 */
record ArgumentValue(
        String written,
        List<List<Object>> rows,
        boolean oneCell,
        Optional<String> error,
        Optional<CellRangeAddress> place,
        Optional<Fault> fault,
        boolean manyAtOnce) {

    /**
     * What is wrong with how an argument is written.
     *
     * @param words a pattern of a MessageFormat
     * @param what the value for {0}
     */
    record Fault(Phrase words, String what) {}

    static final ArgumentValue LEFT_OUT =
            new ArgumentValue("", List.of(), true, Optional.empty(), Optional.empty(), Optional.empty(), false);

    static ArgumentValue of(String written, Object[][] rows, boolean oneCell, Optional<String> error) {
        return new ArgumentValue(written, listed(rows), oneCell, error, Optional.empty(), Optional.empty(), false);
    }

    static ArgumentValue ofCells(String written, Object[][] rows, CellRangeAddress place, Optional<String> error) {
        boolean oneCell = place.StartColumn == place.EndColumn && place.StartRow == place.EndRow;
        return new ArgumentValue(written, listed(rows), oneCell, error, Optional.of(place), Optional.empty(), false);
    }

    static ArgumentValue unknown(String written) {
        return new ArgumentValue(written, List.of(), true, Optional.empty(), Optional.empty(), Optional.empty(), false);
    }

    static ArgumentValue faulty(String written, Phrase words, String what) {
        return new ArgumentValue(
                written,
                List.of(),
                true,
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Fault(words, what)),
                false);
    }

    ArgumentValue ofManyAtOnce() {
        return new ArgumentValue(written, rows, oneCell, error, place, fault, true);
    }

    private static List<List<Object>> listed(Object[][] rows) {
        return Arrays.stream(rows).map(Arrays::asList).toList();
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
