package org.snugsheet.engine;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.engine.clothing.Activity;
import org.snugsheet.engine.clothing.Outdoors;
import org.snugsheet.engine.clothing.RequiredClothing;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.insulation.AirGap;
import org.snugsheet.engine.insulation.Thickness;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.lesson.Taps;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Speed;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.surface.Ambient;
import org.snugsheet.engine.surface.Face;
import org.snugsheet.engine.surface.Orientation;
import org.snugsheet.engine.water.Water;
import org.snugsheet.engine.winter.WindChill;

/**
 * What rests on a source answers just inside its range and refuses just outside. The bounds are those that the sources print; each stands
 * with its source in the class that holds it, and in the function reference.
 */
class RangesTest {

    /**
     * One bound.
     *
     * @param name what is bounded
     * @param inside a call just inside
     * @param outside the same call just outside
     * @param why how that is refused
     */
    record Bound(String name, Executable inside, Executable outside, Problem why) {

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Bound> bounds() {
        return Stream.of(water(), windChill(), clothing(), wraps(), films(), laws())
                .flatMap(bounds -> bounds);
    }

    @ParameterizedTest
    @MethodSource("bounds")
    void itAnswersJustInsideAndRefusesJustOutside(Bound bound) {
        assertDoesNotThrow(bound.inside());
        assertEquals(
                bound.why(),
                assertThrows(InvalidInputException.class, bound.outside()).problem());
    }

    /** IAPWS SR6-08 at one atmosphere; Building Bulletin 87; taps of 70 °C. */
    private static Stream<Bound> water() {
        return Stream.of(
                bound("density, ice", 0, -0.01, Problem.WATER_FROZEN, t -> Water.density(at(t))),
                bound("density, steam", 100, 100.01, Problem.WATER_BOILED, t -> Water.density(at(t))),
                bound("specific heat, ice", 0, -0.01, Problem.WATER_FROZEN, t -> Water.specificHeat(at(t))),
                bound("specific heat, steam", 100, 100.01, Problem.WATER_BOILED, t -> Water.specificHeat(at(t))),
                bound("viscosity, ice", 0, -0.01, Problem.WATER_FROZEN, t -> Water.viscosity(at(t))),
                bound("conductivity, steam", 100, 100.01, Problem.WATER_BOILED, t -> Water.conductivity(at(t))),
                bound(
                        "heat given off, steam",
                        100,
                        100.01,
                        Problem.WATER_BOILED,
                        t -> Water.heatGivenOff(at(t), at(20))),
                bound("heat given off, ice", 0, -0.01, Problem.WATER_FROZEN, t -> Water.heatGivenOff(at(20), at(t))),
                bound(
                        "a body of water",
                        100,
                        100.01,
                        Problem.WATER_BOILED,
                        t -> WaterBody.of(CUP, at(t)).heatCapacity()),
                bound("pupils", 43, 43.01, Problem.START_TOO_HOT, t -> SafeStart.require(at(t))),
                bound("tap", 70, 70.01, Problem.KETTLE_WATER, t -> Taps.mixing(at(t), at(10), at(40), CUP)),
                bound(
                        "still water as a place",
                        0,
                        -0.01,
                        Problem.WATER_FROZEN,
                        t -> film("still water", 100, at(t), at(t))));
    }

    /** The charts of 2001. */
    private static Stream<Bound> windChill() {
        return Stream.of(
                bound("wind chill, warm", 10, 10.01, Problem.WIND_CHILL_TOO_WARM, t -> chill(t, 30)),
                bound("wind chill, cold", -50, -50.01, Problem.WIND_CHILL_TOO_COLD, t -> chill(t, 30)),
                bound("wind chill, calm", 5, 4.99, Problem.WIND_CHILL_TOO_CALM, v -> chill(-10, v)),
                bound("wind chill, windy", 96.56, 96.57, Problem.WIND_CHILL_TOO_WINDY, v -> chill(-10, v)),
                bound("wind chill, calm in mph", 3.01, 3, Problem.WIND_CHILL_TOO_CALM, RangesTest::milesChill),
                bound("wind chill, windy in mph", 60, 60.01, Problem.WIND_CHILL_TOO_WINDY, RangesTest::milesChill));
    }

    private static void chill(double celsius, double kilometersPerHour) {
        WindChill.of(at(celsius), Speed.of(kilometersPerHour, Unit.KILOMETER_PER_HOUR), Scale.CELSIUS);
    }

    private static void milesChill(double milesPerHour) {
        WindChill.of(at(-10), Speed.of(milesPerHour, Unit.MILE_PER_HOUR), Scale.FAHRENHEIT);
    }

    /** ISO 11079:2007. */
    private static Stream<Bound> clothing() {
        return Stream.of(
                bound("clothing, warm", 10, 10.01, Problem.CLOTHING_TOO_WARM, t -> Outdoors.of(at(t), new Speed(1))),
                bound("clothing, cold", -50, -50.01, Problem.CLOTHING_TOO_COLD, t -> Outdoors.of(at(t), new Speed(1))),
                bound("clothing, windy", 18, 18.01, Problem.CLOTHING_TOO_WINDY, v -> Outdoors.of(at(0), new Speed(v))),
                bound("activity, little", 58, 57.99, Problem.ACTIVITY_OUT_OF_RANGE, Activity::new),
                bound("activity, much", 400, 400.01, Problem.ACTIVITY_OUT_OF_RANGE, Activity::new));
    }

