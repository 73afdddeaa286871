package org.snugsheet.engine.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.util.Pair;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.cooling.CoolingIntervals;
import org.snugsheet.engine.cooling.ModelChoice;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/** A fit of 12 readings beside a bare Levenberg–Marquardt fit of the same readings by Commons Math. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FitBenchmark {

    private static final double ROOM = 4;

    private final Graduation mark = Graduation.usual(Scale.CELSIUS);
    private final Surroundings room = Surroundings.constant(new Temperature(ROOM));
    private final double[] minutes = new double[12];
    private final double[] celsius = new double[12];
    private final Readings readings;
    private final Readings bending;

    /** Invents a jar: 40 °C, half-time 30 minutes, read to the degree. */
    public FitBenchmark() {
        List<Entry> times = new ArrayList<>();
        List<Entry> temperatures = new ArrayList<>();
        for (int i = 0; i < minutes.length; i++) {
            minutes[i] = 4 * i;
            celsius[i] = Math.rint(ROOM + 36 * Math.pow(2, -minutes[i] / 30));
            times.add(Entry.of(minutes[i]));
            temperatures.add(Entry.of(celsius[i]));
        }
        readings = Readings.ofMinutes(times, temperatures, Scale.CELSIUS);
        // Longer, so that the readings bend towards surroundings that are to be fitted.
        List<Entry> later = new ArrayList<>();
        List<Entry> cooler = new ArrayList<>();
        for (int i = 0; i < minutes.length; i++) {
            later.add(Entry.of(3 * minutes[i]));
            cooler.add(Entry.of(Math.rint(ROOM + 36 * Math.pow(2, -3 * minutes[i] / 30))));
        }
        bending = Readings.ofMinutes(later, cooler, Scale.CELSIUS);
    }

    /**
     * Commons Math alone, with analytic slopes and its usual settings.
     *
     * @return the optimum
     */
    @Benchmark
    public LeastSquaresOptimizer.Optimum bareCommonsMath() {
        return new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(new double[] {36, 0.02})
                        .model(point -> {
                            double[][] slopes = new double[minutes.length][2];
                            double[] values = new double[minutes.length];
                            for (int i = 0; i < minutes.length; i++) {
                                double left = Math.exp(-point.getEntry(1) * minutes[i]);
                                values[i] = ROOM + point.getEntry(0) * left;
                                slopes[i][0] = left;
                                slopes[i][1] = -point.getEntry(0) * minutes[i] * left;
                            }
                            return new Pair<>(
                                    new ArrayRealVector(values, false), new Array2DRowRealMatrix(slopes, false));
                        })
                        .target(celsius)
                        .maxEvaluations(1000)
                        .maxIterations(1000)
                        .build());
    }

    /**
     * The engine’s fit with its standard errors.
     *
     * @return the sum of what a sheet asks for
     */
    @Benchmark
    public double fitWithErrors() {
        CoolingFit fit = CoolingFit.of(readings, room, mark);
        return fit.constant().perSecond()
                + fit.constantError().perSecond()
                + fit.startError().kelvins();
    }

    /**
     * The engine’s fit with the error that a verdict uses.
     *
     * @return the estimate
     */
    @Benchmark
    public Object fitForVerdict() {
        return CoolingFit.of(readings, room, mark).conservativeEstimate();
    }

    /**
     * Surroundings that nobody read: fitted too, with other laws in doubt.
     *
     * @return the surroundings and the rate with their errors
     */
    @Benchmark
    public double fitOfSurroundings() {
        CoolingFit fit = CoolingFit.of(bending, new Surroundings.Unknown(), mark);
        return fit.surroundings().celsius()
                + fit.surroundingsError().kelvins()
                + fit.constantError().perSecond();
    }

    /**
     * What COOL.REPORT asks for: all laws and all limits.
     *
     * @return the chosen law
     */
    @Benchmark
    public Object reportWithAllLaws() {
        CoolingFit fit = CoolingFit.of(readings, room, mark);
        CoolingIntervals limits = fit.intervals(0.95);
        double sum =
                limits.rate().low() + limits.halfTime().low() + limits.start().low();
        return List.of(sum, ModelChoice.of(readings, room, mark, List.of()).chosen());
    }
}
