package org.snugsheet.engine.cooling;

import java.util.Arrays;
import java.util.Comparator;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;
import org.snugsheet.engine.solver.NonlinearFit;

/**
 * A vessel and its wrap that both store heat: first the wrap warms, then both cool together, so
 * {@code T(t) = Tₛ + A·e^(−k·t) + A′·e^(−k′·t)} with {@code k′ > k}.
 *
 * <p>Source: the general solution of two lumped bodies in series, two linear equations of the first order (Boyce and DiPrima,
 * Elementary Differential Equations, section 7.5).
 *
 * @param surroundings Tₛ
 */
public record TwoStage(Temperature surroundings) implements CoolingModel {

    /** One reading more than the corrected information criterion can judge. */
    private static final int ENOUGH = 8;

    /** Two stages that exist are found within a few dozen evaluations of the curve. */
    private static final int LOOKS = 200;

    /** How much faster than the second stage the first may be, as starting points of the search. */
    private static final double[] FASTER = {3, 10, 30};

    @Override
    public CoolingLaw law() {
        return CoolingLaw.TWO_STAGE;
    }

    @Override
    public int parameters() {
        return 4;
    }

    @Override
    public TwoStageFit fit(Readings readings, Graduation mark) {
        requireEnough(readings);
        return fit(CoolingFit.of(readings, Surroundings.constant(surroundings), mark));
    }

    /** The same for readings to which Newton’s law in these surroundings has been fitted; the search starts from that fit. */
    TwoStageFit fit(CoolingFit single) {
        Readings readings = single.readings();
        requireEnough(readings);
        int n = readings.size();
        double[] times = new double[n];
        double[] differences = new double[n];
        for (int i = 0; i < n; i++) {
            times[i] = readings.all().get(i).seconds() - readings.first().seconds();
            differences[i] =
                    readings.all().get(i).temperature().minus(surroundings).kelvins();
        }
        NonlinearFit.Formula curve = (i, b, slopes) -> decays(times[i], b, slopes);
        double rate = single.constant().perSecond();
        double amplitude = single.amplitude();
        return Arrays.stream(FASTER)
                .mapToObj(f -> new double[] {0.8 * amplitude, 0.9 * rate, 0.2 * amplitude, f * rate})
                // One start may lead nowhere where another settles.
                .flatMap(start -> NonlinearFit.of(curve, differences, start, LOOKS).stream())
                .filter(fit -> fit.parameter(1) > 0 && fit.parameter(3) > 0)
                .min(Comparator.comparingDouble(NonlinearFit::sumOfSquares))
                .map(fit -> new TwoStageFit(
                        this,
                        n,
                        fit.sumOfSquares(),
                        new CoolingConstant(Math.min(fit.parameter(1), fit.parameter(3))),
                        new CoolingConstant(Math.max(fit.parameter(1), fit.parameter(3)))))
                .orElseThrow(() -> InvalidInputException.of(Problem.UNDETERMINED));
    }

    private static void requireEnough(Readings readings) {
        if (readings.size() < ENOUGH) {
            throw InvalidInputException.of(Problem.TOO_FEW_READINGS, ENOUGH, readings.size());
        }
    }

    private static double decays(double time, double[] b, double[] slopes) {
        double one = Math.exp(-b[1] * time);
        double other = Math.exp(-b[3] * time);
        slopes[0] = one;
        slopes[1] = -b[0] * time * one;
        slopes[2] = other;
        slopes[3] = -b[2] * time * other;
        return b[0] * one + b[2] * other;
    }
}
