package org.snugsheet.engine.comparison;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/** Checks of arguments in this package. */
final class Require {

    private Require() {}

    static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw InvalidInputException.of(Problem.NOT_A_NUMBER, String.valueOf(value));
        }
        return value;
    }

    static double confidence(double confidence) {
        if (!(confidence > 0 && confidence < 1)) {
            throw InvalidInputException.of(Problem.NOT_A_CONFIDENCE, String.valueOf(confidence));
        }
        return confidence;
    }
}
