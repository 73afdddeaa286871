package org.snugsheet.engine.slips;

/**
 * The laws a clean column may follow: {@code T = g(t; k) + A·φ(t; k) + B·ψ(t; k)}. There are several, so that no jar is accused
 * of a slip for not being the simplest of jars.
 *
 * <p>Sources: as {@link org.snugsheet.engine.cooling.ConstantSurroundings}, {@link
 * org.snugsheet.engine.cooling.ChangingSurroundings}, {@link org.snugsheet.engine.cooling.FreeConvection}, {@link
 * org.snugsheet.engine.cooling.FittedSurroundings} and {@link org.snugsheet.engine.cooling.TwoStage} name them.
 */
enum Law {
    /** Newton’s law in the surroundings as given. */
    NEWTON(1),
    /** The same in surroundings that are off by a level B, as two thermometers are, or that nobody read. */
    LEVEL(2),
    /** Free convection in still air, the power 5/4. */
    STILL_AIR(1),
    /** Two stages: a second decay, three times as fast. */
    TWO_STAGES_NEAR(2, 3),
    /** Two stages, the second six times as fast. */
    TWO_STAGES(2, 6),
    /** Two stages, the second twelve times as fast. */
    TWO_STAGES_FAR(2, 12);

    private final int shapes;
    private final double faster;

    Law(int shapes) {
        this(shapes, 0);
    }

    Law(int shapes, double faster) {
        this.shapes = shapes;
        this.faster = faster;
    }

    int shapes() {
        return shapes;
    }

    /** How many times faster the second stage is; zero if there is none. */
    double faster() {
        return faster;
    }

    boolean hasTwoStages() {
        return faster > 0;
    }

    boolean fits(Sample sample) {
        return switch (this) {
            case NEWTON -> sample.known;
            case LEVEL -> true;
            case STILL_AIR -> sample.known && sample.steady;
            case TWO_STAGES_NEAR, TWO_STAGES, TWO_STAGES_FAR -> sample.known && sample.size() > 6;
        };
    }

    /**
     * Fills in offset and shapes at all times of a sample; where readings are stuck, a level of their own.
     *
     * @param rate k per minute
     * @param offset to be filled: g
     * @param first to be filled: φ
     * @param second to be filled if the law has it: ψ
     */
    void evaluate(Sample sample, double rate, double[] offset, double[] first, double[] second) {
        double g = sample.around[0];
        for (int i = 0; i < sample.size(); i++) {
            double t = sample.minutes[i];
            if (i > 0 && !sample.steady) {
                g = carried(sample, i, rate, g);
            }
            offset[i] = g;
            if (sample.stuck[i]) {
                offset[i] = 0;
                first[i] = 1;
                second[i] = 0;
                continue;
            }
            if (this == STILL_AIR) {
                double base = 1 + rate * t / 4;
                first[i] = 1 / (base * base * base * base);
            } else {
                first[i] = Math.exp(-rate * t);
            }
            if (this == LEVEL) {
                second[i] = 1;
            } else if (faster > 0) {
                second[i] = Math.exp(-faster * rate * t);
            }
        }
    }

    // Exact where the surroundings run straight from reading to reading, as ChangingSurroundings says.
    private static double carried(Sample sample, int i, double rate, double before) {
        double step = sample.minutes[i] - sample.minutes[i - 1];
        double left = Math.exp(-rate * step);
        double slope = (sample.around[i] - sample.around[i - 1]) / step;
        return sample.around[i] + (before - sample.around[i - 1]) * left + slope * Math.expm1(-rate * step) / rate;
    }
}
