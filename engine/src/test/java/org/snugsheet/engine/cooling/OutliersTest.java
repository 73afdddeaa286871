package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Reading;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/**
 * From which size on a reading stands out: where its distance from the curve through the <em>others</em>, in its standard errors, reaches
 * Student’s quantile at 5 % divided among all readings (R. D. Cook and S. Weisberg, Residuals and Influence in Regression, 1982, section
 * 2.2.2). The curve through the others is fitted here without the reading, and the quantile is that of Commons Math.
 */
class OutliersTest {

    private static final Graduation FINE = Graduation.of(0.01, Scale.CELSIUS);
    private static final Surroundings ROOM = new Surroundings.Constant(new Temperature(5), true);

    /** What was misread by hundredths, so that the curve hardly bends when a reading moves. */
    private static final double[] NOISE = {0.03, -0.05, 0.02, 0.04, -0.03, -0.04, 0.05, 0.01};

    @ParameterizedTest
    @CsvSource({"0", "3", "7"})
    void aReadingStandsOutWhereStudentSaysSo(int row) {
        double off = least(row, 8);
        double[] others = without(readings(row, off, 8), row);

        // Eight readings less the one, two parameters: five degrees of freedom.
        double quantile = new TDistribution(5).inverseCumulativeProbability(1 - 0.05 / 8 / 2);
        assertEquals(quantile, Math.abs(others[0]), 0.02 * quantile, "off by " + off);
    }

    /** Of four readings one may stand out from three that lie on a curve to their rounding, by a very large quantile; of three none. */
    @Test
    void threeReadingsAreTooFewToSay() {
        double off = least(2, 4);
        double quantile = new TDistribution(1).inverseCumulativeProbability(1 - 0.05 / 4 / 2);
        assertEquals(50.9, quantile, 0.05, "any table");
        assertEquals(quantile, Math.abs(without(readings(2, off, 4), 2)[0]), 0.03 * quantile);
        assertEquals(List.of(), Outliers.in(CoolingFit.of(readings(1, 20, 3), ROOM, FINE), FINE));
    }

    /** How far off the reading must be, by halving. */
    private static double least(int row, int count) {
        double below = 0;
        double above = 3;
        assertTrue(isOut(row, above, count));
        for (int i = 0; i < 30; i++) {
            double middle = (below + above) / 2;
            if (isOut(row, middle, count)) {
                above = middle;
            } else {
                below = middle;
            }
        }
        return above;
    }

    private static boolean isOut(int row, double off, int count) {
        Readings readings = readings(row, off, count);
        return Outliers.in(CoolingFit.of(readings, ROOM, FINE), FINE)
                .contains(readings.all().get(row));
    }

    /** The distance of a reading from the curve through the others, in standard errors: those of the curve and of the reading. */
    private static double[] without(Readings readings, int row) {
        List<Reading> others = new ArrayList<>(readings.all());
        Reading one = others.remove(row);
        CoolingFit fit = CoolingFit.of(new Readings(others, Scale.CELSIUS), ROOM, FINE);
        double residual = one.temperature().minus(fit.at(one.seconds())).kelvins();
        return new double[] {residual / Math.hypot(fit.errorAt(one.seconds()).kelvins(), Math.sqrt(fit.variance()))};
    }

    private static Readings readings(int row, double off, int count) {
        List<Entry> minutes = new ArrayList<>();
        List<Entry> celsius = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            minutes.add(Entry.of(5 * i));
            celsius.add(Entry.of(5 + 35 * Math.exp(-0.03 * 5 * i) + (count > 4 ? NOISE[i] : 0) + (i == row ? off : 0)));
        }
        return Readings.ofMinutes(minutes, celsius, Scale.CELSIUS);
    }
}
