package org.snugsheet.office.functions;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.lesson.Bath;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.engine.lesson.Ice;
import org.snugsheet.engine.lesson.Power;
import org.snugsheet.engine.lesson.ReadingPlan;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.lesson.Taps;
import org.snugsheet.engine.lesson.TellApart;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.Mark;

/** The table that PLAN.LESSON answers with, built up line by line. Each sentence is whole, so that it can be translated. */
final class LessonTable {

    private static final double SECONDS_PER_MINUTE = 60;
    private static final double CERTAINTY = 0.05;
    private static final double POWER = 0.8;
    private static final Temperature USUAL_ROOM = new Temperature(21);

    private final double seconds;
    private final Volume volume;
    private final NewtonCooling bare;
    private final NewtonCooling wrapped;
    private final Mark mark;
    private final Scale scale;
    private final List<Object[]> water = new ArrayList<>();
    private boolean iced;

    LessonTable(double seconds, Volume volume, NewtonCooling bare, NewtonCooling wrapped, Mark mark, Scale scale) {
        SafeStart.require(bare.start());
        this.seconds = seconds;
        this.volume = volume;
        this.bare = bare;
        this.wrapped = wrapped;
        this.mark = mark;
        this.scale = scale;
    }

    LessonTable withTaps(Optional<Temperature> hot, Optional<Temperature> cold) {
        if (hot.isPresent() && cold.isPresent()) {
            Taps taps = Taps.mixing(hot.get(), cold.get(), bare.start(), volume);
            water.add(row(
                    "hot water for one jar",
                    millilitres(taps.hot()),
                    "ml",
                    "Hot water times its fall in temperature is cold water times its rise. An adult mixes and pours."));
            water.add(row(
                    "cold water for one jar",
                    millilitres(taps.cold()),
                    "ml",
                    "Stir, read, and mend with a little of either: the jug takes some of the heat."));
        }
        return this;
    }

    LessonTable withTub(Optional<Volume> tub, int jars, Optional<Temperature> room) {
        if (tub.isPresent()) {
            Bath bath = new Bath(
                    WaterBody.of(tub.get(), bare.surroundings()),
                    jars,
                    WaterBody.of(volume, bare.start()),
                    bare.constant(),
                    room.orElse(USUAL_ROOM),
                    Bath.usualLeak(tub.get()));
            Temperature end = bath.after(seconds);
            water.add(row(
                    "tub at the end, without ice",
                    end.in(scale),
                    scale.symbol(),
                    "The jars’ heat and the room’s warm it. Read the tub too, or hold it with ice."));
            Ice ice = Ice.holding(bath, seconds);
            water.add(row(
                    "ice that melts if it is held at freezing",
                    grams(ice.mass().kilograms()),
                    "g",
                    inWords(
                            "{0,number,0} g for the tub itself, {1,number,0} g for the jars, {2,number,0} g for the room. Take half as much again, and stir.",
                            grams(ice.forTheTub()),
                            grams(ice.forTheJars()),
                            grams(ice.forTheRoom()))));
            iced = true;
        }
        return this;
    }

