package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The stored reference values of the worked sheets are what SciPy says today, where it is at hand. */
class ReferenceTest {
    @Test
    void theStoredValuesAreThoseOfSciPy() throws IOException, InterruptedException {
        assumeTrue(SciPy.isHere(), "python3 with SciPy is not here; the stored values are used as they are");
        Path folder = Path.of("src", "test", "resources", "org", "snugsheet", "sheets");
        List<Csv.Row> fresh = Csv.rowsOf(SciPy.says("src/test/scipy/windowsill.py", folder.toString()));
        List<Csv.Row> stored = Csv.rows("windowsill-reference.csv");
        assertEquals(stored.size(), fresh.size());
        for (int i = 0; i < stored.size(); i++) {
            Csv.Row expected = stored.get(i);
            Csv.Row actual = fresh.get(i);
            assertEquals(expected.names(), actual.names());
            assertEquals(expected.get("jar"), actual.get("jar"));
            for (String name : expected.names().subList(1, expected.names().size())) {
                assertEquals(expected.has(name), actual.has(name), expected + " " + name);
                if (expected.has(name)) {
                    double value = expected.number(name);
                    assertEquals(value, actual.number(name), 1e-7 * value, expected + " " + name);
                }
            }
        }
    }

    @Test
    void theStoredValuesOfTheDesignAreThoseOfSciPy() throws IOException, InterruptedException {
        assumeTrue(SciPy.isHere(), "python3 with SciPy is not here; the stored values are used as they are");
        Path folder = Path.of("src", "test", "resources", "org", "snugsheet", "sheets");
        List<Csv.Row> fresh = Csv.rowsOf(SciPy.says("src/test/scipy/design.py", folder.toString()));
        List<Csv.Row> stored = Csv.rows("design-reference.csv");
        assertEquals(stored.size(), fresh.size());
        for (int i = 0; i < stored.size(); i++) {
            assertEquals(stored.get(i).get("name"), fresh.get(i).get("name"));
            double value = stored.get(i).number("value");
            assertEquals(
                    value,
                    fresh.get(i).number("value"),
                    1e-7 * value,
                    stored.get(i).toString());
        }
    }

    @Test
    void theStoredValuesOfTheOtherJarsAreThoseOfSciPy() throws IOException, InterruptedException {
        assumeTrue(SciPy.isHere(), "python3 with SciPy is not here; the stored values are used as they are");
        Path folder = Path.of("src", "test", "resources", "org", "snugsheet", "sheets");
        List<Csv.Row> fresh = Csv.rowsOf(SciPy.says("src/test/scipy/jars.py", folder.toString()));
        List<Csv.Row> stored = Csv.rows("jars-reference.csv");
        assertEquals(stored.size(), fresh.size());
        for (int i = 0; i < stored.size(); i++) {
            Csv.Row expected = stored.get(i);
            assertEquals(expected.get("jar"), fresh.get(i).get("jar"));
            for (String name : expected.names().subList(2, expected.names().size())) {
                double value = expected.number(name);
                assertEquals(value, fresh.get(i).number(name), 1e-7 * value, expected + " " + name);
            }
        }
    }

    @Test
    void thereIsAReferenceForEveryJar() {
        List<String> jars = WindowsillJars.JARS.stream().map(Jar::name).toList();
        assertEquals(
                jars,
                Csv.rows("windowsill-reference.csv").stream()
                        .map(row -> row.get("jar"))
                        .toList());
        assertTrue(Csv.rows("windowsill-reference.csv").stream().allMatch(row -> row.number("rate_error") > 0));
    }
}
