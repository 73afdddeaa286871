package org.snugsheet.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** Runs the scripts that wrote the stored reference values again, where a Python with SciPy is at hand. */
public final class SciPyReruns {

    /** The second is where Debian puts its own, which a newer Python without SciPy may hide. */
    private static final List<String> PYTHONS = List.of("python3", "/usr/bin/python3");

    private SciPyReruns() {}

    /**
     * Runs a script that writes its files into the folder named as its argument; skips the test without SciPy.
     *
     * @param script its name in src/test/scipy
     * @param folder where it is to write
     */
    public static void run(String script, Path folder) throws IOException, InterruptedException {
        Optional<String> python = python();
        assumeTrue(python.isPresent(), "No Python with SciPy here: the stored values stand as they are");
        Run run = run(python.orElseThrow(), "src/test/scipy/" + script, folder.toString());
        assertEquals(0, run.code(), run.said());
    }

    /**
     * Fails unless a new run wrote what is stored: the same columns and rows, texts alike, numbers within a share of
     * themselves.
     *
     * @param test the test beside which the stored file lies
     * @param file its name
     * @param folder where the new one lies
     * @param tolerance how far a number may be off, as a share of the stored one
     */
    public static void assertSame(Class<?> test, String file, Path folder, double tolerance) throws IOException {
        List<Map<String, String>> stored = PublishedTable.rows(test, file);
        List<Map<String, String>> fresh = PublishedTable.rows(folder.resolve(file));
        assertEquals(stored.size(), fresh.size(), file);
        for (int i = 0; i < stored.size(); i++) {
            String row = file + ", row " + (i + 1) + ", ";
            Map<String, String> again = fresh.get(i);
            assertEquals(List.copyOf(stored.get(i).keySet()), List.copyOf(again.keySet()), row);
            stored.get(i)
                    .forEach((column, cell) -> same(cell, again.getOrDefault(column, ""), tolerance, row + column));
        }
    }

    private static void same(String stored, String fresh, double tolerance, String where) {
        Optional<Double> number = number(stored);
        if (number.isEmpty() || fresh.equals(stored)) {
            assertEquals(stored, fresh, where);
            return;
        }
        double value = number.get();
        assertEquals(value, number(fresh).orElse(Double.NaN), tolerance * Math.abs(value), where);
    }

    private static Optional<Double> number(String cell) {
        try {
            return Optional.of(Double.valueOf(cell));
        } catch (NumberFormatException text) {
            return Optional.empty();
        }
    }

    private static Optional<String> python() throws InterruptedException {
        for (String python : PYTHONS) {
            if (hasSciPy(python)) {
                return Optional.of(python);
            }
        }
        return Optional.empty();
    }

    private static boolean hasSciPy(String python) throws InterruptedException {
        try {
            return run(python, "-c", "import scipy.optimize, scipy.stats").code() == 0;
        } catch (IOException absent) {
            return false;
        }
    }

    /** What a program said, and how it ended. */
    private record Run(int code, String said) {}

    private static Run run(String... command) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("PYTHONIOENCODING", "utf-8");
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(2, TimeUnit.MINUTES), "Python does not end");
        return new Run(process.exitValue(), said);
    }
}
