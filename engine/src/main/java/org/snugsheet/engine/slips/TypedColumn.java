package org.snugsheet.engine.slips;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;
import org.snugsheet.engine.reading.TimeColumn;

/**
 * What was typed for a jar, read as far as possible: what cannot be read is reported as a slip and left out.
 *
 * @param slips what could not be read
 * @param column the rest
 * @param refusal why the readings cannot be used as they are, if so
 */
record TypedColumn(List<Slip> slips, Column column, Optional<Slip> refusal) {

    /** Readings over ten hours are rarer than seconds typed for minutes (common practice, no source). */
    private static final double SECONDS = 0.95;

    TypedColumn {
        slips = List.copyOf(slips);
    }

    static TypedColumn of(
            List<Entry> minutes, List<Entry> temperatures, List<Entry> surroundings, Graduation mark, Scale scale) {
        Optional<Slip> refusal = refused(() -> CoolingFit.of(
                Readings.ofMinutes(minutes, temperatures, scale), Surroundings.of(surroundings, minutes, scale), mark));
        if (minutes.size() != temperatures.size()) {
            return new TypedColumn(List.of(), new Column(List.of(), mark, scale), refusal);
        }
        TimeColumn times = TimeColumn.of(minutes);
        List<Slip> slips = new ArrayList<>();
        times.unreadable().forEach(finding -> slips.add(new Slip(SlipKind.UNREADABLE, 1, finding)));
        times.notMinutes().ifPresent(finding -> slips.add(new Slip(SlipKind.CLOCK_TIMES, 1, finding)));
        times.doubt().ifPresent(finding -> slips.add(new Slip(SlipKind.SECONDS_FOR_MINUTES, SECONDS, finding)));
        List<Line> lines = new ArrayList<>();
        double[] around = around(surroundings, times.minutes(), scale, slips);
        for (int i = 0; i < minutes.size(); i++) {
            Optional<Temperature> reading = temperature(temperatures.get(i), i + 1, scale, slips);
            if (reading.isPresent() && times.minutes().get(i) instanceof Entry.Value minute) {
                Scale own = temperatures.get(i).ownScale().orElse(scale);
                lines.add(new Line(
                        i + 1,
                        minute.value(),
                        minute.value(),
                        number(reading.get(), own),
                        own,
                        around[i],
                        0,
                        false,
                        false));
            }
        }
        return new TypedColumn(slips, new Column(lines, mark, scale), refusal);
    }

    private static Optional<Slip> refused(Supplier<CoolingFit> fit) {
        try {
            fit.get().constant();
            return Optional.empty();
        } catch (InvalidInputException refusal) {
            return Optional.of(new Slip(SlipKind.REFUSED, 1, refusal.finding()));
        }
    }

    private static Optional<Temperature> temperature(Entry entry, int row, Scale scale, List<Slip> slips) {
        if (entry instanceof Entry.Missing) {
            return Optional.empty();
        }
        try {
            return Optional.of(entry.asTemperature(row, scale));
        } catch (InvalidInputException refusal) {
            slips.add(new Slip(SlipKind.UNREADABLE, 1, refusal.finding()));
            return Optional.empty();
        }
    }

    // Converted from Celsius, a typed 93.2 comes back as 93.20000000000002, which has too many digits to swap.
    private static double number(Temperature temperature, Scale scale) {
        return Decimals.rounded(temperature.in(scale), 6);
    }

    /** The surroundings at each row; NaN if nobody read them or they cannot be read. */
    private static double[] around(List<Entry> cells, List<Entry> minutes, Scale scale, List<Slip> slips) {
        double[] around = new double[minutes.size()];
        Arrays.fill(around, Double.NaN);
        if (cells.stream().allMatch(Entry.Missing.class::isInstance)) {
            slips.add(new Slip(SlipKind.UNREADABLE, 1, Finding.of(Problem.SURROUNDINGS_BLANK)));
            return around;
        }
        if (cells.size() == 1) {
            boolean toBeFitted = cells.get(0) instanceof Entry.Text text && Surroundings.isToBeFitted(text);
            if (!toBeFitted) {
                Arrays.fill(around, one(cells.get(0), scale, slips));
            }
            return around;
        }
        if (cells.size() != minutes.size()) {
            slips.add(new Slip(
                    SlipKind.UNREADABLE, 1, Finding.of(Problem.SURROUNDINGS_LENGTH, cells.size(), minutes.size())));
            return around;
        }
        for (int i = 0; i < around.length; i++) {
            around[i] = temperature(cells.get(i), i + 1, scale, slips)
                    .map(Temperature::celsius)
                    .orElse(Double.NaN);
        }
        return filled(around, minutes);
    }

    private static double one(Entry cell, Scale scale, List<Slip> slips) {
        if (cell instanceof Entry.Text text && Surroundings.isMeltingIce(text)) {
            return Surroundings.MELTING_ICE.celsius();
        }
        try {
            return cell.asTemperature(1, scale).celsius();
        } catch (InvalidInputException refusal) {
            Finding finding = cell instanceof Entry.Text text
                    ? Finding.of(Problem.SURROUNDINGS_NOT_A_TEMPERATURE, text.text())
                    : refusal.finding();
            slips.add(new Slip(SlipKind.UNREADABLE, 1, finding));
            return Double.NaN;
        }
    }

    /** Interpolates linearly over rows where the surroundings were not read, as {@link Surroundings.Measured} does. */
    private static double[] filled(double[] around, List<Entry> minutes) {
        double[] filled = around.clone();
        for (int i = 0; i < around.length; i++) {
            if (Double.isNaN(around[i])) {
                int before = i;
                int after = i;
                while (before >= 0 && Double.isNaN(around[before])) {
                    before--;
                }
                while (after < around.length && Double.isNaN(around[after])) {
                    after++;
                }
                filled[i] = between(around, minutes, before, i, after);
            }
        }
        return filled;
    }

    private static double between(double[] around, List<Entry> minutes, int before, int i, int after) {
        if (before < 0 || after >= around.length) {
            return before >= 0 ? around[before] : after < around.length ? around[after] : Double.NaN;
        }
        if (minutes.get(before) instanceof Entry.Value from
                && minutes.get(i) instanceof Entry.Value at
                && minutes.get(after) instanceof Entry.Value to
                && to.value() > from.value()) {
            double share = (at.value() - from.value()) / (to.value() - from.value());
            return around[before] + share * (around[after] - around[before]);
        }
        return around[before];
    }
}
