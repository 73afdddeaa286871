package org.snugsheet.engine.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.PublishedTable;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;

/** The cautions against the figures of {@code safety.csv}, which names the bodies that issued them. */
class SafeStartTest {

    private static final List<Map<String, String>> PUBLISHED = PublishedTable.rows(SafeStartTest.class, "safety.csv");

    @Test
    void the_limit_is_the_one_schools_are_advised() {
        assertTrue(PUBLISHED.stream()
                .anyMatch(row -> row.getOrDefault("what", "").contains("all hot water pupils can reach")
                        && row.getOrDefault("degC", "").equals("43")));
        assertEquals(43, SafeStart.SCHOOL_LIMIT.celsius());
        assertEquals(SafeStart.SCHOOL_LIMIT, SafeStart.require(SafeStart.SCHOOL_LIMIT));
        InvalidInputException refusal =
                assertThrows(InvalidInputException.class, () -> SafeStart.require(new Temperature(43.5)));
        assertEquals(Problem.START_TOO_HOT, refusal.problem());
        assertEquals(
                "43.5 °C (110.3 °F) is too hot for pupils: schools are advised no more than 43 °C (109 °F). Begin"
                        + " cooler.",
                refusal.finding().sentence());
    }

    /** What the cautions say: the temperature, and the seconds after which they say it burns. */
    @ParameterizedTest
    @CsvSource({"48.9, 300", "51.7, 90", "54.4, 30", "60, 3", "65.6, 1.5"})
    void no_table_gives_a_shorter_time_than_the_caution(double celsius, double seconds) {
        double shortest = PUBLISHED.stream()
                .filter(row -> "scald time".equals(row.get("kind")))
                .filter(row -> Double.parseDouble(row.getOrDefault("degC", "")) <= celsius + 0.01)
                .mapToDouble(row -> Double.parseDouble(shortest(row)))
                .min()
                .orElseThrow();
        assertEquals(seconds, shortest, "the caution names the shortest published time");
    }

    /** The first time of a row: second-degree burns where given, else the time itself, without its sign. */
    private static String shortest(Map<String, String> row) {
        String first = row.getOrDefault("time_1_s", "");
        String time = first.isEmpty() ? row.getOrDefault("time_2_s", "") : first;
        return time.replaceAll("^[<>]", "").replaceAll("-.*", "");
    }

    @ParameterizedTest
    @CsvSource({
        "5, COLD_WATER",
        "20, LUKEWARM",
        "37.8, LUKEWARM",
        "38, WARM",
        "43, WARM",
        "44, TOO_WARM",
        "48.9, SCALDS_IN_MINUTES",
        "52, SCALDS_IN_A_MINUTE_OR_TWO",
        "54.4, SCALDS_IN_HALF_A_MINUTE",
        "60, SCALDS_IN_SECONDS",
        "65.6, SCALDS_AT_ONCE",
        "95, SCALDS_AT_ONCE"
    })
    void each_band_has_its_caution(double celsius, Caution caution) {
        List<Caution> cautions = SafeStart.cautions(new Temperature(celsius));
        assertEquals(caution, cautions.get(0));
        assertEquals(Caution.SCHOOL_RULES, cautions.get(cautions.size() - 1));
    }

    @ParameterizedTest
    @CsvSource({"-0.1", "100.5", "180"})
    void what_is_no_water_is_refused(double celsius) {
        assertThrows(InvalidInputException.class, () -> SafeStart.cautions(new Temperature(celsius)));
    }

    /** No caution is a promise: a wrist comes before hands even in lukewarm water. */
    @Test
    void nothing_is_called_safe() {
        for (Caution caution : Caution.values()) {
            assertTrue(!caution.english().contains(" safe "), caution.english());
        }
    }

    /** 60 °C: within 3 s (table of the Moritz and Henriques type) or 5 s (Children’s of Alabama), rows of the file. */
    @Test
    void water_that_burns_within_seconds_is_for_adults() {
        assertTrue(SafeStart.isForAdultsOnly(Temperature.of(140, Scale.FAHRENHEIT)));
        assertTrue(!SafeStart.isForAdultsOnly(new Temperature(59.9)));
        assertTrue(PUBLISHED.stream()
                .filter(row -> "scald time".equals(row.get("kind"))
                        && row.getOrDefault("degC", "").startsWith("60"))
                .allMatch(row -> Double.parseDouble(shortest(row)) <= 6));
        assertEquals(
                Problem.KETTLE_WATER,
                assertThrows(
                                InvalidInputException.class,
                                () -> Taps.mixing(
                                        new Temperature(95),
                                        new Temperature(10),
                                        new Temperature(38),
                                        Volume.of(1, Unit.LITER)))
                        .problem());
    }
}
