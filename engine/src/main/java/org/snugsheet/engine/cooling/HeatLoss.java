package org.snugsheet.engine.cooling;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;
import org.snugsheet.engine.heat.Body;
import org.snugsheet.engine.quantity.Temperature;

/** How fast a cooling body loses heat. */
public final class HeatLoss {

    private HeatLoss() {}

    /**
     * The heat that a body loses each second, {@code P = C·k·(T − Tₛ)}: what it holds for each kelvin, times the kelvins it
     * cools each second by Newton’s law. Source: Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, section 5.1,
     * where {@code k = h·A/C} and {@code P = h·A·(T − Tₛ)}.
     *
     * @param body what cools, as warm as it is now
     * @param constant its cooling constant, zero or more
     * @param surroundings how warm it is around it
     * @return W, negative if the body takes heat up
     * @throws InvalidInputException if the constant is negative, as an estimate for a jar that hardly cools may be
     */
    public static double watts(Body body, CoolingConstant constant, Temperature surroundings) {
        if (constant.perSecond() < 0) {
            throw InvalidInputException.of(Problem.NEGATIVE, QuantityName.COOLING_CONSTANT, constant.perMinute());
        }
        double difference = body.temperature().minus(surroundings).kelvins();
        return body.heatCapacity().joulesPerKelvin() * constant.perSecond() * difference;
    }
}
