package org.snugsheet.office.functions;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Speed;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.winter.Frostbite;
import org.snugsheet.engine.winter.WindChill;
import org.snugsheet.office.words.Language;

/** The risk of frostbite in sentences that a class can read. */
enum FrostbiteWords implements Phrase {
    MILD("Low risk of frostbite: it feels like {0} {1}. Dress warmly."),
    LOW("Low risk of frostbite: it feels like {0} {1}. Outside for long, anybody without warm clothes gets too cold."),
    HALF_AN_HOUR("Risk of frostbite: it feels like {0} {1}, and bare skin can freeze in 10 to 30 minutes."),
    TEN_MINUTES("High risk: it feels like {0} {1}, and bare skin can freeze in 5 to 10 minutes."),
    FIVE_MINUTES("Very high risk: it feels like {0} {1}, and bare skin can freeze in 2 to 5 minutes."),
    TWO_MINUTES("Extreme risk: it feels like {0} {1}, and bare skin can freeze in less than 2 minutes. Stay indoors."),
    FASTER("Faster in this wind."),
    CHILDREN(
            "Children cool faster than adults: cover faces and hands, go in to warm up, and follow your school’s rules for outdoor play.");

    private final String english;

    FrostbiteWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }

    static String of(Temperature air, Speed wind, Scale scale, Language language) {
        Frostbite risk = Frostbite.of(air, wind);
        Phrase band = switch (risk.band()) {
            case MILD -> MILD;
            case LOW -> LOW;
            case HALF_AN_HOUR -> HALF_AN_HOUR;
            case TEN_MINUTES -> TEN_MINUTES;
            case FIVE_MINUTES -> FIVE_MINUTES;
            case TWO_MINUTES -> TWO_MINUTES;
        };
        List<String> sentences = new ArrayList<>();
        sentences.add(language.say(band, Math.round(feelsLike(risk, air, wind, scale)), scale.symbol()));
        if (risk.fasterInThisWind()) {
            sentences.add(language.words(FASTER));
        }
        sentences.add(language.words(CHILDREN));
        return String.join(" ", sentences);
    }

    /** As the chart of that scale prints it; in air too warm or too calm for a chart, from the index that chose the band. */
    private static double feelsLike(Frostbite risk, Temperature air, Speed wind, Scale scale) {
        if (scale == Scale.CELSIUS) {
            return risk.windChill();
        }
        try {
            return WindChill.of(air, wind, scale);
        } catch (Refusal refusal) {
            return new Temperature(risk.windChill()).in(scale);
        }
    }
}
