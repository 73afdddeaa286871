package org.snugsheet.office.functions.shared;

import org.snugsheet.office.declare.TemperatureOf;
import org.snugsheet.office.declare.TemperatureOf.Matter;

/** Descriptions of arguments that many functions share, so that they read the same everywhere. */
public final class Texts {

    @TemperatureOf(value = Matter.ANYTHING, because = "scales are changed of any temperature, an oven’s too")
    public static final String VALUE = "The temperature, or a column of them. A blank stays blank.";

    public static final String CHANGE = "How many degrees warmer or colder, or a column of them. A blank stays blank.";
    public static final String FROM_SCALE = "The scale it is in: C, F or K.";
    public static final String TO_SCALE = "The scale wanted: C, F or K.";
    public static final String TIMES = "The times of the readings in minutes, one column, rising.";

    @TemperatureOf(Matter.WATER)
    public static final String TEMPS =
            "The temperatures read at those times. Leave a missed reading blank or type a dash; 95 °F or 35 °C is read with its own scale.";

    @TemperatureOf(Matter.SURROUNDINGS)
    public static final String SURROUNDINGS =
            "The temperature of what the jar stands in: one cell, a column read at the same times, melting ice for exactly 0 °C, or fit if nobody read it.";

    @TemperatureOf(Matter.SURROUNDINGS)
    public static final String SURROUNDINGS_NOW = "The temperature of what the jar stands in.";

    public static final String AT = "The times wanted for the curve, in minutes, one column.";
    public static final String OTHER_TIMES = "The times of the second jar in minutes; they may be the same cells.";

    @TemperatureOf(Matter.WATER)
    public static final String OTHER_TEMPS = "The temperatures of the second jar at those times.";

    @TemperatureOf(Matter.SURROUNDINGS)
    public static final String SURROUNDINGS_BOTH =
            "The temperature of what all jars stand in: one cell, a column read at the same times, or melting ice for exactly 0 °C.";

    @TemperatureOf(Matter.JARS)
    public static final String BLOCK = "The temperatures: one column for each jar, one row for each time.";

    @TemperatureOf(Matter.SHEET)
    public static final String SHEET =
            "The whole block: a header row with the jars’ names, the times down the first column, a column for each jar. A header such as wool °F names its scale.";

    public static final String NAMES =
            "What each jar is wrapped in, one cell for each column. Jars of one name are jars of one material. A name such as wool °F names its scale.";
    public static final String CLOCK =
            "The clock times of the readings, one column: cells with a time, or text such as 9:05, 9.05 am or 21:05.";
    public static final String VOLUME = "Milliliters of water in the jar.";

    @TemperatureOf(Matter.WATER)
    public static final String FROM = "The temperature it begins at.";

    @TemperatureOf(Matter.WATER)
    public static final String TO = "The temperature it ends at.";

    @TemperatureOf(Matter.WATER)
    public static final String TEMP = "The temperature of the water now.";

    public static final String BATH_AMOUNT = "Milliliters of water in the bath.";

    @TemperatureOf(Matter.WATER)
    public static final String BATH_TEMP = "The temperature of the bath before.";

    public static final String VESSEL =
            "The heat capacity of the empty jar in joules per kelvin: grams times 0.84 for glass. Left out: none.";
    public static final String JAR_VOLUME =
            "Milliliters of water in the jar, if it stands in a bath that keeps its heat. Left out: the bath does not matter.";
    public static final String BATH_VOLUME = "Milliliters of water in that bath. Left out: the bath does not matter.";
    public static final String MARK =
            "Degrees from one mark of the thermometer to the next. Left out: 1 °C or 2 °F; a blank cell or 0 counts as left out.";
    public static final String SCALE = "The scale of the temperatures: C or F. Left out: C.";
    public static final String SPREAD =
            "How much jars wrapped alike differ, as a share of their cooling constant, such as 0.1: counted where one jar stands for its wrap. Left out: 0.";
    public static final String MINUTES = "Minutes since the start.";

    @TemperatureOf(Matter.WATER)
    public static final String START = "The temperature at minute 0.";

    public static final String RATE = "The cooling constant per minute, as COOL.RATE gives it.";

    @TemperatureOf(Matter.WATER)
    public static final String TARGET = "The temperature to be reached.";

    public static final String THICKNESS = "The thickness of the layer in millimeters.";
    public static final String THICKNESSES = "The thicknesses of the layers in millimeters, from inside to outside.";
    public static final String MATERIAL = "The name of the material, or its conductivity in W/(m·K).";
    public static final String MATERIALS =
            "For each layer the name of its material, or its conductivity in W/(m·K), in the same order.";
    public static final String INSIDE =
            "Resistance of the inside surface, in the same unit as the answer. Left out: none.";
    public static final String OUTSIDE =
            "Resistance of the outside surface, in the same unit as the answer. Left out: none.";
    public static final String UNIT =
            "The unit of the R-value: SI (m²·K/W), US (ft²·°F·h/Btu), clo or tog. Left out: SI.";

    @TemperatureOf(value = Matter.ANYTHING, because = "it is read before anybody knows what it is of")
    public static final String TYPED = "What was typed, or a column of it. A blank stays blank.";

    public static final String READ_SCALE =
            "The scale of a number without one, and of the answer: C or F. Left out: C.";
    public static final String ROUND_MARK = "Degrees from one mark of the thermometer to the next.";
    public static final String QUANTITY = "The value, or a column of them. A blank stays blank.";
    public static final String FROM_UNIT = "The unit it is in, such as clo, RSI, US, mm, in, ml, cup, kcal, mph.";
    public static final String TO_UNIT = "The unit wanted, which must measure the same.";

    private Texts() {}
}
