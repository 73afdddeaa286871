package org.snugsheet.office.packaging;

import org.snugsheet.engine.Phrase;

/** What the function reference says besides the declared texts. */
enum ReferenceWords implements Phrase {
    TITLE("Cell functions"),
    HOW_TO_READ("Arguments in [ ] may be left out. An answer that cannot be given is a cell error."
            + " A single cell that holds an error, such as #DIV/0! or #N/A, passes it on."
            + " Curly brackets in the examples stand for a range of cells, as files hold it: ; leads to the next column, | to the"
            + " next row. A table is answered to an array formula, or cell by cell with INDEX; its first cell is shown here."
            + " Give cells of one sheet: of a range through several sheets, such as Sheet1.A1:Sheet3.A9, the office hands over"
            + " those of the first alone, and no function can see it; Explain this cell does."),
    SYMBOLS(
            "In the formulas: t time, T temperature, Tₛ of the surroundings, T₀ at the start, θ = T − Tₛ, k cooling constant,"
                    + " C heat capacity, Q heat, P heat in watts, R resistance, d thickness, λ conductivity, r radius, A surface or first"
                    + " difference, h enthalpy or surface coefficient, m mass, s standard error, n number of readings, p number of free"
                    + " values, δ mark of the thermometer, V wind or volume, G what gets through from the room."),
    RANGES(
            "A function answers only where its source holds, and refuses beyond: water from 0 °C to 100 °C, for pupils up to 43 °C (109 °F),"
                    + " from taps up to 70 °C; wind chill in air from -50 °C to 10 °C and winds from 5 km/h (in mph: above 3) to 96.6 km/h"
                    + " (60 mph); clothing in air from -50 °C to 10 °C, winds up to 18 m/s, activities from 58 to 400 W/m², from 0.5 to"
                    + " 5 clo; gaps of air up to 300 mm; films of air from -73 °C to 127 °C, on a side up to a Rayleigh number of 10¹²,"
                    + " lying 10¹¹ or, where the fluid is trapped, 10¹⁰ (below 10⁴ or 10⁵ down to mere conduction: own choice), in a"
                    + " wind up to a Reynolds number of 10⁷ and 114 m/s; emissivities from 0 to 1; conductivities of materials as measured near"
                    + " room temperature."),
    NOT_IN_ERRORS(
            "A standard error, and a ± made of it, holds what chance and rounding to the mark do. It does not hold what no reading shows:"
                    + " surroundings that drift but were typed once, a thermometer that reads high beside that of the surroundings, a first"
                    + " reading before the thermometer settled, reading down to the mark. CHECK.FAIR says how much each would do to a"
                    + " cooling constant, and CHECK.ALL speaks where the readings show it."),
    CONTENTS("Contents"),
    FORMULA("Formula"),
    SOURCE("Source"),
    EXAMPLE("Example"),
    REFUSED("Refused"),
    STORED("Stored in files as"),
    /** Stands in declared sources. */
    NO_SOURCE("common practice, no source"),
    /** Stands in declared sources, before the name of a function. */
    SEE("see");

    private final String english;

    ReferenceWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
