package org.snugsheet.engine.insulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.PublishedTable;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.water.Water;

/** How materials are found. Their figures are checked in {@link MaterialTableTest}. */
class MaterialsTest {

    @Test
    void thereAreAboutSixtyInAllConditionsEachOnce() {
        Set<String> names = new HashSet<>();
        Set<String> rows = new HashSet<>();
        for (Material material : Materials.all()) {
            names.add(material.name());
            assertTrue(rows.add(material.name() + material.condition()), material.name());
        }
        assertTrue(names.size() >= 55 && names.size() <= 80, () -> names.size() + " materials");
        assertThrows(UnsupportedOperationException.class, () -> Materials.all().clear());
    }

    @Test
    void eachIsFoundByItsOwnNameInItsOwnCondition() {
        for (Material material : Materials.all()) {
            assertSame(material, Materials.find(material.name(), material.condition()));
            assertSame(material, Materials.find(material.name().toUpperCase(Locale.ROOT), material.condition()));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "Wool, wool",
        "woollen socks, wool",
        "Woolen  Socks, wool",
        "socks (wool), wool",
        "cotton, cotton cloth",
        "t-shirt, cotton cloth",
        "T-Shirts, cotton cloth",
        "cottonwool, cotton wool",
        "Cotton-wool balls, cotton wool",
        "news paper, newspaper",
        "Newspapers, newspaper",
        "tin foil, aluminum foil",
        "aluminium foil, aluminum foil",
        "foil (aluminium), aluminum foil",
        "bubblewrap, small bubble wrap",
        "Bubble Wrap, small bubble wrap",
        "styrofoam, polystyrene foam",
        "polar fleece, fleece",
        "Leaf, leaves",
        "dry leaves, leaves",
        "fallen leaves, leaves",
        "snow, settled snow",
        "snow (fresh), fresh snow",
        "feather, feathers",
        "cardboard boxes, corrugated cardboard",
        "glass, glass",
        "glass jars, glass",
        "balloons, rubber",
        "föil, aluminum foil"
    })
    void namesMatchLoosely(String typed, String name) {
        assertEquals(name, Materials.find(typed).name());
        assertEquals(Materials.find(name).typical(), Materials.conductivityOf(typed));
    }

    @ParameterizedTest
    @CsvSource({
        "sand, sand, DRY",
        "dry sand, sand, DRY",
        "damp sand, sand, DAMP",
        "Sand (moist), sand, DAMP",
        "'sand, wet', sand, SOAKED",
        "WET WOOL, wool, SOAKED",
        "soaked cotton, cotton cloth, SOAKED",
        "wet woollen socks, wool, SOAKED"
    })
    void theConditionMayStandWithTheName(String typed, String name, Condition condition) {
        assertEquals(Materials.find(name, condition), Materials.find(typed));
    }

    @Test
    void wetterNeverKeepsHeatBetter() {
        // Water conducts about 0.6 W/(m·K), still air about 0.026 (NIST; IAPWS R15-11): wet stuff conducts more than
        // dry.
        for (Material wet : Materials.all()) {
            if (wet.condition() != Condition.DRY) {
                Material dry = Materials.find(wet.name());
                assertTrue(wet.typical().compareTo(dry.typical()) > 0, wet.name());
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "fleese, fleece",
        "flece, fleece",
        "wol, wool",
        "newspapper, newspaper",
        "newspapre, newspaper",
        "polystirene foam, polystyrene foam",
        "fethers, feathers",
        "sock, wool sock",
        "wooly jumper, wool jumper",
        "wet fleese, fleece"
    })
    void anUnknownNameNearAKnownOneIsRefusedWithASuggestion(String typed, String meant) {
        InvalidInputException refusal = assertThrows(InvalidInputException.class, () -> Materials.find(typed));
        assertSame(Problem.UNKNOWN_MATERIAL_NEAR, refusal.problem());
        assertEquals(OptionalInt.empty(), refusal.row());
        String sentence = refusal.finding().sentence();
        assertTrue(sentence.contains("“" + typed + "”"), sentence);
        assertTrue(sentence.endsWith("Did you mean “" + meant + "”?"), sentence);
        assertEquals(Materials.find(meant).typical(), Materials.conductivityOf(meant), "the suggestion is of use");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "kryptonite", "12", "wet", "?!", "zzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzz"})
    void anUnknownNameFarFromAllIsRefusedWithout(String typed) {
        InvalidInputException refusal = assertThrows(InvalidInputException.class, () -> Materials.find(typed));
        assertSame(Problem.UNKNOWN_MATERIAL, refusal.problem());
        assertTrue(refusal.finding().sentence().contains("“" + typed.strip() + "”"));
    }

