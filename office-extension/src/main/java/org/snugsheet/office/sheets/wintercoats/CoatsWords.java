package org.snugsheet.office.sheets.wintercoats;

import org.snugsheet.engine.Phrase;

/** What stands in the sheet about winter coats; patterns of a MessageFormat where a cell fills them in. */
enum CoatsWords implements Phrase {
    /** Tab. */
    PAGE("Coats"),
    /** Tab. */
    LISTS_PAGE("Lists"),
    /** Title. */
    TITLE("Winter coats"),
    /** What it is for. */
    PURPOSE(
            "How cold does the wind make it, is an outfit warm enough for it, and how do the coats of animals compare?"),
    /** What can hurt. */
    CAUTION(
            "frost bites bare skin, and children cool faster than adults: cover faces, ears and hands, and go in to warm up before anybody shivers. These numbers are for adults and a lesson, not for deciding who may go out: your school’s rules for outdoor play come first."),
    /** Section. */
    WEATHER("1  The weather"),
    /** Label. */
    SCALE("Scale, C or F"),
    /** Beside the box. */
    SCALE_BESIDE("F: wind is in mph then"),
    /** Label. */
    AIR("Air, {0}"),
    /** Beside the box. */
    AIR_BESIDE("out of the sun"),
    /** Label. */
    WIND("Wind, {0}"),
    /** Beside the box. */
    WIND_BESIDE("as the weather report says"),
    /** Label. */
    DOING("What people do"),
    /** Beside the box. */
    CHOOSE_BESIDE("choose from the list"),
    /** Label. */
    NEEDED("Clothing needed by an adult, clo"),
    /** In the place of a number. */
    NONE("none told"),
    /** Below. */
    ONE_CLO("1 clo: a suit indoors"),
    /** Section. */
    FEEL("How cold does it feel?"),
    /** Sentence. */
    FEELS_LIKE("On an adult’s bare face it feels like {0}."),
    /** In the place of the sentence. */
    NO_CHILL("No wind chill: that is for a wind in air up to 10 °C (50 °F)."),
    /** In the place of the sentence. */
    TYPE_NUMBERS("Type the air and the wind as numbers."),
    /** Section. */
    OUTFITS("2  Two outfits for an adult"),
    /** Label. */
    FIRST("Who wears the first?"),
    /** Label. */
    SECOND("Who wears the second?"),
    /** Somebody. */
    SNOWMAN("snowman builder"),
    /** Somebody. */
    IN_A_HURRY("in a hurry"),
    /** Head. */
    WORN("worn"),
    /** Where it is worn. */
    SKIN("next to the skin"),
    /** Where it is worn. */
    OVER("over it"),
    /** Where it is worn. */
    OUTERMOST("outermost"),
    /** Where it is worn. */
    LEGS_SKIN("legs, next to the skin"),
    /** Where it is worn. */
    LEGS_OUTERMOST("legs, outermost"),
    /** Where it is worn. */
    FEET("socks"),
    /** Where it is worn. */
    SHOES("shoes or boots"),
    /** Where it is worn. */
    HANDS("hands"),
    /** Label. */
    KEEPS_IN("Keeps in, clo"),
    /** Label. */
    ENOUGH("Warm enough?"),
    /** In the place of a number. */
    CHOOSE_GARMENTS("choose garments"),
    /** In the place of an answer. */
    NOT_IN_LIST("Every garment must be one of the list."),
    /** Answer. */
    NO_OUTFIT("No outfit keeps an adult warm in this for long: go in."),
    /** Answer. */
    NOT_COLD("It is not cold enough to ask."),
    /** Answer. */
    YES("Yes, for an adult. A child needs more."),
    /** Answer. */
    SHORT("No: {0} clo short. Add a layer, move more, or go in sooner."),
    /** Section. */
    ANIMALS("3  Coats of animals, as published"),
    /** Head, and title of a hint. */
    ANIMAL("animal"),
    /** Head, and title of a hint. */
    COVERING("covering"),
    /** Head. */
    MM_THICK("mm thick"),
    /** Head. */
    ANIMAL_KEEPS_IN("keeps in, clo"),
    /** An animal. */
    REINDEER("reindeer"),
    /** An animal. */
    MUSK_DEER("musk deer"),
    /** An animal. */
    ARCTIC_FOX("arctic fox, hair"),
    /** An animal. */
    SEA_OTTER("sea otter, hair"),
    /** In the place of a number. */
    LOOK_AGAIN("look again"),
    /** Section. */
    LOOK_FOR("What to look for"),
    /** Bold. */
    CLO("What is a clo?"),
    /** Behind it. */
    CLO_TEXT("The warmth of a suit indoors: 0.155 m²·K/W. It measures fur as well as coats."),
    /** Bold. */
    AHEAD("Why are animals ahead?"),
    /** Behind it. */
    AHEAD_TEXT(
            "The figure of an outfit is for a whole adult, bare face and gaps included; that of an animal is for the thickness of its covering alone, dry and in still air. Fur that is wet, or pressed flat, keeps in far less."),
    /** Bold. */
    THICK("How thick are coats?"),
    /** Behind it. */
    THICK_TEXT(
            "Those of reindeer and musk deer were measured (Blix and others 2015). Of fox and otter it is the length of the hair (Arctic Fox Center; Williams and others 1992): the coat itself is a little thinner. Add your own, such as down."),
    /** Hint. */
    SCALE_HINT("C for degrees Celsius and km/h, F for degrees Fahrenheit and mph."),
    /** Title of a hint. */
    AIR_TITLE("Air"),
    /** Hint. */
    AIR_HINT("The temperature outside, out of the sun."),
    /** Title of a hint. */
    WIND_TITLE("Wind"),
    /** Hint. */
    WIND_HINT("Its speed as the weather report says: km/h, or mph with F."),
    /** Hint. */
    CHOOSE_HINT("Choose from the list."),
    /** Title of a hint. */
    OUTFIT_TITLE("Outfit"),
    /** Hint. */
    OUTFIT_HINT("Who wears it."),
    /** Title of a hint. */
    GARMENT_TITLE("Garment"),
    /** Hint. */
    GARMENT_HINT("Choose from the list, or type its usual name."),
    /** Hint. */
    ANIMAL_HINT("Any animal."),
    /** Title of a hint. */
    THICKNESS_TITLE("Thickness"),
    /** Hint. */
    THICKNESS_HINT("Millimeters, as thick as it is on the animal."),
    /** What the page is for. */
    LISTS_PURPOSE("Nothing to type here: the lists to choose from, and the values of the chart."),
    /** Foot of the page. */
    LISTS_FOOT("Lists of winter coats"),
    /** Section. */
    ACTIVITIES("Activities"),
    /** Section. */
    COVERINGS("Coverings"),
    /** Section. */
    KNOWN("What COLD.GARMENTS knows"),
    /** Section. */
    TO_CHOOSE_FROM("To choose from"),
    /** Label. */
    CHILL("what it feels like, °C"),
    /** Section. */
    DRAWN("What the chart draws"),
    /** Head. */
    COAT("coat"),
    /** A bar of the chart. */
    NEEDED_BAR("needed"),
    /** Title of the chart. */
    CHART("Outfits and animals"),
    /** For somebody who cannot see the chart; {0} is a page. */
    CHART_WORDS(
            "One horizontal bar for what the cold asks for, for each outfit, and for each animal: how well it keeps warmth in, in clo. The longer the bar, the warmer the coat. The values are on the page {0}."),
    /** An activity; a word that the functions know. */
    SITTING("sitting"),
    /** An activity; a word that the functions know. */
    STANDING("standing"),
    /** An activity; words that the functions know. */
    WALKING_ABOUT("walking about"),
    /** An activity; words that the functions know. */
    WALKING_SLOWLY("walking slowly"),
    /** An activity; a word that the functions know. */
    WALKING("walking"),
    /** An activity; words that the functions know. */
    WALKING_FAST("walking fast"),
    /** An activity; words that the functions know. */
    PLAYING("playing in the snow"),
    /** An activity; words that the functions know. */
    SHOVELING("shoveling snow"),
    /** In the properties of the document. */
    SUBJECT("Wind chill, clothing and animal coverings"),
    /** In the properties of the document. */
    DESCRIPTION(
            "A worked sheet of Snugsheet with invented outfits and animals: the wind chill, two outfits against what the cold asks for, and fur, wool, down, feathers and blubber in the same unit."),
    /** In the properties of the document. */
    KEYWORD("animals in winter");

    private final String english;

    CoatsWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
