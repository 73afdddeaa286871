package org.snugsheet.engine;

/**
 * Everything the engine can refuse, each with its English sentence.
 *
 * <p>A sentence says what is wrong and what to do, in words a pupil can follow. {@code {0}} is the {@link Location} if the
 * problem concerns a single row. The sentences are {@link java.text.MessageFormat} patterns: so an apostrophe is written as
 * ’.
 */
public enum Problem implements Phrase {
    // ---- numbers and units
    /** A value is NaN or infinite. */
    NOT_A_NUMBER("A number here is too large to work with. Check how large the numbers are that you gave."),
    /** Colder than absolute zero. */
    BELOW_ABSOLUTE_ZERO("{0} {1} is colder than anything can be. Check the number and its scale."),
    /** An unknown temperature scale. */
    UNKNOWN_SCALE("“{0}” is not a temperature scale. Use C, F or K."),
    /** A quantity that must be more than zero is not. */
    NOT_POSITIVE("The {0} must be more than zero, but it is {1}. Check that cell."),
    /** An option that is 0, or refers to a blank cell: the office hands over both alike. */
    OPTION_ZERO(
            "An option is 0, or its cell is blank: these cannot be told apart. Leave it out for the usual value; for"
                    + " none at all type \"0\" in quotes."),
    /** A quantity that cannot be negative is. */
    NEGATIVE("The {0} cannot be less than zero, but it is {1}. Check that cell."),
    /** A unit nobody here knows. */
    UNKNOWN_UNIT("“{0}” is not a unit known here. Use one such as mm, US, clo or tog."),
    /** Two units that measure different things. */
    OTHER_DIMENSION("{0} measures {1}, but {2} measures {3}: one cannot be turned into the other. Check both units."),

    // ---- what stands in the cells
    /** A cell that must hold something is empty. */
    BLANK("A needed cell is blank ({0}). Type the number there; a blank is not taken for zero."),
    /** A cell holds something that is no number. */
    ROW_NOT_A_NUMBER("{0}: “{1}” is not a number. Type a plain number there."),
    /** A reading is not a temperature. */
    NOT_A_TEMPERATURE("{0}: “{1}” is not a temperature. Type a number, or leave the cell blank."),
    /** A reading is colder than absolute zero. */
    ROW_BELOW_ABSOLUTE_ZERO("{0}: {1} {2} is colder than anything can be. Check that reading and its scale."),
    /** A block of cells where one row or one column is needed. */
    NOT_ONE_COLUMN("Give one column or one row of cells here, not a block of {0} by {1}."),
    /** Several cells where one is needed. */
    NOT_ONE_CELL("Give one cell here, not {0}."),
    /** Two columns that belong together differ in length. */
    DIFFERENT_LENGTH(
            "There are {0} times but {1} temperatures. Select the same rows for both; leave a missed reading blank."),
    /** A name for each jar. */
    DIFFERENT_NAMES("There are {0} names but {1} columns of readings. Give one name for each column."),
    /** As many thicknesses as materials are needed. */
    DIFFERENT_LAYERS("There are {0} thicknesses but {1} materials. Give one material for each thickness."),
    /** A time is not later than the one before. */
    TIME_NOT_LATER("{0}: the time {1} is not later than {2} before it. Type the times in rising order."),
    /** Nobody typed the surroundings. */
    SURROUNDINGS_BLANK("The cell for the surroundings is blank. Type the temperature around the jar there."),
    /** The surroundings are no temperature. */
    SURROUNDINGS_NOT_A_TEMPERATURE(
            "The surroundings say “{0}”, which is not a temperature. Type the temperature around the jar."),
    /** A column of surroundings that does not match the readings. */
    SURROUNDINGS_LENGTH(
            "There are {0} temperatures of the surroundings but {1} times. Give one cell, or one for each time."),
    /** A reading at a time when nobody read the surroundings. */
    SURROUNDINGS_MISSING("{0}: the surroundings were not read at that time. Type their temperature in that row."),
    /** A cell that should hold a time of day holds something else. */
    ROW_NOT_A_CLOCK_TIME("{0}: “{1}” is not a time of day. Type it like 9:05, 9:05 am or 21:05."),
    /** A plain number in place of a time of day. */
    ROW_PLAIN_NUMBER(
            "{0}: {1} is a plain number and no time of day. Minutes can be used as they are; type a time as 9:05."),
    /** Clock times that look like numbers with decimals. */
    CLOCK_OR_DECIMALS(
            "The times could be clock times or plain numbers ({0}, {1}). Type clock times with a colon, such as 9:05."),
    /** Clock times that begin at 0:00 and proceed in large steps. */
    ROW_CLOCK_OR_STOPWATCH(
            "{0}: from 0:00 to {1} may be hours or, on a stopwatch, minutes. Type plain minutes: 0, 5, 10."),
    /** A time of day that lies before the one above it, or so long after it that it may be. */
    ROW_CLOCK_GOES_BACK(
            "{0}: {1} goes back from {2} before it. Check both; if more than {3} hours went by, add am or pm or the"
                    + " date."),
    /** A date and time that lies before the one above it. */
    ROW_DATE_GOES_BACK("{0}: this date and time lie before those above it. Check both."),
    /** The mark of a thermometer must be positive. */
    MARK_NOT_POSITIVE("The smallest mark of the thermometer must be more than zero. Look at its scale and type it."),
    /** A word in place of the mark, usually the scale. */
    MARK_NOT_A_NUMBER(
            "“{0}” stands where the smallest mark of the thermometer belongs, a number of degrees. The scale comes"
                    + " after it: leave the place of the mark empty."),

