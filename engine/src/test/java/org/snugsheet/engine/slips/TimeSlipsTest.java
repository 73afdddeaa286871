package org.snugsheet.engine.slips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;

/** What may have happened to the times of a column; the times are made here, every five minutes. */
class TimeSlipsTest {

    /** Row 4 was typed 10 once more: all from there on a step early, this time alone, or the one before it alone. */
    @Test
    void aTimeThatIsNotLaterHasThreeExplanationsAndOneWayOut() {
        Column column = column(0, 5, 10, 10, 15, 20);
        assertEquals(3, column.firstNotLater());
        List<SlipHypothesis> hypotheses = TimeSlips.notLater(column, 3);

        SlipHypothesis repeated = hypotheses.get(0);
        assertEquals(SlipKind.MINUTES_REPEATED, repeated.kind());
        assertEquals(4, repeated.finding().row().orElse(0));
        assertEquals(List.of(0.0, 5.0, 10.0, 15.0, 20.0, 25.0), minutes(repeated.corrected()));
        assertEquals(10.0, repeated.finding().arguments().get(1));
        assertEquals(15.0, repeated.finding().arguments().get(2));
        // 15 alone would not be earlier than the 15 behind it, and 5 in the row before would not be later than the 5
        // there.
        SlipHypothesis without = hypotheses.get(1);
        assertEquals(2, hypotheses.size());
        assertEquals(SlipKind.TIME_WRONG, without.kind());
        assertEquals(Problem.TIME_NOT_LATER, without.finding().problem());
        assertEquals(List.of(0.0, 5.0, 10.0, 15.0, 20.0), minutes(without.corrected()));
        assertEquals(10.0, without.finding().arguments().get(1));
        assertEquals(10.0, without.finding().arguments().get(2));
    }

    /** Row 3 was typed 2 for 10: it alone is wrong, for the next is on time again. */
    @Test
    void aTimeAloneMayBeWrong() {
        List<SlipHypothesis> hypotheses = TimeSlips.notLater(column(0, 5, 2, 15, 20), 2);
        assertEquals(
                List.of(0.0, 5.0, 10.0, 15.0, 20.0), minutes(hypotheses.get(1).corrected()));
        assertEquals(Problem.ROW_TIME_WRONG, hypotheses.get(1).finding().problem());
        assertEquals(3, hypotheses.get(1).finding().row().orElse(0));
    }

    /** Row 2 was typed 50 for 5: the row behind it is not later, but it is the one before that is wrong. */
    @Test
    void theTimeBeforeMayBeTheWrongOne() {
        List<SlipHypothesis> hypotheses = TimeSlips.notLater(column(0, 50, 10, 15, 20), 2);
        SlipHypothesis before = hypotheses.get(hypotheses.size() - 2);
        assertEquals(Problem.ROW_TIME_WRONG, before.finding().problem());
        assertEquals(2, before.finding().row().orElse(0));
        assertEquals(List.of(0.0, 5.0, 10.0, 15.0, 20.0), minutes(before.corrected()));
        // The same where it is the very first time.
        hypotheses = TimeSlips.notLater(column(9, 5, 10, 15), 1);
        before = hypotheses.get(hypotheses.size() - 2);
        assertEquals(1, before.finding().row().orElse(0));
        assertEquals(List.of(0.0, 5.0, 10.0, 15.0), minutes(before.corrected()));
    }

    @Test
    void theLastTimeMayAlwaysBeWrongAlone() {
        List<SlipHypothesis> hypotheses = TimeSlips.notLater(column(0, 5, 10, 15, 2), 4);
        assertEquals(
                List.of(0.0, 5.0, 10.0, 15.0, 20.0), minutes(hypotheses.get(1).corrected()));
    }

    @Test
    void timesThatNeverRiseAreOnlyLeftOut() {
        List<SlipHypothesis> hypotheses = TimeSlips.notLater(column(5, 5, 5), 1);
        assertEquals(1, hypotheses.size());
        assertEquals(2, hypotheses.get(0).corrected().size());
    }

