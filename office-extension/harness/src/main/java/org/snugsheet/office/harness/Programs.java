package org.snugsheet.office.harness;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where the two programs of the office are.
 *
 * @param soffice the start script, never {@code soffice.bin}: only the script sets up the paths to Java
 * @param unopkg the tool that installs extensions
 */
record Programs(Path soffice, Path unopkg) {
    /** Names the start script, for a machine where it is in no usual place. */
    static final String PROPERTY = "snugsheet.soffice";

    private static final List<String> USUAL_PLACES = List.of(
            "/usr/lib/libreoffice/program/soffice",
            "/usr/lib64/libreoffice/program/soffice",
            "/opt/libreoffice/program/soffice",
            "/usr/local/bin/soffice",
            "/Applications/LibreOffice.app/Contents/MacOS/soffice",
            "C:\\Program Files\\LibreOffice\\program\\soffice.com");

    static Programs find(Optional<Path> asked) {
        Path soffice = asked.or(Programs::fromProperty)
                .or(() -> onSearchPath("soffice"))
                .or(() -> USUAL_PLACES.stream()
                        .map(Path::of)
                        .filter(Files::isExecutable)
                        .findFirst())
                .orElseThrow(
                        () -> new OfficeFailure("No LibreOffice found: install it, or name its soffice script with -D"
                                + PROPERTY + "=/path/to/soffice"));
        if (!Files.isRegularFile(soffice) || !Files.isExecutable(soffice)) {
            throw new OfficeFailure("This is no LibreOffice start script: " + soffice);
        }
        return new Programs(soffice, unopkgBeside(soffice));
    }

    private static Optional<Path> fromProperty() {
        return Optional.ofNullable(System.getProperty(PROPERTY))
                .filter(text -> !text.isBlank())
                .map(text -> Path.of(text).toAbsolutePath());
    }

    /** On macOS and Windows every office does; elsewhere it has a part for each kind of desktop, or none. */
    boolean drawWindows() {
        String system = System.getProperty("os.name", "");
        if (system.startsWith("Mac") || system.startsWith("Windows")) {
            return true;
        }
        try (Stream<Path> parts = Files.list(soffice.toRealPath().resolveSibling(""))) {
            return parts.anyMatch(part -> part.getFileName().toString().matches("libvclplug_.+lo\\.so"));
        } catch (IOException e) {
            throw new OfficeFailure("Cannot look beside " + soffice, e);
        }
    }

    /** Of the same office, even when several are installed: beside the script that the link points to. */
    private static Path unopkgBeside(Path soffice) {
        Path folder;
        try {
            folder = soffice.toRealPath().resolveSibling("");
        } catch (IOException e) {
            throw new OfficeFailure("Cannot follow " + soffice, e);
        }
        return Stream.of("unopkg", "unopkg.com")
                .map(folder::resolve)
                .filter(Files::isExecutable)
                .findFirst()
                .or(() -> onSearchPath("unopkg"))
                .orElse(folder.resolve("unopkg"));
    }

    private static Optional<Path> onSearchPath(String name) {
        return Optional.ofNullable(System.getenv("PATH")).stream()
                .flatMap(path -> Arrays.stream(path.split(File.pathSeparator, -1)))
                .filter(folder -> !folder.isBlank())
                .map(folder -> Path.of(folder).resolve(name))
                .filter(Files::isRegularFile)
                .filter(Files::isExecutable)
                .findFirst();
    }
}