    // ---- the cooling curve
    /** No readings at all. */
    NO_READINGS("There are no readings yet. Type times and temperatures."),
    /** Not enough readings. */
    TOO_FEW_READINGS("Only {1} of the readings can be used, and {0} are needed. Take more readings."),
    /** Nothing to cool. */
    ALREADY_AT_SURROUNDINGS(
            "All readings are within a mark of the surroundings ({0} {1}), so no cooling shows. Check the"
                    + " surroundings."),
    /** A reading on the far side of the surroundings. */
    WRONG_SIDE("{0}: {1} {3}, but the surroundings are {2} {3}, and no jar can pass its surroundings. Check both."),
    /** Readings that move away from the surroundings. */
    MOVES_AWAY(
            "{0}: from here on the readings move away from the surroundings ({1} {2}). Check the surroundings and the"
                    + " scale."),
    /** Readings that do not bend toward any level. */
    SURROUNDINGS_OUT_OF_REACH(
            "The readings do not show where they settle. Read for longer, or type the temperature of the"
                    + " surroundings."),
    /** Newton’s law with warm surroundings, and another law with colder ones. */
    SURROUNDINGS_OR_LAW(
            "These readings cannot tell warm surroundings from a jar that loses heat ever more slowly as it cools, as"
                    + " in still air or without a lid. Type the temperature of the surroundings."),
    /** The clock starts long before the first reading. */
    START_OUT_OF_REACH(
            "The first reading is at minute {0}, too far from minute 0 to tell the start. Let the times begin at 0."),
    /** Neighbors err alike. */
    READINGS_WANDER(
            "These readings wander together above and below the curve, so they tell less than their number, and the ±"
                    + " is wider for it. Stir, and wait each time until the thermometer has settled."),
    /** Readings that bend toward a temperature other than that of the surroundings. */
    BENDS_ELSEWHERE(
            "These readings bend towards {0,number,0.#} {2}, not towards the {1} {2} typed for the surroundings. Did"
                    + " the surroundings change, or do the thermometers differ? Read the surroundings each time, and hold"
                    + " all thermometers in one glass of water."),
    /** Readings at coarser marks than the thermometer is said to have. */
    COARSER_THAN_MARK(
            "All readings are multiples of {0} {2}, but the mark is taken for {1} {2}. If the thermometer was read to"
                    + " {0} {2} only, give {0} for the mark."),
    /** A rate that is not above zero has no half-time. */
    HARDLY_COOLS("The temperature hardly changes, so no half-time can be told. Read for longer."),
    /** A rate that does not cool. */
    RATE_NOT_POSITIVE("The cooling constant must be more than zero for the temperature to change. Check that cell."),
    /** A temperature that is never reached. */
    NEVER_REACHED(
            "That temperature is never reached: it must lie between the start and the surroundings. Check the target."),
    /** Warmer than the reading before. */
    WARMER_THAN_BEFORE("{0}: {1} {3} is warmer than {2} {3} before it. Check that reading, or stir and wait."),
    /** Clock times in place of minutes. */
    DAY_FRACTIONS(
            "The times look like clock times, which are parts of a day. Type minutes, or give COOL.MINUTES(times) in"
                    + " their place, such as COOL.MINUTES(A2:A9)."),

