package org.snugsheet.office.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.office.benchmark.Idle;
import org.snugsheet.office.benchmark.IdleFunctions;

/** The extension of the benchmark, which only an office of its own ever sees, holds what it promises to an office. */
class SecondExtensionTest {

    private static final Pattern PATH = Pattern.compile("full-path=\"([^\"]+)\"");

    /** An office takes back the whole extension if one of these is not there. */
    @Test
    void whateverTheManifestNamesIsInTheFile(@TempDir Path folder) throws Exception {
        try (ZipFile zip =
                new ZipFile(SecondExtension.write(folder.resolve("idle.oxt"), Idle.class, IdleFunctions.class)
                        .toFile())) {
            Set<String> inside = zip.stream().map(ZipEntry::getName).collect(Collectors.toSet());
            String manifest = new String(
                    zip.getInputStream(zip.getEntry("META-INF/manifest.xml")).readAllBytes(), StandardCharsets.UTF_8);
            List<String> named = PATH.matcher(manifest)
                    .results()
                    .map(found -> found.group(1))
                    .toList();
            assertFalse(named.isEmpty(), manifest);
            assertEquals(
                    List.of(),
                    named.stream().filter(path -> !inside.contains(path)).toList());
        }
    }

    /** The office looks for the classes of each extension in all of them; a second copy of ours would be in the way. */
    @Test
    void noneOfOurClassesIsInItsJar(@TempDir Path folder) throws Exception {
        Path file = SecondExtension.write(folder.resolve("idle.oxt"), Idle.class, IdleFunctions.class);
        List<String> classes = new ArrayList<>();
        try (ZipFile zip = new ZipFile(file.toFile());
                ZipInputStream jar = new ZipInputStream(zip.getInputStream(zip.getEntry("snugsheet.jar")))) {
            for (ZipEntry entry = jar.getNextEntry(); entry != null; entry = jar.getNextEntry()) {
                if (entry.getName().endsWith(".class")) {
                    classes.add(entry.getName());
                }
            }
        }
        assertTrue(classes.contains("org/snugsheet/office/benchmark/IdleFunctions.class"), classes::toString);
        assertTrue(
                classes.stream().allMatch(name -> name.startsWith("org/snugsheet/office/benchmark/")),
                classes::toString);
    }
}
