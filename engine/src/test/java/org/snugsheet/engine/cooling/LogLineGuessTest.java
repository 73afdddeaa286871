package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class LogLineGuessTest {

    private static final double[] TIMES = {0, 3, 7, 12, 20, 33};

    @Test
    void exactReadingsGiveExactParameters() {
        LogLineGuess guess = LogLineGuess.of(TIMES, decay(31.5, 0.042));

        assertEquals(31.5, guess.amplitude(), 1e-12);
        assertEquals(0.042, guess.rate(), 1e-14);
    }

    @Test
    void aColdJarIsGuessedAsWell() {
        LogLineGuess guess = LogLineGuess.of(TIMES, decay(-18, 0.01));

        assertEquals(-18, guess.amplitude(), 1e-12);
        assertEquals(0.01, guess.rate(), 1e-14);
    }

    @Test
    void aReadingOnTheOtherSideHasNoSay() {
        double[] differences = decay(20, 0.1);
        differences[5] = -0.4;

        assertEquals(0.1, LogLineGuess.of(TIMES, differences).rate(), 1e-12);
    }

    @Test
    void steadyReadingsHaveNoRate() {
        double[] differences = new double[TIMES.length];
        Arrays.fill(differences, 25);

        assertEquals(0, LogLineGuess.of(TIMES, differences).rate(), 1e-15);
    }

    @Test
    void oneReadingAloneHasNoRate() {
        assertEquals(0, LogLineGuess.of(new double[] {4}, new double[] {25}).rate());
    }

    private static double[] decay(double amplitude, double rate) {
        return Arrays.stream(TIMES).map(t -> amplitude * Math.exp(-rate * t)).toArray();
    }
}
