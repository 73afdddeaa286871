package org.snugsheet.office.sheets.designawrap;

import org.snugsheet.engine.Phrase;

/** What stands behind the sheet that designs a wrap: on its charts and on its last pages; patterns of a MessageFormat where a cell fills them in. */
enum DesignBehindWords implements Phrase {
    /** Tab. */
    CURVES_PAGE("Curves"),
    /** Title. */
    CURVES_TITLE("Behind the charts"),
    /** What the page is for. */
    CURVES_PURPOSE("Nothing to type here: what the charts on the first page draw, and the sums between."),
    /** Foot of the page. */
    CURVES_FOOT("Behind the charts of a wrap"),
    /** Section. */
    SUMS("Sums between"),
    /** Label. */
    VESSEL("Heat capacity of the jar, J/K"),
    /** Label. */
    AREA("Surface of the water, cm²"),
    /** Label. */
    USED("Layers used"),
    /** Label. */
    RATE_WRAPPED("Cooling constant at the start, wrapped"),
    /** Label. */
    SAME_BARE("the same, bare"),
    /** Label. */
    HALFWAY_WRAPPED("Half-way temperature, wrapped"),
    /** Label. */
    LAYERS_OK("Can the layers be used?"),
    /** Label. */
    LID_OK("and the lid?"),
    /** Label. */
    BASE_OK("and the base?"),
    /** Label. */
    LID_R("R-value over the lid, m²·K/W"),
    /** Label. */
    BASE_R("R-value under the base, m²·K/W"),
    /** Label. */
    TOO_HOT("Start too hot for pupils?"),
    /** Section. */
    WAY_OUT("The way out through the side"),
    /** Section. */
    EXPECTED_CURVES("Expected curves, {0}"),
    /** Section. */
    CLASS_READ("What the class read, {0}"),
    /** Head, and a name in the legend of a chart. */
    SURROUNDINGS_HEAD("surroundings"),
    /** Label. */
    COOLS_TOWARD("It cools toward, wrapped"),
    /** Section. */
    PARTS("R-value of the side, part by part, m²·K/W"),
    /** Head, and a name in the legend of a chart. */
    FILM_WATER("film of water"),
    /** Head, and a name in the legend of a chart. */
    FILM_OUTSIDE("film outside"),
    /** Title of a chart. */
    BARS("What each layer adds"),
    /** Along the bars. */
    BARS_AXIS("R-value of the side, m²·K/W"),
    /** For somebody who cannot see the chart. */
    BARS_WORDS(
            "Two horizontal bars, of the bare jar and of the wrapped jar. Each is put together from the R-values of the film of water inside, of the layers from inside to outside, and of the film outside. Films and glass hardly count beside the wrap, except for the film of air outside. The values are in the table beside the chart."),
    /** Title of a chart. */
    CURVES("Lines: expected. Symbols: what the class read"),
    /** Across the chart. */
    MINUTES_AXIS("Time, minutes"),
    /** Up the chart. */
    TEMPERATURE_AXIS("Temperature, °C or °F"),
    /** For somebody who cannot see the chart; {0} is a page. */
    CURVES_WORDS(
            "Temperature against time. The full line is what to expect of the bare jar, the dashed line what to expect of the wrapped jar; circles and squares are what the class read of each; the gray line is the surroundings. Both jars begin alike, and the bare one cools faster. The values are on the page {0}."),
    /** Tab. */
    MATERIALS_PAGE("Materials"),
    /** What the page is for. */
    MATERIALS_PURPOSE(
            "Nothing to type here: the lists to choose from, and how well each material conducts heat. Sources disagree, so low and high are given too."),
    /** What can hurt. */
    ALLERGIES(
            "Caution: ask about allergies (wool, feathers, fur, hay, latex). Glass wool, rock wool and loft insulation are for an adult, sealed in, or not at all; old vermiculite never."),
    /** Section. */
    TO_CHOOSE_FROM("To choose from"),
    /** Section. */
    KNOWN("What WRAP.MATERIALS knows"),
    /** Head. */
    HOW_WET("material, and how wet"),
    /** A material that is not dry: its condition, its name. */
    CONDITION_FIRST("{0} {1}"),
    /** Section. */
    PLACES("Places"),
    /** A place; words that the functions know. */
    STILL_AIR("still air"),
    /** A place; words that the functions know. */
    WIND("wind {0}"),
    /** A place; words that the functions know. */
    STILL_WATER("still water"),
    /** A place; words that the functions know. */
    STIRRED_WATER("stirred water"),
    /** A place; words that the functions know. */
    CONTACT("contact");

    private final String english;

    DesignBehindWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
