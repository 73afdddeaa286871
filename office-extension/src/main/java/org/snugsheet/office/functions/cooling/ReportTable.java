package org.snugsheet.office.functions.cooling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.comparison.Verdict;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.cooling.CoolingIntervals;
import org.snugsheet.engine.cooling.ModelChoice;
import org.snugsheet.engine.cooling.Outliers;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.reading.Reading;
import org.snugsheet.engine.summary.JarFit;
import org.snugsheet.engine.summary.JarSummary;
import org.snugsheet.office.functions.shared.Minutes;
import org.snugsheet.office.words.Language;

/** The table that COOL.REPORT answers with. */
final class ReportTable {

    private final Language language;
    private final List<Object[]> rows = new ArrayList<>();

    private ReportTable(Language language) {
        this.language = language;
    }

    static Object[][] of(JarSummary jar, ModelChoice choice, Language language) {
        CoolingFit fit = jar.fit().fit().orRefuse();
        ReportTable table = new ReportTable(language);
        table.row(language.row(
                TableWords.QUANTITY,
                TableWords.VALUE,
                TableWords.ERROR,
                TableWords.FROM_95,
                TableWords.TO_95,
                TableWords.UNIT));
        table.quantities(jar.fit(), fit, fit.readings().scale());
        table.models(choice, fit.readings().scale());
        for (Reading reading : Outliers.in(fit, jar.typed().mark())) {
            double minutes = Minutes.of(reading.seconds());
            table.row(
                    language.say(TableWords.STANDS_OUT, reading.row()),
                    reading.temperature().in(fit.readings().scale()),
                    language.words(TableWords.AT_MINUTE),
                    minutes,
                    "",
                    fit.readings().scale().symbol());
        }
        jar.heldBackBecause()
                .ifPresent(finding ->
                        table.row(language.words(TableWords.TO_CHECK), language.say(finding), "", "", "", ""));
        return table.rows.toArray(Object[][]::new);
    }

    private void quantities(JarFit known, CoolingFit fit, Scale scale) {
        CoolingIntervals limits = fit.intervals(Verdict.CONFIDENCE);
        Interval rate = limits.rate();
        row(
                language.words(TableWords.COOLING_CONSTANT),
                fit.constant().perMinute(),
                fit.constantError().perMinute(),
                limit(Minutes.perMinute(rate.low())),
                limit(Minutes.perMinute(rate.high())),
                language.words(TableWords.PER_MINUTE));
        halfTime(known, fit, limits.halfTime());
        start(known, fit, limits, scale);
        Interval around = limits.surroundings();
        row(
                language.words(TableWords.SURROUNDINGS),
                fit.surroundings().in(scale),
                fit.surroundingsError().in(scale),
                degrees(around.low(), scale),
                degrees(around.high(), scale),
                scale.symbol());
        row(language.words(TableWords.MISFIT), fit.misfit().in(scale), "", "", "", scale.symbol());
        row(language.words(TableWords.READINGS_USED), (double) fit.size(), "", "", "", "");
    }

    /** A jar that hardly cools has no half-time, only a lower limit for it. */
    private void halfTime(JarFit known, CoolingFit fit, Interval limits) {
        Optional<Double> seconds = known.halfTime().found();
        row(
                language.words(TableWords.HALF_TIME),
                seconds.map(value -> (Object) Minutes.of(value))
                        .orElseGet(() -> language.words(TableWords.LONGER_THAN)),
                seconds.map(value -> (Object) Minutes.of(fit.halfTimeError())).orElse(""),
                limit(Minutes.of(limits.low())),
                limit(Minutes.of(limits.high())),
                language.words(TableWords.MINUTES));
    }

    private void start(JarFit known, CoolingFit fit, CoolingIntervals limits, Scale scale) {
        Optional<Temperature> start = known.start().found();
        if (start.isEmpty()) {
            row(language.words(TableWords.START), language.words(TableWords.OUT_OF_REACH), "", "", "", "");
            return;
        }
        Interval within = limits.start();
        row(
                language.words(TableWords.START),
                start.get().in(scale),
                fit.startError().in(scale),
                degrees(within.low(), scale),
                degrees(within.high(), scale),
                scale.symbol());
    }

    private void models(ModelChoice choice, Scale scale) {
        double best = choice.chosen().criterion();
        for (ModelChoice.Candidate candidate : choice.candidates()) {
            double misfit =
                    Math.sqrt(candidate.fit().sumOfSquares() / candidate.fit().size());
            double behind = candidate.criterion() - best;
            row(
                    language.say(
                            candidate.equals(choice.chosen()) ? TableWords.LAW_SUPPORTED : TableWords.LAW_TRIED,
                            language.words(candidate.fit().model().law())),
                    scaled(misfit, scale),
                    language.words(TableWords.AICC_BEHIND),
                    Double.isFinite(behind) ? (Object) behind : language.words(TableWords.TOO_FEW_READINGS),
                    "",
                    scale.symbol());
        }
    }

    private static double scaled(double kelvins, Scale scale) {
        return new TemperatureDifference(kelvins).in(scale);
    }

    private Object degrees(double celsius, Scale scale) {
        return degrees(celsius, scale, language);
    }

    static Object degrees(double celsius, Scale scale, Language language) {
        return Double.isInfinite(celsius)
                ? language.words(TableWords.NO_LIMIT)
                : (Object) new Temperature(celsius).in(scale);
    }

    private Object limit(double value) {
        return Double.isInfinite(value) ? language.words(TableWords.NO_LIMIT) : (Object) value;
    }

    private void row(Object... cells) {
        rows.add(cells);
    }
}
