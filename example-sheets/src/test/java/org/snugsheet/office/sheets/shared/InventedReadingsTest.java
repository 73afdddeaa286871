package org.snugsheet.office.sheets.shared;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.quantity.Temperature;

/** Invented readings: near the law of cooling, on the marks of the thermometer, and the same every time. */
class InventedReadingsTest {
    private static final List<Integer> MINUTES = List.of(0, 10, 20, 40, 80, 160, 320, 640);
    private static final InventedReadings READINGS =
            new InventedReadings(new Temperature(2), new Temperature(40), 0.5, 1);

    @Test
    void theyFollowTheLawOfCooling() {
        double[] celsius = READINGS.of(ExampleJar.wrapped("sock", 5.35, "wool"), MINUTES);
        for (int i = 0; i < celsius.length; i++) {
            // 0.1 m²·K/W of air film and 5.35 mm of wool at 0.0535 W/(m·K) are 0.2 m²·K/W; times 730 J/K, over 0.018 m²
            // and 60 s/min, that is a time constant of 135.2 min.
            double law = 2 + 38 * Math.exp(-MINUTES.get(i) / 135.185);
            assertEquals(law, celsius[i], 0.25 + 4 * 0.3, "half a mark and four times the error of the thermometer");
        }
    }

    @Test
    void theyAreOnTheMarks() {
        for (double celsius : READINGS.of(ExampleJar.bare("bare"), MINUTES)) {
            assertEquals(0, celsius % 0.5);
        }
    }

    @Test
    void theyAreTheSameEveryTimeButNotForEveryJar() {
        double[] first = READINGS.of(ExampleJar.bare("one"), MINUTES);
        assertArrayEquals(first, READINGS.of(ExampleJar.bare("one"), MINUTES));
        double[] other = READINGS.of(ExampleJar.bare("two"), MINUTES);
        boolean differs = false;
        for (int i = 0; i < first.length; i++) {
            differs |= first[i] != other[i];
        }
        assertTrue(differs);
    }

    @Test
    void theBetterWrapIsWarmerInTheEnd() {
        double[] thin = READINGS.of(ExampleJar.wrapped("thin", 2, "fleece"), MINUTES);
        double[] thick = READINGS.of(ExampleJar.wrapped("thick", 20, "fleece"), MINUTES);
        assertTrue(thick[5] > thin[5] + 2);
    }
}
