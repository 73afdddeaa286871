package org.snugsheet.engine.comparison;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Estimates as chance makes them: normal about a truth, with a standard error that is itself only estimated.
 *
 * <p>The same seed gives the same estimates on every Java: {@link Random} is specified down to its Gaussians.
 */
final class Chance {

    private final Random random;

    Chance(long seed) {
        random = new Random(seed);
    }

    /**
     * What the readings of one jar might say.
     *
     * @param truth what the jar truly does
     * @param error the true standard error of such readings
     * @param degreesOfFreedom from how many the error is estimated, a whole number
     */
    Estimate jar(double truth, double error, int degreesOfFreedom) {
        double value = truth + error * random.nextGaussian();
        double chiSquare = 0;
        for (int i = 0; i < degreesOfFreedom; i++) {
            double z = random.nextGaussian();
            chiSquare += z * z;
        }
        return new Estimate(value, error * Math.sqrt(chiSquare / degreesOfFreedom), degreesOfFreedom);
    }

    /**
     * What jars of one material might say.
     *
     * @param truth what the material does on average
     * @param between the standard deviation between true jars
     * @param errors the standard errors of the readings, taken in turn
     */
    List<Estimate> jars(int count, double truth, double between, double[] errors, int degreesOfFreedom) {
        return IntStream.range(0, count)
                .mapToObj(
                        i -> jar(truth + between * random.nextGaussian(), errors[i % errors.length], degreesOfFreedom))
                .toList();
    }
}
