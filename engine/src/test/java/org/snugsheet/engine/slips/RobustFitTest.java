package org.snugsheet.engine.slips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;

/** What stands out of a column and how a column is scored, from the definitions; readings invented, 6 °C around, a mark of 1 °C. */
class RobustFitTest {

    private static final double[] PLAIN = {41, 35, 31, 27, 23, 21, 18, 17, 15};

    /** Variance of rounding to 1 °C and of a scatter of 0.2 K, with the weight of four readings. */
    private static final double EXPECTED = 1 / 12.0 + 0.04;

    private static final double PRIOR = 4;

    /**
     * Twice the logarithm of the likelihood ratio of Student’s t: how far a reading lies from the curve through the others, in standard
     * errors. The curve through the others is fitted here without the reading.
     */
    @Test
    void aReadingStandsOutByItsDistanceFromTheCurveThroughTheOthers() {
        for (double off : new double[] {-1.5, 0, 2}) {
            double[] readings = PLAIN.clone();
            readings[4] += off;
            Column column = column(readings);
            RobustFit all = RobustFit.byOneLaw(column, Law.NEWTON);
            boolean[] others = new boolean[9];
            Arrays.fill(others, true);
            others[4] = false;
            LawFit without = LawFit.of(LawGrid.of(Sample.of(column), Law.NEWTON), others);
            double freedom = PRIOR + 8 - 2;
            double variance = Math.max(PRIOR * EXPECTED + without.sumOfSquares(), freedom / 12) / freedom;
            double square = Math.pow(without.residual(4), 2) / (variance * (1 + without.leverages()[4]));
            double expected = freedom * Math.log1p(square / freedom);

            assertEquals(expected, all.surprise(4), 0.03 * expected + 0.02, "off by " + off);
        }
    }

    /** The same of a reading that was left out. */
    @Test
    void aReadingThatIsLeftOutIsJudgedByTheOthers() {
        double[] readings = PLAIN.clone();
        readings[3] = 40;
        Column column = column(readings);
        RobustFit robust = RobustFit.of(column);
        assertEquals(Law.NEWTON, robust.fit().law());
        assertEquals(1, robust.misreadings());
        assertTrue(robust.isMisread(3));
        assertFalse(robust.isMisread(4));
        double freedom = PRIOR + 8 - 2;
        double whole = Math.max(PRIOR * EXPECTED + robust.fit().sumOfSquares(), freedom / 12);
        double square =
                Math.pow(robust.fit().residual(3), 2) / (1 + robust.fit().leverages()[3]);
        assertEquals(freedom * Math.log1p(square / whole), robust.surprise(3), 1e-9);
        assertEquals(13.2, robust.fit().residual(3), 0.2, "27 was read, 40 typed");
    }

    /** {@code n·ln σ̂²} with the penalty of AICc (N. Sugiura 1978), two more for a law that is not the usual one, ten for each misreading. */
    @Test
    void theScoreIsAsDefined() {
        Column column = column(PLAIN);
        for (Law law : List.of(Law.NEWTON, Law.STILL_AIR, Law.LEVEL)) {
            RobustFit robust = RobustFit.byOneLaw(column, law);
            double n = PRIOR + 9;
            double k = robust.fit().parameters() + 1;
            double variance = Math.max((PRIOR * EXPECTED + robust.fit().sumOfSquares()) / n, 1 / 12.0);
            double expected =
                    n * Math.log(variance) + 2 * k + 2 * k * (k + 1) / (n - k - 1) + (law == Law.NEWTON ? 0 : 2);
            assertEquals(expected, robust.score(), 1e-9, law.name());
        }
        double[] readings = PLAIN.clone();
        readings[3] = 40;
        RobustFit wild = RobustFit.of(column(readings));
        double n = PRIOR + 8;
        double variance = Math.max((PRIOR * EXPECTED + wild.fit().sumOfSquares()) / n, 1 / 12.0);
        // All readings carry the variance; the penalty counts those that are trusted.
        assertEquals((n + 1) * Math.log(variance) + 6 + 24 / (n - 4) + 10, wild.score(), 1e-9);
        // What is left to gain: the ten, and the scatter down to that of rounding, and three.
        double least = Math.max(1 / 12.0, PRIOR * EXPECTED / 13);
        assertEquals(13 * Math.log(variance / least) + 10 + 3, wild.room(), 1e-9);
        // With a fine mark the scatter that is usual is what is left.
        Column fine = new Column(column.lines(), Graduation.of(0.1, Scale.CELSIUS), Scale.CELSIUS);
        RobustFit finely = RobustFit.byOneLaw(fine, Law.NEWTON);
        double usual = PRIOR * (0.01 / 12 + 0.04);
        assertEquals(0, finely.misreadings());
        assertEquals(13 * Math.log((usual + finely.fit().sumOfSquares()) / 13 / (usual / 13)) + 3, finely.room(), 1e-9);
    }

