package org.snugsheet.engine.jar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.insulation.Layer;
import org.snugsheet.engine.insulation.Layers;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.surface.StillAir;

/** Properties: each case makes a jar that really has the fault, and asks whether the fault is among the reasons. */
class AgreementTest {

    private static final Temperature WATER = new Temperature(35);
    private static final Temperature AROUND = new Temperature(5);
    private static final Jar JAR = Jar.holding(Volume.of(300, Unit.MILLILITER), Length.of(35, Unit.MILLIMETER));
    private static final Design DESIGN = new Design(
            JAR, Layers.NONE.with(20, "wool"), new ThermalResistance(0.4), new ThermalResistance(0.4), new StillAir());

    @Test
    void whatTheLayersGiveAgreesWithThem() {
        Agreement agreement = judge(DESIGN, AROUND);
        assertTrue(agreement.agrees());
        assertTrue(agreement.reasons().isEmpty());
        assertTrue(agreement.expected().low() < agreement.typical());
        assertTrue(agreement.typical() < agreement.expected().high());
    }

    @Test
    void aWetWrapIsToldAndSquashingIsRuledOut() {
        Design wet = DESIGN.withSide(DESIGN.side().each(layer -> layer.withConductivity(Materials.WATER)));
        Agreement agreement = judge(wet, AROUND);
        assertFalse(agreement.agrees());
        assertTrue(agreement.enough().contains(Reason.SOAKED_WRAP));
        assertFalse(agreement.enough().contains(Reason.SQUASHED_WRAP));
    }

    @Test
    void aSquashedWrapIsTold() {
        Design squashed = DESIGN.withSide(DESIGN.side()
                .each(layer -> layer.atWorst().withThickness(Length.of(8, Unit.MILLIMETER))));
        Agreement agreement = judge(squashed, AROUND);
        assertTrue(agreement.reasons().containsKey(Reason.SQUASHED_WRAP));
        assertTrue(agreement.enough().contains(Reason.SOAKED_WRAP), "a wet wrap could do as much");
    }

    @Test
    void aBareLidIsTold() {
        Agreement agreement =
                judge(DESIGN.withSide(DESIGN.side().each(Layer::atWorst)).withBareLid(), AROUND);
        assertTrue(agreement.enough().contains(Reason.GAP_AT_THE_LID), agreement.toString());
    }

    @Test
    void surroundingsThatWereWarmerAreToldByHowMuch() {
        // The fit divides the loss by 30 K, but the bath had warmed by 4 K: the resistance seems larger by 30/26.
        Layers known = Layers.NONE.with(20, 0.05);
        double truth =
                DESIGN.withSide(known).between(WATER, AROUND).resistance().squareMeterKelvinsPerWatt();
        Agreement agreement =
                Agreement.of(new Estimate(truth * 30 / 26, 0.001, 10), 0.95, DESIGN.withSide(known), WATER, AROUND);
        assertEquals(4, agreement.reasons().getOrDefault(Reason.WARMER_SURROUNDINGS, Double.NaN), 1e-9);
        assertEquals(List.of(Reason.WARMER_SURROUNDINGS), agreement.enough(), "a gap of air would not do");
    }

    @Test
    void squashingHalvesWhatGivesAndNothingElse() {
        Design glassAndWool = DESIGN.withSide(Layers.NONE.with(3, "glass").with(20, "wool"));
        Agreement agreement = Agreement.of(new Estimate(0.05, 0.001, 10), 0.95, glassAndWool, WATER, AROUND);
        double squashed = DESIGN.withSide(
                        Layers.NONE.with(3, "glass").with(10, "wool").each(Layer::atWorst))
                .between(WATER, AROUND)
                .resistance()
                .squareMeterKelvinsPerWatt();
        assertEquals(squashed, agreement.reasons().getOrDefault(Reason.SQUASHED_WRAP, Double.NaN), 1e-12);
    }

    @Test
    void glassIsNeitherSoakedNorSquashed() {
        Design glass = DESIGN.withSide(Layers.NONE.with(3, "glass"));
        Agreement agreement = Agreement.of(new Estimate(0.02, 0.001, 10), 0.95, glass, WATER, AROUND);
        assertFalse(agreement.agrees());
        assertFalse(agreement.reasons().containsKey(Reason.SOAKED_WRAP));
        assertFalse(agreement.reasons().containsKey(Reason.SQUASHED_WRAP));
        assertTrue(agreement.reasons().containsKey(Reason.GAP_AT_THE_LID));
        Agreement bareLid = Agreement.of(new Estimate(0.02, 0.001, 10), 0.95, glass.withBareLid(), WATER, AROUND);
        assertFalse(bareLid.reasons().containsKey(Reason.GAP_AT_THE_LID));
    }

    @Test
    void airGetsBetweenLayersOnlyWhereThereAreAny() {
        assertTrue(Agreement.of(new Estimate(2, 0.001, 10), 0.95, DESIGN, WATER, AROUND)
                .reasons()
                .containsKey(Reason.AIR_BETWEEN_LAYERS));
        assertFalse(Agreement.of(new Estimate(2, 0.001, 10), 0.95, DESIGN.withSide(Layers.NONE), WATER, AROUND)
                .reasons()
                .containsKey(Reason.AIR_BETWEEN_LAYERS));
    }

    /** Surroundings colder by x of 30 K make the resistance seem smaller by 30/(30 + x); a few kelvins nobody notices, 15 one does. */
    @Test
    void colderSurroundingsAreReasonEnoughOnlyIfNobodyNoticed() {
        Design known = DESIGN.withSide(Layers.NONE.with(20, 0.05));
        double truth = known.between(WATER, AROUND).resistance().squareMeterKelvinsPerWatt();
        for (double colder : new double[] {2, 15}) {
            Agreement agreement =
                    Agreement.of(new Estimate(truth * 30 / (30 + colder), 0.0001, 10), 0.95, known, WATER, AROUND);
            assertEquals(colder, agreement.reasons().getOrDefault(Reason.COLDER_SURROUNDINGS, Double.NaN), 1e-9);
            assertEquals(colder == 2, agreement.enough().contains(Reason.COLDER_SURROUNDINGS));
        }
    }

    private static Agreement judge(Design really, Temperature around) {
        double resistance = really.between(WATER, around).resistance().squareMeterKelvinsPerWatt();
        return Agreement.of(new Estimate(resistance, 0.002, 10), 0.95, DESIGN, WATER, AROUND);
    }
}
