package org.snugsheet.office.packaging;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.deployment.XPackage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.words.Language;

/** What is in the packed extension, and what the Extension Manager of the office makes of it. */
@ExtendWith(SharedOffice.class)
class PackageIT {

    private static final Path OXT = Path.of(System.getProperty(SharedOffice.OXT_PROPERTY, ""));
    private static final String VERSION = System.getProperty("snugsheet.version", "");
    private static final String SITE = System.getProperty("snugsheet.site", "");
    private static final String JAR = "snugsheet.jar";
    private static final int MOST_BYTES = 2_000_000;

    /** Java 17, JVM Specification SE 17, table 4.1-A. */
    private static final int CLASS_FILE_OF_JAVA_17 = 61;

    @Test
    void itIsSmall() throws IOException {
        assertTrue(Files.size(OXT) < MOST_BYTES, Files.size(OXT) + " bytes");
    }

    @Test
    void everyFileThatIsNamedIsThere() throws IOException {
        Map<String, byte[]> files = unpacked(Files.readAllBytes(OXT));
        List<String> pictures =
                found("%origin%/([^<]+)<", text(files, "Addons.xcu")).toList();
        assertEquals(
                4 * MenuLine.all().size(), pictures.size(), "small and large, for all menus and for high contrast");
        Stream<String> named = Stream.of(
                        found("full-path=\"([^\"]+)\"", text(files, "META-INF/manifest.xml")),
                        found("xlink:href=\"([^\":]+)\"", text(files, "description.xml")),
                        pictures.stream())
                .flatMap(names -> names);
        List<String> missing = named.filter(path -> files.keySet().stream()
                        .noneMatch(file -> file.equals(path) || (path.endsWith("/") && file.startsWith(path))))
                .toList();
        assertEquals(List.of(), missing);
    }

    @Test
    void everyPackedLibraryIsListedWithItsLicense() throws IOException {
        Map<String, byte[]> files = unpacked(Files.readAllBytes(OXT));
        String bill = text(files, "bom.json");
        assertEquals(
                List.of("org.apache.commons/commons-math3", "org.snugsheet/engine", "org.snugsheet/office-extension"),
                found("\"purl\": \"pkg:maven/([^@\"]+)@", bill).sorted().toList());
        assertTrue(text(files, "licenses/commons-math3/LICENSE.txt").contains("Apache License"));
        assertTrue(text(files, "licenses/commons-math3/NOTICE.txt").contains("Apache Commons Math"));
        assertTrue(text(files, "NOTICE").contains("Apache Commons Math"));
        List<String> foreign = unpacked(bytes(files, JAR)).keySet().stream()
                .filter(file -> file.endsWith(".class") && !file.startsWith("org/snugsheet/"))
                .filter(file -> !file.startsWith("org/apache/commons/math3/"))
                .toList();
        assertEquals(List.of(), foreign, "classes of a library that is not listed");
    }

    @Test
    void everyClassRunsOnTheOldestJavaPromised() throws IOException {
        unpacked(bytes(unpacked(Files.readAllBytes(OXT)), JAR)).forEach((name, bytes) -> {
            if (name.endsWith(".class")) {
                assertTrue(ByteBuffer.wrap(bytes).getShort(6) <= CLASS_FILE_OF_JAVA_17, name);
            }
        });
    }

    /** Written again by another Java process than the build’s; what depends on the order of a hash or on a clock shows here. */
    @Test
    void whatIsGeneratedIsTheSameTwice(@TempDir Path folder) throws IOException {
        Path again = folder.resolve("oxt");
        WriteExtension.main(
                new String[] {again.toString(), folder.resolve("beside").toString(), VERSION, SITE});
        Map<String, byte[]> packed = unpacked(Files.readAllBytes(OXT));
        try (Stream<Path> written = Files.walk(again)) {
            for (Path file : written.filter(Files::isRegularFile).toList()) {
                String name = again.relativize(file).toString().replace('\\', '/');
                assertArrayEquals(Files.readAllBytes(file), packed.get(name), name);
            }
        }
    }

    @Test
    void picturesArePackedAsTheyAre() throws IOException {
        Map<String, byte[]> files = unpacked(Files.readAllBytes(OXT));
        Path source = Path.of("src", "main", "oxt");
        try (Stream<Path> pictures = Files.walk(source.resolve("icons"))) {
            for (Path picture : pictures.filter(Files::isRegularFile).toList()) {
                String name = source.relativize(picture).toString().replace('\\', '/');
                assertArrayEquals(Files.readAllBytes(picture), files.get(name), name);
            }
        }
    }

    @Test
    void noFileHasTheTimeOfTheBuild() throws IOException {
        try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(OXT))) {
            long first = -1;
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                first = first < 0 ? entry.getTime() : first;
                assertEquals(first, entry.getTime(), entry.getName());
            }
        }
    }

    @Test
    void theExtensionManagerShowsWhoAndWhat(Office office) {
        List<XPackage> found = office.extensions().named("org.snugsheet");
        assertEquals(1, found.size());
        office.call("reading what the Extension Manager shows", () -> {
            XPackage extension = found.get(0);
            assertEquals(VERSION, extension.getVersion());
            assertEquals("Snugsheet", extension.getDisplayName());
            assertEquals(
                    Language.ENGLISH.words(PackageWords.DESCRIPTION),
                    extension.getDescription().strip());
            assertTrue(extension.getLicenseText().contains("Apache License"));
            assertEquals("Snugsheet", extension.getPublisherInfo().First);
            assertEquals(SITE, extension.getPublisherInfo().Second);
            assertArrayEquals(new String[] {SITE + "/snugsheet.update.xml"}, extension.getUpdateInformationURLs());
            for (boolean highContrast : new boolean[] {false, true}) {
                assertNotNull(extension.getIcon(highContrast));
            }
            return extension;
        });
    }

    private static Map<String, byte[]> unpacked(byte[] zipped) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(zipped))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (!entry.isDirectory()) {
                    files.put(entry.getName(), zip.readAllBytes());
                }
            }
        }
        return files;
    }

    private static String text(Map<String, byte[]> files, String name) {
        return new String(bytes(files, name), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(Map<String, byte[]> files, String name) {
        return files.getOrDefault(name, new byte[0]);
    }

    private static Stream<String> found(String pattern, String text) {
        return Pattern.compile(pattern).matcher(text).results().map((MatchResult one) -> one.group(1));
    }
}
