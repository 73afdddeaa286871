package org.snugsheet.office.functions.check;

import org.snugsheet.office.declare.TemperatureOf;
import org.snugsheet.office.declare.TemperatureOf.Matter;

/** Descriptions of arguments that only CHECK functions have. */
final class CheckTexts {

    @TemperatureOf(Matter.SURROUNDINGS)
    static final String OTHER_SURROUNDINGS =
            "The temperature of what the second jar stands in: one cell, a column read at the same times, or the word fit.";

    static final String FIRST_VOLUME = "Milliliters of water in the first jar. Left out: the volumes are not compared.";
    static final String OTHER_VOLUME =
            "Milliliters of water in the second jar. Left out: the volumes are not compared.";
    static final String FIRST_LID =
            "The lid of the first jar, which stands in still air: open without a lid, bare for a thin one, or the R-value of what covers it, as WRAP.LAYER gives it. Left out: the lids are not compared.";
    static final String OTHER_LID =
            "The lid of the second jar, in the same words. Left out: the lids are not compared.";

    private CheckTexts() {}
}
