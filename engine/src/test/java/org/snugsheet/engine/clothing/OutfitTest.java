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
import org.snugsheet.engine.PublishedTable;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.quantity.Unit;

class OutfitTest {

    /**
     * Typical ensembles of ASHRAE Standard 55, Table 5.2.2.2A, in {@code clothing.csv}, taken apart into its garments. It does
     * not print which ones; socks, shoes and underwear are in all of them (note to the table, from memory), and cloth of
     * middle weight lies between the thin and the thick rows.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Sweat pants, long-sleeve sweatshirt | sweatpants; sweatshirt; socks; shoes; men's underwear",
                "Trousers, long-sleeve shirt | thick trousers; long-sleeve dress shirt; socks; shoes; men's underwear",
                "Trousers, short-sleeve shirt, socks, shoes, underwear "
                        + "| thick trousers; short-sleeve dress shirt; socks; shoes; men's underwear",
                "Knee-length skirt, short-sleeve shirt, sandals, underwear "
                        + "| thick skirt; short-sleeve dress shirt; sandals; women's underwear",
                "Knee-length skirt, long-sleeve shirt, full slip "
                        + "| thin skirt; long-sleeve dress shirt; full slip; panty hose; shoes; women's underwear",
                "Jacket, Trousers, long-sleeve shirt | single-breasted coat (thin); thick trousers; "
                        + "long-sleeve dress shirt; socks; shoes; men's underwear"
            })
    void published_ensembles_come_out_within_a_twentieth_of_a_clo(String ensemble, String garments) {
        double published = PublishedTable.rows(OutfitTest.class, "clothing.csv").stream()
                .filter(row -> row.getOrDefault("name", "").equals(ensemble))
                .mapToDouble(row -> Double.parseDouble(row.getOrDefault("clo", "")))
                .findFirst()
                .orElseThrow();
        assertEquals(published, clo(outfit(garments.split(";", -1))), 0.05);
    }

    @Test
    void it_agrees_with_the_plain_sum_where_that_was_measured() {
        // Source: Olesen 1985 (row “ensemble from garments” of clothing.csv): Icl = ΣIclu, found from 0.7 to 2.6 clo.
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
        double sum = winter.garments().stream()
                .mapToDouble(garment -> garment.insulation().in(Unit.CLO))
                .sum();
        assertTrue(sum > 0.7 && sum < 2.6, "sum " + sum);
        assertEquals(sum, clo(winter), 0.15 * sum);
    }

    @Test
    void two_thick_layers_by_hand() {
        // By hand: 0.161 + 0.835 · (0.28 + 0.70) = 0.9793.
        assertEquals(0.9793, clo(outfit("sweater", "parka")), 1e-12);
    }

    @Test
    void more_garments_never_lower_it_and_their_order_does_not_matter() {
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
    void nothing_is_no_outfit() {
        assertSame(
                Trouble.NO_GARMENTS,
                assertThrows(Refusal.class, () -> new Outfit(List.of())).trouble());
    }

    private static Outfit outfit(String... names) {
        return new Outfit(Stream.of(names).map(Garments::find).toList());
    }

    private static double clo(Outfit outfit) {
        return outfit.insulation().in(Unit.CLO);
    }
}
