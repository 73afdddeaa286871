package org.snugsheet.engine.jar;

import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * What a jar loses in the steady state.
 *
 * <p>Each path has a conductance, {@code Gᵢ = Aᵢ/Rᵢ}, and leads to a temperature of its own: in a tub, side and base lead to the
 * tub and the lid to the room. Kirchhoff’s laws of conductances side by side then give a jar of one temperature T and heat
 * capacity C
 *
 * <pre>C·dT/dt = −Σ Gᵢ·(T − Tᵢ) = −G·(T − Tₑ),  G = Σ Gᵢ,  Tₑ = Σ Gᵢ·Tᵢ/G</pre>
 *
 * so that it still follows Newton’s law, with the rate {@code G/C}, toward {@link #end()} and not toward the tub (Incropera and
 * DeWitt, Fundamentals of Heat and Mass Transfer, section 5.3, the lumped capacitance with several terms; for Tₑ: J. Millman, Proc.
 * IRE 28 (1940), 413, the theorem on sources side by side, from memory).
 * Where all paths lead to one temperature, Tₑ is that.
 *
 * @param jar the water
 * @param side the way out through the side
 * @param lid the way out through the lid
 * @param base the way out through the base
 */
public record HeatFlow(Jar jar, HeatPath side, HeatPath lid, HeatPath base) {

    /**
     * The heat that goes out each second.
     *
     * @return W, less than zero if it comes in
     */
    public double watts() {
        return side.flux() * jar.sideArea() + (lid.flux() + base.flux()) * jar.endArea();
    }

    /**
     * The conductance of the jar as a whole, paths side by side: {@code Σ Aᵢ/Rᵢ} (ISO 6946:2017, 6.7.2).
     *
     * @return W/K
     */
    public double conductance() {
        return ofSide() + ofEnds();
    }

    /**
     * The conductance of lid and base, which a wrap round the side leaves alone.
     *
     * @return W/K
     */
    public double ofEnds() {
        return ofLid() + ofBase();
    }

    /**
     * The resistance of the jar as a whole, {@code A/R = Σ Aᵢ/Rᵢ} (ISO 6946:2017, 6.7.2).
     *
     * @return for each square metre of water’s surface: side, lid and base together
     */
    public ThermalResistance resistance() {
        return new ThermalResistance(jar.area() / conductance());
    }

    /**
     * The temperature at which the jar would end if everything round it stayed as warm as it is, {@code Tₑ = Σ Gᵢ·Tᵢ/G}.
     *
     * @return that of the place where all paths lead to it; in a tub one between the tub’s and the room’s
     */
    public Temperature end() {
        // From the place on, so that no digit is lost where all paths lead there.
        Temperature place = outside(side);
        double above = ofLid() * outside(lid).minus(place).kelvins()
                + ofBase() * outside(base).minus(place).kelvins();
        return place.plus(new TemperatureDifference(above / conductance()));
    }

    /** What share of the conductance leads to the place, and not to a room above it. */
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
        return path.resistance().squareMetreKelvinsPerWatt();
    }
}
