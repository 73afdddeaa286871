package org.snugsheet.engine.lesson;

import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.quantity.Temperature;

/**
 * A jar in surroundings that stay as they are: air, or a tub that ice holds at 0 °C.
 *
 * @param law how it cools
 */
public record Steady(NewtonCooling law) implements Forecast {

    @Override
    public Temperature start() {
        return law.start();
    }

    @Override
    public CoolingConstant constant() {
        return law.constant();
    }

    @Override
    public Steady with(CoolingConstant constant) {
        return new Steady(new NewtonCooling(law.start(), law.surroundings(), constant));
    }

    @Override
    public Temperature after(double seconds) {
        return law.after(seconds);
    }

    @Override
    public Temperature surroundingsAfter(double seconds) {
        return law.surroundings();
    }

    @Override
    public double slope(double seconds) {
        double whole = law.start().minus(law.surroundings()).kelvins();
        return -whole * seconds * Math.exp(-law.constant().perSecond() * seconds);
    }
}
