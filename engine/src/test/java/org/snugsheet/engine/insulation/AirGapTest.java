package org.snugsheet.engine.insulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.PublishedTable;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.surface.Ambient;

/** Unventilated air layers against ISO 6946 as carried in {@code surface-resistance.csv}. */
class AirGapTest {

    @TestFactory
    List<DynamicTest> gapsAreAsResistantAsTheStandardSays() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map<String, String> row : PublishedTable.rows(Ambient.class, "surface-resistance.csv")) {
            double millimeters = row.getOrDefault("thickness_mm", "").isEmpty()
                    ? 0
                    : Double.parseDouble(row.getOrDefault("thickness_mm", ""));
            if ("air layer".equals(row.get("kind"))
                    && "horizontal".equals(row.get("heat_flow_direction"))
                    && millimeters > 0) {
                double resistance = Double.parseDouble(row.getOrDefault("value", ""));
                tests.add(DynamicTest.dynamicTest(
                        millimeters + " mm", () -> assertEquals(resistance, resistance(millimeters), 1e-12)));
            }
        }
        assertEquals(8, tests.size());
        return tests;
    }

    @Test
    void betweenTheRowsItIsLinearUpToTheLast() {
        assertEquals(0.14, resistance(8.5), 1e-12);
        assertEquals(0.055, resistance(2.5), 1e-12);
        assertEquals(0.18, resistance(300), 1e-12);
    }

    @Test
    void aLayerMayBeCalledAnAirGap() {
        assertEquals(
                0.15, FlatWrap.of(Layers.NONE.with(10, "Air gap")).resistance().squareMeterKelvinsPerWatt(), 1e-12);
    }

    /** Air that nothing holds still turns over, and heat is radiated through it: 50 mm of it keep in what the standard gives. */
    @ParameterizedTest
    @ValueSource(strings = {"air", "still air", "Luft", "aire", "air immobile"})
    void aLayerOfAirIsAnAirGapInEveryLanguage(String name) {
        assertEquals(0.18, FlatWrap.of(Layers.NONE.with(50, name)).resistance().squareMeterKelvinsPerWatt(), 1e-12);
    }

    private static double resistance(double millimeters) {
        return AirGap.upright(Length.of(millimeters, Unit.MILLIMETER))
                .resistance()
                .squareMeterKelvinsPerWatt();
    }
}