    // ---- water and heat
    /** Water that would be ice. */
    WATER_FROZEN(
            "Water at {0} °C ({1} °F) is ice; only liquid water, from 0 °C (32 °F) on, can be used. Check that cell."),
    /** Water that would be steam. */
    WATER_BOILED("Water at {0} °C ({1} °F) is steam; only liquid water, up to 100 °C (212 °F), can be used. Check the"
            + " scale."),
    /** Bodies that would cool the water below freezing. */
    MIXTURE_FREEZES("Together they would end below 0 °C (32 °F), and the water would freeze. Check the temperatures."),
    /** Bodies that would bring the water to a boil. */
    MIXTURE_BOILS("Together they would end above 100 °C (212 °F), and the water would boil. Check the temperatures."),

    // ---- comparing jars
    /** A confidence that is none. */
    NOT_A_CONFIDENCE("{0} is not a confidence. Give a number between 0 and 1, such as 0.95."),
    /** A ratio that is not defined. */
    SECOND_HARDLY_COOLS(
            "The second jar hardly cools, so how many times slower it cools cannot be told. Read both for longer."),
    /** Two jars at rest show no bias. */
    BOTH_HARDLY_COOL(
            "The two jars hardly cool, so whether the test was fair cannot be told. Read both for longer, or begin warmer."),
    /** An estimate below zero by more than its error. */
    NO_RATIO("One of the two moves away from its surroundings, so they cannot be compared. Check its readings."),
    /** No estimates for a material. */
    NO_JARS("There is no jar of this material. Give the readings of at least one."),
    /** The spread between jars cannot be seen from one jar. */
    ONE_JAR_HAS_NO_SPREAD("One jar cannot show how much such jars differ. Read two or more with the same wrap."),
    /** A jar that nobody named; {0} is the jar. */
    JAR_WITHOUT_NAME("Jar {0} has no name. Type there what it is wrapped in."),
    /** A ranking of fewer than two. */
    NOTHING_TO_RANK("A ranking needs jars with at least two different names. Check the names."),
    /** A ranking with too few usable jars; {0} lists the others, each with its reason. */
    TOO_FEW_TO_RANK("A ranking needs at least two jars that can be used, but these are held back. {0}"),
    /** One of the jars held back, as part of {@link #TOO_FEW_TO_RANK}. */
    HELD_BACK("{0}: {1}"),

    // ---- materials and layers
    /** A material nobody here knows. */
    UNKNOWN_MATERIAL("“{0}” is not a material known here. Choose one from the list, or type its conductivity."),
    /** An unknown material whose name is similar to a known one. */
    UNKNOWN_MATERIAL_NEAR("“{0}” is not a material known here. Did you mean “{1}”?"),
    /** A word that is none of the conditions. */
    UNKNOWN_CONDITION("“{0}” is not a condition. Use dry, damp or soaked."),
    /** A material without published figures in that condition. */
    NO_SUCH_CONDITION("Nothing is known here about {0} {1}, only when it is {2}. Use that, or type its conductivity."),
    /** A wrap of nothing. */
    NO_LAYERS("There is no layer here. Type a thickness and a material for at least one."),
    /** A layer with a material and no thickness; {0} is the layer. */
    LAYER_THICKNESS_BLANK("Layer {0}: its thickness is blank. Type its millimeters, or clear its material too."),
    /** A layer with a thickness and no material; {0} is the layer. */
    LAYER_MATERIAL_BLANK(
            "Layer {0}: its material is blank. Choose one or type its conductivity, or clear its thickness too."),
    /** A layer whose thickness is a word; {0} is the layer. */
    LAYER_SAYS_NO_NUMBER("Layer {0} says “{1}”, which is not a number. Type a plain number there."),
    /** A value of a layer is NaN or infinite; {0} is the layer. */
    LAYER_NOT_A_NUMBER("Layer {0}: the {1} is not a number. Type a number there."),
    /** A value of a layer must be more than zero; {0} is the layer. */
    LAYER_NOT_POSITIVE("Layer {0}: the {1} must be more than zero, but it is {2}. Check that cell."),
    /** As {@link #UNKNOWN_MATERIAL}; {0} is the layer. */
    LAYER_UNKNOWN_MATERIAL(
            "Layer {0}: “{1}” is not a material known here. Choose one from the list, or type its conductivity."),
    /** As {@link #UNKNOWN_MATERIAL_NEAR}; {0} is the layer. */
    LAYER_UNKNOWN_MATERIAL_NEAR("Layer {0}: “{1}” is not a material known here. Did you mean “{2}”?"),
    /** As {@link #NO_SUCH_CONDITION}; {0} is the layer. */
    LAYER_NO_SUCH_CONDITION(
            "Layer {0}: nothing is known here about {1} {2}, only when it is {3}. Use that, or type its conductivity."),