    /** What is known of one column serves others, and changes nothing: other temperatures, times, surroundings, and one that is stuck. */
    @Test
    void anotherColumnIsFittedAsByItself() {
        double[] readings = PLAIN.clone();
        readings[3] = 40;
        Column column = column(readings);
        RobustFit known = RobustFit.of(column);
        for (Column other : List.of(
                column(PLAIN),
                column.with(2, line -> line.withTyped(line.typed() + 9)),
                column.with(5, line -> line.withMinute(line.minute() + 1)),
                around(column, 3),
                column.withAllFrom(6, line -> line.withStuckPart(1)))) {
            RobustFit alone = RobustFit.of(other);
            RobustFit after = known.ofOther(other);
            assertEquals(alone.score(), after.score());
            assertEquals(alone.fit().rate(), after.fit().rate());
            Law law = known.fit().law();
            assertEquals(
                    RobustFit.byOneLaw(other, law).score(),
                    known.ofOtherByThisLaw(other).score());
        }
        assertEquals(known.score(), known.ofOther(column).score());
    }

    @Test
    void aFirstReadingOnTheSideOfTheSurroundingsHasNotSettled() {
        double[] cold = PLAIN.clone();
        cold[0] = 36;
        RobustFit robust = RobustFit.of(column(cold));
        assertTrue(robust.isMisread(0));
        assertTrue(robust.isOnTheSideOfTheSurroundings(0));
        double[] hot = PLAIN.clone();
        hot[0] = 50;
        robust = RobustFit.of(column(hot));
        assertTrue(robust.isMisread(0));
        assertFalse(robust.isOnTheSideOfTheSurroundings(0));
    }

    // ---- what was typed, as the finder reads it

