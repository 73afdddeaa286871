package org.snugsheet.office.functions;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.sheet.NoConvergenceException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.cooling.ClosedPair;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.cooling.ModelChoice;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.words.DocumentLanguage;

/** The COOL functions of one jar’s readings. The office sees {@link CoolFunctions}, the last of the chain. */
abstract class CoolFits extends FamilyService implements Cool {

    static final double SECONDS_PER_MINUTE = 60;

    CoolFits() {
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
    public double surroundings(
            Object[][] times, Object[][] temps, String[][] surroundings, @Nullable Object mark, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return fitted(
                times,
                temps,
                surroundings,
                mark,
                scale,
                (fit, s) -> fit.surroundings().in(s));
    }

    @Override
    public double surroundingsError(
            Object[][] times, Object[][] temps, String[][] surroundings, @Nullable Object mark, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return fitted(
                times,
                temps,
                surroundings,
                mark,
                scale,
                (fit, s) -> fit.surroundingsError().in(s));
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
    public String model(
            XPropertySet document,
            Object[][] times,
            Object[][] temps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale,
            @Nullable Object volume,
            @Nullable Object bath)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> DocumentLanguage.of(document)
                .words(choice(JarCells.of(times, temps, surroundings, mark, scale), volume, bath)
                        .chosen()
                        .fit()
                        .model()
                        .law()));
    }

    @Override
    public Object[][] report(
            XPropertySet document,
            Object[][] times,
            Object[][] temps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale,
            @Nullable Object volume,
            @Nullable Object bath)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            JarCells jar = JarCells.of(times, temps, surroundings, mark, scale);
            return ReportTable.of(jar.summary(), choice(jar, volume, bath), DocumentLanguage.of(document));
        });
    }

    @Override
    public String sentence(
            XPropertySet document,
            Object[][] times,
            Object[][] temps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() ->
                SentenceWords.of(JarCells.of(times, temps, surroundings, mark, scale), DocumentLanguage.of(document)));
    }

    private static ModelChoice choice(JarCells jar, @Nullable Object volume, @Nullable Object bath) {
        // What cannot be fitted is refused here, with its place.
        CoolingFit fit = jar.fit();
        List<ClosedPair> pair = new ArrayList<>();
        Options.ratio(volume, bath).ifPresent(ratio -> pair.add(new ClosedPair(fit.surroundings(), ratio)));
        return ModelChoice.of(jar.readings(), jar.surroundings(), jar.mark(), pair);
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
