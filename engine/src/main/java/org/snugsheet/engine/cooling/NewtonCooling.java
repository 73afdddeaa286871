package org.snugsheet.engine.cooling;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;

/**
 * Newton’s law of cooling in constant surroundings: {@code T(t) = Tₛ + (T₀ − Tₛ)·e^(−k·t)}.
 *
 * <p>It assumes one temperature throughout the vessel (stir it), and heat lost in proportion to the difference. Source:
 * Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, section 5.1, the lumped capacitance method; the law goes
 * back to I. Newton, Scala graduum caloris, Phil. Trans. 22, 824–829 (1701).
 *
 * @param start the temperature T₀ at time zero
 * @param surroundings the temperature Tₛ of the surroundings
 * @param constant the cooling constant k
 */
public record NewtonCooling(Temperature start, Temperature surroundings, CoolingConstant constant) {

    /**
     * The temperature after a given time.
     *
     * @param seconds time since the start; before the start if negative
     * @return the temperature then
     * @throws InvalidInputException if it would be below absolute zero or too large for a number, or the constant is negative
     */
    public Temperature after(double seconds) {
        if (constant.perSecond() < 0) {
            throw InvalidInputException.of(Problem.RATE_NOT_POSITIVE);
        }
        // expm1 keeps the drop exact to the last digit where it is small compared with the temperature.
        double lost = start.minus(surroundings).kelvins() * Math.expm1(-constant.perSecond() * seconds);
        return start.plus(new TemperatureDifference(lost));
    }

    /**
     * The time at which a temperature is reached, {@code t = ln((T₀ − Tₛ)/(T − Tₛ)) / k}.
     *
     * @param target the temperature T
     * @return seconds from the start; zero if the target is the start
     * @throws InvalidInputException if the target does not lie between the start and the surroundings, or nothing cools
     */
    public double timeTo(Temperature target) {
        double whole = start.minus(surroundings).kelvins();
        double left = target.minus(surroundings).kelvins();
        double ratio = whole / left;
        if (whole == 0 || !(ratio >= 1) || Double.isInfinite(ratio)) {
            throw InvalidInputException.of(Problem.NEVER_REACHED);
        }
        if (!(constant.perSecond() > 0)) {
            throw InvalidInputException.of(Problem.RATE_NOT_POSITIVE);
        }
        return Math.log(ratio) / constant.perSecond();
    }
}
