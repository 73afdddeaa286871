package org.snugsheet.engine.clothing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.PublishedTable;
import org.snugsheet.engine.quantity.Unit;

/** Sources: ASHRAE Standard 55 and ISO 7730, in the file {@code clothing.csv} beside this test. */
class GarmentsTest {

    @TestFactory
    List<DynamicTest> garmentsAreAsPublished() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map<String, String> row : PublishedTable.rows(GarmentsTest.class, "clothing.csv")) {
            String name = cell(row, "name");
            if (cell(row, "kind").startsWith("garment")) {
                tests.add(DynamicTest.dynamicTest(name, () -> checkGarment(name, row)));
            }
        }
        assertEquals(tests.size(), Garments.all().size());
        assertEquals(60, tests.size(), "garments in the file");
        return tests;
    }

    private static void checkGarment(String name, Map<String, String> row) {
        Garment garment = Garments.find(name);
        assertEquals(name, garment.name());
        assertEquals(Double.parseDouble(cell(row, "clo")), garment.insulation().in(Unit.CLO), 1e-12);
        assertEquals(
                Double.parseDouble(cell(row, "m2K_W")), garment.insulation().squareMeterKelvinsPerWatt(), 1e-12);
        assertEquals(cell(row, "source"), garment.source());
        assertEquals(cell(row, "provenance"), garment.provenance().english());
        assertEquals(cell(row, "note"), garment.note());
    }

    @ParameterizedTest
    @CsvSource({
        "t-shirts, T-shirt",
        "Tee Shirt, T-shirt",
        "sweater, Sweater",
        "jumper, Sweater",
        "mittens, Gloves",
        "snow pants, 'Trousers, high-insulative fibre-pelt'",
        "Winter boots, Boots",
        "socks, Ankle socks",
        "jeans, Thick trousers",
        "short-sleeve dress shirt, Short-sleeve dress shirt",
        "top long underwear, Long underwear top",
        "hoodie, Long-sleeve sweat shirt"
    })
    void namesMayBeTypedLoosely(String typed, String name) {
        assertEquals(name, Garments.find(typed).name());
    }

    @Test
    void anUnknownGarmentIsRefusedWithTheNearestName() {
        InvalidInputException near = assertThrows(InvalidInputException.class, () -> Garments.find("sweatter"));
        assertSame(Problem.UNKNOWN_GARMENT_NEAR, near.problem());
        assertTrue(near.finding().sentence().contains("Sweater"), near.finding().sentence());
        assertSame(
                Problem.UNKNOWN_GARMENT,
                assertThrows(InvalidInputException.class, () -> Garments.find("zzzzzzzz"))
                        .problem());
    }

    @Test
    void inAListTheRefusalNamesItsRow() {
        InvalidInputException near = assertThrows(InvalidInputException.class, () -> Garments.find("parkka", 3));
        assertEquals(OptionalInt.of(3), near.row());
        assertTrue(
                near.finding().sentence().startsWith("Row 3: “parkka”"),
                near.finding().sentence());
        InvalidInputException unknown = assertThrows(InvalidInputException.class, () -> Garments.find("zzzzzzzz", 2));
        assertEquals(OptionalInt.of(2), unknown.row());
    }

    @Test
    void garmentsOfAKindCanBeListed() {
        List<Garment> socks = Garments.with("socks");
        assertTrue(socks.size() >= 4);
        assertTrue(socks.stream().allMatch(garment -> garment.name().contains("socks")));
        assertThrows(InvalidInputException.class, () -> Garments.with("umbrella"));
    }

    @Test
    void everyGarmentSaysWhereItsFigureComesFrom() {
        for (Garment garment : Garments.all()) {
            assertFalse(garment.source().isBlank(), garment.name());
        }
    }

    @Test
    void everyGarmentIsKnownByItsNamesInOtherLanguagesAndShownByTheFirst() {
        for (Locale language : List.of(Locale.forLanguageTag("es"), Locale.FRENCH, Locale.GERMAN)) {
            for (Garment garment : Garments.all()) {
                String name = Garments.nameIn(garment, language);
                assertEquals(garment, Garments.find(name), name);
            }
        }
        assertEquals("Parka", Garments.nameIn(Garments.find("parka"), Locale.US));
        assertEquals(Garments.find("boots"), Garments.find("Stiefel"));
    }

    private static String cell(Map<String, String> row, String column) {
        return row.getOrDefault(column, "");
    }
}
