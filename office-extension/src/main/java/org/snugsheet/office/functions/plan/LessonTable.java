package org.snugsheet.office.functions.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.jar.Design;
import org.snugsheet.engine.lesson.Bath;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.engine.lesson.Forecast;
import org.snugsheet.engine.lesson.Ice;
import org.snugsheet.engine.lesson.Power;
import org.snugsheet.engine.lesson.ReadingPlan;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.lesson.Steady;
import org.snugsheet.engine.lesson.Taps;
import org.snugsheet.engine.lesson.TimeToDistinguish;
import org.snugsheet.engine.lesson.TimeToDistinguishInTub;
import org.snugsheet.engine.lesson.Warming;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.water.Water;
import org.snugsheet.office.functions.shared.Minutes;
import org.snugsheet.office.words.Language;

/** The table that PLAN.LESSON answers with, built up line by line. */
final class LessonTable {

    private final double seconds;
    private final Volume volume;
    private Forecast bare;
    private Forecast wrapped;
    private final Graduation mark;
    private final Scale scale;
    private final Language language;
    private final List<Object[]> water = new ArrayList<>();

    LessonTable(
            double seconds,
            Volume volume,
            Steady bare,
            Steady wrapped,
            Graduation mark,
            Scale scale,
            Language language) {
        SafeStart.require(bare.start());
        this.seconds = seconds;
        this.volume = volume;
        this.bare = bare;
        this.wrapped = wrapped;
        this.mark = mark;
        this.scale = scale;
        this.language = language;
    }

    LessonTable withTaps(Optional<Temperature> hot, Optional<Temperature> cold) {
        if (hot.isPresent() && cold.isPresent()) {
            Taps taps = Taps.mixing(hot.get(), cold.get(), bare.start(), volume);
            water.add(row(
                    language.words(LessonWords.HOT_WATER),
                    PlanCells.milliliters(taps.hot()),
                    "ml",
                    language.words(
                            SafeStart.isForAdultsOnly(hot.get()) ? Caution.HOT_TAP : LessonWords.HOT_WATER_WHY)));
            water.add(row(
                    language.words(LessonWords.COLD_WATER),
                    PlanCells.milliliters(taps.cold()),
                    "ml",
                    language.words(LessonWords.COLD_WATER_WHY)));
        }
        return this;
    }

    LessonTable withTub(Optional<Volume> tub, int jars, Optional<Temperature> room) {
        if (tub.isPresent()) {
            Bath bath = new Bath(
                    WaterBody.of(tub.get(), bare.surroundingsAfter(0)),
                    jars,
                    WaterBody.of(volume, bare.start()),
                    bare.constant(),
                    room.orElse(Design.USUAL_ROOM),
                    Bath.usualLeak(tub.get()));
            Temperature end = bath.after(seconds);
            water.add(row(
                    language.words(LessonWords.TUB_AT_THE_END),
                    end.in(scale),
                    scale.symbol(),
                    language.words(LessonWords.TUB_WHY)));
            Ice ice = Ice.holding(bath, seconds);
            water.add(row(
                    language.words(LessonWords.ICE),
                    grams(ice.mass().kilograms()),
                    "g",
                    language.say(
                            LessonWords.ICE_WHY,
                            grams(ice.forTheTub()),
                            grams(ice.forTheJars()),
                            grams(ice.forTheRoom()))));
            if (bath.tub().temperature().compareTo(Water.FREEZES) > 0) {
                bare = new Warming(bath, bare.constant());
                wrapped = new Warming(bath, wrapped.constant());
                forecast(LessonWords.FOR_A_TUB_THAT_WARMS, end);
            } else {
                forecast(LessonWords.FOR_A_TUB_WITH_ICE, Water.FREEZES);
            }
        }
        return this;
    }

    private void forecast(LessonWords which, Temperature end) {
        water.add(row(language.words(LessonWords.FORECAST), end.in(scale), scale.symbol(), language.words(which)));
    }

