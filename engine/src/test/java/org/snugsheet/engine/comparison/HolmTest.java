package org.snugsheet.engine.comparison;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Sources: Holm, A simple sequentially rejective multiple test procedure, Scandinavian Journal of Statistics 6 (1979), 65, and two
 * published examples of it; what else is held are properties.
 */
class HolmTest {

    /** The example of pingouin.holm in its documentation. */
    @Test
    void theExampleOfPingouinIsAdjustedAsDocumented() {
        assertArrayEquals(
                new double[] {0.64, 0.012, 0.64, 0.162, 0.0015},
                Holm.adjusted(new double[] {0.50, 0.003, 0.32, 0.054, 0.0003}),
                1e-15);
    }

    /** The example of the article “Holm–Bonferroni method” of Wikipedia: the first and the last are claimed. */
    @Test
    void theExampleOfWikipediaIsDecidedAsThere() {
        double[] adjusted = Holm.adjusted(new double[] {0.01, 0.04, 0.03, 0.005});

        assertArrayEquals(new double[] {0.03, 0.06, 0.06, 0.02}, adjusted, 1e-15);
        int[] claimed = IntStream.range(0, 4).filter(i -> adjusted[i] <= 0.05).toArray();
        assertArrayEquals(new int[] {0, 3}, claimed);
    }

    /** Holm 1979 himself: from the smallest on, p is held against α/k, α/(k − 1), …, until one is too large. */
    @Test
    void adjustingDecidesAsTheStepsOfThePaperDo() {
        Random random = new Random(51);
        for (int n = 1; n < 40; n++) {
            double[] p = random.doubles(n).map(x -> x * x * x).toArray();
            double[] adjusted = Holm.adjusted(p);
            double[] rising = p.clone();
            Arrays.sort(rising);
            int claimed = 0;
            while (claimed < n && rising[claimed] <= 0.05 / (n - claimed)) {
                claimed++;
            }
            assertEquals(claimed, Arrays.stream(adjusted).filter(a -> a <= 0.05).count());
        }
    }

    @Test
    void equalPValuesStayEqualAndNoneIsMoreThanOne() {
        assertArrayEquals(new double[] {0.06, 0.06, 0.06}, Holm.adjusted(new double[] {0.02, 0.02, 0.02}), 1e-15);
        assertArrayEquals(new double[] {1, 1}, Holm.adjusted(new double[] {0.9, 0.7}), 0);
        assertArrayEquals(new double[] {0.03}, Holm.adjusted(new double[] {0.03}), 0);
        assertTrue(Holm.adjusted(new double[0]).length == 0);
    }
}
