package org.snugsheet.engine.clothing;

import java.util.List;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.insulation.Condition;
import org.snugsheet.engine.insulation.Figure;
import org.snugsheet.engine.insulation.Material;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * The covering of an animal. Its conductivity is that of the same material in {@link Materials}, with the range of its
 * sources: living fur and blubber can be fluffed up, wet or warmed by blood, so the range matters more than the digits.
 *
 * @param material the material; dry, unless its name says otherwise
 */
public record Covering(Material material) {

    /** Which materials cover animals. */
    private static final List<String> NAMES = List.of("fur", "wool", "down", "feathers", "blubber");

    /**
     * All animal coverings.
     *
     * @return the coverings, hairy ones first
     */
    public static List<Covering> all() {
        return NAMES.stream()
                .map(name -> new Covering(Materials.find(name, Condition.DRY)))
                .toList();
    }

    /**
     * Finds a covering by name. Case, plural and the order of words do not matter, and other usual names are accepted.
     *
     * @param name its name, such as {@code fur}
     * @return the covering
     * @throws InvalidInputException if it covers no animal, nobody here knows it, or not as wet as that
     */
    public static Covering find(String name) {
        Material material;
        try {
            material = Materials.find(name);
        } catch (InvalidInputException refusal) {
            if (refusal.problem() == Problem.NO_SUCH_CONDITION) {
                throw refusal;
            }
            throw InvalidInputException.of(Problem.NO_COVERING, name.strip());
        }
        if (!NAMES.contains(material.name())) {
            throw InvalidInputException.of(Problem.NO_COVERING, name.strip());
        }
        return new Covering(material);
    }

    /**
     * The resistance of a layer of it: thickness divided by conductivity.
     *
     * @param thickness its thickness on the animal
     * @param figure the least, typical or greatest resistance that the sources give it
     * @return the resistance
     */
    public ThermalResistance resistance(Length thickness, Figure figure) {
        Figure conductivity = switch (figure) {
            case LOW -> Figure.HIGH;
            case TYPICAL -> Figure.TYPICAL;
            case HIGH -> Figure.LOW;
        };
        return material.conductivity(conductivity).through(thickness);
    }
}
