package org.snugsheet.engine.surface;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.table.Keywords;

/**
 * Where a jar stands, as far as it sets how easily heat leaves its outermost surface.
 *
 * <pre>{@code
 * Ambient.parse("still air");
 * Ambient.parse("wind 20 km/h");
 * Ambient.parse("stirred water");
 * }</pre>
 */
public sealed interface Ambient permits StillAir, Wind, StillWater, StirredWater, KnownSurface {

    /**
     * The resistance between a surface and the place, at the temperatures they have.
     *
     * @param face the surface
     * @param surface how warm the surface is
     * @param place how warm it is farther away
     * @return the surface resistance; {@link ThermalResistance#NONE} where they touch
     * @throws InvalidInputException if there is no such place at that temperature, such as liquid water below 0 °C
     */
    ThermalResistance resistance(Face face, Temperature surface, Temperature place);

    /**
     * Whether a jar stands in it up to its neck: a tub of water, whose surface the lid looks out of.
     *
     * @return true in water
     */
    default boolean isTub() {
        return false;
    }

    /**
     * Finds a place by its words. A wind without a unit is in km/h.
     *
     * @param text {@code still air}, {@code wind 20 km/h}, {@code still water}, {@code stirred water} or {@code contact};
     *     case does not matter
     * @return the place
     * @throws InvalidInputException if it is none of them
     */
    static Ambient parse(String text) {
        String words = Keywords.PLACE.plain(text).replaceAll("\\s+", " ");
        return switch (words) {
            case "still air", "air" -> new StillAir();
            case "still water", "water" -> new StillWater();
            case "stirred water" -> new StirredWater();
            case "contact" -> KnownSurface.CONTACT;
            default -> Wind.inWords(words).orElseThrow(() -> InvalidInputException.of(Problem.UNKNOWN_PLACE, text));
        };
    }
}