    /** From half a clo, where the standard begins, to 5 clo, which is what can be worn: the bounds are searched for by bisection. */
    @Test
    void clothingIsAnsweredFromHalfACloToFive() {
        Speed wind = new Speed(1);
        double coldest = bisected(-50, 0, t -> answers(t, 115) ? -1 : 1);
        ThermalResistance most = RequiredClothing.of(Outdoors.of(at(coldest + 0.01), wind), new Activity(115))
                .outfit();
        assertEquals(5, clo(most), 0.01);
        assertDoesNotThrow(() -> needed(coldest + 0.01, 115));
        assertEquals(
                Problem.CLOTHING_TOO_MUCH,
                assertThrows(InvalidInputException.class, () -> needed(coldest - 0.01, 115))
                        .problem());

        double busiest = bisected(115, 400, watts -> answers(9, watts) ? 1 : -1);
        ThermalResistance least = RequiredClothing.of(Outdoors.of(at(9), wind), new Activity(busiest - 0.01))
                .worn();
        assertEquals(0.5, clo(least), 0.001);
        assertEquals(
                Problem.CLOTHING_TOO_LITTLE,
                assertThrows(InvalidInputException.class, () -> needed(9, busiest + 0.01))
                        .problem());
    }

    private static boolean answers(double celsius, double watts) {
        try {
            needed(celsius, watts);
            return true;
        } catch (InvalidInputException refusal) {
            return false;
        }
    }

    private static double clo(ThermalResistance resistance) {
        return resistance.in(Unit.CLO);
    }

    private static double bisected(double positive, double negative, DoubleUnaryOperator sign) {
        double from = positive;
        double to = negative;
        for (int i = 0; i < 60; i++) {
            double middle = (from + to) / 2;
            if (sign.applyAsDouble(middle) > 0) {
                from = middle;
            } else {
                to = middle;
            }
        }
        return (from + to) / 2;
    }

    private static void needed(double celsius, double watts) {
        RequiredClothing.of(Outdoors.of(at(celsius), new Speed(1)), new Activity(watts))
                .wearableOutfit();
    }

    /** ISO 6946:2017, Table 8, goes to 300 mm; a layer of over 10 m is none: 35 mm · (e^(R·0.04/0.035) − 1) = 10 m at R = 4.95. */
    private static Stream<Bound> wraps() {
        return Stream.of(
                bound("air gap", 300, 300.1, Problem.AIR_GAP_TOO_WIDE, mm -> AirGap.upright(mm(mm))),
                bound(
                        "round target",
                        4.9,
                        5,
                        Problem.ROUND_TARGET_TOO_HIGH,
                        r -> Thickness.round(new ThermalResistance(r), new Conductivity(0.04), mm(35))));
    }

    /**
     * Incropera and DeWitt, Table A.4; Churchill and Chu to Ra = 10¹²: with Gr·Pr = g·(ΔT/T)·H³/(ν·a), 20 K beside air of 300 K give
     * Ra = 1.9e9 for 1 m, hence 10¹² at 8.1 m. Emissivities are shares.
     */
    private static Stream<Bound> films() {
        return Stream.of(
                bound("air, cold", -73, -74, Problem.AIR_OUT_OF_RANGE, t -> film("still air", 100, at(t), at(t))),
                bound("air, hot", 126, 127, Problem.AIR_OUT_OF_RANGE, t -> film("wind 5 km/h", 100, at(t), at(t))),
                bound("height", 7500, 8700, Problem.SURFACE_TOO_LARGE, mm -> film("still air", mm, at(37), at(17))),
                bound("wind", 410, 411, Problem.NO_SUCH_WIND, v -> Ambient.parse("wind " + v + " km/h")),
                bound("black", 1, 1.01, Problem.NOT_AN_EMISSIVITY, RangesTest::face),
                bound("bright", 0, -0.01, Problem.NOT_AN_EMISSIVITY, RangesTest::face));
    }

    private static void film(String place, double millimeters, Temperature surface, Temperature around) {
        Ambient.parse(place)
                .resistance(new Face(Orientation.SIDE, mm(millimeters), mm(millimeters), 0.9), surface, around);
    }

    private static void face(double emissivity) {
        new Face(Orientation.SIDE, mm(100), mm(70), emissivity);
    }

    /** A curve that cools by Newton’s law, and by no negative rate. */
    private static Stream<Bound> laws() {
        return Stream.of(bound(
                "cooling curve",
                0,
                -0.05,
                Problem.RATE_NOT_POSITIVE,
                k -> new NewtonCooling(at(40), at(10), CoolingConstant.ofPerMinute(k)).after(600)));
    }

    private static final Volume CUP = Volume.of(250, Unit.MILLILITER);

    private static Temperature at(double celsius) {
        return new Temperature(celsius);
    }

    private static Length mm(double millimeters) {
        return Length.of(millimeters, Unit.MILLIMETER);
    }

    private interface Call {
        void of(double value);
    }

    private static Bound bound(String name, double inside, double outside, Problem why, Call call) {
        return new Bound(name, () -> call.of(inside), () -> call.of(outside), why);
    }
}
