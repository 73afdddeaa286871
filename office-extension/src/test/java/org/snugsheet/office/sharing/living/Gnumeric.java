package org.snugsheet.office.sharing.living;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.snugsheet.office.harness.Patience;

/** Gnumeric, which works out a file by its program {@code ssconvert}, where that is installed. */
public final class Gnumeric {

    private static final Path PROGRAM = Path.of("/usr/bin/ssconvert");
    private static final Duration LIMIT = Duration.ofMinutes(2);
    private static final String ENDING = ".txt";

    private Gnumeric() {}

    /**
     * Whether it can be asked here.
     *
     * @return whether it is installed
     */
    public static boolean isThere() {
        return Files.isExecutable(PROGRAM);
    }

    /**
     * Works out everything in a file anew.
     *
     * @param file the file
     * @param folder an empty folder for what it writes
     * @return the lines of each page by its name, from its first line with anything on; tabs stand between the cells, and numbers have all digits
     */
    public static Map<String, List<String>> workOut(Path file, Path folder) throws IOException, InterruptedException {
        Path log = folder.resolve("log");
        Process process = new ProcessBuilder(
                        PROGRAM.toString(),
                        "--recalc",
                        "--export-file-per-sheet",
                        "--export-type=Gnumeric_stf:stf_assistant",
                        "--export-options=separator='\t' quoting-mode=never format=raw eol=unix",
                        file.toString(),
                        folder.resolve("%s" + ENDING).toString())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        boolean isDone = process.waitFor(Patience.scaled(LIMIT).toSeconds(), TimeUnit.SECONDS);
        if (!isDone) {
            process.destroyForcibly();
        }
        assertTrue(isDone, "Gnumeric takes too long");
        assertEquals(0, process.exitValue(), Files.readString(log));
        Map<String, List<String>> pages = new HashMap<>();
        try (Stream<Path> written = Files.list(folder)) {
            for (Path page :
                    written.filter(one -> one.toString().endsWith(ENDING)).toList()) {
                String name = String.valueOf(page.getFileName());
                pages.put(name.substring(0, name.length() - ENDING.length()), Files.readAllLines(page));
            }
        }
        return pages;
    }
}
