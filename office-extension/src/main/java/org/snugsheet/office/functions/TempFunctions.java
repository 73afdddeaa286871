package org.snugsheet.office.functions;

import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.sheet.NoConvergenceException;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;

/** The TEMP functions. */
public final class TempFunctions extends FamilyService implements Temp {

    /** For the office, which makes one for a session. */
    public TempFunctions() {
        super(Temp.class);
    }

    @Override
    public Object convert(String[][] value, String[][] from, String[][] to)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale source = Scale.parse(Cells.text(from));
            Scale target = Scale.parse(Cells.text(to));
            return Cells.each(
                    value, (row, entry) -> entry.asTemperature(row, source).in(target));
        });
    }

    @Override
    public Object change(String[][] value, String[][] from, String[][] to)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale source = Scale.parse(Cells.text(from));
            Scale target = Scale.parse(Cells.text(to));
            return Cells.each(
                    value,
                    (row, entry) -> TemperatureDifference.of(entry.asNumber(row), source)
                            .in(target));
        });
    }
}
