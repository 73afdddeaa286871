package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** The stored reference values of the worked sheet are what SciPy says today, where it is at hand. */
class ReferenceTest {
    @Test
    void theStoredValuesAreThoseOfSciPy() throws IOException, InterruptedException {
        assumeTrue(hasSciPy(), "python3 with SciPy is not here; the stored values are used as they are");
        Path folder = Path.of("src", "test", "resources", "org", "snugsheet", "sheets");
        Run run = run("src/test/scipy/windowsill.py", folder.toString());
        assertEquals(0, run.code(), run.said());
        List<Csv.Row> fresh = Csv.rowsOf(run.said());
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
    void thereIsAReferenceForEveryJar() {
        List<String> jars = WindowsillJars.JARS.stream().map(Jar::name).toList();
        assertEquals(
                jars,
                Csv.rows("windowsill-reference.csv").stream()
                        .map(row -> row.get("jar"))
                        .toList());
        assertTrue(Csv.rows("windowsill-reference.csv").stream().allMatch(row -> row.number("rate_error") > 0));
    }

    private static boolean hasSciPy() throws InterruptedException {
        try {
            return run("-c", "import scipy.optimize").code() == 0;
        } catch (IOException e) {
            return false;
        }
    }

    /** What a program said, and how it ended. */
    private record Run(int code, String said) {}

    private static Run run(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("python3"));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("PYTHONIOENCODING", "utf-8");
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(1, TimeUnit.MINUTES), "python3 does not end");
        return new Run(process.exitValue(), said);
    }
}
