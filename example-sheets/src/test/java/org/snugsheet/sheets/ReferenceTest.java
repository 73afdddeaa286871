package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The stored reference values of the worked sheets are what SciPy says today, where it is at hand. */
class ReferenceTest {
    /** Compares what is stored of one row with what SciPy says of it. */
    private interface Comparison {
        void of(Csv.Row stored, Csv.Row fresh);
    }

    private static void compare(String script, String file, Comparison comparison)
            throws IOException, InterruptedException {
        assumeTrue(SciPy.isHere(), "python3 with SciPy is not here; the stored values are used as they are");
        Path folder = Path.of("src", "test", "resources", "org", "snugsheet", "sheets");
        List<Csv.Row> fresh = Csv.rowsOf(SciPy.says("src/test/scipy/" + script, folder.toString()));
        List<Csv.Row> stored = Csv.rows(file);
        assertEquals(stored.size(), fresh.size());
        for (int i = 0; i < stored.size(); i++) {
            comparison.of(stored.get(i), fresh.get(i));
        }
    }

    private static void assertClose(Csv.Row stored, Csv.Row fresh, String name) {
        double value = stored.number(name);
        assertEquals(value, fresh.number(name), 1e-7 * value, stored + " " + name);
    }

    @Test
    void theStoredValuesOfTheDesignAreThoseOfSciPy() throws IOException, InterruptedException {
        compare("design.py", "design-reference.csv", (stored, fresh) -> {
            assertEquals(stored.get("name"), fresh.get("name"));
            assertClose(stored, fresh, "value");
        });
    }

    @Test
    void theStoredValuesOfTheOtherJarsAreThoseOfSciPy() throws IOException, InterruptedException {
        compare("jars.py", "jars-reference.csv", (stored, fresh) -> {
            assertEquals(stored.get("jar"), fresh.get("jar"));
            for (String name : stored.names().subList(2, stored.names().size())) {
                assertClose(stored, fresh, name);
            }
        });
    }
}
