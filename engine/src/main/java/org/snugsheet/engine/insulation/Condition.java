package org.snugsheet.engine.insulation;

import java.util.Locale;
import java.util.Optional;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;

/** How much water a material holds. Water carries heat about twenty times better than the air it pushes out. */
public enum Condition {
    /** As it lies in the room: no water added. Ice, water and metals have this condition alone. */
    DRY("dry"),
    /** Moist to the touch, nothing drips. */
    DAMP("damp"),
    /** As wet as it gets. */
    SOAKED("soaked");

    private final String english;

    Condition(String english) {
        this.english = english;
    }

    /**
     * Finds a condition by its word.
     *
     * @param text {@code dry}, {@code damp} or {@code soaked}, or another usual word; case and outer blanks do not
     *     matter
     * @return the condition
     * @throws Refusal if it is none of them
     */
    public static Condition parse(String text) {
        return of(text.strip().toLowerCase(Locale.ROOT)).orElseThrow(() -> Refusal.of(Trouble.UNKNOWN_CONDITION, text));
    }

    /**
     * The word for this condition in English.
     *
     * @return its word
     */
    public String english() {
        return english;
    }

    static Optional<Condition> of(String word) {
        return switch (word) {
            case "dry" -> Optional.of(DRY);
            case "damp", "moist" -> Optional.of(DAMP);
            case "soaked", "wet", "soaking", "saturated", "sodden" -> Optional.of(SOAKED);
            default -> Optional.empty();
        };
    }
}
