package org.snugsheet.office.functions;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.cooling.CoolingIntervals;
import org.snugsheet.engine.cooling.ModelChoice;
import org.snugsheet.engine.cooling.Outliers;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.reading.Mark;
import org.snugsheet.engine.reading.Reading;

/** The table that COOL.REPORT answers with. */
final class ReportTable {

    static final double CONFIDENCE = 0.95;

    private static final double SECONDS_PER_MINUTE = 60;
    private static final String NO_LIMIT = "no limit";

    private final List<Object[]> rows = new ArrayList<>();

    private ReportTable() {}

    static Object[][] of(CoolingFit fit, ModelChoice choice, Mark mark) {
        ReportTable table = new ReportTable();
        table.row("Quantity", "value", "error", "95 % from", "95 % to", "unit");
        table.quantities(fit, fit.readings().scale());
        table.models(choice, fit.readings().scale());
        for (Reading reading : Outliers.in(fit, mark)) {
            double minutes = reading.seconds() / SECONDS_PER_MINUTE;
            table.row(
                    "Stands out: row " + reading.row(),
                    reading.temperature().in(fit.readings().scale()),
                    "at minute",
                    minutes,
                    "",
                    fit.readings().scale().symbol());
        }
        return table.rows.toArray(Object[][]::new);
    }

    private void quantities(CoolingFit fit, Scale scale) {
        CoolingIntervals limits = fit.intervals(CONFIDENCE);
        Interval rate = limits.rate();
        row(
                "Cooling constant",
                fit.constant().perMinute(),
                fit.constantError().perMinute(),
                limit(rate.low() * SECONDS_PER_MINUTE),
                limit(rate.high() * SECONDS_PER_MINUTE),
                "per minute");
        halfTime(fit, limits.halfTime());
        start(fit, limits, scale);
        Interval around = limits.surroundings();
        row(
                "Surroundings",
                fit.surroundings().in(scale),
                fit.surroundingsError().in(scale),
                degrees(around.low(), scale),
                degrees(around.high(), scale),
                scale.symbol());
        row("Misfit", fit.misfit().in(scale), "", "", "", scale.symbol());
        row("Readings used", (double) fit.size(), "", "", "", "");
    }

    /** A jar that hardly cools has no half-time to name, but a time that it is longer than. */
    private void halfTime(CoolingFit fit, Interval limits) {
        Object value = "longer than";
        Object error = "";
        try {
            value = fit.halfTime() / SECONDS_PER_MINUTE;
            error = fit.halfTimeError() / SECONDS_PER_MINUTE;
        } catch (Refusal refusal) {
            // Said by the words above and the lower limit.
        }
        row(
                "Half-time",
                value,
                error,
                limit(limits.low() / SECONDS_PER_MINUTE),
                limit(limits.high() / SECONDS_PER_MINUTE),
                "minutes");
    }

    private void start(CoolingFit fit, CoolingIntervals limits, Scale scale) {
        try {
            Interval start = limits.start();
            row(
                    "Start",
                    fit.start().in(scale),
                    fit.startError().in(scale),
                    degrees(start.low(), scale),
                    degrees(start.high(), scale),
                    scale.symbol());
        } catch (Refusal refusal) {
            row("Start", "out of reach", "", "", "", "");
        }
    }

    private void models(ModelChoice choice, Scale scale) {
        double best = choice.chosen().criterion();
        for (ModelChoice.Candidate candidate : choice.candidates()) {
            double misfit =
                    Math.sqrt(candidate.fit().sumOfSquares() / candidate.fit().size());
            double behind = candidate.criterion() - best;
            row(
                    (candidate.equals(choice.chosen()) ? "Law supported: " : "Law tried: ")
                            + candidate.fit().model().english(),
                    scaled(misfit, scale),
                    "AICc behind",
                    Double.isFinite(behind) ? (Object) behind : "too few readings",
                    "",
                    scale.symbol());
        }
    }

    private static double scaled(double kelvins, Scale scale) {
        return new TemperatureDifference(kelvins).in(scale);
    }

    static Object degrees(double celsius, Scale scale) {
        return Double.isInfinite(celsius) ? NO_LIMIT : (Object) new Temperature(celsius).in(scale);
    }

    private static Object limit(double value) {
        return Double.isInfinite(value) ? NO_LIMIT : (Object) value;
    }

    private void row(Object... cells) {
        rows.add(cells);
    }
}
