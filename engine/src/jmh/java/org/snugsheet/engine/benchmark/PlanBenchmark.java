package org.snugsheet.engine.benchmark;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.lesson.Power;
import org.snugsheet.engine.lesson.ReadingPlan;
import org.snugsheet.engine.lesson.Steady;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Graduation;

/** What the PLAN functions ask for, with a lesson’s arguments: 40 °C in 5 °C, half an hour, a reading every three minutes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PlanBenchmark {

    private static final double LESSON = 30 * 60.0;

    private static final double EVERY = 3 * 60.0;

    private static final double CERTAINTY = 0.03;

    private static final double OFTEN = 0.8;

    private static final int JARS = 4;

    private final Graduation mark = Graduation.usual(Scale.CELSIUS);
    private final double scatter = ReadingPlan.usualScatter(mark);

    private Steady jar(double perMinute) {
        return new Steady(
                new NewtonCooling(new Temperature(40), new Temperature(5), CoolingConstant.ofPerMinute(perMinute)));
    }

    private Power power() {
        return new Power(
                ReadingPlan.filling(jar(0.05), LESSON, EVERY, mark, scatter),
                ReadingPlan.filling(jar(0.04), LESSON, EVERY, mark, scatter),
                Power.USUAL_SPREAD);
    }

    /**
     * PLAN.CERTAINTY.
     *
     * @return how well the constant will be known
     */
    @Benchmark
    public double certainty() {
        return ReadingPlan.filling(jar(0.04), LESSON, EVERY, mark, scatter).relativeError();
    }

    /**
     * PLAN.INTERVAL and PLAN.READINGS.
     *
     * @return the seconds between readings
     */
    @Benchmark
    public double interval() {
        return ReadingPlan.forCertainty(jar(0.04), LESSON, CERTAINTY, mark, scatter)
                .intervalSeconds();
    }

    /**
     * PLAN.POWER.
     *
     * @return how often four jars of each tell the wraps apart
     */
    @Benchmark
    public double powerOfFourJars() {
        return power().of(JARS);
    }

    /**
     * PLAN.REPEATS, and most of PLAN.LESSON.
     *
     * @return how many jars of each are needed
     */
    @Benchmark
    public int jarsNeeded() {
        return power().jarsFor(OFTEN);
    }
}