    // ---- surfaces and jars
    /** A word that is not a direction a surface can face. */
    UNKNOWN_FACING("“{0}” is not a direction. Use side, up or down."),
    /** A word that is not a place for a jar. */
    UNKNOWN_PLACE(
            "“{0}” is not a place known here. Use still air, wind 20 km/h, still water, stirred water or contact."),
    /** A word that says nothing of a lid. */
    UNKNOWN_LID("“{0}” says nothing of a lid. Use open, bare, or the R-value of what covers the lid."),
    /** How well a surface radiates is a share. */
    NOT_AN_EMISSIVITY("How well a surface radiates must lie between 0 and 1, but it is {0}. Use 0.9 if unsure."),
    /** A layer that is not there. */
    NO_SUCH_LAYER("There is no layer {0}. Give a whole number from 0, the inside, to {1}."),
    /** A word other than low, typical and high. */
    UNKNOWN_WHICH("“{0}” is none of the figures. Use low, typical or high."),
    /** Stuff that comes in no layers. */
    NO_USUAL_LAYER("There is no usual thickness of {0}. Measure yours and type it."),
    /** Nothing flows between equal temperatures. */
    NO_DIFFERENCE("The jar is as warm as the place it stands in, so no heat flows. Check the two temperatures."),
    /** A thickness of an insulator that is unbounded. */
    ROUND_TARGET_TOO_HIGH("A layer of this material would have to be over {0} m thick. Choose a better material."),
    /** A gap of air that is a room; {0} in mm. */
    AIR_GAP_TOO_WIDE("A gap of air is known up to 300 mm, but this one is {0,number,0.#} mm. Check its thickness, in"
            + " millimeters."),
    /** A film of air that is too cold or too hot; {0} in °C. */
    AIR_OUT_OF_RANGE(
            "Films of air are known from -73 °C to 127 °C (-100 °F to 260 °F), but this one has {0,number,0.#} °C."
                    + " Check the temperatures on both sides."),
    /** A surface beyond the correlations. */
    SURFACE_TOO_LARGE(
            "No formula is known for the film on so large a surface at these temperatures. Check height and width, in"
                    + " millimeters."),
    /** A wind nobody ever felt. */
    NO_SUCH_WIND("No wind on Earth has {0,number,0.#} m/s. Check its unit: km/h, mph or m/s."),
    /** A cooling constant that does not determine a resistance. */
    RATE_TELLS_NO_RESISTANCE("A jar that does not cool shows no R-value. Read it for longer, or check its rate."),
    /** A jar that loses no more than its lid and base should; {0} and {1} in W/K. */
    ALL_GOES_ELSEWHERE(
            "The jar loses {0,number,0.###} W/K in all, and lid and base alone are said to lose {1,number,0.###} W/K."
                    + " Check the rate and the leak."),
    /** Two jars without their errors. */
    ERRORS_NEEDED("The error of the rate is needed for this. Give what COOL.RATE.ERROR answers."),

