package org.snugsheet.engine;

/** The quantity of a number that was refused, as a noun for a sentence of {@link Problem}. */
public enum QuantityName implements Phrase {
    /** Of water in a closed pair. */
    AMOUNT_OF_WATER("amount of water"),
    /** A surface. */
    AREA("area"),
    /** W/(m·K). */
    CONDUCTIVITY("conductivity"),
    /** Per minute. */
    COOLING_CONSTANT("cooling constant"),
    /** Of a standard error. */
    DEGREES_OF_FREEDOM("number of degrees of freedom"),
    /** J/K. */
    HEAT_CAPACITY("heat capacity"),
    /** Jars in a tub. */
    JARS("number of jars"),
    /** Heat that goes past a wrap. */
    LEAK_OF_THE_JAR("leak of the jar"),
    /** Heat that a tub takes up. */
    LEAK_OF_THE_TUB("leak of the tub"),
    /** Meters. */
    LENGTH("length"),
    /** Kilograms. */
    MASS("mass"),
    /** How far a reading strays. */
    SCATTER("scatter of a reading"),
    /** Meters per second. */
    SPEED("speed"),
    /** Of an estimate. */
    STANDARD_ERROR("standard error"),
    /** W/(m²·K) at a surface. */
    SURFACE_COEFFICIENT("surface coefficient"),
    /** m²·K/W. */
    THERMAL_RESISTANCE("thermal resistance"),
    /** Of a layer. */
    THICKNESS("thickness"),
    /** From one reading to the next. */
    TIME_BETWEEN_READINGS("time between readings"),
    /** How long a lesson is. */
    TIME_OF_THE_LESSON("time of the lesson"),
    /** The square of a scatter. */
    VARIANCE("variance"),
    /** Of water. */
    VOLUME("volume"),
    /** Of an observation. */
    WEIGHT("weight"),
    /** Moving air. */
    WIND("wind");

    private final String english;

    QuantityName(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
