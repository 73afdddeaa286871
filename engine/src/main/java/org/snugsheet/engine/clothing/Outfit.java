package org.snugsheet.engine.clothing;

import java.util.List;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * Garments worn together.
 *
 * @param garments at least one
 */
public record Outfit(List<Garment> garments) {

    /**
     * An outfit.
     *
     * @throws InvalidInputException if there is no garment
     */
    public Outfit {
        garments = List.copyOf(garments);
        if (garments.isEmpty()) {
            throw InvalidInputException.of(Problem.NO_GARMENTS);
        }
    }

    /**
     * The insulation of the whole outfit, Icl = ΣIclu.
     *
     * <p>Source: ANSI/ASHRAE Standard 55, whose garment values are made to be added up; Olesen, ASHRAE Transactions 1985,
     * HI-85-09 no. 4, who found the sum right on outfits from 0.7 to 2.6 clo; also allowed by ISO 9920:2007. The other sum of
     * ISO 9920, 0.161 + 0.835·ΣIclu (from memory), is for whole indoor outfits only: it gives a T-shirt alone 0.23 clo
     * instead of 0.08, and walking shorts and a short-sleeve shirt 0.46 instead of the 0.36 that the standard prints.
     *
     * @return its insulation for a standing adult in nearly still air
     */
    public ThermalResistance insulation() {
        return garments.stream().map(Garment::insulation).reduce(ThermalResistance.NONE, ThermalResistance::plus);
    }
}