    // ---- planning a lesson
    /** A number that must be whole. */
    NOT_WHOLE("{0} is not a whole number. Type one such as 6."),
    /** A start that is too hot for pupils. */
    START_TOO_HOT(
            "{0,number,0.#} °C ({1,number,0.#} °F) is too hot for pupils: schools are advised no more than 43 °C (109"
                    + " °F). Begin cooler."),
    /** A reading of water that is too hot for pupils; {1} in °C, {2} in °F. */
    ROW_TOO_HOT("{0}: water of {1,number,0.#} °C ({2,number,0.#} °F) is too hot for pupils: schools are advised no more"
            + " than 43 °C (109 °F). Only an adult handles it; next time begin cooler."),
    /** As {@link #ROW_TOO_HOT}, of readings that may have been taken on another scale, {3}. */
    ROW_TOO_HOT_OR_OTHER_SCALE(
            "{0}: water of {1,number,0.#} °C ({2,number,0.#} °F) is too hot for pupils: schools are advised no more"
                    + " than 43 °C (109 °F). Only an adult handles it; if it was read in {3}, name that scale."),
    /** Surroundings that are too hot for pupils; {0} in °C, {1} in °F. */
    SURROUNDINGS_TOO_HOT(
            "Surroundings of {0,number,0.#} °C ({1,number,0.#} °F) are too hot for pupils: schools are advised no more"
                    + " than 43 °C (109 °F). Only an adult handles what stands there; next time take cooler ones."),
    /** Surroundings in which bare skin freezes; {0} in °C, {1} in °F. */
    SURROUNDINGS_TOO_COLD(
            "Surroundings of {0,number,0.#} °C ({1,number,0.#} °F) can freeze bare skin: outdoors, children are at"
                    + " risk from -18 °C (0 °F) of wind chill on, and from -27 °C (-16 °F) on they stay in. Let an adult"
                    + " stand the jars there, and read them from indoors."),
    /** An answer that no number can hold. */
    ANSWER_TOO_LARGE("The answer would be larger than any number here. Check how large the numbers are that you gave."),
    /** Whole columns where the used part was meant; {0} cells, at most {1}. */
    TOO_MANY_CELLS(
            "These are {0,number,0} cells, and more than {1,number,0} are not worked out at once. Select only the"
                    + " cells that are used."),
    /** A block of jars that no school has; {0} jars, at most {1}. */
    TOO_MANY_JARS(
            "These are {0,number,0} jars, and more than {1,number,0} are not worked out at once. Select fewer columns."),
    /** A lesson longer than a day; {0} in minutes, at most {1}. */
    LESSON_TOO_LONG("A lesson of {0,number,0} minutes is longer than a day, {1,number,0} minutes. Check that cell."),
    /** A cooling constant outside the range of jars; {0} per minute, from {1} to {2}. */
    RATE_OUT_OF_RANGE("No jar cools by {0} per minute: cooling constants lie between {1} and {2}. Check that cell."),
    /** A start that two taps cannot make. */
    NOT_BETWEEN_THE_TAPS(
            "{0,number,0.#} °C cannot be mixed from water of {1,number,0.#} °C and {2,number,0.#} °C. Choose a start"
                    + " between them."),
    /** Water hotter than taps give. */
    KETTLE_WATER("Water of {0,number,0.#} °C ({1,number,0.#} °F) is a kettle’s and not a tap’s, and scalds at once. Mix"
            + " with tap water of 70 °C (158 °F) at most."),
    /** Two jars that cool alike. */
    RATES_ALIKE("Both jars cool equally fast, so they never differ. Give two different cooling constants."),
    /** Two jars that never differ enough. */
    NEVER_TOLD_APART(
            "They never differ by a mark: at most {0,number,0.##} °C, after {1,number,0} minutes. Start warmer, but"
                    + " never above 43 °C (109 °F), or take a finer thermometer."),
    /** A jar that begins within a mark of its surroundings. */
    TOO_NEAR_TO_READ(
            "The start is within a mark of the surroundings, so nothing can be read. Start warmer, but never above 43"
                    + " °C (109 °F)."),
    /** Readings that cannot be taken. */
    TOO_MANY_READINGS("That would be {0,number,0} readings; nobody takes more than {1,number,0}. Read less often."),
    /** A certainty out of reach. */
    CERTAINTY_OUT_OF_REACH(
            "Even a reading every minute leaves an error of {0,number,percent}. Take more time, or a finer"
                    + " thermometer."),
    /** A number of jars out of reach. */
    JARS_OUT_OF_REACH(
            "Even {0,number,0} jars of each would tell them apart only {1,number,percent} of the time. Read for longer"
                    + " or more often."),
    /** Jars that make no power. */
    JARS_OUT_OF_RANGE("Give a whole number of jars of each wrap, from 1 to {0,number,0}."),
    /** A share that is none. */
    NOT_A_SHARE("{0} is not a share. Give a number between 0 and 1, such as 0.05 or 5 %."),

