package org.snugsheet.office.functions;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.sheet.NoConvergenceException;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.lesson.Power;
import org.snugsheet.engine.lesson.ReadingPlan;
import org.snugsheet.engine.lesson.Steady;
import org.snugsheet.engine.lesson.TimeToDistinguish;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.words.DocumentLanguage;

/** The PLAN functions: those on readings, and with them the whole service. */
public final class PlanFunctions extends PlanTubs implements PlanReadings {

    private static final double SECONDS_PER_MINUTE = 60;
    private static final double USUAL_CERTAINTY = 0.05;
    private static final double USUAL_POWER = 0.8;

    /** For the office, which makes one for a session. */
    public PlanFunctions() {}

    @Override
    public double tellApart(
            String[][] rate,
            String[][] otherRate,
            String[][] start,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            TimeToDistinguish jars = new TimeToDistinguish(
                    Cells.temperature(start, s),
                    Cells.temperature(surroundings, s),
                    constant(rate),
                    constant(otherRate));
            return jars.by(Options.mark(mark, s)) / SECONDS_PER_MINUTE;
        });
    }

    @Override
    public double longest(
            String[][] rate, String[][] start, String[][] surroundings, @Nullable Object mark, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> ReadingPlan.longestLesson(
                        jar(rate, start, surroundings, scale), Options.mark(mark, Options.scale(scale)))
                / SECONDS_PER_MINUTE);
    }

    @Override
    public double interval(
            String[][] rate,
            String[][] start,
            String[][] surroundings,
            String[][] minutes,
            @Nullable Object certainty,
            @Nullable Object mark,
            @Nullable Object scatter,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> forCertainty(rate, start, surroundings, minutes, certainty, mark, scatter, scale)
                        .intervalSeconds()
                / SECONDS_PER_MINUTE);
    }

    @Override
    public double readings(
            String[][] rate,
            String[][] start,
            String[][] surroundings,
            String[][] minutes,
            @Nullable Object certainty,
            @Nullable Object mark,
            @Nullable Object scatter,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(
                () -> (double) forCertainty(rate, start, surroundings, minutes, certainty, mark, scatter, scale)
                        .count());
    }

    @Override
    public double certainty(
            String[][] rate,
            String[][] start,
            String[][] surroundings,
            String[][] minutes,
            String[][] interval,
            @Nullable Object mark,
            @Nullable Object scatter,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> filling(rate, start, surroundings, minutes, interval, mark, scatter, scale)
                .relativeError());
    }

    @Override
    public double repeats(
            String[][] rate,
            String[][] otherRate,
            String[][] start,
            String[][] surroundings,
            String[][] minutes,
            String[][] interval,
            @Nullable Object often,
            @Nullable Object spread,
            @Nullable Object mark,
            @Nullable Object scatter,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> (double) new Power(
                        filling(rate, start, surroundings, minutes, interval, mark, scatter, scale),
                        filling(otherRate, start, surroundings, minutes, interval, mark, scatter, scale),
                        Options.numberNotZero(spread).orElse(Power.USUAL_SPREAD))
                .jarsFor(Options.numberNotZero(often).orElse(USUAL_POWER)));
    }

    @Override
    public double power(
            String[][] jars,
            String[][] rate,
            String[][] otherRate,
            String[][] start,
            String[][] surroundings,
            String[][] minutes,
            String[][] interval,
            @Nullable Object spread,
            @Nullable Object mark,
            @Nullable Object scatter,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> new Power(
                        filling(rate, start, surroundings, minutes, interval, mark, scatter, scale),
                        filling(otherRate, start, surroundings, minutes, interval, mark, scatter, scale),
                        Options.numberNotZero(spread).orElse(Power.USUAL_SPREAD))
                .of(Cells.whole(jars)));
    }

    @Override
    public Object[][] lesson(
            XPropertySet document,
            String[][] minutes,
            String[][] volume,
            String[][] start,
            String[][] surroundings,
            String[][] bareRate,
            String[][] wrappedRate,
            @Nullable Object hotTap,
            @Nullable Object coldTap,
            @Nullable Object bathVolume,
            @Nullable Object jars,
            @Nullable Object room,
            @Nullable Object mark,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            Graduation graduation = Options.mark(mark, s);
            return new LessonTable(
                            seconds(minutes),
                            Volume.of(Cells.number(volume), Unit.MILLILITRE),
                            jar(bareRate, start, surroundings, scale),
                            jar(wrappedRate, start, surroundings, scale),
                            graduation,
                            s,
                            DocumentLanguage.of(document))
                    .withTaps(Options.temperature(hotTap, s), Options.temperature(coldTap, s))
                    .withTub(
                            Options.number(bathVolume).map(value -> Volume.of(value, Unit.MILLILITRE)),
                            Options.number(jars).map(Cells::whole).orElse(1),
                            Options.temperature(room, s))
                    .rows();
        });
    }

    private static ReadingPlan forCertainty(
            String[][] rate,
            String[][] start,
            String[][] surroundings,
            String[][] minutes,
            @Nullable Object certainty,
            @Nullable Object mark,
            @Nullable Object scatter,
            @Nullable Object scale) {
        Scale s = Options.scale(scale);
        Graduation graduation = Options.mark(mark, s);
        return ReadingPlan.forCertainty(
                jar(rate, start, surroundings, scale),
                seconds(minutes),
                Options.numberNotZero(certainty).orElse(USUAL_CERTAINTY),
                graduation,
                scatter(scatter, graduation, s));
    }

    private static ReadingPlan filling(
            String[][] rate,
            String[][] start,
            String[][] surroundings,
            String[][] minutes,
            String[][] interval,
            @Nullable Object mark,
            @Nullable Object scatter,
            @Nullable Object scale) {
        Scale s = Options.scale(scale);
        Graduation graduation = Options.mark(mark, s);
        return ReadingPlan.filling(
                jar(rate, start, surroundings, scale),
                seconds(minutes),
                seconds(interval),
                graduation,
                scatter(scatter, graduation, s));
    }

    private static double scatter(@Nullable Object option, Graduation mark, Scale scale) {
        return Options.numberNotZero(option)
                .map(degrees -> TemperatureDifference.of(degrees, scale).kelvins())
                .orElseGet(() -> ReadingPlan.usualScatter(mark));
    }

    private static Steady jar(String[][] rate, String[][] start, String[][] surroundings, @Nullable Object scale) {
        Scale s = Options.scale(scale);
        return new Steady(
                new NewtonCooling(Cells.temperature(start, s), Cells.temperature(surroundings, s), constant(rate)));
    }
}
