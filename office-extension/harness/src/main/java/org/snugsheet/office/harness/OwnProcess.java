package org.snugsheet.office.harness;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;

/**
 * A program of the office that the harness has started, with everything that program started in turn: {@code soffice}
 * is a script, the office itself its grandchild, and killing only the script leaves the office alive.
 */
final class OwnProcess {
    /** The system property that names how the office draws windows, such as {@code gtk3}; they are then on a real screen. */
    static final String SCREEN = "snugsheet.office.screen";

    /** The system property with the options of the office's Java; without it that Java is as it comes, as for a teacher. */
    static final String JAVA = "snugsheet.office.java";

    private final Process process;
    private final Set<ProcessHandle> family = new LinkedHashSet<>();
    private List<ProcessHandle> needed = List.of();

    private OwnProcess(Process process) {
        this.process = process;
    }

    /** Starts with nothing to read and all output in the log: an office with a broken standard output hangs. */
    static OwnProcess launch(List<String> command, Workspace workspace, Path output) {
        return launch(command, workspace, output, false);
    }

    /** The same; windows are drawn where nobody sees them, so that no screen is needed, unless {@link #SCREEN} says how. */
    static OwnProcess launch(List<String> command, Workspace workspace, Path output, boolean windows) {
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectInput(ProcessBuilder.Redirect.from(nothing()))
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(output.toFile()))
                .directory(workspace.folder().toFile());
        Map<String, String> environment = builder.environment();
        environment.put("TMPDIR", workspace.scratch().toString());
        // The start script of unopkg loses its -env: arguments when it notes which Java it found, and would write that
        // into
        // the user's own settings.
        environment.put("UserInstallation", workspace.profileUrl());
        // File names with umlauts, and English messages, wherever the test runs.
        environment.put("LC_ALL", "C.UTF-8");
        if (windows) {
            environment.put("SAL_USE_VCLPLUGIN", System.getProperty(SCREEN, "svp"));
        }
        // A debugger or an agent meant for the test's own Java would otherwise go into the office's Java too.
        environment.remove("JAVA_TOOL_OPTIONS");
        Optional.ofNullable(System.getProperty(JAVA))
                .ifPresent(options -> environment.put("JAVA_TOOL_OPTIONS", options));
        try {
            return new OwnProcess(builder.start());
        } catch (IOException e) {
            throw new OfficeFailure("Cannot run " + command.get(0), e);
        }
    }

    private static File nothing() {
        return new File(File.separatorChar == '\\' ? "NUL" : "/dev/null");
    }

    /** Whether windows are shown where somebody sees them. */
    static boolean hasScreen() {
        return System.getProperty(SCREEN) != null;
    }

    /** Remembers the present children; one whose parent dies can no longer be found from here. */
    synchronized void meetFamily() {
        process.descendants().forEach(family::add);
    }

    /** From now on, each process that runs at this moment is one without which the program counts as dead. */
    synchronized void needEverybody() {
        needed = living();
    }

    /** Whether the program runs, and with it every process that it needs; a half-dead office is a dead one. */
    synchronized boolean isAlive() {
        return process.isAlive() && needed.stream().allMatch(ProcessHandle::isAlive);
    }

    /** Waits for the end of the whole family; false when time is up. */
    boolean waitFor(Duration limit) {
        long end = System.nanoTime() + limit.toNanos();
        while (anyAlive()) {
            if (System.nanoTime() > end) {
                return false;
            }
            Workspace.pause(20);
        }
        return true;
    }

    /** The exit code of an ended process; Java may learn of it a moment after the process is gone. */
    int exitCode() {
        return process.onExit()
                .orTimeout(moment(), TimeUnit.MILLISECONDS)
                .join()
                .exitValue();
    }

    long pid() {
        return process.pid();
    }

    /** Every process of this program that still runs. */
    synchronized List<ProcessHandle> living() {
        meetFamily();
        return Stream.concat(Stream.of(process.toHandle()), family.stream())
                .filter(ProcessHandle::isAlive)
                .toList();
    }

    private boolean anyAlive() {
        return !living().isEmpty();
    }

    /** Milliseconds after which a killed process should be gone. */
    private static long moment() {
        return Patience.scaled(Duration.ofSeconds(10)).toMillis();
    }

    /** Ends the whole family by force and waits until it is gone. */
    void kill() {
        living().forEach(ProcessHandle::destroyForcibly);
        try {
            process.waitFor(moment(), TimeUnit.MILLISECONDS);
            for (ProcessHandle handle : living()) {
                handle.destroyForcibly();
                handle.onExit().get(moment(), TimeUnit.MILLISECONDS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException | TimeoutException e) {
            // A process that even the kernel cannot end: nothing more can be done from here.
        }
    }
}
