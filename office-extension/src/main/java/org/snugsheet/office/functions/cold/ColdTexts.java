package org.snugsheet.office.functions.cold;

import org.snugsheet.office.declare.TemperatureOf;
import org.snugsheet.office.declare.TemperatureOf.Matter;

/** Descriptions of the arguments of the COLD functions. */
final class ColdTexts {

    @TemperatureOf(Matter.WEATHER)
    static final String TEMP = "The temperature of the air.";

    static final String WIND = "The speed of the wind as a weather report gives it: in km/h, or in mph with scale F.";
    static final String WIND_OPTION =
            "The speed of the wind at the person: in km/h, or in mph with scale F. Left out: calm.";
    static final String GARMENT = "The name of the garment, such as T-shirt or boots; COLD.GARMENTS lists them.";
    static final String GARMENTS = "The names of the garments worn, in cells or as a list. A blank cell is skipped.";
    static final String ACTIVITY =
            "What the person does: standing, walking, playing in the snow or the like; or a number in met, or above 10 in W/m².";
    static final String COVERING = "fur, wool, down, feathers or blubber.";
    static final String THICKNESS = "How thick it stands on the animal, in millimeters.";
    static final String WHICH = "low, typical or high among what published figures make of it. Left out: typical.";

    static final String UNIT = "The unit of the answer: clo, tog, SI (m²·K/W) or US. Left out: clo.";

    private ColdTexts() {}
}
