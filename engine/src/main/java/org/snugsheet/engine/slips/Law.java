package org.snugsheet.engine.slips;

/**
 * The laws a clean column may follow: {@code T = g(t; k) + A·φ(t; k) + B·ψ(t; k)}. There are several, so that a jar is not
 * reported merely because it does not follow the simplest law.
 *
 * <p>Sources: as given by {@code ConstantSurroundings}, {@code ChangingSurroundings}, {@code FreeConvection}, {@code FittedSurroundings} and
 * {@code TwoStage} in {@code org.snugsheet.engine.cooling}.
 */
enum Law {
    /** Newton’s law in the given surroundings. */
    NEWTON(1),
    /** The same in surroundings that are off by a constant B, as with two thermometers, or that nobody read. */
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

    /** How many times faster the second stage is; zero for a law with one stage. */
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
     * Offset and shapes at all times of a sample. Readings that are stuck have a constant level of their own.
     *
     * @param rate k per minute, above zero
     */
    LawValues at(Sample sample, double rate) {
        LawValues values = LawValues.zeros(sample.size());
        fillOffset(sample, rate, values);
        for (int i = 0; i < sample.size(); i++) {
            double t = sample.minutes[i];
            if (sample.stuck[i]) {
                values.offset()[i] = 0;
                values.offsetSlope()[i] = 0;
                values.first()[i] = 1;
                continue;
            }
            if (this == STILL_AIR) {
                double base = 1 + rate * t / 4;
                values.first()[i] = 1 / (base * base * base * base);
            } else {
                values.first()[i] = Math.exp(-rate * t);
            }
            if (this == LEVEL) {
                values.second()[i] = 1;
            } else if (hasTwoStages()) {
                values.second()[i] = Math.exp(-faster * rate * t);
            }
        }
        return values;
    }

    /** ∂φ/∂k at a reading. */
    double firstSlope(Sample sample, double rate, LawValues values, int i) {
        if (sample.stuck[i]) {
            return 0;
        }
        double t = sample.minutes[i];
        double slope = -t * values.first()[i];
        return this == STILL_AIR ? slope / (1 + rate * t / 4) : slope;
    }

    /** ∂ψ/∂k at a reading. */
    double secondSlope(Sample sample, LawValues values, int i) {
        return sample.stuck[i] ? 0 : -faster * sample.minutes[i] * values.second()[i];
    }

    // Exact where the surroundings run straight from reading to reading, as ChangingSurroundings says.
    private static void fillOffset(Sample sample, double rate, LawValues values) {
        double g = sample.around[0];
        double gSlope = 0;
        values.offset()[0] = g;
        for (int i = 1; i < sample.size(); i++) {
            if (!sample.steady) {
                double step = sample.minutes[i] - sample.minutes[i - 1];
                double left = Math.exp(-rate * step);
                double lost = Math.expm1(-rate * step);
                double slope = (sample.around[i] - sample.around[i - 1]) / step;
                double before = g - sample.around[i - 1];
                gSlope = (gSlope - step * before) * left - slope * (step * left + lost / rate) / rate;
                g = sample.around[i] + before * left + slope * lost / rate;
            }
            values.offset()[i] = g;
            values.offsetSlope()[i] = gSlope;
        }
    }
}
