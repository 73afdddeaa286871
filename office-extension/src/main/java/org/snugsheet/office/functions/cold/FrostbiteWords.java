package org.snugsheet.office.functions.cold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Speed;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.winter.Frostbite;
import org.snugsheet.engine.winter.WindChill;
import org.snugsheet.office.words.Language;

/** What the cold means for pupils, in sentences that a class can read. */
enum FrostbiteWords implements Phrase {
    NO_FROST("No frost: the air is at {0} {1}."),
    COLD("It feels like {0} {1}. Dress warmly, and go in to warm up."),
    VERY_COLD("Very cold for children: it feels like {0} {1}. Hats, gloves and dry socks; go in often to warm up."),
    RISK(
            "Risk of frostbite for children: it feels like {0} {1}. Cover all skin, stay out only for minutes, and watch faces and fingers."),
    INDOORS(
            "Too cold for children: it feels like {0} {1}. Stay indoors: from -27 °C (-16 °F) on bare skin begins to freeze."),
    HALF_AN_HOUR("Bare skin can freeze in 10 to 30 minutes, a child’s sooner."),
    TEN_MINUTES("Bare skin can freeze in 5 to 10 minutes, a child’s sooner."),
    FIVE_MINUTES("Bare skin can freeze in 2 to 5 minutes, a child’s sooner."),
    TWO_MINUTES("Bare skin can freeze in less than 2 minutes."),
    FASTER("Faster in this wind."),
    SCHOOL("Your school’s rules for outdoor play come first.");

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
        List<String> sentences = new ArrayList<>();
        sentences.add(language.say(forChildren(risk), Math.round(feelsLike(risk, air, wind, scale)), scale.symbol()));
        soon(risk).map(language::words).ifPresent(sentences::add);
        if (risk.fasterInThisWind()) {
            sentences.add(language.words(FASTER));
        }
        if (risk.forChildren() != Frostbite.ForChildren.NO_FROST) {
            sentences.add(language.words(SCHOOL));
        }
        return String.join(" ", sentences);
    }

    private static Phrase forChildren(Frostbite risk) {
        return switch (risk.forChildren()) {
            case NO_FROST -> NO_FROST;
            case COLD -> COLD;
            case VERY_COLD -> VERY_COLD;
            case RISK -> RISK;
            case INDOORS -> INDOORS;
        };
    }

    /** In how many minutes, where the table tells it. */
    private static Optional<Phrase> soon(Frostbite risk) {
        return switch (risk.band()) {
            case MILD, LOW -> Optional.empty();
            case HALF_AN_HOUR -> Optional.of(HALF_AN_HOUR);
            case TEN_MINUTES -> Optional.of(TEN_MINUTES);
            case FIVE_MINUTES -> Optional.of(FIVE_MINUTES);
            case TWO_MINUTES -> Optional.of(TWO_MINUTES);
        };
    }

    /** As the chart of that scale prints it; in air too warm or too calm for a chart, from the index that chose the band. */
    private static double feelsLike(Frostbite risk, Temperature air, Speed wind, Scale scale) {
        if (scale == Scale.CELSIUS) {
            return risk.windChill();
        }
        try {
            return WindChill.of(air, wind, scale);
        } catch (InvalidInputException refusal) {
            return new Temperature(risk.windChill()).in(scale);
        }
    }
}
