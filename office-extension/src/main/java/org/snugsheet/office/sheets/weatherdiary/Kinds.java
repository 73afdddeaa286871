package org.snugsheet.office.sheets.weatherdiary;

import java.util.List;

/** What can be chosen from a list: skies, winds, clothes. */
final class Kinds {

    /**
     * A kind of day.
     *
     * @param words its word
     * @param picture a sign that is in the usual fonts, for those who do not read yet
     */
    record Sky(DiaryWords words, String picture) {}

    /**
     * A wind.
     *
     * @param words what is seen of it
     * @param kilometersPerHour the middle of that force
     */
    record Wind(DiaryWords words, double kilometersPerHour) {}

    static final List<Sky> SKIES = List.of(
            new Sky(DiaryWords.SUNNY, "☀"),
            new Sky(DiaryWords.PARTLY, "☀☁"),
            new Sky(DiaryWords.CLOUDY, "☁"),
            new Sky(DiaryWords.RAINY, "☂"),
            new Sky(DiaryWords.SNOWY, "❄"),
            new Sky(DiaryWords.FOGGY, "≋"));

    /**
     * Forces 0, 2, 4, 6 and 8 of the Beaufort scale (World Meteorological Organization), by what is seen on land: less than 1, 6 to
     * 11, 20 to 28, 39 to 49 and 62 to 74 km/h, each by its middle (from memory).
     */
    static final List<Wind> WINDS = List.of(
            new Wind(DiaryWords.CALM, 0),
            new Wind(DiaryWords.LIGHT, 8.5),
            new Wind(DiaryWords.BREEZY, 24),
            new Wind(DiaryWords.WINDY, 44),
            new Wind(DiaryWords.STORMY, 68));

    static final List<DiaryWords> CLOTHES =
            List.of(DiaryWords.T_SHIRT, DiaryWords.SWEATER, DiaryWords.JACKET, DiaryWords.COAT);

    private Kinds() {}
}
