package org.snugsheet.engine.clothing;

import java.util.List;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;

/**
 * Garments worn together.
 *
 * @param garments at least one
 */
public record Outfit(List<Garment> garments) {

    // Of whole outfits, so that the first 0.161 clo stand for what a body and the air held by any clothes give; layers
    // on one
    // another press and cover each other, so that each counts only for 0.835.
    private static final double CONSTANT_CLO = 0.161;
    private static final double SHARE = 0.835;

    /**
     * An outfit.
     *
     * @throws Refusal if there is no garment
     */
    public Outfit {
        garments = List.copyOf(garments);
        if (garments.isEmpty()) {
            throw Refusal.of(Trouble.NO_GARMENTS);
        }
    }

    /**
     * The insulation of the whole outfit, Icl = 0.161 + 0.835·ΣIclu in clo.
     *
     * <p>Source: ISO 9920:2007, summation of garments, after McCullough, Jones and Huck, ASHRAE Transactions 91 (1985) (from
     * memory). ISO 9920 and ASHRAE Standard 55 also allow the plain sum ΣIclu (Olesen, ASHRAE Transactions 1985, HI-85-09
     * no. 4, found on outfits from 0.7 to 2.6 clo). The two agree near 1 clo; for many layers this one gives less and so errs
     * on the warm side of what to wear. It is made for whole outfits: of a single shirt it says too much.
     *
     * @return its insulation on an adult who stands in nearly still air
     */
    public ThermalResistance insulation() {
        double sum = garments.stream()
                .mapToDouble(garment -> garment.insulation().in(Unit.CLO))
                .sum();
        return ThermalResistance.of(CONSTANT_CLO + SHARE * sum, Unit.CLO);
    }
}
