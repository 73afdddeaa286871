package org.snugsheet.engine.lesson;

import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.quantity.Temperature;

/**
 * A jar in a tub that warms: {@code T′ = −k·(T − T₂(t))} with the tub of {@link Bath}, a sum of two exponentials. So the jar is one
 * of three, {@code T(t) = Tᵣ + (T₀ − Tᵣ)·e^(−k·t) + k·Σ cᵢ·(e^(−sᵢ·t) − e^(−k·t))/(k − sᵢ)}, by variation of constants (Boyce and
 * DiPrima, Elementary Differential Equations, section 2.1, from memory).
 *
 * <p>The tub is warmed by jars as its bath counts them; this one may be wrapped otherwise, and its own heat is then taken to be theirs.
 *
 * @param bath the tub, and the jars that warm it
 * @param constant this jar’s cooling constant
 */
public record Warming(Bath bath, CoolingConstant constant) implements Forecast {

    /** Small beside the constant, and large beside the last digits of a temperature. */
    private static final double STEP = 1e-4;

    @Override
    public Temperature start() {
        return bath.jar().temperature();
    }

    @Override
    public Warming with(CoolingConstant constant) {
        return new Warming(bath, constant);
    }

    @Override
    public Temperature after(double seconds) {
        return new Temperature(celsius(seconds, constant.perSecond()));
    }

    @Override
    public Temperature surroundingsAfter(double seconds) {
        return bath.after(seconds);
    }

    @Override
    public double slope(double seconds) {
        double k = constant.perSecond();
        return (celsius(seconds, k * (1 + STEP)) - celsius(seconds, k * (1 - STEP))) / (2 * k * STEP);
    }

    private double celsius(double seconds, double k) {
        double room = bath.room().celsius();
        double left = Math.exp(-k * seconds);
        double now = room + (start().celsius() - room) * left;
        for (Bath.Part part : bath.parts()) {
            now += part.kelvins() * k * left * met(seconds, k - part.perSecond());
        }
        return now;
    }

    /** {@code (e^(x·t) − 1)/x}, which for equal rates is t. */
    private static double met(double seconds, double x) {
        return x == 0 ? seconds : Math.expm1(x * seconds) / x;
    }
}
