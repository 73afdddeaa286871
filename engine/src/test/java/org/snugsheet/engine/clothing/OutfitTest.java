package org.snugsheet.engine.clothing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.PublishedTable;
import org.snugsheet.engine.quantity.Unit;

class OutfitTest {

    /**
     * All typical ensembles of ASHRAE Standard 55, Table 5.2.2.2A, in {@code clothing.csv} that name their garments. By the note
     * to the table all include shoes and briefs or panties, and all but those with panty hose include socks (ASHRAE
     * Handbook Fundamentals, chapter Thermal Comfort; from memory); skirts go with panty hose, and the thickness of cloth is
     * not said. The printed values were measured on a manikin.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Walking shorts, short-sleeve shirt "
                        + "| walking shorts; short-sleeve dress shirt; calf length socks; shoes; men's underwear",
                "Sweat pants, long-sleeve sweatshirt | sweatpants; sweatshirt; calf length socks; shoes; men's underwear",
                "Trousers, long-sleeve shirt | thick trousers; long-sleeve dress shirt; calf length socks; shoes; men's underwear",
                "Trousers, short-sleeve shirt, socks, shoes, underwear "
                        + "| thick trousers; short-sleeve dress shirt; calf length socks; shoes; men's underwear",
                "Knee-length skirt, short-sleeve shirt, sandals, underwear "
                        + "| thick skirt; short-sleeve dress shirt; sandals; panty hose; women's underwear; bra",
                "Knee-length skirt, long-sleeve shirt, full slip "
                        + "| thin skirt; long-sleeve dress shirt; full slip; panty hose; shoes; women's underwear",
                "Jacket, Trousers, long-sleeve shirt | single-breasted coat (thin); thick trousers; "
                        + "long-sleeve dress shirt; calf length socks; shoes; men's underwear"
            })
    void publishedEnsemblesComeOutWithinATwentiethOfAClo(String ensemble, String garments) {
        double published = PublishedTable.rows(OutfitTest.class, "clothing.csv").stream()
                .filter(row -> row.getOrDefault("name", "").equals(ensemble))
                .mapToDouble(row -> Double.parseDouble(row.getOrDefault("clo", "")))
                .findFirst()
                .orElseThrow();
        assertEquals(published, clo(outfit(garments.split(";", -1))), 0.05 + 1e-9);
    }

    /** ISO 9920:2007, after McCullough, Jones and Huck, ASHRAE Transactions 91 (1985): 0.161 + 0.835·ΣIclu; from memory. */
    @Test
    void itAgreesWithTheOtherSumForAWinterOutfit() {
        Outfit winter = outfit(
                "long underwear top",
                "long underwear bottoms",
                "thick trousers",
                "flannel shirt",
                "sweater",
                "parka",
                "gloves",
                "thick socks",
                "boots");
        double sum = clo(winter);
        assertTrue(sum > 0.7 && sum < 2.6, "sum " + sum);
        assertEquals(0.161 + 0.835 * sum, sum, 0.15 * sum);
    }

    @Test
    void twoThickLayersByHand() {
        // By hand: 0.28 + 0.70 = 0.98.
        assertEquals(0.98, clo(outfit("sweater", "parka")), 1e-12);
    }

    @Test
    void oneGarmentIsWhatTheTableSaysOfIt() {
        assertEquals(0.08, clo(outfit("T-shirt")), 1e-12);
    }

    @Test
    void moreGarmentsNeverLowerItAndTheirOrderDoesNotMatter() {
        Random random = new Random(9920);
        List<Garment> all = Garments.all();
        for (int i = 0; i < 500; i++) {
            List<Garment> worn = new ArrayList<>();
            double before = 0;
            for (int n = 0; n < 8; n++) {
                worn.add(random.nextInt(worn.size() + 1), all.get(random.nextInt(all.size())));
                double now = clo(new Outfit(worn));
                assertTrue(now > before);
                before = now;
            }
            List<Garment> turned = new ArrayList<>(worn);
            java.util.Collections.reverse(turned);
            assertEquals(before, clo(new Outfit(turned)), 1e-12);
        }
    }

    @Test
    void nothingIsNoOutfit() {
        assertSame(
                Problem.NO_GARMENTS,
                assertThrows(InvalidInputException.class, () -> new Outfit(List.of()))
                        .problem());
    }

    private static Outfit outfit(String... names) {
        return new Outfit(Stream.of(names).map(Garments::find).toList());
    }

    private static double clo(Outfit outfit) {
        return outfit.insulation().in(Unit.CLO);
    }
}
