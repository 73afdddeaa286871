package org.snugsheet.engine.clothing;

import org.snugsheet.engine.quantity.Temperature;

/**
 * The steady heat balance of a body, in W per square meter of skin.
 *
 * <p>Source: ISO 11079:2007, clauses 5 and 6 and annexes A and B, for the neutral level of strain (skin 35.7 − 0.0285·M °C,
 * wetted to 0.001·M), from memory, its constants compared with the public R package comf, calcIREQ. Where copies of the
 * standard’s program and its text differ, the sister standard ISO 7933:2004 decides (its program as in the public library
 * pythermalcomfort, models/phs.py): the clothed surface is 1 + 0.3 times the skin for each clo, its emissivity 0.97, 0.77 of
 * a standing body radiate, and vapor meets I + Ia/fcl, at a permeability index of 0.38. So all eight cases that ISO 11079,
 * Table F.1, prints come out to the printed digit; a surface of 1 + 1.197·I, as in copies of the program, gives five.
 */
final class HeatBalance {

    /** Stefan and Boltzmann’s constant, W/(m²·K⁴) (CODATA). */
    private static final double STEFAN_BOLTZMANN = 5.67e-8;

    /** Emissivity of clothes, and the share of a standing body that faces the surroundings and not itself. */
    private static final double RADIATING = 0.97 * 0.77;

    /** What one clo adds to the surface, for insulation in m²·K/W. */
    private static final double WIDER = 0.3 / 0.155;

    /** Lewis relation over the permeability index, kPa/K: 0.06/0.38. */
    private static final double VAPOR = 0.06 / 0.38;

    private static final double KELVIN = -Temperature.ABSOLUTE_ZERO;

    private final Outdoors cold;
    private final double heat;
    private final double skin;
    private final double wetness;

    HeatBalance(Outdoors cold, Activity activity) {
        this.cold = cold;
        this.heat = activity.wattsPerSquareMeter();
        this.skin = 35.7 - 0.0285 * heat;
        this.wetness = 0.001 * heat;
    }

    /** The walking speed in m/s, estimated from the activity, between 0.3 and 1.2. */
    double walking() {
        return Math.min(Math.max(0.0052 * (heat - 58), 0.3), 1.2);
    }

    /** The share of their insulation that air layers and clothes keep in wind and while walking. */
    double stirring() {
        return Math.exp(-0.15 * cold.wind().metersPerSecond() - 0.22 * walking());
    }

    /** Resistance of the layer of air around a body, m²·K/W. */
    double airLayer() {
        return 0.092 * stirring() - 0.0045;
    }

    /** How many times larger the clothed surface is than the skin. */
    static double surface(double insulation) {
        return 1 + WIDER * insulation;
    }

    /** Heat production less heat loss with clothes of that resistance, m²·K/W: if negative, the person cools. */
    double surplus(double insulation) {
        double through = heat - breath() - sweat(insulation);
        double clothes = skin - insulation * through;
        double radiation = radiation(clothes);
        double convection = convection(clothes);
        return through - surface(insulation) * (radiation + convection);
    }

    /** Heat and vapor lost with the breath, which leaves at 29 + 0.2·ta °C. */
    private double breath() {
        double air = cold.air().celsius();
        double breath = 29 + 0.2 * air;
        return 0.0173 * heat * (saturated(breath) - vaporAround()) + 0.0014 * heat * (breath - air);
    }

    private double sweat(double insulation) {
        double resistance = VAPOR * (insulation + airLayer() / surface(insulation));
        return wetness * (saturated(skin) - vaporAround()) / resistance;
    }

    private double radiation(double clothes) {
        return STEFAN_BOLTZMANN
                * RADIATING
                * (Math.pow(clothes + KELVIN, 4) - Math.pow(cold.radiant().celsius() + KELVIN, 4));
    }

    /** The layer of air is measured with radiation and convection together; what radiation does not carry, convection does. */
    private double convection(double clothes) {
        double coefficient = 1 / airLayer() - radiationCoefficient(clothes);
        return coefficient * (clothes - cold.air().celsius());
    }

    private double radiationCoefficient(double clothes) {
        double one = clothes + KELVIN;
        double other = cold.radiant().celsius() + KELVIN;
        // (a⁴ − b⁴)/(a − b) without the division, which fails where the two are equal.
        return STEFAN_BOLTZMANN * RADIATING * (one * one + other * other) * (one + other);
    }

    private double vaporAround() {
        return cold.humidity() * saturated(cold.air().celsius());
    }

    /** Saturation pressure of vapor in kPa (Antoine’s equation as ISO 7730 and ISO 11079 give it). */
    private static double saturated(double celsius) {
        return 0.1333 * Math.exp(18.6686 - 4030.183 / (celsius + 235));
    }
}
