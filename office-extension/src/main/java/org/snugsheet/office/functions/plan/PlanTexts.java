package org.snugsheet.office.functions.plan;

import org.snugsheet.office.declare.TemperatureOf;
import org.snugsheet.office.declare.TemperatureOf.Matter;

/** Descriptions of the arguments of the PLAN functions. */
final class PlanTexts {

    @TemperatureOf(Matter.WATER)
    static final String TEMP = "The temperature of the water.";

    @TemperatureOf(Matter.WATER)
    static final String HOT = "The temperature of the hot tap. An adult pours it.";

    @TemperatureOf(Matter.WATER)
    static final String COLD = "The temperature of the cold tap.";

    @TemperatureOf(Matter.WATER)
    static final String TARGET = "The start temperature wanted: no more than 43 °C (109 °F).";

    static final String VOLUME = "Milliliters wanted in all.";
    static final String JAR_VOLUME = "Milliliters of water in one jar.";
    static final String BATH_VOLUME = "Milliliters of water in the tub.";

    @TemperatureOf(Matter.WATER)
    static final String BATH_TEMP = "The temperature of the tub at the start.";

    static final String JARS = "How many jars stand in the tub.";
    static final String JARS_EACH = "How many jars of each wrap.";

    @TemperatureOf(Matter.WATER)
    static final String START = "The temperature the jars begin at: no more than 43 °C (109 °F).";

    @TemperatureOf(Matter.SURROUNDINGS)
    static final String SURROUNDINGS = "The temperature of what the jars stand in.";

    static final String RATE =
            "The cooling constant of a jar per minute: from an earlier lesson by COOL.RATE, or by WRAP.EXPECT.";
    static final String OTHER_RATE = "The cooling constant of the other jar per minute.";
    static final String BARE_RATE =
            "The cooling constant of a bare jar per minute: from an earlier lesson by COOL.RATE, or by WRAP.EXPECT.";
    static final String WRAPPED_RATE = "The cooling constant of a wrapped jar per minute, likewise.";
    static final String MINUTES = "How many minutes the jars are read.";
    static final String INTERVAL = "Minutes from one reading to the next.";

    @TemperatureOf(Matter.SURROUNDINGS)
    static final String ROOM = "The temperature of the room.";

    static final String LEAK =
            "The heat the tub takes up from the room, in watts for each kelvin. Left out: that of an open tub of its size in still air.";
    static final String CERTAINTY =
            "The standard error wanted, as a share of the cooling constant: 0.05 for 5 %. Left out: 0.05.";
    static final String SCATTER =
            "How much a reading errs beside the rounding to a mark, in degrees (standard deviation). Left out: half a mark.";
    static final String OFTEN = "How often they are to be told apart: 0.8 is four lessons in five. Left out: 0.8.";
    static final String SPREAD =
            "How much jars of one wrap differ, as a share of their cooling constant. Left out: 0.1.";

    @TemperatureOf(Matter.WATER)
    static final String HOT_OPTION =
            "The temperature of the hot tap; with the cold tap, the table says how to mix. Left out: no mixing.";

    @TemperatureOf(Matter.WATER)
    static final String COLD_OPTION = "The temperature of the cold tap. Left out: no mixing.";

    static final String BATH_OPTION =
            "Milliliters of water in the tub, if the jars stand in one. Left out: they stand in the open.";
    static final String JARS_OPTION = "How many jars stand in the tub. Left out: 1.";

    @TemperatureOf(Matter.SURROUNDINGS)
    static final String ROOM_OPTION = "The temperature of the room around the tub. Left out: 21 °C (70 °F).";

    private PlanTexts() {}
}
