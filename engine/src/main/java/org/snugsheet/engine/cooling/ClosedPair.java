package org.snugsheet.engine.cooling;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Graduation;

/**
 * A vessel in a bath that keeps the heat it receives, so that both reach a common temperature. With heat capacities C of the
 * vessel and C′ of the bath, {@code r = C/C′}, and the initial difference A,
 * {@code T(t) = T′₀ + A·(r + e^(−(1 + r)·k·t))/(1 + r)}: the difference decays at the rate {@code (1 + r)·k} while
 * {@code C·T + C′·T′} stays the same. k is the vessel’s own cooling constant, {@code UA/C}, the same as in a bath that is too
 * large to warm.
 *
 * <p>It assumes that nothing is lost to the room and that both are stirred. Source: the energy balance of two lumped bodies;
 * Incropera and DeWitt, section 5.1, for each of them.
 *
 * @param bath the temperature T′₀ of the bath at the first reading
 * @param capacityRatio r, more than zero
 */
public record ClosedPair(Temperature bath, double capacityRatio) implements OneRateModel {

    /**
     * A closed pair.
     *
     * @throws InvalidInputException if the ratio is not more than zero
     */
    public ClosedPair {
        if (!(capacityRatio > 0) || Double.isInfinite(capacityRatio)) {
            throw InvalidInputException.of(Problem.NOT_POSITIVE, QuantityName.AMOUNT_OF_WATER, capacityRatio);
        }
    }

    @Override
    public CoolingLaw law() {
        return CoolingLaw.CLOSED_PAIR;
    }

    @Override
    public double around(double time) {
        return bath.celsius();
    }

    @Override
    public double surroundingsUncertainty(Graduation mark) {
        return mark.standardUncertainty();
    }

    @Override
    public At at(double origin, double seconds, double rate) {
        double whole = 1 + capacityRatio;
        double left = Math.exp(-whole * rate * seconds);
        return new At((capacityRatio + left) / whole, -seconds * left, bath.celsius(), 0);
    }
}
