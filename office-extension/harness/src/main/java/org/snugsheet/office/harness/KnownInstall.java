package org.snugsheet.office.harness;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the first office that is started for tests has installed, for all later ones to copy: the office’s own tool takes about as long as the
 * office takes to start. Several Java programs that run tests share it.
 *
 * @param folder where it is kept
 */
record KnownInstall(Path folder) {
    /** The system property that names the folder; without it each office installs for itself. */
    static final String FOLDER = "snugsheet.installed";

    static Optional<KnownInstall> ofThisBuild() {
        return Optional.ofNullable(System.getProperty(FOLDER)).map(name -> new KnownInstall(Path.of(name)));
    }

    /** Copies what was installed into a workspace. Where nobody has installed just these files yet, that is done there. */
    void into(Workspace workspace, List<Path> extensions, Runnable install) {
        try {
            Files.createDirectories(folder);
            try (FileChannel channel =
                    FileChannel.open(folder.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
                // Until the channel is closed.
                channel.lock();
                Path note = folder.resolve("of");
                String files = workspace.user() + " " + described(extensions);
                if (Files.exists(note) && Files.readString(note).equals(files)) {
                    copy(folder.resolve("profile"), workspace.profile());
                    copy(folder.resolve("shared"), workspace.sharedExtensions());
                } else {
                    install.run();
                    Files.deleteIfExists(note);
                    replace(folder.resolve("profile"), workspace.profile());
                    replace(folder.resolve("shared"), workspace.sharedExtensions());
                    Files.writeString(note, files);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String described(List<Path> extensions) throws IOException {
        StringBuilder all = new StringBuilder();
        for (Path one : extensions) {
            all.append(one)
                    .append(' ')
                    .append(Files.getLastModifiedTime(one))
                    .append(' ')
                    .append(Files.size(one));
        }
        return all.toString();
    }

    private static void replace(Path old, Path by) throws IOException {
        Workspace.deleteTree(old);
        copy(by, old);
    }

    /** What is there already stays. */
    private static void copy(Path from, Path to) throws IOException {
        if (!Files.exists(from)) {
            return;
        }
        try (Stream<Path> all = Files.walk(from)) {
            for (Path one : (Iterable<Path>) all::iterator) {
                Path there = to.resolve(from.relativize(one).toString());
                if (!Files.exists(there)) {
                    Files.copy(one, there);
                }
            }
        }
    }
}
