package org.snugsheet.office.functions;

import java.text.MessageFormat;
import java.util.Locale;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Speed;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.winter.Frostbite;
import org.snugsheet.engine.winter.WindChill;

/** The risk of frostbite in words that a class can read. Each sentence is whole, so that it can be translated. */
final class FrostbiteWords {

    private static final String FASTER = " Faster in this wind.";
    private static final String CHILDREN =
            " Children cool faster than adults: cover faces and hands, go in to warm up, and follow your school’s rules for outdoor play.";

    private FrostbiteWords() {}

    static String of(Temperature air, Speed wind, Scale scale) {
        Frostbite risk = Frostbite.of(air, wind);
        String pattern = switch (risk.band()) {
            case MILD -> "Low risk of frostbite: it feels like {0} {1}. Dress warmly.";
            case LOW ->
                "Low risk of frostbite: it feels like {0} {1}. Outside for long, anybody without warm clothes gets too cold.";
            case HALF_AN_HOUR ->
                "Risk of frostbite: it feels like {0} {1}, and bare skin can freeze in 10 to 30 minutes.";
            case TEN_MINUTES -> "High risk: it feels like {0} {1}, and bare skin can freeze in 5 to 10 minutes.";
            case FIVE_MINUTES -> "Very high risk: it feels like {0} {1}, and bare skin can freeze in 2 to 5 minutes.";
            case TWO_MINUTES ->
                "Extreme risk: it feels like {0} {1}, and bare skin can freeze in less than 2 minutes. Stay indoors.";
        };
        Object[] values = {Math.round(feelsLike(risk, air, wind, scale)), scale.symbol()};
        boolean faster = risk.strongWind() && risk.band().latest().isPresent();
        return new MessageFormat(pattern, Locale.ENGLISH).format(values) + (faster ? FASTER : "") + CHILDREN;
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
