package org.snugsheet.office;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The engine exports what this extension needs, and no package more. */
class EngineExportsTest {

    private static final Pattern EXPORTS = Pattern.compile("exports ([a-z.]+);");

    @Test
    void everyExportedPackageIsUsedOutside() throws IOException {
        String module = Files.readString(Path.of("../engine/src/main/java/module-info.java"));
        List<String> exported = EXPORTS.matcher(module)
                .results()
                .map((MatchResult r) -> r.group(1))
                .toList();
        assertTrue(exported.size() > 5, "exports found: " + exported);
        String imports = imports();
        for (String name : exported) {
            assertTrue(
                    Pattern.compile("import (static )?" + Pattern.quote(name) + "\\.[A-Z]")
                            .matcher(imports)
                            .find(),
                    name);
        }
        assertFalse(
                exported.contains("org.snugsheet.engine.solver"), "numbers without jars are the engine’s own business");
    }

    private static String imports() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                Files.readString(file)
                        .lines()
                        .filter(line -> line.startsWith("import "))
                        .forEach(line -> all.append(line).append('\n'));
            }
        }
        return all.toString();
    }
}
