package org.snugsheet.engine.insulation;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.ThermalResistance;

/** The thickness that a layer needs, and the critical radius. */
public final class Thickness {

    /** Nobody wraps a jar thicker than this. */
    private static final double MOST_METERS = 10;

    private Thickness() {}

    /**
     * The thickness of a flat layer for a resistance, {@code d = R·λ} (ISO 6946:2017, 6.7.1.1).
     *
     * @param target the resistance wanted
     * @param conductivity that of the material
     * @return the thickness
     * @throws InvalidInputException if no resistance is wanted
     */
    public static Length flat(ThermalResistance target, Conductivity conductivity) {
        return bounded(target.squareMeterKelvinsPerWatt() * conductivity.wattsPerMeterKelvin());
    }

    /**
     * The thickness of a layer around a cylinder for a resistance referred to the inner surface,
     * {@code d = r·(e^(R·λ/r) − 1)}: {@link RoundWrap} solved for its thickness.
     *
     * @param target the resistance wanted
     * @param conductivity that of the material
     * @param radius of the surface it is wrapped around
     * @return the thickness
     * @throws InvalidInputException if no resistance is wanted, or the layer would be thicker than 10 m
     */
    public static Length round(ThermalResistance target, Conductivity conductivity, Length radius) {
        double exponent = target.squareMeterKelvinsPerWatt() * conductivity.wattsPerMeterKelvin() / radius.meters();
        return bounded(radius.meters() * Math.expm1(exponent));
    }

    /**
     * The critical radius: a cylinder thinner than this loses more heat when it is wrapped, up to this radius, because the
     * surface grows faster than the resistance: {@code r = λ/h} (Incropera and DeWitt, Fundamentals of Heat and Mass
     * Transfer, Example 3.5; Holman, Heat Transfer, section 2-6).
     *
     * @param conductivity that of the wrap
     * @param surfaceCoefficient of the outside surface, W/(m²·K)
     * @return the radius of the outside at which the loss is greatest
     * @throws InvalidInputException if the coefficient is not positive
     */
    public static Length criticalRadius(Conductivity conductivity, double surfaceCoefficient) {
        if (!(surfaceCoefficient > 0)) {
            throw InvalidInputException.of(Problem.NOT_POSITIVE, QuantityName.SURFACE_COEFFICIENT, surfaceCoefficient);
        }
        return new Length(conductivity.wattsPerMeterKelvin() / surfaceCoefficient);
    }

    private static Length bounded(double meters) {
        if (!(meters <= MOST_METERS)) {
            throw InvalidInputException.of(Problem.ROUND_TARGET_TOO_HIGH, MOST_METERS);
        }
        return new Length(meters);
    }
}
