package org.snugsheet.office.functions;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.sheet.NoConvergenceException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.cooling.CoolingIntervals;
import org.snugsheet.engine.cooling.HeatLoss;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.heat.Mixing;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.ClockTimes;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.TimeColumn;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.words.DocumentLanguage;
import org.snugsheet.office.words.Language;

/** The COOL functions: those on a curve, and with them the whole service. */
public final class CoolFunctions extends CoolComparisons implements CoolCurves, CoolHeat {

    /** For the office, which makes one for a session. */
    public CoolFunctions() {}

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

    @Override
    public Object[][] curve(
            XPropertySet document,
            Object[][] at,
            Object[][] times,
            Object[][] temps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            JarCells jar = JarCells.of(times, temps, surroundings, mark, scale);
            Language language = DocumentLanguage.of(document);
            List<Entry> wanted = Cells.line(at);
            refuseTimesOfDay(wanted);
            CoolingFit fit = jar.fit();
            CoolingIntervals limits = fit.intervals(ReportTable.CONFIDENCE);
            Object[][] table = new Object[wanted.size() + 1][];
            table[0] = language.row(TableWords.FITTED, TableWords.FROM_95, TableWords.TO_95);
            for (int i = 0; i < wanted.size(); i++) {
                table[i + 1] = wanted.get(i) instanceof Entry.Missing
                        ? new Object[] {"", "", ""}
                        : onCurve(
                                fit,
                                limits,
                                wanted.get(i).asNumber(i + 1),
                                jar.readings().scale(),
                                language);
            }
            return table;
        });
    }

    @Override
    public Object minutes(Object[][] clock) throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Cells.requireFew(clock);
            List<Entry> minutes = ClockTimes.minutes(Cells.line(clock));
            return Cells.each(clock, (row, entry) -> minutes.get(row - 1).asNumber(row));
        });
    }

    @Override
    public double heat(
            String[][] volume, String[][] from, String[][] to, @Nullable Object vessel, @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            return water(volume, from, vessel, s).heatGivenOff(Cells.temperature(to, s));
        });
    }

    @Override
    public double power(
            String[][] volume,
            String[][] rate,
            String[][] temp,
            String[][] surroundings,
            @Nullable Object vessel,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            CoolingConstant constant = CoolingConstant.ofPerMinute(Cells.number(rate));
            return HeatLoss.watts(water(volume, temp, vessel, s), constant, Cells.temperature(surroundings, s));
        });
    }

    @Override
    public double mixed(
            String[][] volume,
            String[][] temp,
            String[][] bathVolume,
            String[][] bathTemp,
            @Nullable Object vessel,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            WaterBody bath = WaterBody.of(millilitres(bathVolume), Cells.temperature(bathTemp, s));
            return Mixing.endTemperature(water(volume, temp, vessel, s), bath).in(s);
        });
    }

    /** Numbers may be as close as a chart wants them; a text such as 9:05 is no minute. */
    private static void refuseTimesOfDay(List<Entry> wanted) {
        TimeColumn.of(wanted)
                .notMinutes()
                .filter(finding -> finding.problem() == Problem.CLOCK_TIMES)
                .ifPresent(finding -> {
                    throw new InvalidInputException(finding);
                });
    }

    private static WaterBody water(String[][] volume, String[][] temp, @Nullable Object vessel, Scale scale) {
        return WaterBody.of(millilitres(volume), Cells.temperature(temp, scale))
                .withVessel(Options.heatCapacity(vessel));
    }

    private static Volume millilitres(String[][] volume) {
        return Volume.of(Cells.number(volume), Unit.MILLILITRE);
    }

    private static Object[] onCurve(
            CoolingFit fit, CoolingIntervals limits, double minutes, Scale scale, Language language) {
        double seconds = minutes * SECONDS_PER_MINUTE;
        Interval band = limits.at(seconds);
        return new Object[] {
            fit.at(seconds).in(scale),
            ReportTable.degrees(band.low(), scale, language),
            ReportTable.degrees(band.high(), scale, language)
        };
    }

    private static NewtonCooling cooling(String[][] start, String[][] surroundings, String[][] rate, Scale scale) {
        return new NewtonCooling(
                Cells.temperature(start, scale),
                Cells.temperature(surroundings, scale),
                CoolingConstant.ofPerMinute(Cells.number(rate)));
    }
}
