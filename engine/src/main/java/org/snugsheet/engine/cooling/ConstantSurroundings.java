package org.snugsheet.engine.cooling;

import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Graduation;

/**
 * {@linkplain NewtonCooling Newton’s law} in constant, known surroundings: {@code T(t) = Tₛ + A·e^(−k·t)}. Source: Incropera
 * and DeWitt, Fundamentals of Heat and Mass Transfer, section 5.1.
 *
 * @param surroundings Tₛ
 * @param isExact whether Tₛ is known exactly, without a thermometer
 */
public record ConstantSurroundings(Temperature surroundings, boolean isExact) implements OneRateModel {

    @Override
    public CoolingLaw law() {
        return CoolingLaw.SURROUNDINGS_GIVEN;
    }

    @Override
    public double around(double time) {
        return surroundings.celsius();
    }

    @Override
    public double surroundingsUncertainty(Graduation mark) {
        return isExact ? 0 : mark.standardUncertainty();
    }

    @Override
    public At at(double origin, double seconds, double rate) {
        return At.exponential(seconds, rate, surroundings.celsius());
    }
}
