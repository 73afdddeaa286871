package org.snugsheet.office.functions;

import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.sheet.NoConvergenceException;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;

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

    @Override
    public Object read(String[][] text, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            return Cells.each(text, (row, entry) -> entry.asTemperature(row, s).in(s));
        });
    }

    @Override
    public Object round(String[][] value, String[][] mark, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            Graduation graduation = Graduation.of(Cells.number(mark), s);
            return Cells.each(value, (row, entry) -> graduation.nearest(entry.asTemperature(row, s), s));
        });
    }

    @Override
    public Object unit(String[][] value, String[][] from, String[][] to)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Unit source = Unit.parse(Cells.text(from));
            Unit target = Unit.parse(Cells.text(to));
            // Asked once beforehand, so that units that do not match are refused even over blanks.
            target.from(1, source);
            return Cells.each(value, (row, entry) -> target.from(entry.asNumber(row), source));
        });
    }
}