    /** From row 4 on ten minutes late, two steps; and the last time an hour late. */
    @Test
    void skippedStepsAndALateHourAreSeen() {
        Column skipped = column(0, 5, 10, 25, 30, 35);
        List<SlipHypothesis> hypotheses =
                new TimeSlips().hypotheses(skipped, RobustFit.of(skipped)).toList();
        assertEquals(1, hypotheses.size());
        assertEquals(SlipKind.MINUTES_SKIPPED, hypotheses.get(0).kind());
        assertEquals(4, hypotheses.get(0).finding().row().orElse(0));
        assertEquals(
                List.of(0.0, 5.0, 10.0, 15.0, 20.0, 25.0),
                minutes(hypotheses.get(0).corrected()));
        assertTrue(TimeSlips.skipsWholeSteps(skipped, 3, 5));
        assertFalse(TimeSlips.skipsWholeSteps(skipped, 2, 5));
        assertFalse(TimeSlips.skipsWholeSteps(column(0, 5, 10, 17.5), 3, 5), "half a step");
        assertFalse(TimeSlips.skipsWholeSteps(column(0, 5, 10, 40), 3, 5), "five steps are a break");
        assertTrue(TimeSlips.skipsWholeSteps(column(0, 5, 10, 35), 3, 5));

        Column late = column(0, 5, 10, 15, 80);
        hypotheses = new TimeSlips().hypotheses(late, RobustFit.of(late)).toList();
        assertEquals(1, hypotheses.size());
        assertEquals(SlipKind.TIME_WRONG, hypotheses.get(0).kind());
        assertEquals(
                List.of(0.0, 5.0, 10.0, 15.0, 20.0), minutes(hypotheses.get(0).corrected()));
        Column early = column(0, 5, 10, 15, 79);
        assertEquals(0, new TimeSlips().hypotheses(early, RobustFit.of(early)).count());
    }

    /** A single time off its place is a hypothesis where the next one is on time. */
    @Test
    void aTimeOffItsPlaceIsSeen() {
        Column off = column(0, 5, 12, 15, 20, 25);
        List<SlipHypothesis> hypotheses =
                new TimeSlips().hypotheses(off, RobustFit.of(off)).toList();
        assertEquals(1, hypotheses.size());
        assertEquals(
                List.of(0.0, 5.0, 10.0, 15.0, 20.0, 25.0),
                minutes(hypotheses.get(0).corrected()));
        assertEquals(3, hypotheses.get(0).finding().row().orElse(0));
        assertEquals(12.0, hypotheses.get(0).finding().arguments().get(1));
        assertEquals(10.0, hypotheses.get(0).finding().arguments().get(2));
        Column drifting = column(0, 5, 12, 17, 22, 27);
        assertEquals(
                0, new TimeSlips().hypotheses(drifting, RobustFit.of(drifting)).count());
    }

    /** Rows left blank count: 10 minutes over two rows are two steps of 5. */
    @Test
    void theStepIsCountedByRows() {
        Column column = column(0, 5, 10, 15).without(2);
        assertEquals(5, TimeSlips.stepPerRow(column));
        assertFalse(TimeSlips.skipsWholeSteps(column, 2, 5));
        assertEquals(0, TimeSlips.stepPerRow(column(7, 7, 7)));
    }

    /** A row left blank: the next reading is due two steps later, and nothing is wrong with its time. */
    @Test
    void aBlankRowIsNoSkippedMinute() {
        Column blank = column(0, 5, 10, 15, 20, 25).without(2);
        assertEquals(
                List.of(),
                new TimeSlips().hypotheses(blank, RobustFit.of(blank)).toList());
        // Every other row blank: ten minutes apart, five minutes a row.
        Column sparse = column(0, 5, 10, 15, 20, 25, 30, 35, 40)
                .without(7)
                .without(5)
                .without(3)
                .without(1);
        assertEquals(5, TimeSlips.stepPerRow(sparse));
    }

