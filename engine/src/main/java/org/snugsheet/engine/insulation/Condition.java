package org.snugsheet.engine.insulation;

import java.util.Optional;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.table.Names;

/** How much water a material holds. Water conducts heat about twenty times better than the air it replaces. */
public enum Condition implements Phrase {
    /** As it is in a room, without added water. Ice, water and metals have only this condition. */
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
     * @param text {@code dry}, {@code damp} or {@code soaked}, or another usual word in English, Spanish, French or
     *     German; case, accents and outer blanks do not matter
     * @return the condition
     * @throws InvalidInputException if it is not one of them
     */
    public static Condition parse(String text) {
        return of(String.join(" ", Names.words(text)))
                .orElseThrow(() -> InvalidInputException.of(Problem.UNKNOWN_CONDITION, text));
    }

    @Override
    public String english() {
        return english;
    }

    /** As {@link #parse(String)}, of a word without accents and in lower case. */
    static Optional<Condition> of(String word) {
        return switch (word) {
            case "dry", "seco", "seca", "sec", "seche", "trocken", "trockene", "trockener", "trockenes" ->
                Optional.of(DRY);
            case "damp", "moist", "humedo", "humeda", "humide", "feucht", "feuchte", "feuchter", "feuchtes" ->
                Optional.of(DAMP);
            case "soaked", "wet", "soaking", "saturated", "sodden" -> Optional.of(SOAKED);
            case "mojado", "mojada", "empapado", "empapada" -> Optional.of(SOAKED);
            case "mouille", "mouillee", "trempe", "trempee" -> Optional.of(SOAKED);
            case "nass", "nasse", "nasser", "nasses" -> Optional.of(SOAKED);
            default -> Optional.empty();
        };
    }
}
