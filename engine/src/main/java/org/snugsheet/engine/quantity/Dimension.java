package org.snugsheet.engine.quantity;

import org.snugsheet.engine.Phrase;

/** The dimension of a {@link Unit}. Only units of the same dimension can be converted into each other. */
public enum Dimension implements Phrase {
    /** Length; SI unit meter. */
    LENGTH("length"),
    /** Area; SI unit square meter. */
    AREA("area"),
    /** Volume; SI unit cubic meter. */
    VOLUME("volume"),
    /** Mass; SI unit kilogram. */
    MASS("mass"),
    /** Energy; SI unit joule. */
    ENERGY("energy"),
    /** Power; SI unit watt. */
    POWER("power"),
    /** Speed; SI unit meter per second. */
    SPEED("speed"),
    /** Specific heat; SI unit J/(kg·K). */
    SPECIFIC_HEAT("specific heat"),
    /** Thermal resistance of a square meter, the R-value; SI unit m²·K/W. */
    THERMAL_RESISTANCE("thermal resistance"),
    /** Thermal transmittance, the U-value; SI unit W/(m²·K). */
    THERMAL_TRANSMITTANCE("thermal transmittance"),
    /** Thermal conductivity; SI unit W/(m·K). */
    CONDUCTIVITY("conductivity"),
    /** Resistance per unit of thickness; SI unit m·K/W. */
    RESISTIVITY("resistance per thickness");

    private final String english;

    Dimension(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
