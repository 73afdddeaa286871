package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Mark;
import org.snugsheet.engine.reading.Readings;

class SlipsTest {

    @Test
    void aCleanColumnHasNone() {
        assertEquals(List.of(), slips(new double[] {0, 5, 10, 15}, new double[] {40, 35, 36, 30}));
    }

    @Test
    void aReadingWarmerByMoreThanAMarkIsPointedOut() {
        List<Finding> found = slips(new double[] {0, 5, 10, 15}, new double[] {40, 34, 43, 30});

        assertEquals(1, found.size());
        assertEquals(Trouble.WARMER_THAN_BEFORE, found.get(0).trouble());
        assertEquals(OptionalInt.of(3), found.get(0).row());
    }

    @Test
    void clockTimesAreToldFromMinutes() {
        double nine = 9.0 / 24;
        double five = 5.0 / (24 * 60);
        List<Finding> found = slips(
                new double[] {nine, nine + five, nine + 2 * five, nine + 3 * five}, new double[] {40, 35, 31, 28});

        assertEquals(List.of(Finding.of(Trouble.DAY_FRACTIONS)), found);
    }

    private static List<Finding> slips(double[] minutes, double[] celsius) {
        Readings readings = Readings.ofMinutes(
                Arrays.stream(minutes).mapToObj(Entry::of).toList(),
                Arrays.stream(celsius).mapToObj(Entry::of).toList(),
                Scale.CELSIUS);
        return Slips.in(readings, Mark.usual(Scale.CELSIUS));
    }
}
