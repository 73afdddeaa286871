package org.snugsheet.engine.clothing;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;

/**
 * The clothing that keeps an adult in thermal balance indefinitely.
 *
 * <p>Source: ISO 11079:2007, “insulation required” (IREQ) at the neutral level of strain: skin neither cold nor sweating more
 * than usual. Assumed: an adult, dry clothes, no work done on anything outside, windproof cloth (air permeability 8
 * l/(m²·s)), and a walking speed estimated from the activity. Bare hands, feet and faces are not included. A child has more
 * skin for each kilogram and loses heat faster.
 *
 * @param worn the resistance that clothes must have as worn, with wind and walking pumping air through them
 * @param outfit the resistance in still air, as counted by ISO 9920 and {@link Outfit}, of an outfit that has this resistance
 *     when worn
 */
public record RequiredClothing(ThermalResistance worn, ThermalResistance outfit) {

    /** Below half a clo the standard does not apply (scope of ISO 11079:2007, from memory). */
    private static final double LEAST = Unit.SQUARE_METER_KELVIN_PER_WATT.from(0.5, Unit.CLO);

    /** More than anybody can move in: about that of the thickest sleeping bags (common practice, no source). */
    private static final double MOST = Unit.SQUARE_METER_KELVIN_PER_WATT.from(10, Unit.CLO);

    /**
     * The most that an outfit to move in can have: a full winter outfit of {@link Garments} adds up to some 3.5 clo, the
     * warmest arctic clothing has a little over 4, and 5 clo is required in still air by the coldest case of ISO 11079:2007,
     * Table F.1 (common practice, no source for the limit itself).
     */
    private static final double WEARABLE = Unit.SQUARE_METER_KELVIN_PER_WATT.from(5, Unit.CLO);

    private static final double TOLERANCE = 1e-10;
    private static final int LIMIT = 200;

    /** Air permeability of windproof outer cloth, l/(m²·s). */
    private static final double PERMEABILITY = 8;

    /**
     * The clothing needed.
     *
     * @param cold the cold around
     * @param activity what the person does
     * @return the clothing
     * @throws InvalidInputException if less than half a clo would be enough, or more than can be worn
     */
    public static RequiredClothing of(Outdoors cold, Activity activity) {
        HeatBalance balance = new HeatBalance(cold, activity);
        if (balance.surplus(LEAST) >= 0) {
            throw InvalidInputException.of(Problem.CLOTHING_TOO_LITTLE);
        }
        if (balance.surplus(MOST) <= 0) {
            throw InvalidInputException.of(Problem.CLOTHING_TOO_MUCH);
        }
        double worn = new BrentSolver(TOLERANCE).solve(LIMIT, balance::surplus, LEAST, MOST);
        double inStillAir = inStillAir(worn, balance);
        if (inStillAir > MOST) {
            throw InvalidInputException.of(Problem.CLOTHING_TOO_MUCH);
        }
        return new RequiredClothing(new ThermalResistance(worn), new ThermalResistance(inStillAir));
    }

    /**
     * The outfit, if it can be worn.
     *
     * @return {@link #outfit()}
     * @throws InvalidInputException if it is above what clothing can give, 5 clo
     */
    public ThermalResistance wearableOutfit() {
        if (outfit.squareMeterKelvinsPerWatt() > WEARABLE) {
            throw InvalidInputException.of(Problem.CLOTHING_TOO_MUCH);
        }
        return outfit;
    }

    /**
     * The resistance in still air of an outfit that keeps a given resistance in wind and while walking (ISO 11079:2007, annex
     * C; from memory, compared as {@link HeatBalance} was).
     */
    private static double inStillAir(double worn, HeatBalance balance) {
        double surface = HeatBalance.surface(worn);
        double left = 0.54 * balance.stirring() * Math.pow(PERMEABILITY, 0.075) - 0.06 * Math.log(PERMEABILITY) + 0.5;
        return (worn + balance.airLayer() / surface) / left - 0.085 / surface;
    }
}
