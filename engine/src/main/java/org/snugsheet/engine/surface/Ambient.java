package org.snugsheet.engine.surface;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.table.Keywords;

/**
 * The ambient of a jar, as far as it determines the heat transfer at its outermost surface.
 *
 * <pre>{@code
 * Ambient.parse("still air");
 * Ambient.parse("wind 20 km/h");
 * Ambient.parse("stirred water");
 * }</pre>
 */
public sealed interface Ambient permits StillAir, Wind, StillWater, StirredWater, KnownSurface {

    /**
     * The resistance between a surface and the place, at their temperatures.
     *
     * @param face the surface
     * @param surface the temperature of the surface
     * @param place the temperature farther away
     * @return the surface resistance; {@link ThermalResistance#NONE} where they touch
     * @throws InvalidInputException if such a place cannot have that temperature, such as liquid water below 0 °C
     */
    ThermalResistance resistance(Face face, Temperature surface, Temperature place);

    /**
     * Whether it is a tub of water, in which a jar stands up to its neck with the lid above the surface.
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
     * @throws InvalidInputException if it is not one of them
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