    /** Straight in time between the rows where somebody read the room; level before the first and after the last of them. */
    @Test
    void theRoomIsReadBetweenTheRows() {
        List<Entry> times = List.of(Entry.of(0), Entry.of(2), Entry.of(4), Entry.of(9), Entry.of(12), Entry.of(15));
        List<Entry> temperatures = plain(6);
        List<Entry> room =
                List.of(Entry.of("-"), Entry.of(4), Entry.of("-"), Entry.of("-"), Entry.of(9), Entry.of("-"));
        TypedColumn typed = TypedColumn.of(times, temperatures, room, Graduation.usual(Scale.CELSIUS), Scale.CELSIUS);
        double[] expected = {4, 4, 5, 7.5, 9, 9};
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], typed.column().at(i).around(), 1e-12, "row " + (i + 1));
            assertEquals(i + 1, typed.column().at(i).row());
            assertEquals(
                    ((Entry.Value) times.get(i)).value(), typed.column().at(i).minute());
        }
        assertTrue(typed.column().knowsSurroundings());
        assertTrue(typed.refusal().isPresent(), "the room was not read at the first reading");
    }

    @Test
    void aRoomThatCannotBeReadIsASlipAndUnknown() {
        List<Entry> times = List.of(Entry.of(0), Entry.of(5), Entry.of(10), Entry.of(15));
        List<List<Entry>> rooms =
                List.of(List.of(Entry.of("warm")), List.of(Entry.of(5), Entry.of(6)), List.of(Entry.of("")));
        List<Problem> problems = List.of(
                Problem.SURROUNDINGS_NOT_A_TEMPERATURE, Problem.SURROUNDINGS_LENGTH, Problem.SURROUNDINGS_BLANK);
        for (int i = 0; i < rooms.size(); i++) {
            TypedColumn typed =
                    TypedColumn.of(times, plain(4), rooms.get(i), Graduation.usual(Scale.CELSIUS), Scale.CELSIUS);
            assertFalse(typed.column().knowsSurroundings());
            assertEquals(1, typed.slips().size());
            assertEquals(problems.get(i), typed.slips().get(0).finding().problem());
        }
        TypedColumn ice = TypedColumn.of(
                times, plain(4), List.of(Entry.of("melting ice")), Graduation.usual(Scale.CELSIUS), Scale.CELSIUS);
        assertEquals(0, ice.column().at(2).around());
        TypedColumn fit = TypedColumn.of(
                times, plain(4), List.of(Entry.of("fit")), Graduation.usual(Scale.CELSIUS), Scale.CELSIUS);
        assertEquals(List.of(), fit.slips());
        assertFalse(fit.column().knowsSurroundings());
    }

    /** Clock times and cells that are no times are told, and what is left is still read. */
    @Test
    void timesThatCannotBeReadAreTold() {
        List<Entry> times = List.of(Entry.of("soon"), Entry.of(5), Entry.of(10), Entry.of(15), Entry.of(20));
        TypedColumn typed =
                TypedColumn.of(times, plain(5), List.of(Entry.of(6)), Graduation.usual(Scale.CELSIUS), Scale.CELSIUS);
        assertEquals(SlipKind.UNREADABLE, typed.slips().get(0).kind());
        assertEquals(4, typed.column().size());
        List<Entry> clock = List.of(Entry.of("9:05"), Entry.of("9:10"), Entry.of("9:15"), Entry.of("9:20"));
        assertTrue(
                TypedColumn.of(clock, plain(4), List.of(Entry.of(6)), Graduation.usual(Scale.CELSIUS), Scale.CELSIUS)
                        .slips()
                        .stream()
                        .anyMatch(slip -> slip.kind() == SlipKind.CLOCK_TIMES));
    }

    /** A room read in a few rows only; the row is named where a cell of the room cannot be read. */
    @Test
    void theRoomOfOneRowIsThatOfAll() {
        List<Entry> times = List.of(Entry.of(0), Entry.of(5), Entry.of(10), Entry.of(15));
        Entry none = Entry.of("-");
        assertEquals(List.of(4.0, 4.0, 4.0, 4.0), room(times, Entry.of(4), none, none, none));
        assertEquals(List.of(4.0, 5.0, 6.0, 6.0), room(times, Entry.of(4), none, Entry.of(6), none));
        assertEquals(List.of(7.0, 7.0, 7.0, 7.0), room(times, none, none, none, Entry.of(7)));
        // Where the times do not rise there is no between.
        List<Entry> wrong = List.of(Entry.of(0), Entry.of(20), Entry.of(10), Entry.of(15));
        assertEquals(List.of(4.0, 4.0, 4.0, 9.0), room(wrong, Entry.of(4), Entry.of(4), none, Entry.of(9)));
        TypedColumn typed = TypedColumn.of(
                times,
                plain(4),
                List.of(Entry.of(4), Entry.of(4), Entry.of("warm"), Entry.of(4)),
                Graduation.usual(Scale.CELSIUS),
                Scale.CELSIUS);
        assertEquals(3, typed.slips().get(0).row().orElse(0));
    }

    private static List<Double> room(List<Entry> times, Entry... room) {
        return TypedColumn.of(times, plain(4), List.of(room), Graduation.usual(Scale.CELSIUS), Scale.CELSIUS)
                .column()
                .lines()
                .stream()
                .map(Line::around)
                .toList();
    }

    // ---- what is usual

    /** Water is liquid, a hand bears it, a jar that cools was warm, a room is no oven: each costs nothing where it is so. */
    @Test
    void usualTemperaturesCostNothing() {
        assertEquals(0, usual(column(PLAIN)));
        assertEquals(0, usual(around(column(PLAIN), 35)));
        assertEquals(0, usual(around(column(PLAIN), -20)));
        assertEquals(0, usual(around(column(PLAIN), Double.NaN)));
        assertEquals(0, usual(column(62, 50, 40, 30)));
        // A cold jar that warms in a room was never warm.
        assertEquals(0, usual(around(column(5, 8, 10, 12), 21)));
    }

    @Test
    void unusualTemperaturesCostTheMoreTheStrangerTheyAre() {
        assertEquals(40, usual(column(102, 80, 60, 50)), "steam");
        assertEquals(40, usual(around(column(5, 2, 0, -2), -9)) - usual(around(column(5, 2, 0, -1), -9)), 1e-9, "ice");
        assertEquals(12, usual(column(77, 60, 50, 40)), 1e-9, "halfway from what a hand bears to 92 °C");
        assertEquals(8, usual(around(column(PLAIN), 47.5)), 1e-9, "halfway to an oven");
        assertEquals(8, usual(around(column(PLAIN), -32.5)), 1e-9, "halfway to the Antarctic");
        assertEquals(5, usual(column(12.5, 11, 10, 9)), 1e-9, "a jar that cools and was never warm");
        assertEquals(5, usual(around(column(12.5, 11, 10, 9), Double.NaN)), 1e-9);
        assertEquals(10, usual(column(4, 3.5, 3, 2.5).withAllFrom(0, line -> line.withAround(1))), 1e-9);
    }

    private static double usual(Column column) {
        return Usual.cost(column, RobustFit.byOneLaw(column, column.knowsSurroundings() ? Law.NEWTON : Law.LEVEL));
    }

    // ---- helpers

    private static List<Entry> plain(int count) {
        return Arrays.stream(PLAIN).limit(count).mapToObj(Entry::of).toList();
    }

    private static Column around(Column column, double celsius) {
        return column.withAllFrom(0, line -> line.withAround(celsius));
    }

    private static Column column(double... celsius) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < celsius.length; i++) {
            lines.add(new Line(i + 1, 5 * i, 5 * i, celsius[i], Scale.CELSIUS, 6, 0, false, false));
        }
        return new Column(lines, Graduation.of(1, Scale.CELSIUS), Scale.CELSIUS);
    }
}