    /** Nobody reads on the second: times within a fiftieth of the step, six seconds of five minutes, are on time. */
    @Test
    void timesNearlyOnTimeAreOnTime() {
        Column off = column(0, 5, 12, 15.05, 20, 25);
        assertEquals(
                List.of(SlipKind.TIME_WRONG),
                new TimeSlips()
                        .hypotheses(off, RobustFit.of(off))
                        .map(SlipHypothesis::kind)
                        .toList());
        Column late = column(0, 5, 10, 15, 80.05);
        assertEquals(1, new TimeSlips().hypotheses(late, RobustFit.of(late)).count());
        late = column(0, 5, 10, 15, 80.2);
        assertEquals(0, new TimeSlips().hypotheses(late, RobustFit.of(late)).count());
    }

    /** What is equally sure comes by its row, though times are read before readings. */
    @Test
    void cellsThatCannotBeReadComeInTheOrderOfTheirRows() {
        List<Entry> times = new ArrayList<>();
        List<Entry> readings = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            times.add(Entry.of(4 * i));
            readings.add(Entry.of(Math.rint(8 + 34 * Math.exp(-0.12 * i))));
        }
        times.set(8, Entry.of("late"));
        readings.set(2, Entry.of("warm"));
        assertEquals(
                List.of(3, 9),
                SlipFinder.find(times, readings, List.of(Entry.of(8)), degree(), Scale.CELSIUS).stream()
                        .map(slip -> slip.row().orElse(0))
                        .toList());
    }

    // ---- a thermometer out of the water

    /** All readings alike: in 5 °C a jar of 30 °C would have cooled; in 29 °C it would not. */
    @Test
    void aConstantColumnIsAccusedOnlyWhereAJarWouldHaveCooled() {
        assertTrue(ConstantColumn.in(alike(30, 5)).isPresent());
        assertTrue(ConstantColumn.in(alike(30, Double.NaN)).isPresent());
        assertFalse(ConstantColumn.in(alike(30, 29)).isPresent());
        assertTrue(ConstantColumn.in(alike(4, 25)).isPresent(), "a cold jar in a room");
        assertFalse(ConstantColumn.in(column(0, 5, 10, 15, 20)).isPresent(), "these do cool");
        assertEquals(
                30.0,
                ConstantColumn.in(alike(30, 5))
                        .orElseThrow()
                        .finding()
                        .arguments()
                        .get(0));
    }

    private static Column alike(double celsius, double around) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            lines.add(new Line(i + 1, 5 * i, 5 * i, celsius, Scale.CELSIUS, around, 0, false, false));
        }
        return new Column(lines, degree(), Scale.CELSIUS);
    }

    // ---- in order

    @Test
    void slipsComeTheSurestFirstAndThenByTheirRows() {
        List<Entry> times = new ArrayList<>();
        List<Entry> readings = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            times.add(Entry.of(4 * i));
            readings.add(Entry.of(Math.rint(8 + 34 * Math.exp(-0.12 * i))));
        }
        readings.set(8, Entry.of("cold"));
        readings.set(2, Entry.of("warm"));
        List<Slip> slips = SlipFinder.find(times, readings, List.of(Entry.of(8)), degree(), Scale.CELSIUS);
        assertEquals(
                List.of(3, 9), slips.stream().map(slip -> slip.row().orElse(0)).toList());
        // Odds of e² to one are 0.881 (logistic function).
        assertEquals(0.8808, SlipFinder.certainty(4), 1e-4);
    }

    @Test
    void kindsThatHoldAJarBack() {
        for (SlipKind kind : SlipKind.values()) {
            boolean hurts = kind == SlipKind.HOT_WATER || kind == SlipKind.BITTER_COLD;
            assertEquals(hurts, kind.canHurt(), kind.name());
            assertEquals(!hurts && kind != SlipKind.CAUTION, kind.holdsBack(), kind.name());
        }
    }

    private static Graduation degree() {
        return Graduation.of(1, Scale.CELSIUS);
    }

    private static List<Double> minutes(Column column) {
        return column.lines().stream().map(Line::minute).toList();
    }

    private static Column column(double... minutes) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < minutes.length; i++) {
            double celsius = Math.rint(8 + 34 * Math.exp(-0.15 * i));
            lines.add(new Line(i + 1, minutes[i], minutes[i], celsius, Scale.CELSIUS, 8, 0, false, false));
        }
        return new Column(lines, degree(), Scale.CELSIUS);
    }
}
