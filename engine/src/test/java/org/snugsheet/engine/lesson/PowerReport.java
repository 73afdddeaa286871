package org.snugsheet.engine.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.NamedEstimate;
import org.snugsheet.engine.comparison.Ranking;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Graduation;

/**
 * Prints how near {@link Power} comes to whole lessons, over plans drawn from marks of 0.1 to 2 °C, rates of 0.01 to 0.3 per minute, 3 to
 * 40 readings in 20 to 60 minutes, a spread of 0 to 0.2, and 1 to 20 jars. Plans whose errors are more than 0.3 of the constant are left
 * out. Run it from the engine’s folder:
 *
 * <pre>mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=org.snugsheet.engine.lesson.PowerReport</pre>
 *
 * <p>It takes five minutes, less with {@code -Dcases=50} or {@code -Druns=1000}.
 */
public final class PowerReport {

    private static final int CASES = Integer.getInteger("cases", 250);

    private static final int RUNS = Integer.getInteger("runs", 4000);

    /** What a reading scatters beside rounding, in marks. */
    private static final double SCATTER = Double.parseDouble(System.getProperty("scatter", "0.5"));

    private static final double LEAST_KNOWN = 0.3;

    private PowerReport() {}

    /** A plan for two wraps. */
    private record Case(ReadingPlan first, ReadingPlan second, double spread, int jars) {

        static Case drawn(Random random) {
            while (true) {
                double mark = pick(random, 0.1, 0.2, 0.5, 1, 2);
                double rate = pick(random, 0.01, 0.02, 0.03, 0.05, 0.1, 0.3);
                int count = (int) pick(random, 3, 4, 5, 6, 8, 11, 16, 25, 40);
                double between = pick(random, 20, 30, 40, 60) / (count - 1);
                double spread = pick(random, 0, 0.05, 0.1, 0.2);
                int jars = (int) pick(random, 1, 1, 2, 3, 4, 6, 10, 20);
                double slower = pick(random, 1, 1.05, 1.1, 1.2, 1.3, 1.5, 2, 3);
                double start = pick(random, 30, 40, 43);
                double around = pick(random, 0, 5, 20);
                ReadingPlan first = plan(start, around, rate, between, count, mark);
                ReadingPlan second = plan(start, around, rate / slower, between, count, mark);
                if (Math.max(first.relativeError(), second.relativeError()) <= LEAST_KNOWN) {
                    return new Case(first, second, spread, jars);
                }
            }
        }

        private static ReadingPlan plan(
                double start, double around, double perMinute, double minutes, int count, double mark) {
            return new ReadingPlan(
                    new Steady(new NewtonCooling(
                            new Temperature(start), new Temperature(around), CoolingConstant.ofPerMinute(perMinute))),
                    minutes * 60,
                    count,
                    Graduation.of(mark, Scale.CELSIUS),
                    SCATTER * mark);
        }

        private static double pick(Random random, double... values) {
            return values[random.nextInt(values.length)];
        }

        double power() {
            return new Power(first, second, spread).of(jars);
        }

        /** The share of whole lessons in which the wraps are told apart. */
        double played(Random random) {
            int apart = 0;
            for (int i = 0; i < RUNS; i++) {
                double warmer = first.mark().graduation().kelvins() * (random.nextDouble() - 0.5);
                List<NamedEstimate> lesson = new ArrayList<>();
                for (int jar = 0; jar < jars; jar++) {
                    lesson.add(new NamedEstimate("first", read(first, warmer, random)));
                    lesson.add(new NamedEstimate("second", read(second, warmer, random)));
                }
                if (Ranking.of(lesson).pair(0, 1).isSeparated()) {
                    apart++;
                }
            }
            return (double) apart / RUNS;
        }

        private Estimate read(ReadingPlan plan, double warmer, Random random) {
            CoolingConstant truth =
                    new CoolingConstant(plan.jar().constant().perSecond() * (1 + spread * random.nextGaussian()));
            while (true) {
                try {
                    return Lessons.fit(plan, truth, warmer, random).conservativeEstimate();
                } catch (InvalidInputException unreadable) {
                    // Read anew, as a class would.
                }
            }
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%.3g and %.3g 1/min from %.3g in %.3g °C, %d readings every %.3g min, mark %.3g, spread %.3g, %d jars",
                    first.jar().constant().perMinute(),
                    second.jar().constant().perMinute(),
                    first.jar().start().celsius(),
                    first.jar().surroundingsAfter(0).celsius(),
                    first.count(),
                    first.intervalSeconds() / 60,
                    first.mark().graduation().kelvins(),
                    spread,
                    jars);
        }
    }

    /**
     * Prints the report.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        Random plans = new Random(5);
        double squares = 0;
        double chance = 0;
        int near = 0;
        double worst = 0;
        for (int i = 0; i < CASES; i++) {
            Case one = Case.drawn(plans);
            double played = one.played(new Random(i));
            double off = one.power() - played;
            squares += off * off;
            chance += played * (1 - played) / RUNS;
            near += Math.abs(off) <= 0.02 ? 1 : 0;
            worst = Math.max(worst, Math.abs(off));
            if (Math.abs(off) > 0.02) {
                System.out.printf(Locale.ROOT, "%.3f, off by %.3f: %s%n", played, off, one);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%d plans: within 0.02 %d, root mean square %.4f (of these by chance of the lessons %.4f), worst %.3f%n",
                CASES,
                near,
                Math.sqrt(squares / CASES),
                Math.sqrt(chance / CASES),
                worst);
    }
}