    @Test
    void aCellFullOfTextIsRefusedAtOnce() {
        String essay = "wool and felt ".repeat(5000);
        assertThrows(InvalidInputException.class, () -> Materials.find(essay));
    }

    @Test
    void aConditionNothingIsKnownAboutIsRefusedWithThoseThatAre() {
        InvalidInputException refusal =
                assertThrows(InvalidInputException.class, () -> Materials.find("neoprene", Condition.SOAKED));
        assertSame(Problem.NO_SUCH_CONDITION, refusal.problem());
        assertEquals(
                "Nothing is known here about soaked neoprene, only when it is dry. Use that, or type its conductivity.",
                refusal.getMessage());
        assertSame(
                Problem.NO_SUCH_CONDITION,
                assertThrows(InvalidInputException.class, () -> Materials.find("damp wool"))
                        .problem());
    }

    /**
     * Water in place of the air: 0.6 W/(m·K) of EN 12524 at 10 °C, between the 0.5557 and the 0.5984 that IAPWS R15-11 gives at 0 °C
     * and 20 °C (water.csv), but for the third digit. What is published for soaked stuff itself, such as sand, goes before.
     */
    @Test
    void soakedStuffConductsAsTheWaterInItDoes() {
        for (String name : List.of("wool", "fleece", "cotton cloth", "feathers", "newspaper")) {
            Material soaked = Materials.find(name, Condition.SOAKED);
            assertEquals(0.6, soaked.typical().wattsPerMeterKelvin());
            assertEquals(soaked, Materials.soaked(Materials.find(name)));
            assertEquals(
                    Water.conductivity(new Temperature(10)), soaked.typical().wattsPerMeterKelvin(), 0.021);
        }
        assertEquals(Materials.find("sand", Condition.SOAKED), Materials.soaked(Materials.find("sand")));
        assertTrue(Materials.find("wet sand").typical().wattsPerMeterKelvin() > 1);
    }

    @ParameterizedTest
    @CsvSource({"dry, DRY", "Damp, DAMP", "' moist ', DAMP", "WET, SOAKED", "soaked, SOAKED"})
    void conditionsAreUnderstood(String typed, Condition condition) {
        assertSame(condition, Condition.parse(typed));
        assertSame(condition, Condition.parse(condition.english()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "soggy", "dry damp"})
    void anyOtherConditionIsRefused(String typed) {
        assertSame(
                Problem.UNKNOWN_CONDITION,
                assertThrows(InvalidInputException.class, () -> Condition.parse(typed))
                        .problem());
    }

    @ParameterizedTest
    @CsvSource({
        "lana, wool",
        "Calcetines de lana, wool",
        "periódico, newspaper",
        "papel de aluminio, aluminum foil",
        "laine, wool",
        "papier journal, newspaper",
        "ÉCHARPE EN LAINE, wool",
        "neige, settled snow",
        "Wolle, wool",
        "Wollsocken, wool",
        "Zeitung, newspaper",
        "Alufolie, aluminum foil",
        "Laub, leaves"
    })
    void eachIsFoundInTheOtherLanguagesToo(String typed, String name) {
        assertEquals(name, Materials.find(typed).name());
    }

    @ParameterizedTest
    @CsvSource({"arena mojada, SOAKED", "sable humide, DAMP", "nasser Sand, SOAKED", "trockener Sand, DRY"})
    void soAreTheConditions(String typed, Condition condition) {
        assertSame(Materials.find("sand", condition), Materials.find(typed));
    }

    @Test
    void everyMaterialHasANameInEveryLanguage() {
        Set<String> translated = new HashSet<>();
        for (Map<String, String> row : PublishedTable.rows(Materials.class, "material-names.csv")) {
            row.forEach((language, names) -> assertFalse(names.isBlank(), () -> language + " " + row));
            translated.add(row.getOrDefault("name", ""));
        }
        assertEquals(Materials.all().stream().map(Material::name).collect(Collectors.toSet()), translated);
    }

    @Test
    void aSlipInAnotherLanguageIsMetWithANameInIt() {
        InvalidInputException refusal = assertThrows(InvalidInputException.class, () -> Materials.find("Alufolje"));
        assertTrue(
                refusal.finding().sentence().contains("Alufolie"),
                refusal.finding().sentence());
    }
}
