package org.snugsheet.office.functions.plan;

import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.lesson.Bath;
import org.snugsheet.engine.lesson.ReadingPlan;
import org.snugsheet.engine.lesson.Steady;
import org.snugsheet.engine.lesson.Taps;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.functions.shared.Minutes;

/** The cells that PLAN functions share, read into what the engine plans with. */
final class PlanCells {

    static final double USUAL_CERTAINTY = 0.05;
    static final double USUAL_POWER = 0.8;

    /** Limits of a believable rate in 1/min: half-times of about a year and of 0.04 seconds; common practice, no source. */
    private static final double SLOWEST = 1e-6;

    private static final double FASTEST = 1e3;

    private PlanCells() {}

    static Taps taps(String[][] hot, String[][] cold, String[][] target, String[][] volume, @Nullable Object scale) {
        Scale s = Options.scale(scale);
        return Taps.mixing(
                Cells.temperature(hot, s),
                Cells.temperature(cold, s),
                Cells.temperature(target, s),
                Volume.of(Cells.number(volume), Unit.MILLILITER));
    }

    static Bath tub(
            String[][] bathVolume,
            String[][] bathTemp,
            String[][] jars,
            String[][] volume,
            String[][] start,
            String[][] rate,
            String[][] room,
            @Nullable Object leak,
            @Nullable Object scale) {
        Scale s = Options.scale(scale);
        Volume held = Volume.of(Cells.number(bathVolume), Unit.MILLILITER);
        return new Bath(
                WaterBody.of(held, Cells.temperature(bathTemp, s)),
                Cells.whole(jars),
                WaterBody.of(Volume.of(Cells.number(volume), Unit.MILLILITER), Cells.temperature(start, s)),
                constant(rate),
                Cells.temperature(room, s),
                Options.numberNotZero(leak).orElseGet(() -> Bath.usualLeak(held)));
    }

    static CoolingConstant constant(String[][] rate) {
        double perMinute = Cells.number(rate);
        // Zero or less is refused later, with a reason that fits its use.
        if (perMinute > 0 && !(perMinute >= SLOWEST && perMinute <= FASTEST)) {
            throw InvalidInputException.of(Problem.RATE_OUT_OF_RANGE, perMinute, SLOWEST, FASTEST);
        }
        return CoolingConstant.ofPerMinute(perMinute);
    }

    static double seconds(String[][] minutes) {
        return Minutes.toSeconds(Cells.number(minutes));
    }

    static double milliliters(Volume volume) {
        return Unit.MILLILITER.from(volume.cubicMeters(), Unit.CUBIC_METER);
    }

    static ReadingPlan forCertainty(
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

    static ReadingPlan filling(
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

    static Steady jar(String[][] rate, String[][] start, String[][] surroundings, @Nullable Object scale) {
        Scale s = Options.scale(scale);
        return new Steady(
                new NewtonCooling(Cells.temperature(start, s), Cells.temperature(surroundings, s), constant(rate)));
    }
}
