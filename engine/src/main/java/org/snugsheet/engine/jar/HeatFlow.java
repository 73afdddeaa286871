package org.snugsheet.engine.jar;

import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * The heat flow of a jar in the steady state.
 *
 * <p>Each path has a conductance, {@code Gᵢ = Aᵢ/Rᵢ}, and leads to its own ambient temperature: in a tub, side and base lead
 * to the tub and the lid to the room. Kirchhoff’s laws for parallel conductances then give for a jar of one temperature T and
 * heat capacity C
 *
 * <pre>C·dT/dt = −Σ Gᵢ·(T − Tᵢ) = −G·(T − Tₑ),  G = Σ Gᵢ,  Tₑ = Σ Gᵢ·Tᵢ/G</pre>
 *
 * so that it still follows Newton’s law, with the rate {@code G/C}, toward {@link #end()} instead of the tub (Incropera and
 * DeWitt, Fundamentals of Heat and Mass Transfer, section 5.3, the lumped capacitance with several terms; for Tₑ: J. Millman,
 * Proc. IRE 28 (1940), 413, the theorem on parallel sources, from memory). If all paths lead to one temperature, Tₑ is that
 * temperature.
 *
 * @param jar the water
 * @param side the path through the side
 * @param lid the path through the lid
 * @param base the path through the base
 */
public record HeatFlow(Jar jar, HeatPath side, HeatPath lid, HeatPath base) {

    /**
     * The heat lost per second.
     *
     * @return W, negative if heat comes in
     */
    public double watts() {
        return side.flux() * jar.sideArea() + (lid.flux() + base.flux()) * jar.endArea();
    }

    /**
     * The conductance of the whole jar, with parallel paths: {@code Σ Aᵢ/Rᵢ} (ISO 6946:2017, 6.7.2).
     *
     * @return W/K
     */
    public double conductance() {
        return ofSide() + ofEnds();
    }

    /**
     * The conductance of lid and base, which a wrap around the side does not change.
     *
     * @return W/K
     */
    public double ofEnds() {
        return ofLid() + ofBase();
    }

    /**
     * The resistance of the whole jar, {@code A/R = Σ Aᵢ/Rᵢ} (ISO 6946:2017, 6.7.2).
     *
     * @return for each square meter of water’s surface: side, lid and base together
     */
    public ThermalResistance resistance() {
        return new ThermalResistance(jar.area() / conductance());
    }

    /**
     * The temperature that the jar would finally reach in constant surroundings, {@code Tₑ = Σ Gᵢ·Tᵢ/G}.
     *
     * @return that of the place if all paths lead there; in a tub a temperature between those of the tub and the room
     */
    public Temperature end() {
        // Relative to the place, so that no digits are lost where all paths lead there.
        Temperature place = outside(side);
        double above = ofLid() * outside(lid).minus(place).kelvins()
                + ofBase() * outside(base).minus(place).kelvins();
        return place.plus(new TemperatureDifference(above / conductance()));
    }

    /** The share of the conductance that leads to the place rather than to the room above it. */
    double shareToThePlace() {
        return outside(lid).equals(outside(side)) ? 1 : 1 - ofLid() / conductance();
    }

    private double ofSide() {
        return jar.sideArea() / of(side);
    }

    private double ofLid() {
        return jar.endArea() / of(lid);
    }

    private double ofBase() {
        return jar.endArea() / of(base);
    }

    private static Temperature outside(HeatPath path) {
        return path.faces().get(path.faces().size() - 1);
    }

    private static double of(HeatPath path) {
        return path.resistance().squareMeterKelvinsPerWatt();
    }
}