    Object[][] rows() {
        List<Object[]> rows = new ArrayList<>();
        rows.add(row("what", "value", "unit", "in words"));
        rows.add(row(
                "start",
                bare.start().in(scale),
                scale.symbol(),
                SafeStart.cautions(bare.start()).get(0).english()));
        rows.addAll(water);
        Optional<ReadingPlan> plan = planned(rows);
        rows.add(orWhy("the difference shows after", "min", () -> {
            double shows = jars().by(mark) / SECONDS_PER_MINUTE;
            return row(
                    "the difference shows after",
                    shows,
                    "min",
                    shows * SECONDS_PER_MINUTE <= seconds
                            ? "From then on the two jars differ by a mark or more."
                            : "That is after the lesson. Start warmer, read for longer, or wrap thicker.");
        }));
        rows.add(orWhy(
                "farthest apart after",
                "min",
                () -> row(
                        "farthest apart after",
                        jars().farthest() / SECONDS_PER_MINUTE,
                        "min",
                        inWords(
                                "Then they differ by {0,number,0.0} {1}.",
                                new TemperatureDifference(jars().difference(jars().farthest())).in(scale),
                                scale.symbol()))));
        rows.add(orWhy(
                "the bare jar can be read for",
                "min",
                () -> row(
                        "the bare jar can be read for",
                        ReadingPlan.longestLesson(bare, mark) / SECONDS_PER_MINUTE,
                        "min",
                        "After that it is within a mark of its surroundings.")));
        plan.ifPresent(read -> {
            rows.add(orWhy("jars of each wrap", "", () -> repeats(read)));
            expected(rows, read);
        });
        cautions(rows);
        return rows.toArray(Object[][]::new);
    }

    private Optional<ReadingPlan> planned(List<Object[]> rows) {
        double scatter = ReadingPlan.usualScatter(mark);
        try {
            ReadingPlan plan = ReadingPlan.forCertainty(bare, seconds, CERTAINTY, mark, scatter);
            rows.add(row(
                    "read every",
                    plan.intervalSeconds() / SECONDS_PER_MINUTE,
                    "min",
                    inWords(
                            "{0} readings: the bare jar’s cooling constant is then known to {1,number,0.0 %}.",
                            plan.count(), plan.relativeError())));
            return Optional.of(plan);
        } catch (Refusal refusal) {
            rows.add(row("read every", 1.0, "min", refusal.finding().sentence()));
            return Optional.empty();
        }
    }

    private Object[] repeats(ReadingPlan read) {
        ReadingPlan other = new ReadingPlan(wrapped, read.intervalSeconds(), read.count(), mark, read.scatter());
        return row(
                "jars of each wrap",
                (double) new Power(read, other, Power.USUAL_SPREAD).jarsFor(POWER),
                "",
                "So many tell bare from wrapped in four lessons of five, if jars of one wrap differ by a tenth.");
    }

    private void expected(List<Object[]> rows, ReadingPlan read) {
        rows.add(row("minute", "bare jar", "wrapped jar", "difference"));
        for (double time : read.times()) {
            rows.add(row(
                    time / SECONDS_PER_MINUTE,
                    bare.after(time).in(scale),
                    wrapped.after(time).in(scale),
                    new TemperatureDifference(Math.abs(
                                    bare.after(time).minus(wrapped.after(time)).kelvins()))
                            .in(scale)));
        }
    }

    private void cautions(List<Object[]> rows) {
        List<Caution> cautions =
                new ArrayList<>(List.of(Caution.ADULT_POURS, Caution.GLASS, Caution.THERMOMETER, Caution.WET_FLOOR));
        if (iced) {
            cautions.add(Caution.ICE);
        }
        cautions.add(Caution.SCHOOL_RULES);
        cautions.forEach(caution -> rows.add(row("caution", "", "", caution.english())));
    }

    private TellApart jars() {
        return new TellApart(bare.start(), bare.surroundings(), bare.constant(), wrapped.constant());
    }

    /** A line that cannot be worked out says why, and leaves the rest of the plan standing. */
    private static Object[] orWhy(String what, String unit, Supplier<Object[]> line) {
        try {
            return line.get();
        } catch (Refusal refusal) {
            return row(what, "", unit, refusal.finding().sentence());
        }
    }

    private static Object[] row(Object... cells) {
        return cells;
    }

    private static double millilitres(Volume of) {
        return Unit.MILLILITRE.from(of.cubicMetres(), Unit.CUBIC_METRE);
    }

    private static double grams(double kilograms) {
        return Unit.GRAM.from(kilograms, Unit.KILOGRAM);
    }

    private static String inWords(String pattern, Object... values) {
        return new MessageFormat(pattern, Locale.ENGLISH).format(values);
    }
}
