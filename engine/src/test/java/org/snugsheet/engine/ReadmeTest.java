package org.snugsheet.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.math3.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example in engine/README.md, read from there, compiled and run: it prints what the README says it prints. */
class ReadmeTest {

    private static final List<String> IMPORTS = List.of(
            "org.snugsheet.engine.quantity.*",
            "org.snugsheet.engine.reading.*",
            "org.snugsheet.engine.cooling.*",
            "org.snugsheet.engine.comparison.*");

    @Test
    void theExamplePrintsWhatItSays(@TempDir Path folder) throws Exception {
        String readme = Files.readString(Path.of("README.md"), StandardCharsets.UTF_8);
        String example = block(readme, "```java\n");
        assertEquals(5, example.lines().count(), "the example has five lines");
        StringBuilder source = new StringBuilder();
        IMPORTS.forEach(name -> source.append("import ").append(name).append(";\n"));
        source.append("public class Example { public static void main(String[] arguments) {\n")
                .append(example)
                .append("\n}}\n");
        Path file = folder.resolve("Example.java");
        Files.writeString(file, source, StandardCharsets.UTF_8);

        assertEquals(block(readme, "prints\n\n```\n"), printed(file));
    }

    /** What the launcher of source files says (JEP 330). */
    private static String printed(Path file) throws Exception {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String path = place(Finding.class) + File.pathSeparator + place(FastMath.class);
        Process process = new ProcessBuilder(
                        java, "-Dfile.encoding=UTF-8", "-Dstdout.encoding=UTF-8", "-cp", path, file.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        return said.strip().replace("\r\n", "\n");
    }

    private static Path place(Class<?> type) throws Exception {
        return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    }

    private static String block(String readme, String before) {
        Matcher block = Pattern.compile(Pattern.quote(before) + "(.*?)\n```", Pattern.DOTALL)
                .matcher(readme);
        assertTrue(block.find(), before);
        return block.group(1);
    }
}
