package org.snugsheet.office.functions;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.snugsheet.engine.jar.Agreement;
import org.snugsheet.engine.jar.Reason;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.TemperatureDifference;

/** What WRAP.VERDICT says. Each sentence is whole, so that it can be translated. */
final class AgreementWords {

    private static final String AGREE =
            "The readings show R {0,number,0.000} m²·K/W, and the layers should give {1,number,0.000} to {2,number,0.000}: they agree.";
    private static final String LOWER =
            "The readings show R {0,number,0.000} m²·K/W, less than the {1,number,0.000} to {2,number,0.000} that the layers should give.";
    private static final String HIGHER =
            "The readings show R {0,number,0.000} m²·K/W, more than the {1,number,0.000} to {2,number,0.000} that the layers should give.";
    private static final String NONE_ENOUGH =
            "None of the usual reasons would do alone. Check the thicknesses, the materials and the volume.";

    private AgreementWords() {}

    static String of(Agreement agreement, Scale scale) {
        List<String> sentences = new ArrayList<>();
        sentences.add(inWords(
                pattern(agreement),
                agreement.measured().value(),
                agreement.expected().low(),
                agreement.expected().high()));
        if (!agreement.agrees()) {
            for (Reason reason : agreement.enough()) {
                double value = agreement.reasons().getOrDefault(reason, Double.NaN);
                sentences.add(
                        inWords(pattern(reason), value, new TemperatureDifference(value).in(scale), scale.symbol()));
            }
            if (agreement.enough().isEmpty()) {
                sentences.add(NONE_ENOUGH);
            }
        }
        return String.join(" ", sentences);
    }

    private static String pattern(Agreement agreement) {
        if (agreement.agrees()) {
            return AGREE;
        }
        return agreement.measured().value() < agreement.expected().low() ? LOWER : HIGHER;
    }

    private static String pattern(Reason reason) {
        return switch (reason) {
            case SOAKED_WRAP -> "Could be a wet wrap: soaked through, it would give {0,number,0.000}.";
            case SQUASHED_WRAP -> "Could be a squashed wrap: at half its thickness it would give {0,number,0.000}.";
            case GAP_AT_THE_LID -> "Could be a gap at the lid: with a bare lid the jar would give {0,number,0.000}.";
            case COLDER_SURROUNDINGS -> "Could be surroundings {1,number,0.0} {2} colder than typed.";
            case WARMER_SURROUNDINGS ->
                "Could be surroundings {1,number,0.0} {2} warmer than typed, such as a bath that warmed.";
            case AIR_BETWEEN_LAYERS ->
                "Could be air between the layers: a still gap would bring it to {0,number,0.000}.";
        };
    }

    private static String inWords(String pattern, Object... values) {
        return new MessageFormat(pattern, Locale.ENGLISH).format(values);
    }
}
