package org.snugsheet.engine.quantity;

import org.snugsheet.engine.QuantityName;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;

/** The checks at the door of the value types. */
final class Require {

    private Require() {}

    static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw Refusal.of(Trouble.NOT_A_NUMBER, String.valueOf(value));
        }
        return value;
    }

    static double positive(double value, QuantityName what) {
        if (!(finite(value) > 0)) {
            throw Refusal.of(Trouble.NOT_POSITIVE, what, value);
        }
        return value;
    }

    static double notNegative(double value, QuantityName what) {
        if (finite(value) < 0) {
            throw Refusal.of(Trouble.NEGATIVE, what, value);
        }
        return value;
    }
}
