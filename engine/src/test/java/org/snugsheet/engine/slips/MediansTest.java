package org.snugsheet.engine.slips;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The selected number is the one that stands there when all are sorted. */
@Timeout(60)
class MediansTest {

    @RepeatedTest(200)
    void itIsWhatSortingFinds(RepetitionInfo seed) {
        SplittableRandom random = new SplittableRandom(seed.getCurrentRepetition());
        int count = random.nextInt(1, 40);
        // Few different numbers, so that many are equal.
        double[] numbers = random.ints(count, -6, 7).mapToDouble(n -> n / 4.0).toArray();
        numbers[random.nextInt(count)] = seed.getCurrentRepetition() % 3 == 0 ? Double.NaN : 9;
        double[] sorted = numbers.clone();
        Arrays.sort(sorted);
        double expected = sorted[(count - 1) / 2];
        assertEquals(Double.isNaN(expected) ? Double.POSITIVE_INFINITY : expected, Medians.of(numbers, count));
    }

    @Test
    void onlyTheFirstNumbersCount() {
        assertEquals(2, Medians.of(new double[] {3, 1, 2, 9, 9, 9}, 3));
        assertEquals(0, Medians.of(new double[] {3}, 0));
    }
}
