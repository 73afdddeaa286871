package org.snugsheet.office.explaining;

import org.snugsheet.engine.Phrase;

/** Sentences that say what a number means, for a class to read; patterns of a MessageFormat. */
enum MeaningWords implements Phrase {
    LOSES_EACH_MINUTE("The jar loses {0} % of its extra warmth each minute, give or take {1} %."),
    MAKES_UP_EACH_MINUTE(
            "Each minute the jar makes up {0} % of what it is colder than its surroundings, give or take {1} %."),
    STARTED_AT("At minute 0 the jar was at {0} {2}, give or take {1}."),
    SURROUNDINGS_GIVEN("The surroundings were at {0} {1}, as you gave them."),
    SURROUNDINGS_FITTED("The readings run toward {0} {2}, give or take {1}: so warm the surroundings should be."),
    OFF_THE_CURVE("A reading lies about {0} {1} from the curve."),
    AT_THAT_TIME("At that time the jar is at about {0} {1}."),
    AFTER_MINUTES("The jar gets there after about {0} minutes."),
    GIVES_OFF("On the way the jar gives off about {0} kilojoules of heat."),
    TAKES_UP("On the way the jar takes up about {0} kilojoules of heat."),
    LOSES_WATTS("At these temperatures the jar loses about {0} watts."),
    GAINS_WATTS("At these temperatures the jar takes up about {0} watts."),
    MEET_AT("Jar and bath end at about {0} {1}."),
    LETS_THROUGH("For each °C between its two sides, about {0} watts get through one square meter."),
    R_KNOWN(
            "The R-value is {0} {2}, give or take {1}. For each °C of difference, about {3} watts get through one square meter."),
    BETWEEN_TABLES("Published tables put it between {0} and {1} W/(m·K)."),
    ONE_LAYER("One layer is about {0} mm thick."),
    THICK_ENOUGH("A layer of about {0} mm does it."),
    TURNS("A cylinder with a radius below {0} mm loses more heat when it is wrapped thinly."),
    FACE_AT("It is about {0} {1} there."),
    SHOULD_LOSE("Such a jar should lose half its extra warmth every {0} minutes or so."),
    FEELS_LIKE("On a bare face it feels like {0} {1}."),
    ONE_CLO("To compare: 1 clo keeps an adult who sits still comfortable at 21 °C (70 °F)."),
    POUR_HOT("Pour in about {0} ml of hot tap water."),
    POUR_COLD("Pour in about {0} ml of cold tap water."),
    TUB_ENDS_AT("At the end of the lesson the tub is at about {0} {1}."),
    ICE_MELTS("About {0} grams of ice melt. Take half as much again: {1} grams."),
    APART_AFTER("After about {0} minutes the two jars differ by one mark of the thermometer."),
    READ_UNTIL("The jar can be read for about {0} minutes."),
    READ_EVERY("Time from one reading to the next: {0} min, or less."),
    SO_MANY_READINGS("That makes {0} readings."),
    KNOWN_TO("The cooling constant will be known to about {0} %."),
    FILL_JARS("Fill {0} jars of each wrap."),
    OF_A_HUNDRED("In about {0} of 100 such lessons the two wraps can be told apart.");

    private final String english;

    MeaningWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
