package org.snugsheet.office.harness;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The one temporary folder in which an office of a test keeps its profile, its extension, its temporary files and its
 * log. Gone with the office.
 */
record Workspace(Path folder) {
    private static final String NEWER_THAN_ANY = "99.9";

    private static final String PREFIX = "snugsheet-office-";

    static Workspace create(Optional<Path> home) {
        try {
            Path made = home.isPresent()
                    ? Files.createTempDirectory(home.get(), PREFIX)
                    : Files.createTempDirectory(PREFIX);
            Workspace workspace = new Workspace(made.toRealPath());
            Files.createDirectory(workspace.scratch());
            return workspace;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Path profile() {
        return folder.resolve("profile");
    }

    /** Stands in for the installation-wide extension cache, so that root installs nothing into the system. */
    Path sharedExtensions() {
        return folder.resolve("shared-extensions");
    }

    Path scratch() {
        return folder.resolve("tmp");
    }

    Path log() {
        return folder.resolve("office.log");
    }

    String profileUrl() {
        return url(profile());
    }

    /** The office wants three slashes and no slash at the end. */
    static String url(Path path) {
        String text = path.toUri().toString();
        return text.endsWith("/") ? text.substring(0, text.length() - 1) : text;
    }

    /** The number of the user who runs the test, as the office puts it in the name of a pipe; "" where there is none. */
    String user() {
        try {
            return Files.getAttribute(folder, "unix:uid").toString();
        } catch (IOException | UnsupportedOperationException | IllegalArgumentException e) {
            return "";
        }
    }

    /**
     * These must be in the profile before the first start. An office that is newer than the last one on its profile first draws some hundred
     * large pictures to try its own graphics, which takes as long as all the rest of its start three times over.
     */
    void writeSettings(OfficeSetup setup) {
        String settings = """
            <?xml version="1.0" encoding="UTF-8"?>
            <oor:items xmlns:oor="http://openoffice.org/2001/registry">
            <item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse"><value>%s</value></prop></item>
            <item oor:path="/org.openoffice.Setup/Product"><prop oor:name="ooSetupLastVersion" oor:op="fuse"><value>%s</value></prop></item>
            <item oor:path="/org.openoffice.Office.Common/Save/Document"><prop oor:name="GenerateThumbnail" oor:op="fuse"><value>%b</value></prop></item>
            </oor:items>
            """.formatted(setup.locale().toLanguageTag(), NEWER_THAN_ANY, !setup.frugal());
        try {
            Files.createDirectories(profile().resolve("user"));
            Files.writeString(profile().resolve("user").resolve("registrymodifications.xcu"), settings);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The end of what the office said, for the message of a failure. */
    String logTail() {
        String tail = tail(read(log()));
        return tail.isEmpty() ? "(the office said nothing)" : tail;
    }

    /** What a program wrote; foreign bytes in it do no harm. */
    static String read(Path log) {
        try {
            return new String(Files.readAllBytes(log), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            return "(no log: " + e + ")";
        }
    }

    static String tail(String text) {
        return text.substring(Math.max(0, text.length() - 2000));
    }

    /** Where a pipe of this name may appear; the office takes the first folder that it can write to. */
    List<Path> pipe(String name) {
        String file = "OSL_PIPE_" + user() + "_" + name;
        return Stream.of(Path.of("/tmp"), Path.of("/var/tmp"), scratch())
                .map(place -> place.resolve(file))
                .toList();
    }

    /** Deletes everything, also the sockets that a killed office leaves in the folder for temporary files. */
    void delete(String pipe) {
        Stream.of(pipe, singleInstancePipe())
                .flatMap(name -> pipe(name).stream())
                .forEach(Workspace::deleteFile);
        // An office that is just dying may still write: look again rather than fail.
        for (int round = 0; round < 20 && Files.exists(folder); round++) {
            deleteTree(folder);
            if (Files.exists(folder)) {
                pause(100);
            }
        }
    }

    static void deleteTree(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).forEach(Workspace::deleteFile);
        } catch (IOException | UncheckedIOException e) {
            // Something vanished or appeared while walking: the next round sees it.
        }
    }

    private static void deleteFile(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // Tried again in the next round.
        }
    }

    /** The name by which a second start finds a running office: from the URL of the profile. */
    private String singleInstancePipe() {
        try {
            byte[] digest = MessageDigest.getInstance("MD5").digest(profileUrl().getBytes(StandardCharsets.UTF_16LE));
            StringBuilder name = new StringBuilder("SingleOfficeIPC_");
            for (byte one : digest) {
                name.append(Integer.toHexString(one & 0xff));
            }
            return name.toString();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    static void pause(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new OfficeFailure("Interrupted while waiting for the office", e);
        }
    }
}
