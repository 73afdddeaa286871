package org.snugsheet.office.sheets.weatherdiary;

import org.snugsheet.engine.Phrase;

/** What stands in the weather diary; patterns of a MessageFormat where a cell fills them in. */
enum DiaryWords implements Phrase {
    /** The title of the document and of its first page. */
    TITLE("Weather diary"),
    /** What it is for. */
    PURPOSE(
            "Write down the weather of each school day: what kinds of days come often, and is noon warmer than morning?"),
    /** What can hurt. */
    CAUTION_WORD("Caution:"),
    /** What can hurt. */
    CAUTION(
            "an adult hangs up the thermometer, in the shade; never look at the sun. Dress for the wind, and go in before"
                    + " anybody shivers. Your school’s rules for outdoor play come first."),
    /** Beside the sample of a cell to type into. */
    BOXES("a boxed cell"),
    /** Beside it. */
    BOXES_TYPE(
            "is for you to type in. Everything else works itself out and is locked against slips; there is no password."),
    /** Tab. */
    DIARY_PAGE("Diary"),
    /** Tab. */
    FOUND_PAGE("What we found"),
    /** Tab. */
    COLOR_PAGE("To color"),
    /** Tab. */
    BEHIND_PAGE("Behind"),
    /** Beside the cell. */
    FIRST_DAY("First school day of the month, as a date. Left blank, the days are only counted."),
    /** Beside the cell. */
    SCALE("Scale of the thermometer, C or F. Wind in numbers is in km/h, with F in mph."),
    /** A day without a date. */
    DAY("Day {0}"),
    /** Head. */
    DAY_HEAD("Day"),
    /** Head. */
    SKY_HEAD("Sky"),
    /** Head. */
    MORNING_HEAD("Morning, {0}"),
    /** Head. */
    NOON_HEAD("Noon, {0}"),
    /** Head. */
    WIND_HEAD("Wind"),
    /** Head. */
    FEELS_HEAD("Noon felt like, {0}"),
    /** Head. */
    WORE_HEAD("What we wore"),
    /** A kind of day. */
    SUNNY("sunny"),
    /** A kind of day. */
    PARTLY("some clouds"),
    /** A kind of day. */
    CLOUDY("cloudy"),
    /** A kind of day. */
    RAINY("rainy"),
    /** A kind of day. */
    SNOWY("snowy"),
    /** A kind of day. */
    FOGGY("foggy"),
    /** A wind. */
    CALM("calm"),
    /** A wind. */
    LIGHT("leaves move"),
    /** A wind. */
    BREEZY("branches move"),
    /** A wind. */
    WINDY("trees move"),
    /** A wind. */
    STORMY("hard to walk"),
    /** Clothes. */
    T_SHIRT("T-shirt"),
    /** Clothes. */
    SWEATER("sweater"),
    /** Clothes. */
    JACKET("jacket"),
    /** Clothes. */
    COAT("coat, hat and gloves"),
    /** Hint. */
    SKY_HINT("Choose what most of the day was like. A day off stays blank."),
    /** Hint. */
    TEMPERATURE_HINT("What the thermometer reads, such as 12 or 54 °F. Not read? Leave it blank."),
    /** Hint. */
    WIND_HINT("Choose what you see, or type a speed."),
    /** Hint. */
    WORE_HINT("Choose, or use your own words."),
    /** Hint. */
    SCALE_HINT("C for degrees Celsius, F for degrees Fahrenheit."),
    /** Hint. */
    DATE_HINT("The first day you write down. The school days of its month follow."),
    /** The date of a day in a sentence: the day, the month. */
    DATE("{1} {0}"),
    /** How a date is shown; a code of the office in English. */
    DATE_CODE("NN MMM D"),
    /** The months, short. */
    MONTHS("Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec"),
    /** Above the grid. */
    EMPTY("Begin with the first day: choose its sky, then type what the thermometer reads."),
    /** Above the grid. */
    WRITTEN("Days written down: {0}."),
    /** Above the grid. */
    UNREADABLE("Look at {0}: “{1}” is no outdoor temperature. Type a number such as 12."),
    /** Above the grid. */
    UNKNOWN_WIND("Look at {0}: choose the wind from the list, or type its speed."),
    /** Above the grid. */
    VERY_COLD(
            "On {0} it felt like {1}: bare skin can freeze. Stay in, or cover faces and hands and go in soon. Your school’s"
                    + " rules for outdoor play come first."),
    /** Section. */
    KINDS("What kinds of days we had"),
    /** Label. */
    ALL_DAYS("all days"),
    /** Section. */
    WARMTH("How warm it was"),
    /** Across the chart. */
    DAYS_AXIS("school day"),
    /** Up the chart. */
    UP_AXIS("degrees"),
    /** Name of a line. */
    MORNING("morning"),
    /** Name of a line. */
    NOON("noon"),
    /** For somebody who cannot see the chart. */
    CHART_WORDS("The temperatures of the mornings and of the noons, one school day after the other."),
    /** Section. */
    SAY("What we can say"),
    /** Sentence. */
    WARMER("Noon was warmer than morning on {0} of {1} days."),
    /** Sentence. */
    MOST("The kind of day that came most often: {0}, {1} of {2} days."),
    /** Sentence. */
    TIED("No kind of day came most often: several came {0} times."),
    /** Sentence. */
    EXTREMES("The coldest morning had {0} ({1}), the warmest noon {2} ({3})."),
    /** Sentence. */
    FELT_COLDER("Because of the wind, noon felt colder than it was on {0} of {1} days."),
    /** In the place of a sentence. */
    NOT_YET("– Write down two days or more."),
    /** For children. */
    NAME("My name"),
    /** For children. */
    COLOR_BOXES("Color one box for each day."),
    /** For children. */
    MOST_OFTEN("Draw the weather that came most often."),
    /** For children. */
    WARMER_WHEN("When was it warmer? Circle one."),
    /** For children. */
    NEXT("What will the weather be tomorrow? Draw it."),
    /** What the document is. */
    DESCRIPTION("A worked sheet of Snugsheet: a month of weather, counted, drawn and put into sentences.");

    private final String english;

    DiaryWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
