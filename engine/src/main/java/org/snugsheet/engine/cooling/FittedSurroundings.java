package org.snugsheet.engine.cooling;

import org.snugsheet.engine.reading.Graduation;

/**
 * {@linkplain NewtonCooling Newton’s law} in constant surroundings that were not measured: the level Tₛ of
 * {@code T(t) = Tₛ + A·e^(−k·t)} is estimated from the readings too. Readings that end long before the jar has settled say
 * little about it.
 */
public record FittedSurroundings() implements OneRateModel {

    @Override
    public CoolingLaw law() {
        return CoolingLaw.SURROUNDINGS_FITTED;
    }

    @Override
    public boolean fitsSurroundings() {
        return true;
    }

    @Override
    public double surroundingsUncertainty(Graduation mark) {
        return 0;
    }

    @Override
    public double around(double time) {
        return 0;
    }

    @Override
    public At at(double origin, double seconds, double rate) {
        return At.exponential(seconds, rate, 0);
    }
}
