package org.snugsheet.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
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

        compile(file, folder);

        assertEquals(block(readme, "prints\n\n```\n"), printed(folder));
    }

    private static void compile(Path file, Path folder) throws Exception {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        assertNotNull(compiler, "a JDK");
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        int code = compiler.run(
                null,
                said,
                said,
                "-proc:none",
                "-encoding",
                "UTF-8",
                "-cp",
                place(Finding.class).toString(),
                "-d",
                folder.toString(),
                file.toString());
        assertEquals(0, code, said.toString(StandardCharsets.UTF_8));
    }

    private static String printed(Path folder) throws Exception {
        PrintStream usual = System.out;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        try (URLClassLoader loader =
                new URLClassLoader(new URL[] {folder.toUri().toURL()}, ReadmeTest.class.getClassLoader())) {
            System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
            loader.loadClass("Example").getMethod("main", String[].class).invoke(null, (Object) new String[0]);
        } finally {
            System.setOut(usual);
        }
        return said.toString(StandardCharsets.UTF_8).strip().replace("\r\n", "\n");
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
