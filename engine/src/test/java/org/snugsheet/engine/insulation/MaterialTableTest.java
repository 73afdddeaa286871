package org.snugsheet.engine.insulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.snugsheet.engine.PublishedTable;

/**
 * Merges the published figures of {@code conductivity.csv} and {@code conductivity-more.csv}, one row for each source, by
 * the rule at the head of {@code materials.csv}, and compares.
 */
class MaterialTableTest {

    /** A name in the column “merges”, with the beginning of a note in brackets where the name is not enough. */
    private static final Pattern MERGED = Pattern.compile("(.*?)(?: \\[(.*)])?");

    private static final List<String> WEAKEST_FIRST = List.of("from memory", "retrieved");

    private static final List<Map<String, String>> SHIPPED = PublishedTable.rows(Materials.class, "materials.csv");
    private static final List<Map<String, String>> PUBLISHED = Stream.of("conductivity.csv", "conductivity-more.csv")
            .flatMap(file -> PublishedTable.rows(MaterialTableTest.class, file).stream())
            .toList();

    @TestFactory
    List<DynamicTest> everyRowIsWhatItsSourcesMergeTo() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map<String, String> shipped : SHIPPED) {
            tests.add(DynamicTest.dynamicTest(
                    cell(shipped, "name") + ", " + cell(shipped, "condition"), () -> checkMerged(shipped)));
        }
        return tests;
    }

    private static void checkMerged(Map<String, String> shipped) {
        List<Map<String, String>> sources = sources(shipped);
        List<Double> votes =
                sources.stream().map(MaterialTableTest::vote).sorted().toList();
        List<Double> all = sources.stream()
                .flatMap(row -> figures(row, "low_W_mK", "typical_W_mK", "high_W_mK").stream())
                .sorted()
                .toList();
        double typical = (votes.get((votes.size() - 1) / 2) + votes.get(votes.size() / 2)) / 2;

        assertRounded(all.get(0), cell(shipped, "low"));
        assertRounded(typical, cell(shipped, "typical"));
        assertRounded(all.get(all.size() - 1), cell(shipped, "high"));
    }

    @TestFactory
    List<DynamicTest> everyRowNamesAllItsSources() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map<String, String> shipped : SHIPPED) {
            tests.add(DynamicTest.dynamicTest(cell(shipped, "name") + ", " + cell(shipped, "condition"), () -> {
                List<String> seen = new ArrayList<>();
                for (Map<String, String> source : sources(shipped)) {
                    for (String each : cell(source, "source").split("; ", -1)) {
                        assertTrue(cell(shipped, "source").contains(each), each);
                    }
                    seen.add(cell(source, "provenance"));
                }
                String weakest = WEAKEST_FIRST.stream()
                        .filter(seen::contains)
                        .findFirst()
                        .orElseThrow();
                assertEquals(weakest, cell(shipped, "provenance"));
            }));
        }
        return tests;
    }

    /** A list without author, handbook or temperature has no vote, so it decides no typical value, alone or with others. */
    @TestFactory
    List<DynamicTest> whatNobodyVouchesForHasNoVote() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map<String, String> row : PUBLISHED) {
            tests.add(DynamicTest.dynamicTest(cell(row, "material") + ", " + cell(row, "note"), () -> {
                assertTrue(WEAKEST_FIRST.contains(cell(row, "provenance")), cell(row, "provenance"));
                assertFalse(cell(row, "source").contains("unverified"), cell(row, "source"));
                assertFalse(cell(row, "source").contains("no author"), cell(row, "source"));
            }));
        }
        return tests;
    }

    @Test
    void noPublishedFigureIsLeftOutButTheOutlier() {
        Set<Map<String, String>> used = new HashSet<>();
        SHIPPED.forEach(shipped -> used.addAll(sources(shipped)));
        List<String> unused = PUBLISHED.stream()
                .filter(row -> !used.contains(row) && hasFigure(row))
                .map(row -> cell(row, "material"))
                .toList();
        assertEquals(List.of("expanded polystyrene"), unused);
    }

    @Test
    void rangesAreInOrderAndBetweenStillAirAndCopper() {
        // Source: air 0.0243 W/(m·K) at 0 °C, copper 401 at 25 °C (rows of the files): nothing here is outside of
        // these.
        for (Material material : Materials.all()) {
            assertTrue(material.low().compareTo(material.typical()) <= 0, material.name());
            assertTrue(material.typical().compareTo(material.high()) <= 0, material.name());
            assertTrue(material.low().wattsPerMeterKelvin() >= 0.023, material.name());
            assertTrue(material.high().wattsPerMeterKelvin() <= 401, material.name());
        }
    }

    @Test
    void layersAreOfAThicknessThatGoesRoundAJar() {
        for (Material material : Materials.all()) {
            material.layer()
                    .ifPresent(layer -> assertTrue(layer.meters() >= 10e-6 && layer.meters() <= 0.1, material.name()));
        }
    }

    @Test
    void theReaderAndThisTestReadTheSameFile() {
        List<Material> read = MaterialTable.read().all();
        assertEquals(SHIPPED.size(), read.size());
        for (int i = 0; i < read.size(); i++) {
            Map<String, String> row = SHIPPED.get(i);
            Material material = read.get(i);
            assertEquals(cell(row, "name"), material.name());
            assertEquals(cell(row, "condition"), material.condition().english());
            assertEquals(cell(row, "source"), material.source());
            assertEquals(cell(row, "provenance"), material.provenance().english());
            assertEquals(cell(row, "note"), material.note());
            assertEquals(
                    Double.parseDouble(cell(row, "typical")), material.typical().wattsPerMeterKelvin());
            assertEquals(cell(row, "layer_mm").isEmpty(), material.layer().isEmpty());
            assertFalse(material.source().isBlank(), material.name());
        }
    }

    private static List<Map<String, String>> sources(Map<String, String> shipped) {
        List<Map<String, String>> sources = new ArrayList<>();
        for (String merged : cell(shipped, "merges").split(" \\+ ", -1)) {
            List<Map<String, String>> rows = named(merged).stream()
                    .filter(row -> hasFigure(row) && !cell(row, "note").startsWith("outlier"))
                    .toList();
            assertFalse(rows.isEmpty(), "nothing published as " + merged);
            rows.stream().filter(row -> !sources.contains(row)).forEach(sources::add);
        }
        return sources;
    }

    private static List<Map<String, String>> named(String merged) {
        Matcher parts = MERGED.matcher(merged);
        assertTrue(parts.matches(), merged);
        String name = parts.group(1);
        String note = parts.group(2);
        return PUBLISHED.stream()
                .filter(row -> cell(row, "material").equals(name))
                .filter(row -> note == null || cell(row, "note").startsWith(note))
                .toList();
    }

    private static double vote(Map<String, String> row) {
        List<Double> typical = figures(row, "typical_W_mK");
        if (!typical.isEmpty()) {
            return typical.get(0);
        }
        OptionalDouble middle = figures(row, "low_W_mK", "high_W_mK").stream()
                .mapToDouble(Double::doubleValue)
                .average();
        return middle.orElseThrow();
    }

    private static boolean hasFigure(Map<String, String> row) {
        return !figures(row, "low_W_mK", "typical_W_mK", "high_W_mK").isEmpty();
    }

    private static List<Double> figures(Map<String, String> row, String... columns) {
        return Stream.of(columns)
                .map(column -> cell(row, column))
                .filter(cell -> !cell.isBlank())
                .map(Double::parseDouble)
                .toList();
    }

    /** Equal but for rounding to three significant digits, a half up or down. */
    private static void assertRounded(double merged, String shipped) {
        BigDecimal three = new BigDecimal(merged, new MathContext(3));
        assertEquals(merged, Double.parseDouble(shipped), three.ulp().doubleValue() * 0.5000001);
    }

    private static String cell(Map<String, String> row, String column) {
        String cell = row.get(column);
        assertTrue(cell != null, () -> "no column " + column);
        return cell == null ? "" : cell;
    }
}