    // ---- the solver
    /** The least-squares search did not settle within its limit. */
    NO_CONVERGENCE("No curve could be fitted to these readings. Look for a slip in them."),
    /** The observations cannot tell the parameters of a curve apart. */
    UNDETERMINED("More than one curve fits these readings equally well. Take more readings, over a longer time."),

    // ---- winter: units, weather, clothing, animals
    /** A temperature scale where a unit is needed. */
    SCALE_IS_NO_UNIT("“{0}” is a temperature scale. Use TEMP.CONVERT for a reading, TEMP.CHANGE for a difference."),
    /** Too warm for a wind chill. */
    WIND_CHILL_TOO_WARM(
            "Wind chill has a meaning only up to 10 °C (50 °F), but the air is at {0} {1}. Check the number and its"
                    + " scale."),
    /** Too calm for a wind chill. */
    WIND_CHILL_TOO_CALM(
            "Wind chill needs a wind of 5 km/h or more than 3 mph, but it is {0} {1}. In calm air take the temperature"
                    + " itself."),
    /** Too cold for a wind chill. */
    WIND_CHILL_TOO_COLD(
            "Wind chill is known for air down to -50 °C (-58 °F), but the air is at {0} {1}. Check the number and its"
                    + " scale."),
    /** Too windy for a wind chill. */
    WIND_CHILL_TOO_WINDY(
            "Wind chill is known for winds up to 96.6 km/h (60 mph), but this one is {0,number,0.#} {1}. Check the"
                    + " number and its unit."),
    /** A garment nobody here knows. */
    UNKNOWN_GARMENT("“{0}” is not a garment known here. Choose one from the list of COLD.GARMENTS."),
    /** An unknown garment whose name is similar to a known one. */
    UNKNOWN_GARMENT_NEAR("“{0}” is not a garment known here. Did you mean “{1}”?"),
    /** As {@link #UNKNOWN_GARMENT}; {0} is the row. */
    ROW_UNKNOWN_GARMENT("{0}: “{1}” is not a garment known here. Choose one from the list of COLD.GARMENTS."),
    /** As {@link #UNKNOWN_GARMENT_NEAR}; {0} is the row. */
    ROW_UNKNOWN_GARMENT_NEAR("{0}: “{1}” is not a garment known here. Did you mean “{2}”?"),
    /** An outfit of nothing. */
    NO_GARMENTS("There is no garment here. Type the name of at least one."),
    /** An activity nobody here knows. */
    UNKNOWN_ACTIVITY(
            "“{0}” is not an activity known here. Use one such as standing, walking or playing in the snow, or its"
                    + " W/m²."),
    /** An activity that makes too little heat, or too much. */
    ACTIVITY_OUT_OF_RANGE(
            "An activity makes from 58 to 400 W/m² of heat (1 to 6.9 met), but this one makes {0} W/m². Check that"
                    + " cell."),
    /** Too warm for the clothing standard. */
    CLOTHING_TOO_WARM(
            "The clothing needed is worked out for air up to 10 °C (50 °F), but it is at {0} {1}. Check the number and"
                    + " its scale."),
    /** Too cold for the clothing standard. */
    CLOTHING_TOO_COLD(
            "The clothing needed is worked out for air down to -50 °C (-58 °F), but it is at {0} {1}. Check the number"
                    + " and its scale."),
    /** Too windy for the clothing standard. */
    CLOTHING_TOO_WINDY(
            "The clothing needed is worked out for winds up to 18 m/s (64 km/h, 40 mph), but this one is {0} {1}."
                    + " Check its unit."),
    /** Hardly any clothing would do. */
    CLOTHING_TOO_LITTLE(
            "This activity makes so much heat that less than half a clo would do, which the standard does not cover."
                    + " Check the activity and the temperature."),
    /** No clothing would do. */
    CLOTHING_TOO_MUCH(
            "No clothing keeps a person warm in this for long. Choose more activity, less wind or warmer air."),
    /** A covering of no animal. */
    NO_COVERING("“{0}” is not an animal covering known here. Use fur, wool, down, feathers or blubber."),

