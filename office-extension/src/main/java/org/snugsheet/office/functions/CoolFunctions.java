package org.snugsheet.office.functions;

import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.sheet.NoConvergenceException;
import java.util.function.ToDoubleBiFunction;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;

/** The COOL functions. */
public final class CoolFunctions extends FamilyService implements Cool {

    private static final double SECONDS_PER_MINUTE = 60;

    /** For the office, which makes one for a session. */
    public CoolFunctions() {
        super(Cool.class);
    }

    @Override
    public double rate(
            Object[][] times, Object[][] temps, String[][] surroundings, @Nullable Object mark, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return fitted(
                times,
                temps,
                surroundings,
                mark,
                scale,
                (fit, s) -> fit.constant().perMinute());
    }

    @Override
    public double rateError(
            Object[][] times, Object[][] temps, String[][] surroundings, @Nullable Object mark, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return fitted(
                times,
                temps,
                surroundings,
                mark,
                scale,
                (fit, s) -> fit.constantError().perMinute());
    }

    @Override
    public double halftime(
            Object[][] times, Object[][] temps, String[][] surroundings, @Nullable Object mark, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return fitted(times, temps, surroundings, mark, scale, (fit, s) -> fit.halfTime() / SECONDS_PER_MINUTE);
    }

    @Override
    public double halftimeError(
            Object[][] times, Object[][] temps, String[][] surroundings, @Nullable Object mark, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return fitted(times, temps, surroundings, mark, scale, (fit, s) -> fit.halfTimeError() / SECONDS_PER_MINUTE);
    }

    @Override
    public double start(
            Object[][] times, Object[][] temps, String[][] surroundings, @Nullable Object mark, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return fitted(
                times, temps, surroundings, mark, scale, (fit, s) -> fit.start().in(s));
    }

    @Override
    public double startError(
            Object[][] times, Object[][] temps, String[][] surroundings, @Nullable Object mark, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return fitted(
                times,
                temps,
                surroundings,
                mark,
                scale,
                (fit, s) -> fit.startError().in(s));
    }

    @Override
    public double misfit(
            Object[][] times, Object[][] temps, String[][] surroundings, @Nullable Object mark, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return fitted(
                times,
                temps,
                surroundings,
                mark,
                scale,
                (fit, s) -> fit.misfit().in(s));
    }

    @Override
    public double temp(
            String[][] minutes, String[][] start, String[][] surroundings, String[][] rate, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            return cooling(start, surroundings, rate, s)
                    .after(Cells.number(minutes) * SECONDS_PER_MINUTE)
                    .in(s);
        });
    }

    @Override
    public double time(
            String[][] target, String[][] start, String[][] surroundings, String[][] rate, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            return cooling(start, surroundings, rate, s).timeTo(Cells.temperature(target, s)) / SECONDS_PER_MINUTE;
        });
    }

    private static NewtonCooling cooling(String[][] start, String[][] surroundings, String[][] rate, Scale scale) {
        return new NewtonCooling(
                Cells.temperature(start, scale),
                Cells.temperature(surroundings, scale),
                CoolingConstant.ofPerMinute(Cells.number(rate)));
    }

    private static double fitted(
            Object[][] times,
            Object[][] temps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale,
            ToDoubleBiFunction<CoolingFit, Scale> answer)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            JarCells jar = JarCells.of(times, temps, surroundings, mark, scale);
            return answer.applyAsDouble(jar.fit(), jar.readings().scale());
        });
    }
}