    Object[][] rows() {
        List<Object[]> rows = new ArrayList<>();
        rows.add(language.row(LessonWords.WHAT, LessonWords.VALUE, LessonWords.UNIT, LessonWords.IN_WORDS));
        rows.add(row(
                language.words(LessonWords.START),
                bare.start().in(scale),
                scale.symbol(),
                language.words(SafeStart.cautions(bare.start()).get(0))));
        rows.addAll(water);
        Optional<ReadingPlan> plan = planned(rows);
        rows.add(orWhy(LessonWords.SHOWS_AFTER, "min", () -> {
            double shows = apart(jars -> jars.by(mark), jars -> jars.by(mark));
            return row(
                    language.words(LessonWords.SHOWS_AFTER),
                    Minutes.of(shows),
                    "min",
                    shows <= seconds ? language.words(LessonWords.SHOWS) : language.words(LessonWords.SHOWS_TOO_LATE));
        }));
        rows.add(orWhy(LessonWords.FARTHEST_AFTER, "min", () -> {
            double farthest = apart(TimeToDistinguish::farthest, TimeToDistinguishInTub::farthest);
            double difference = apart(jars -> jars.difference(farthest), jars -> jars.difference(farthest));
            return row(
                    language.words(LessonWords.FARTHEST_AFTER),
                    Minutes.of(farthest),
                    "min",
                    language.say(
                            LessonWords.FARTHEST_WHY, new TemperatureDifference(difference).in(scale), scale.symbol()));
        }));
        rows.add(orWhy(
                LessonWords.CAN_BE_READ_FOR,
                "min",
                () -> row(
                        language.words(LessonWords.CAN_BE_READ_FOR),
                        Minutes.of(ReadingPlan.longestLesson(bare, mark)),
                        "min",
                        language.words(LessonWords.CAN_BE_READ_WHY))));
        plan.ifPresent(read -> {
            rows.add(orWhy(LessonWords.JARS_OF_EACH, "", () -> repeats(read)));
            expected(rows, read);
        });
        cautions(rows);
        return rows.toArray(Object[][]::new);
    }

    private Optional<ReadingPlan> planned(List<Object[]> rows) {
        double scatter = ReadingPlan.usualScatter(mark);
        try {
            ReadingPlan plan = ReadingPlan.forCertainty(bare, seconds, PlanCells.USUAL_CERTAINTY, mark, scatter);
            rows.add(row(
                    language.words(LessonWords.READ_EVERY),
                    Minutes.of(plan.intervalSeconds()),
                    "min",
                    language.say(LessonWords.READ_EVERY_WHY, plan.count(), plan.relativeError())));
            return Optional.of(plan);
        } catch (InvalidInputException refusal) {
            rows.add(row(language.words(LessonWords.READ_EVERY), 1.0, "min", language.say(refusal.finding())));
            return Optional.empty();
        }
    }

    private Object[] repeats(ReadingPlan read) {
        ReadingPlan other = new ReadingPlan(wrapped, read.intervalSeconds(), read.count(), mark, read.scatter());
        return row(
                language.words(LessonWords.JARS_OF_EACH),
                (double) new Power(read, other, Power.USUAL_SPREAD).jarsFor(PlanCells.USUAL_POWER),
                "",
                language.words(LessonWords.JARS_WHY));
    }

    private void expected(List<Object[]> rows, ReadingPlan read) {
        rows.add(language.row(
                LessonWords.MINUTE, LessonWords.BARE_JAR, LessonWords.WRAPPED_JAR, LessonWords.DIFFERENCE));
        for (double time : read.times()) {
            rows.add(row(
                    Minutes.of(time),
                    bare.after(time).in(scale),
                    wrapped.after(time).in(scale),
                    new TemperatureDifference(Math.abs(
                                    bare.after(time).minus(wrapped.after(time)).kelvins()))
                            .in(scale)));
        }
    }

    private void cautions(List<Object[]> rows) {
        // Whether there is ice is not known: snow in a tray needs no tub of water.
        List.of(
                        Caution.ADULT_POURS,
                        Caution.GLASS,
                        Caution.THERMOMETER,
                        Caution.WET_FLOOR,
                        Caution.ICE,
                        Caution.WRAPS,
                        Caution.NOT_FOR_PUPILS,
                        Caution.LOW_PLACE,
                        Caution.OUTDOORS,
                        Caution.SCALD,
                        Caution.SCHOOL_RULES)
                .forEach(
                        caution -> rows.add(row(language.words(LessonWords.CAUTION), "", "", language.words(caution))));
    }

    private double apart(ToDoubleFunction<TimeToDistinguish> steady, ToDoubleFunction<TimeToDistinguishInTub> warming) {
        if (bare instanceof Warming one && wrapped instanceof Warming other) {
            return warming.applyAsDouble(new TimeToDistinguishInTub(one, other));
        }
        return steady.applyAsDouble(
                new TimeToDistinguish(bare.start(), bare.surroundingsAfter(0), bare.constant(), wrapped.constant()));
    }

    /** A line that cannot be calculated says why; the rest of the plan stays. */
    private Object[] orWhy(LessonWords what, String unit, Supplier<Object[]> line) {
        try {
            return line.get();
        } catch (InvalidInputException refusal) {
            return row(language.words(what), "", unit, language.say(refusal.finding()));
        }
    }

    private static Object[] row(Object... cells) {
        return cells;
    }

    private static double grams(double kilograms) {
        return Unit.GRAM.from(kilograms, Unit.KILOGRAM);
    }
}
