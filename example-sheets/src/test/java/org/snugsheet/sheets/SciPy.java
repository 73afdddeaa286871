package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Runs the scripts that work out reference values, where SciPy is at hand. */
public final class SciPy {
    private SciPy() {}

    static boolean isHere() throws InterruptedException {
        try {
            return run("-c", "import scipy.optimize").code() == 0;
        } catch (IOException e) {
            return false;
        }
    }

    static String says(String... scriptAndArguments) throws IOException, InterruptedException {
        Run run = run(scriptAndArguments);
        assertEquals(0, run.code(), run.said());
        return run.said();
    }

    /** What a program said, and how it ended. */
    private record Run(int code, String said) {}

    private static Run run(String... arguments) throws IOException, InterruptedException {
        // Without -B Python would leave what it compiled beside the scripts.
        List<String> command = new ArrayList<>(List.of("python3", "-B"));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("PYTHONIOENCODING", "utf-8");
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(1, TimeUnit.MINUTES), "python3 does not end");
        return new Run(process.exitValue(), said);
    }
}
