package org.snugsheet.engine.cooling;

import java.util.Locale;
import java.util.Random;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.Ratio;
import org.snugsheet.engine.comparison.Verdict;
import org.snugsheet.engine.cooling.RealLessons.Around;
import org.snugsheet.engine.cooling.RealLessons.Tub;

/** How often limits hold, and verdicts err, in lessons as a class reads them: the table of engine/NOTES.md. */
public final class RealLessonsReport {

    private static final int RUNS = Integer.getInteger("runs", 3000);
    private static final double CONFIDENCE = 0.95;

    private RealLessonsReport() {}

    /**
     * Prints the table.
     *
     * @param args none
     */
    public static void main(String[] args) {
        line("lesson", "rate", "half-time", "start", "times slower", "false verdicts", "answered");
        for (double mark : new double[] {1, 2}) {
            for (Around around : new Around[] {Around.ONCE, Around.COLUMN, Around.STILL_COLUMN, Around.EXACT}) {
                show("20 readings, mark " + mark + ", " + around, new RealLessons(20, 40, mark, 0.3, 0, around));
                show(
                        "20 readings, mark " + mark + ", noise 1 K, " + around,
                        new RealLessons(20, 40, mark, 1, 0, around));
            }
        }
        for (Around around : new Around[] {Around.ONCE, Around.EXACT}) {
            show("clean: 9 readings, mark 1, " + around, new RealLessons(9, 40, 1, 0.3, 0, around));
            show("clean: 9 readings, mark 0.1, " + around, new RealLessons(9, 40, 0.1, 0.3, 0, around));
            show("clean: 6 readings, mark 0.5, noise 1 K, " + around, new RealLessons(6, 40, 0.5, 1, 0, around));
        }
        for (int readings : new int[] {8, 12, 20, 30}) {
            show(
                    readings + " readings, mark 0.1, noise 0.5 K that lags (0.8)",
                    new RealLessons(readings, 40, 0.1, 0.5, 0.8, Around.ONCE));
            show(
                    readings + " readings, mark 1, noise 1 K that lags (0.8)",
                    new RealLessons(readings, 40, 1, 1, 0.8, Around.ONCE));
        }
        faults();
    }

    /** What no fit can know, in lessons of 9 readings with a mark of 0.5 °C. */
    private static void faults() {
        line("fault", "rate off by", "rate held", "start off by");
        fault("none", 0, (reading, truth) -> truth);
        fault("first reading 2 K low: the thermometer had not settled", 0, (i, truth) -> i == 0 ? truth - 2 : truth);
        fault("room warms by 2 K, typed as it was at first", 2, (reading, truth) -> truth);
        fault("the jar’s thermometer reads 1 K high, the room’s does not", 0, (reading, truth) -> truth + 1);
        fault("the jar is read down to the mark, the room is not", 0, (reading, truth) -> truth - 0.25);
    }

    private static void fault(String name, double rise, RealLessons.Fault fault) {
        RealLessons lesson = new RealLessons(9, 40, 0.5, 0.3, 0, Around.ONCE);
        Random random = new Random(20_261);
        double off = 0;
        double startOff = 0;
        int held = 0;
        for (int run = 0; run < RUNS; run++) {
            double rate = 0.03 + 0.05 * random.nextDouble();
            double start = 38 + 5 * random.nextDouble();
            Tub typed = lesson.tub(random);
            Tub tub = new Tub(typed.first(), rise / lesson.minutes(), typed.typed());
            CoolingFit fit = lesson.jar(tub, rate, start, random, fault);
            off += 100 * (fit.constant().perMinute() / rate - 1) / RUNS;
            startOff += (fit.start().celsius() - start) / RUNS;
            held += fit.intervals(CONFIDENCE).rate().contains(rate / 60) ? 1 : 0;
        }
        line(
                name,
                String.format(Locale.ROOT, "%+.1f %%", off),
                String.format(Locale.ROOT, "%.0f %%", 100.0 * held / RUNS),
                String.format(Locale.ROOT, "%+.1f K", startOff));
    }

    private static void show(String name, RealLessons lesson) {
        Random random = new Random(20_261);
        int[] held = new int[5];
        int answered = 0;
        for (int run = 0; run < RUNS; run++) {
            double rate = 0.03 + 0.05 * random.nextDouble();
            double start = 38 + 5 * random.nextDouble();
            Tub tub = lesson.tub(random);
            try {
                CoolingFit one = lesson.jar(tub, rate, start, random, (reading, truth) -> truth);
                CoolingFit alike = lesson.jar(tub, rate, random);
                CoolingFit slower = lesson.jar(tub, rate / 1.5, random);
                CoolingIntervals limits = one.intervals(CONFIDENCE);
                held[0] += limits.rate().contains(rate / 60) ? 1 : 0;
                held[1] += limits.halfTime().contains(60 * Math.log(2) / rate) ? 1 : 0;
                held[2] += limits.start().contains(start) ? 1 : 0;
                Estimate estimate = one.conservativeEstimate();
                held[3] += new Ratio(estimate, slower.conservativeEstimate())
                                .interval(CONFIDENCE)
                                .contains(1.5)
                        ? 1
                        : 0;
                held[4] += Verdict.of(estimate, alike.conservativeEstimate()) instanceof Verdict.CannotTell ? 0 : 1;
                answered++;
            } catch (InvalidInputException refusal) {
                // A refusal is no answer.
            }
        }
        Object[] cells = new Object[7];
        cells[0] = name;
        for (int i = 0; i < held.length; i++) {
            cells[i + 1] = String.format(Locale.ROOT, "%.1f %%", 100.0 * held[i] / answered);
        }
        cells[6] = String.format(Locale.ROOT, "%.1f %%", 100.0 * answered / RUNS);
        line(cells);
    }

    private static void line(Object... cells) {
        StringBuilder line = new StringBuilder("|");
        for (Object cell : cells) {
            line.append(' ').append(cell).append(" |");
        }
        System.out.println(line);
    }
}
