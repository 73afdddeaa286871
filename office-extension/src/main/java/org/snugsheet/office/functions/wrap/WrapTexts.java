package org.snugsheet.office.functions.wrap;

import org.snugsheet.office.declare.TemperatureOf;
import org.snugsheet.office.declare.TemperatureOf.Matter;

/** Descriptions of the arguments of the WRAP functions. */
final class WrapTexts {

    static final String RADIUS = "The radius of what the layers are wrapped round, in millimeters.";
    static final String ONE_MATERIAL = "The name of the material.";
    static final String CONDITION = "dry, damp or soaked. Left out: dry.";
    static final String WHICH = "low, typical or high among the published figures. Left out: typical.";
    static final String TWICE = "The unit of the answer: SI (W/(m·K)) or k-factor (Btu·in/(h·ft²·°F)). Left out: SI.";
    static final String TARGET_R = "The R-value wanted.";
    static final String ANY_MATERIAL = "The name of the material, or its conductivity in W/(m·K).";
    static final String RADIUS_OPTION =
            "The radius of what it is wrapped round, in millimeters. Left out: the layer lies flat.";
    static final String COEFFICIENT =
            "The surface coefficient outside in W/(m²·K): 1 divided by WRAP.SURFACE. About 10 for a jar in still air.";
    static final String PLACE =
            "What is at the surface: still air, wind 20 km/h, still water, stirred water or contact.";

    @TemperatureOf(Matter.WATER)
    static final String SURFACE = "The temperature of the surface.";

    @TemperatureOf(Matter.SURROUNDINGS)
    static final String COLD = "The temperature of the place it stands in.";

    static final String SIZE =
            "How high the jar is in millimeters; for lid and base, how wide. It is taken to be as wide as high. Left out: 100.";
    static final String FACING = "Which way the surface looks: side, up or down. Left out: side.";
    static final String EMISSIVITY =
            "How well it radiates, from 0 to 1: 0.9 of nearly everything, 0.05 of bright foil. Left out: 0.9.";
    static final String VOLUME_HELD = "Milliliters of water in the jar.";
    static final String JAR_RADIUS = "The inside radius of the jar in millimeters.";
    static final String LIST_THICKNESSES =
            "The thicknesses in millimeters of the layers round the side, from inside to outside; the jar’s own wall may be the first. A blank cell: a bare jar.";
    static final String LIST_MATERIALS =
            "For each of these layers the name of its material, or its conductivity in W/(m·K).";

    @TemperatureOf(Matter.WATER)
    static final String WARM = "The temperature of the water.";

    static final String WHERE =
            "Where it stands: still air, wind 20 km/h, still water, stirred water, contact (packed in snow), or the R-value of the outside surface. Left out: still air. In water it stands up to its neck, and what is not covered by something waterproof is soaked.";
    static final String LID =
            "The R-value of what covers the lid, as WRAP.FLAT gives it, in m²·K/W. Left out: a thin lid.";
    static final String BASE =
            "The R-value of what is under the base, as WRAP.FLAT gives it, in m²·K/W. Left out: a thin base.";

    @TemperatureOf(Matter.SURROUNDINGS)
    static final String ROOM =
            "In a tub of water: the temperature of the air above it, which the jar’s lid is in. Left out: 21 °C (70 °F). Elsewhere it does not count.";

    static final String LEAK =
            "What goes past the wrap, in W/K, as WRAP.LEAK gives it. Left out: nothing, so that all heat is taken to cross the area given.";
    static final String NUMBER = "The number of the layer, counted from the inside; 0 for the jar’s inside.";
    static final String BARE_RATE = "The cooling constant of the bare jar per minute, as COOL.RATE gives it.";
    static final String WRAPPED_RATE = "The cooling constant of the wrapped jar per minute, as COOL.RATE gives it.";
    static final String AREA = "The surface that is wrapped, in square centimeters.";
    static final String BARE_ERROR = "COOL.RATE.ERROR of the bare jar. Left out: only the error cannot be told.";
    static final String WRAPPED_ERROR = "COOL.RATE.ERROR of the wrapped jar. Left out: only the error cannot be told.";
    static final String REST =
            "The R-value of what is not the wrap: the films, as WRAP.SURFACE gives them, and the jar’s wall. Left out: none, so that the answer is all of it.";
    static final String ERROR = "COOL.RATE.ERROR of the jar. Left out: only the error cannot be told.";

    @TemperatureOf(Matter.WATER)
    static final String MEAN_WARM =
            "The mean temperature of the jar’s readings, at which the mass of its water is worked out. Left out: 30 °C, within 0.6 % from 15 °C to 45 °C.";

    static final String RATE_ERROR = "COOL.RATE.ERROR of the jar.";

    private WrapTexts() {}
}