    // ---- slips found from the numbers
    /** A reading typed on the other scale. */
    ROW_ON_OTHER_SCALE("{0}: {1} looks like {2} among {3}. Look again; if so, type it with its scale: {1} {2}."),
    /** Two digits swapped. */
    ROW_DIGITS_SWAPPED("{0}: {1}, but {2} would fit; two digits may be swapped. Look again; if so, type {2}."),
    /** A decimal comma lost. */
    ROW_COMMA_LOST(
            "{0}: {1}, but {2} would fit; the decimal point may be lost or misplaced. Look again; if so, type {2}."),
    /** A minus sign too many or too few. */
    ROW_SIGN_WRONG("{0}: {1}, but {2} would fit; the sign may be wrong. Look again; if so, type {2}."),
    /** Ten degrees off. */
    ROW_TENS_MISREAD("{0}: {1}, but {2} would fit; the tens may be misread. Look again; if so, type {2}."),
    /** Minutes skipped. */
    ROW_MINUTES_SKIPPED(
            "{0}: the time is {1}, but {2} would fit; minutes may be skipped. Look again; if so, type {2} and fix the"
                    + " times below."),
    /** Minutes repeated. */
    ROW_MINUTES_REPEATED(
            "{0}: the time {1} comes too early, {2} would fit. Look again; if so, type {2} and fix the times below."),
    /** One time is wrong. */
    ROW_TIME_WRONG("{0}: the time {1} is out of step, {2} would fit. Look again; if so, type {2}."),
    /** A first reading that came too early. */
    ROW_NOT_SETTLED(
            "{0}: {1} {3}, but the others point to {2} {3}; the thermometer may not have settled. Leave that reading"
                    + " blank."),
    /** A jump in a cooling curve. */
    ROW_JUMP("{0}: the readings jump here, as if the jar was stirred or moved. Use the readings before it or those from"
            + " it on, not both."),
    /** Readings that do not change from a certain row on, with their value and scale. */
    STUCK_FROM_ROW(
            "{0}: from here on the readings stay near {1} {2}, as if the thermometer was out of the water or stuck."
                    + " Check it, and leave these readings blank."),
    /** A reading on the far side of the surroundings, judged by the other readings. */
    ROW_BEYOND_SURROUNDINGS(
            "{0}: {1} {3} is beyond the surroundings of {2} {3}. Look at both again; leave a wrong reading blank."),
    /** Colder than the reading before, in a jar that warms. */
    COLDER_THAN_BEFORE("{0}: {1} {3} is colder than {2} {3} before it. Check that reading, or stir and wait."),
    /** A reading off the curve of the others. */
    ROW_OFF_THE_CURVE("{0}: {1} {3}, but the others point to {2} {3}. Look again; leave a wrong reading blank."),
    /** A column on a different scale from its surroundings. */
    COLUMN_ON_OTHER_SCALE(
            "All readings look like {0}, but {1} is the scale here. Type readings and surroundings on one scale, and"
                    + " name it."),
    /** Everything on a different scale from the one named. */
    ALL_ON_OTHER_SCALE(
            "All these temperatures look like {0}, but {1} is the scale here. Name the scale they were read on."),
    /** Surroundings on a different scale from the readings. */
    SURROUNDINGS_ON_OTHER_SCALE(
            "The surroundings, {0}, look like {1}. Look again; if so, type them with their scale: {0} {1}."),
    /** A column that does not change. */
    CONSTANT_COLUMN("All readings stay near {0} {1}. Check that the thermometer is in the water, and read again."),
    /** A block without readings. */
    NO_BLOCK("Give a header row, the times below its first cell, and one column for each jar. Select the whole block."),
    /** A stopwatch typed as hours and minutes; {0} is its second time as hours. */
    STOPWATCH_HOURS(
            "The times look like a stopwatch’s: {0} in a cell is hours, not minutes. Type plain minutes: 0, 5, 10;"
                    + " COOL.MINUTES(times), as in COOL.MINUTES(A2:A9), takes times of day only."),
    /** Seconds in place of minutes; {0} is how long the readings took. */
    SECONDS_FOR_MINUTES(
            "The times run over {0} minutes: are these seconds? Look again. If so, divide the times by 60."),
    /** Times of day as text. */
    CLOCK_TIMES(
            "The times are times of day, such as {0}. Type minutes, or give COOL.MINUTES(times) in their place, such"
                    + " as COOL.MINUTES(A2:A9)."),
    /** Times of day written as numbers. */
    CLOCK_NUMBERS(
            "The times look like times of day: {0} may be {1}. Type minutes: 0, 5, 10; or type the times with a colon"
                    + " and give COOL.MINUTES(times) in their place, such as COOL.MINUTES(A2:A9).");

    private final String english;

    Problem(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
