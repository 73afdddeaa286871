package org.snugsheet.engine.quantity;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;

/** Checks of the values of this package. */
final class Require {

    private Require() {}

    static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw InvalidInputException.of(Problem.NOT_A_NUMBER, String.valueOf(value));
        }
        return value;
    }

    static double positive(double value, QuantityName what) {
        if (!(finite(value) > 0)) {
            throw InvalidInputException.of(Problem.NOT_POSITIVE, what, value);
        }
        return value;
    }

    static double notNegative(double value, QuantityName what) {
        if (finite(value) < 0) {
            throw InvalidInputException.of(Problem.NEGATIVE, what, value);
        }
        return value;
    }
}
