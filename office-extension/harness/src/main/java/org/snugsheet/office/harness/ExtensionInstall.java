package org.snugsheet.office.harness;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * Installs a packed .oxt by the office's own tool, as a user would, into a private profile.
 *
 * <p>The tool refuses root unless the extension goes to all users; then a private folder takes the place of the
 * system-wide one. In some cases it reports success and has installed nothing, so the harness then reads the tool’s own list.
 */
record ExtensionInstall(Programs programs, Workspace workspace, Duration patience) {
    /** Settings that the office needs at its start to see what was installed. */
    List<String> settings() {
        List<String> settings = new ArrayList<>();
        settings.add("-env:UserInstallation=" + workspace.profileUrl());
        if (forAllUsers()) {
            settings.add("-env:UNO_SHARED_PACKAGES_CACHE=" + Workspace.url(workspace.sharedExtensions()));
        }
        return settings;
    }

    private boolean forAllUsers() {
        return workspace.user().equals("0");
    }

    /** Nobody is there to read the license and type "yes", so the tool is told not to ask. */
    void install(Path oxt) {
        if (!Files.isRegularFile(oxt)) {
            throw new OfficeFailure("There is no extension " + oxt + "; build it first");
        }
        String said = run("add", "--suppress-license", oxt.toString());
        String list = run("list");
        if (!isRegistered(list, oxt)) {
            throw new OfficeFailure("unopkg did not install " + oxt + ". It said:\n" + Workspace.tail(said)
                    + "\nIts list:\n" + Workspace.tail(list));
        }
    }

    /** The list has one paragraph per extension and per part of it, with its URL and its state in fixed English words. */
    private static boolean isRegistered(String list, Path oxt) {
        return list.contains("/" + oxt.getFileName())
                && list.contains("is registered: yes")
                && !list.contains("is registered: no");
    }

    private String run(String action, String... arguments) {
        List<String> command = new ArrayList<>(List.of(programs.unopkg().toString(), action));
        if (forAllUsers()) {
            command.add("--shared");
        }
        command.addAll(List.of(arguments));
        command.addAll(settings());
        Path output = workspace.folder().resolve("unopkg-" + action + ".log");
        OwnProcess process = OwnProcess.launch(command, workspace, output);
        try {
            boolean ended = process.waitFor(patience);
            String said = Workspace.read(output);
            if (ended && process.exitCode() == 0) {
                return said;
            }
            throw new OfficeFailure("unopkg " + action + " " + String.join(" ", arguments)
                    + (ended ? " failed" : " hung for " + patience.toSeconds() + " s") + ". It said:\n"
                    + Workspace.tail(said));
        } finally {
            process.kill();
        }
    }
}
