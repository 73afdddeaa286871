package org.snugsheet.engine.cooling;

import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Graduation;

/**
 * Cooling in still air that is stirred only by the warmth of the vessel: heat is lost in proportion to the difference to the
 * power 1.25. From {@code dθ/dt = −k·θ·(θ/A)^¼} follows {@code θ(t) = A·(1 + k·t/4)^(−4)}, with k the cooling constant at the
 * first reading.
 *
 * <p>Source: the laminar free-convection correlations of the form {@code Nu ∝ Ra^¼}, so {@code h ∝ θ^¼} (Incropera and
 * DeWitt, section 9.6); the power 5/4 goes back to Dulong and Petit, and to L. Lorenz, Ann. Phys. 249, 582–606 (1881).
 *
 * @param surroundings Tₛ
 */
record FreeConvection(Temperature surroundings) implements OneRateModel {

    @Override
    public CoolingLaw law() {
        return CoolingLaw.FREE_CONVECTION;
    }

    @Override
    public double around(double time) {
        return surroundings.celsius();
    }

    @Override
    public double surroundingsUncertainty(Graduation mark) {
        return mark.standardUncertainty();
    }

    @Override
    public At at(double origin, double seconds, double rate) {
        double base = 1 + rate * seconds / 4;
        if (!(base > 0)) {
            return new At(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        }
        double squared = base * base;
        double shape = 1 / (squared * squared);
        return new At(shape, -seconds * shape / base, surroundings.celsius(), 0);
    }
}
