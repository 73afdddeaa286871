package org.snugsheet.engine.cooling;

import java.util.Locale;
import java.util.Random;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.reading.Surroundings;

/** How often limits of fitted surroundings hold, by Newton’s law alone and among others: the table of engine/NOTES.md. */
public final class UnreadRoomsReport {

    private static final int RUNS = Integer.getInteger("runs", 400);
    private static final double CONFIDENCE = 0.95;

    private UnreadRoomsReport() {}

    /**
     * What became of many lessons.
     *
     * @param lessons how many
     * @param alone in how many the limits of Newton’s law alone hold the room
     * @param answered how many had an answer
     * @param held in how many of these the limits hold the room
     * @param rates in how many they hold the cooling constant
     * @param errors in how many the room is within two standard errors
     * @param ends the sum of the width of their limits, K
     */
    record Tally(int lessons, int alone, int answered, int held, int rates, int errors, double ends) {

        Tally plus(Tally other) {
            return new Tally(
                    lessons + other.lessons,
                    alone + other.alone,
                    answered + other.answered,
                    held + other.held,
                    rates + other.rates,
                    errors + other.errors,
                    ends + other.ends);
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%.1f %% | %.1f %% | %.1f %% | %.1f %% | %.1f %% | %.1f K",
                    100.0 * alone / lessons,
                    100.0 * answered / lessons,
                    100.0 * held / answered,
                    100.0 * rates / answered,
                    100.0 * errors / answered,
                    ends / answered);
        }
    }

    static Tally tally(UnreadRooms rooms, int runs, long seed) {
        Random random = new Random(seed);
        Tally all = new Tally(0, 0, 0, 0, 0, 0, 0);
        for (int run = 0; run < runs; run++) {
            all = all.plus(one(rooms, rooms.lesson(random)));
        }
        return all;
    }

    private static Tally one(UnreadRooms rooms, UnreadRooms.Lesson lesson) {
        int alone = 0;
        try {
            CoolingFit newton = new FittedSurroundings().fit(lesson.seen(), rooms.grain());
            alone = newton.intervals(CONFIDENCE).surroundings().contains(lesson.room()) ? 1 : 0;
            CoolingFit fit = CoolingFit.of(lesson.seen(), new Surroundings.Unknown(), rooms.grain());
            CoolingIntervals limits = fit.intervals(CONFIDENCE);
            double off = Math.abs(fit.surroundings().celsius() - lesson.room());
            return new Tally(
                    1,
                    alone,
                    1,
                    limits.surroundings().contains(lesson.room()) ? 1 : 0,
                    limits.rate().contains(lesson.rate() / 60) ? 1 : 0,
                    off <= 2 * fit.surroundingsError().kelvins() ? 1 : 0,
                    limits.surroundings().high() - limits.surroundings().low());
        } catch (InvalidInputException refusal) {
            return new Tally(1, alone, 0, 0, 0, 0, 0);
        }
    }

    /**
     * Prints the table.
     *
     * @param args none
     */
    public static void main(String[] args) {
        System.out.println(
                "| lesson | jar | alone held | answered | held | rate held | ± 2 errors held | limits apart |");
        for (double minutes : new double[] {40, 60, 90}) {
            for (int readings : new int[] {8, 20}) {
                for (double[] glass : new double[][] {{0.1, 0.1}, {0.5, 0.3}, {1, 0.5}}) {
                    for (UnreadRooms.Way way : UnreadRooms.Way.values()) {
                        UnreadRooms rooms = new UnreadRooms(readings, minutes, glass[0], glass[1], way);
                        System.out.println("| " + (int) minutes + " min, " + readings + " readings, mark " + glass[0]
                                + ", noise " + glass[1] + " | " + way + " | " + tally(rooms, RUNS, 20_261) + " |");
                    }
                }
            }
        }
    }
}
