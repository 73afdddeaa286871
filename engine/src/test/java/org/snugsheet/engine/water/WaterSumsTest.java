package org.snugsheet.engine.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.quantity.Temperature;

/** The sums give what {@link Water} says, which {@code WaterTest} checks against tables of IAPWS and NIST. */
class WaterSumsTest {

    private static final WaterSums SUMS = WaterSums.ofLiquidWater();
    private static final Temperature COLD = new Temperature(4);
    private static final Temperature HOT = new Temperature(60);

    @ParameterizedTest
    @ValueSource(doubles = {0, 10, 25, 40, 70, 100})
    void volumeAndHeatAreThoseOfWater(double celsius) {
        Temperature water = new Temperature(celsius);
        assertEquals(Water.density(COLD) / Water.density(water), volume(water) / volume(COLD), 1e-14);
        assertEquals(
                Water.heatGivenOff(water, COLD) / Water.heatGivenOff(HOT, COLD),
                (heat(water) - heat(COLD)) / (heat(HOT) - heat(COLD)),
                1e-12);
    }

    private static double volume(Temperature water) {
        double sum = SUMS.volume();
        for (WaterSums.Row row : SUMS.rows()) {
            sum += row.volumeAlpha() * Math.pow(alpha(water), row.power());
            sum += row.volumeBeta() * Math.pow(beta(water), row.power());
        }
        return sum;
    }

    private static double heat(Temperature water) {
        double tau = kelvins(water) / 10;
        double sum = SUMS.heat() - SUMS.heatSlope() * tau;
        for (WaterSums.Row row : SUMS.rows()) {
            int n = row.power();
            sum += row.heatAlpha() * Math.pow(alpha(water), n) * (1 - n * alpha(water) * tau);
            sum += row.heatBeta() * Math.pow(beta(water), n) * (1 + n * beta(water) * tau);
        }
        return sum;
    }

    private static double alpha(Temperature water) {
        return 10 / (593 - kelvins(water));
    }

    private static double beta(Temperature water) {
        return 10 / (kelvins(water) - 232);
    }

    private static double kelvins(Temperature water) {
        return water.celsius() + 273.15;
    }
}
