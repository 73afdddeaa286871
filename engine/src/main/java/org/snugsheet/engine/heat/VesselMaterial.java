package org.snugsheet.engine.heat;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.snugsheet.engine.quantity.HeatCapacity;
import org.snugsheet.engine.quantity.Mass;

/**
 * Materials of jars, cups and cans, with a typical specific heat near room temperature.
 *
 * <p>Published figures for one material differ by a tenth and more, since the name covers many kinds; that is little compared
 * with the 4.2 kJ/K of each liter of water. “EN 12524” is EN 12524:2000, Table 1 (now ISO 10456:2007, Table 3), as carried in
 * the VDI Heat Atlas and the public repository CalebBell/ht, ht/insulation.py.
 */
public enum VesselMaterial {
    /** Glass. Halliday, Resnick and Walker, Fundamentals of Physics, Table 18-3; EN 12524 has 750 for soda-lime glass. */
    GLASS(840, "glass"),
    /** Porcelain and glazed ceramic. EN 12524, tiles of ceramic or porcelain. */
    CERAMIC(840, "ceramic", "porcelain", "china", "stoneware"),
    /** Steel, tinned for cans. EN 12524. */
    STEEL(450, "steel", "tin can", "can"),
    /** Stainless steel. EN 12524. */
    STAINLESS_STEEL(460, "stainless steel"),
    /** Aluminum and its alloys. EN 12524; 900 for the pure metal in Halliday, Resnick and Walker, Table 18-3. */
    ALUMINUM(880, "aluminum", "aluminium"),
    /** Copper. EN 12524. */
    COPPER(380, "copper"),
    /** Polypropylene, PP, resin code 5: yogurt cups, lunch boxes. EN 12524. */
    POLYPROPYLENE(1800, "polypropylene", "pp"),
    /** Polyethylene of high density, HDPE, resin code 2: milk bottles, pails. EN 12524. */
    POLYETHYLENE(1800, "polyethylene", "hdpe", "pe"),
    /** PET, resin code 1: drink bottles. Material-properties.org, heat capacity of materials; others give 1000 to 1470. */
    PET(1250, "pet", "pete"),
    /** Polystyrene, PS, resin code 6: clear cups, and foam cups by their weight. EN 12524. */
    POLYSTYRENE(1300, "polystyrene", "ps"),
    /** Acrylic glass, PMMA. EN 12524. */
    ACRYLIC(1500, "acrylic", "pmma"),
    /** Polycarbonate, PC. EN 12524. */
    POLYCARBONATE(1200, "polycarbonate", "pc"),
    /** Paper and cardboard cups. ASHRAE Handbook of Fundamentals, laminated paperboard, as carried in CalebBell/ht. */
    PAPER(1380, "paper", "cardboard", "paperboard");

    private final double specificHeat;

    @SuppressWarnings("ImmutableEnumChecker") // never leaves this class
    private final String[] names;

    VesselMaterial(double specificHeat, String... names) {
        this.specificHeat = specificHeat;
        this.names = names;
    }

    /**
     * Finds a material by a usual name. Case and blanks around it do not matter. The bare word “plastic” finds none, since
     * plastics differ by a half.
     *
     * @param text such as {@code glass}, {@code Stainless steel}, {@code PP}
     * @return the material, or empty if it is not one of these
     */
    public static Optional<VesselMaterial> find(String text) {
        String name = text.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(material -> Arrays.asList(material.names).contains(name))
                .findFirst();
    }

    /**
     * The name by which it is listed.
     *
     * @return its English name
     */
    public String english() {
        return names[0];
    }

    /**
     * Its specific heat.
     *
     * @return J/(kg·K)
     */
    public double specificHeat() {
        return specificHeat;
    }

    /**
     * The heat capacity of a vessel of this material, {@code C = m·c}.
     *
     * @param mass the mass of the empty vessel
     * @return its heat capacity
     */
    public HeatCapacity heatCapacity(Mass mass) {
        return new HeatCapacity(mass.kilograms() * specificHeat);
    }
}
