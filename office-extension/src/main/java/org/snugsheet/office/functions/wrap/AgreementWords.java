package org.snugsheet.office.functions.wrap;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.jar.Agreement;
import org.snugsheet.engine.jar.Reason;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.office.words.Language;

/** What WRAP.VERDICT says: one sentence on the whole, and one for each reason that could be the cause. */
enum AgreementWords implements Phrase {
    AGREE(
            "The readings show R {0,number,0.000} m²·K/W, and the layers should give {1,number,0.000} to {2,number,0.000}: they agree."),
    LOWER(
            "The readings show R {0,number,0.000} m²·K/W, less than the {1,number,0.000} to {2,number,0.000} that the layers should give."),
    HIGHER(
            "The readings show R {0,number,0.000} m²·K/W, more than the {1,number,0.000} to {2,number,0.000} that the layers should give."),
    NONE_ENOUGH("None of the usual reasons would do alone. Check the thicknesses, the materials and the volume."),
    SOAKED_WRAP("Could be a wet wrap: soaked through, it would give {0,number,0.000}."),
    SQUASHED_WRAP("Could be a squashed wrap: at half its thickness it would give {0,number,0.000}."),
    GAP_AT_THE_LID("Could be a gap at the lid: with a bare lid the jar would give {0,number,0.000}."),
    COLDER_SURROUNDINGS("Could be surroundings {1,number,0.0} {2} colder than typed."),
    WARMER_SURROUNDINGS("Could be surroundings {1,number,0.0} {2} warmer than typed, such as a bath that warmed."),
    AIR_BETWEEN_LAYERS("Could be air between the layers: a still gap would bring it to {0,number,0.000}."),
    TAKEN_AS_SOAKED("The wrap is taken as soaked, for nothing waterproof is around it."),
    TOWARD(
            "In a tub this holds if COOL.RATE was given {0,number,0.0} {1} as the surroundings: with its lid in the air, the jar cools toward that.");

    private final String english;

    AgreementWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }

    static String of(Agreement agreement, DesignCells cells, Language language) {
        Scale scale = cells.scale();
        List<String> sentences = new ArrayList<>();
        sentences.add(language.say(
                onTheWhole(agreement),
                agreement.measured().value(),
                agreement.expected().low(),
                agreement.expected().high()));
        if (!agreement.agrees()) {
            for (Reason reason : agreement.enough()) {
                double value = agreement.reasons().getOrDefault(reason, Double.NaN);
                sentences.add(
                        language.say(of(reason), value, new TemperatureDifference(value).in(scale), scale.symbol()));
            }
            if (agreement.enough().isEmpty()) {
                sentences.add(language.words(NONE_ENOUGH));
            }
        }
        if (cells.design().isSoakedThere()) {
            sentences.add(language.words(TAKEN_AS_SOAKED));
        }
        if (cells.design().place().isTub()) {
            sentences.add(language.say(TOWARD, cells.flow().end().in(scale), scale.symbol()));
        }
        return String.join(" ", sentences);
    }

    private static Phrase onTheWhole(Agreement agreement) {
        if (agreement.agrees()) {
            return AGREE;
        }
        return agreement.measured().value() < agreement.expected().low() ? LOWER : HIGHER;
    }

    private static Phrase of(Reason reason) {
        return switch (reason) {
            case SOAKED_WRAP -> SOAKED_WRAP;
            case SQUASHED_WRAP -> SQUASHED_WRAP;
            case GAP_AT_THE_LID -> GAP_AT_THE_LID;
            case COLDER_SURROUNDINGS -> COLDER_SURROUNDINGS;
            case WARMER_SURROUNDINGS -> WARMER_SURROUNDINGS;
            case AIR_BETWEEN_LAYERS -> AIR_BETWEEN_LAYERS;
        };
    }
}
