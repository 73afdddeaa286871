package org.snugsheet.engine.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.quantity.Mass;
import org.snugsheet.engine.quantity.Unit;

class VesselMaterialTest {

    /**
     * A second table for each, the summary of https://material-properties.org/heat-capacity-of-materials (retrieved), in
     * J/(kg·K): one name covers kinds that differ by a fifth.
     */
    @ParameterizedTest
    @CsvSource({
        "GLASS, 840",
        "CERAMIC, 1050",
        "STEEL, 510",
        "STAINLESS_STEEL, 500",
        "ALUMINUM, 896",
        "COPPER, 380",
        "POLYPROPYLENE, 1700",
        "POLYETHYLENE, 1550",
        "POLYSTYRENE, 1100",
        "POLYCARBONATE, 1200"
    })
    void anotherPublishedTableSaysNearlyTheSame(VesselMaterial material, double published) {
        assertEquals(published, material.specificHeat(), 0.2 * published);
    }

    /** Textbook: Halliday, Resnick and Walker, Fundamentals of Physics, Table 18-3: glass 0.20 cal/(g·K) = 840 J/(kg·K). */
    @Test
    void aGlassJarHoldsAsMuchHeatAsAFifthOfItsMassInWater() {
        assertEquals(
                168, VesselMaterial.GLASS.heatCapacity(Mass.of(200, Unit.GRAM)).joulesPerKelvin(), 1e-9);
    }

    @ParameterizedTest
    @EnumSource(VesselMaterial.class)
    void everyMaterialIsFoundByItsNameHoweverTyped(VesselMaterial material) {
        assertEquals(Optional.of(material), VesselMaterial.find(material.english()));
        assertEquals(
                Optional.of(material),
                VesselMaterial.find(" " + material.english().toUpperCase(Locale.ROOT) + " "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "plastic", "wool"})
    void otherNamesFindNothing(String name) {
        assertEquals(Optional.empty(), VesselMaterial.find(name));
    }

    @Test
    void noTwoMaterialsShareAName() {
        Set<String> names = new HashSet<>();
        for (VesselMaterial material : VesselMaterial.values()) {
            assertEquals(true, names.add(material.english()), material.english());
        }
    }
}
