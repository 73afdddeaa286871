package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.words.Language;

/**
 * How many files a new function touches outside the engine, as “Add a cell function” in {@code DEVELOPERS.md} counts them. A function
 * that no other mentions stands in exactly these: whoever adds one more list of all functions finds it here.
 */
class FunctionGuideTest {

    private static final Pattern NAME = Pattern.compile("[A-Z]+(\\.[A-Z]+)+");

    private static final Path REFERENCE = Path.of("functions.md");
    private static final Path STORED_NAMES =
            Path.of("src/test/java/org/snugsheet/office/packaging/GeneratedFilesTest.java");

    @Test
    void aFunctionTouchesAsManyFilesAsTheGuideSays() throws IOException {
        Map<String, Set<Path>> named = named();
        int fewest = Integer.MAX_VALUE;
        for (FunctionDeclaration function : Families.functions()) {
            Set<Path> files = new HashSet<>(named.getOrDefault(function.name(), Set.of()));
            files.addAll(named.getOrDefault(function.storedName(), Set.of()));
            for (Path needed : needed(function)) {
                assertTrue(files.contains(needed), function.name() + " should stand in " + needed);
            }
            assertEquals(6, needed(function).size());
            fewest = Math.min(fewest, files.size());
        }
        assertEquals(6, fewest);
        assertTrue(Files.readString(Path.of("../DEVELOPERS.md")).contains("in six files"));
    }

    private static Set<Path> needed(FunctionDeclaration function) {
        Set<Path> files = new HashSet<>(Set.of(REFERENCE, STORED_NAMES));
        String declared = function.method().getDeclaringClass().getName();
        files.add(Path.of("src/main/java", declared.replace('.', '/') + ".java"));
        for (Language language : Language.translated()) {
            files.add(Path.of(
                    "src/main/resources/org/snugsheet/office/words/functions_" + language.code() + ".properties"));
        }
        return files;
    }

    /** Every name of a function in what is shipped and written, with the files that it is in. */
    private static Map<String, Set<Path>> named() throws IOException {
        Map<String, Set<Path>> named = new TreeMap<>();
        Set<Path> files = new HashSet<>(List.of(REFERENCE, STORED_NAMES));
        for (String folder : List.of("src/main", "../engine/src/main", "../example-sheets/src/main")) {
            try (Stream<Path> all = Files.walk(Path.of(folder))) {
                all.filter(file -> file.toString().toLowerCase(Locale.ROOT).matches(".*\\.(java|properties|csv|xml)"))
                        .forEach(files::add);
            }
        }
        for (Path file : files) {
            Set<String> names = NAME.matcher(Files.readString(file))
                    .results()
                    .map(MatchResult::group)
                    .collect(Collectors.toSet());
            names.forEach(
                    name -> named.computeIfAbsent(name, none -> new HashSet<>()).add(file));
        }
        return named;
    }
}
