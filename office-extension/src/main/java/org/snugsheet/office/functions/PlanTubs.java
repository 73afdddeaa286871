package org.snugsheet.office.functions;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.sheet.NoConvergenceException;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.lesson.Bath;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.engine.lesson.Ice;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.lesson.Taps;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.words.DocumentLanguage;
import org.snugsheet.office.words.Language;

/** The PLAN functions on water and ice, and what all PLAN functions share. */
abstract class PlanTubs extends FamilyService implements PlanWater {

    private static final double SECONDS_PER_MINUTE = 60;

    /** A jar that halves its warmth in a year or so, and one that does in a tenth of a second; common practice, no source. */
    private static final double SLOWEST = 1e-6;

    private static final double FASTEST = 1e3;

    PlanTubs() {
        super(PlanWater.class);
    }

    @Override
    public String safe(XPropertySet document, String[][] temp, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        Language language = DocumentLanguage.of(document);
        return Answer.of(() -> SafeStart.cautions(Cells.temperature(temp, Options.scale(scale))).stream()
                .map(language::words)
                .collect(Collectors.joining(" ")));
    }

    @Override
    public Object[][] mix(
            XPropertySet document,
            String[][] hot,
            String[][] cold,
            String[][] target,
            String[][] volume,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Language language = DocumentLanguage.of(document);
            Taps taps = taps(hot, cold, target, volume, scale);
            Caution first = SafeStart.isForAdultsOnly(Cells.temperature(hot, Options.scale(scale)))
                    ? Caution.HOT_TAP
                    : Caution.ADULT_POURS;
            return new Object[][] {
                {language.words(TableWords.WATER), language.words(TableWords.MILLILITRES)},
                {language.words(TableWords.HOT), millilitres(taps.hot())},
                {language.words(TableWords.COLD), millilitres(taps.cold())},
                {language.words(TableWords.CAUTION), language.words(first)},
                {language.words(TableWords.CAUTION), language.words(Caution.SCHOOL_RULES)}
            };
        });
    }

    @Override
    public double mixHot(String[][] hot, String[][] cold, String[][] target, String[][] volume, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(
                () -> millilitres(taps(hot, cold, target, volume, scale).hot()));
    }

    @Override
    public double mixCold(String[][] hot, String[][] cold, String[][] target, String[][] volume, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(
                () -> millilitres(taps(hot, cold, target, volume, scale).cold()));
    }

    @Override
    public double bath(
            String[][] bathVolume,
            String[][] bathTemp,
            String[][] jars,
            String[][] volume,
            String[][] start,
            String[][] rate,
            String[][] minutes,
            String[][] room,
            @Nullable Object leak,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> tub(bathVolume, bathTemp, jars, volume, start, rate, room, leak, scale)
                .after(seconds(minutes))
                .in(Options.scale(scale)));
    }

    @Override
    public double ice(
            String[][] bathVolume,
            String[][] bathTemp,
            String[][] jars,
            String[][] volume,
            String[][] start,
            String[][] rate,
            String[][] minutes,
            String[][] room,
            @Nullable Object leak,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Bath tub = tub(bathVolume, bathTemp, jars, volume, start, rate, room, leak, scale);
            return Unit.GRAM.from(Ice.holding(tub, seconds(minutes)).mass().kilograms(), Unit.KILOGRAM);
        });
    }

    private static Taps taps(
            String[][] hot, String[][] cold, String[][] target, String[][] volume, @Nullable Object scale) {
        Scale s = Options.scale(scale);
        return Taps.mixing(
                Cells.temperature(hot, s),
                Cells.temperature(cold, s),
                Cells.temperature(target, s),
                Volume.of(Cells.number(volume), Unit.MILLILITRE));
    }

    private static Bath tub(
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
        Volume held = Volume.of(Cells.number(bathVolume), Unit.MILLILITRE);
        return new Bath(
                WaterBody.of(held, Cells.temperature(bathTemp, s)),
                Cells.whole(jars),
                WaterBody.of(Volume.of(Cells.number(volume), Unit.MILLILITRE), Cells.temperature(start, s)),
                constant(rate),
                Cells.temperature(room, s),
                Options.numberNotZero(leak).orElseGet(() -> Bath.usualLeak(held)));
    }

    static CoolingConstant constant(String[][] rate) {
        double perMinute = Cells.number(rate);
        // What is zero or less is refused by what it is for.
        if (perMinute > 0 && !(perMinute >= SLOWEST && perMinute <= FASTEST)) {
            throw InvalidInputException.of(Problem.RATE_OUT_OF_RANGE, perMinute, SLOWEST, FASTEST);
        }
        return CoolingConstant.ofPerMinute(perMinute);
    }

    static double seconds(String[][] minutes) {
        return Cells.number(minutes) * SECONDS_PER_MINUTE;
    }

    static double millilitres(Volume volume) {
        return Unit.MILLILITRE.from(volume.cubicMetres(), Unit.CUBIC_METRE);
    }
}
