package org.snugsheet.office.harness;

import com.sun.star.bridge.XBridge;
import com.sun.star.bridge.XBridgeFactory;
import com.sun.star.bridge.XInstanceProvider;
import com.sun.star.comp.helper.Bootstrap;
import com.sun.star.uno.XComponentContext;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.SocketAddress;
import java.net.UnixDomainSocketAddress;
import java.nio.file.Files;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * One office as a process: launched, reached, and made to vanish.
 *
 * <p>It is reached by a pipe with a random name. Windows has no pipe that plain Java can open, so there a socket on
 * this machine only, with a random free port, does the same; {@code -Dsnugsheet.office.socket=true} asks for that
 * elsewhere.
 */
final class OfficeProcess {
    /** The system property that asks for a socket. */
    static final String SOCKET = "snugsheet.office.socket";

    private final OfficeSetup setup;
    private final Workspace workspace;
    private final String pipe = "snugsheet" + UUID.randomUUID().toString().replace("-", "");
    private final boolean bySocket =
            Boolean.getBoolean(SOCKET) || System.getProperty("os.name", "").startsWith("Windows");
    private final int port = bySocket ? freePort() : 0;
    private final Thread lastResort = new Thread(this::vanish, "removes an office left running");
    private @Nullable OwnProcess process;

    private OfficeProcess(OfficeSetup setup, Workspace workspace) {
        this.setup = setup;
        this.workspace = workspace;
    }

    static OfficeProcess launch(OfficeSetup setup) {
        Programs programs = Programs.find(setup.soffice());
        Workspace workspace = Workspace.create(setup.home());
        return new OfficeProcess(setup, workspace).run(programs, install -> {
            workspace.writeSettings(setup);
            Runnable all = () -> setup.extensions().forEach(install::install);
            Optional<KnownInstall> known = setup.frugal() ? KnownInstall.ofThisBuild() : Optional.empty();
            known.ifPresentOrElse(kept -> kept.into(workspace, setup.extensions(), all), all);
        });
    }

    /** The next office in the folder of this one, which must have ended: what this one has kept, that one finds. */
    OfficeProcess again() {
        kill();
        forgetLastResort();
        return new OfficeProcess(setup, workspace).run(Programs.find(setup.soffice()), install -> {});
    }

    private OfficeProcess run(Programs programs, Consumer<ExtensionInstall> prepare) {
        Runtime.getRuntime().addShutdownHook(lastResort);
        try {
            ExtensionInstall install = new ExtensionInstall(programs, workspace, setup.patience());
            prepare.accept(install);
            begin(programs, install);
            return this;
        } catch (RuntimeException | Error e) {
            dispose();
            throw e;
        }
    }

    private void begin(Programs programs, ExtensionInstall install) {
        List<String> command = new ArrayList<>(List.of(
                programs.soffice().toString(),
                setup.windows() ? "--norestore" : "--headless",
                "--norestore",
                "--nologo",
                "--nodefault",
                "--nofirststartwizard",
                "--accept=" + (bySocket ? "socket,host=127.0.0.1,port=" + port : "pipe,name=" + pipe) + ";urp;"));
        command.addAll(install.settings());
        setup.java().ifPresent(folder -> command.add("-env:UNO_JAVA_JFW_JREHOME=" + Workspace.url(folder)));
        process = OwnProcess.launch(command, workspace, workspace.log(), setup.windows());
    }

    /** Tries again and again while the office lives and time is left. */
    XComponentContext connect() {
        try (Watchdog watchdog = Watchdog.over(setup.patience(), this::kill)) {
            while (true) {
                process().meetFamily();
                Optional<ChannelConnection> line = ring();
                if (line.isPresent()) {
                    XComponentContext context = talk(line.get());
                    process().needEverybody();
                    return context;
                }
                if (watchdog.hasBitten()) {
                    throw failure("LibreOffice did not answer within "
                            + setup.patience().toSeconds() + " s");
                }
                if (!process().isAlive()) {
                    throw failure("LibreOffice ended right after its start");
                }
                Workspace.pause(50);
            }
        } catch (OfficeFailure e) {
            throw e;
        } catch (Exception e) {
            throw new OfficeFailure("Cannot talk to LibreOffice. Its log ends:\n" + workspace.logTail() + "\n", e);
        }
    }

    private Optional<ChannelConnection> ring() {
        try {
            Optional<SocketAddress> address = address();
            return address.isPresent() ? Optional.of(ChannelConnection.to(address.get())) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty(); // Not listening yet.
        }
    }

    private Optional<SocketAddress> address() throws IOException {
        if (bySocket) {
            return Optional.of(new InetSocketAddress(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), port));
        }
        return workspace.pipe(pipe).stream()
                .filter(Files::exists)
                .<SocketAddress>map(UnixDomainSocketAddress::of)
                .findFirst();
    }

    private XComponentContext talk(ChannelConnection line) throws Exception {
        XComponentContext local = Bootstrap.createInitialComponentContext(new HashMap<>());
        XBridgeFactory bridges = UnoObjects.as(
                XBridgeFactory.class,
                local.getServiceManager().createInstanceWithContext("com.sun.star.bridge.BridgeFactory", local));
        XInstanceProvider nothingToOffer = name -> {
            throw new com.sun.star.container.NoSuchElementException(name);
        };
        XBridge bridge = bridges.createBridge(pipe, "urp", line, nothingToOffer);
        return UnoObjects.as(XComponentContext.class, bridge.getInstance("StarOffice.ComponentContext"));
    }

    private OfficeFailure failure(String what) {
        return new OfficeFailure(what + ". Its log ends:\n" + workspace.logTail());
    }

    private OwnProcess process() {
        if (process == null) {
            throw new IllegalStateException("not launched");
        }
        return process;
    }

    Workspace workspace() {
        return workspace;
    }

    boolean isAlive() {
        return process().isAlive();
    }

    List<ProcessHandle> living() {
        return process().living();
    }

    boolean waitFor(Duration limit) {
        return process().waitFor(limit);
    }

    /** After a broken line: gives a dying office a moment to be seen dead; true when it lives on. */
    boolean settle() {
        long end = System.nanoTime() + Patience.scaled(Duration.ofSeconds(1)).toNanos();
        while (isAlive() && System.nanoTime() < end) {
            Workspace.pause(50);
        }
        return isAlive();
    }

    void kill() {
        if (process != null) {
            process.kill();
        }
    }

    /** Ends whatever still runs and removes the folder; harmless when done already. */
    void dispose() {
        boolean interrupted = Thread.interrupted(); // A cancelled test must clean up just the same.
        try {
            vanish();
            forgetLastResort();
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private void forgetLastResort() {
        try {
            Runtime.getRuntime().removeShutdownHook(lastResort);
        } catch (IllegalStateException e) {
            // Java is shutting down and runs it anyway.
        }
    }

    private void vanish() {
        kill();
        workspace.delete(pipe);
    }

    private static int freePort() {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        } catch (IOException e) {
            throw new OfficeFailure("No free port on this machine", e);
        }
    }
}
