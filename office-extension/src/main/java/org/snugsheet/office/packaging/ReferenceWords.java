package org.snugsheet.office.packaging;

import org.snugsheet.engine.Phrase;

/** What the function reference says besides the declared texts. */
enum ReferenceWords implements Phrase {
    TITLE("Cell functions"),
    HOW_TO_READ(
            "Arguments in [ ] may be left out. An answer that cannot be given is a cell error, never a wrong number."
                    + " Curly brackets in the examples stand for a range of cells, as files hold it: ; leads to the next column, | to the"
                    + " next row. A table is answered to an array formula, or cell by cell with INDEX; its first cell is shown here."),
    SYMBOLS(
            "In the formulas: t time, T temperature, Tₛ of the surroundings, T₀ at the start, θ = T − Tₛ, k cooling constant,"
                    + " C heat capacity, Q heat, P heat in watts, R resistance, d thickness, λ conductivity, r radius, A surface or first"
                    + " difference, h enthalpy or surface coefficient, m mass, s standard error, n number of readings, p number of free"
                    + " values, δ mark of the thermometer, V wind or volume, G what gets through from the room."),
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
