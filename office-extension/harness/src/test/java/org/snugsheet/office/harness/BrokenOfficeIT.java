package org.snugsheet.office.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.SocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** An office that dies, hangs or never comes up: said clearly, in bounded time, with nothing left behind. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "signals and shell scripts")
class BrokenOfficeIT {
    private static final Duration QUICK = Patience.scaled(Duration.ofSeconds(5));
    private static final Duration BOUNDED = Patience.scaled(Duration.ofSeconds(20));

    @Test
    void anOfficeThatEndsWellLeavesNothing() {
        Office office = Office.start();
        List<ProcessHandle> processes = office.processes();
        assertTrue(processes.size() >= 2, "the script and the office itself, at least: " + processes);
        office.close();
        assertGone(office, processes);
        OfficeFailure failure = assertThrows(OfficeFailure.class, () -> office.evaluate("=1"));
        assertTrue(failure.getMessage().contains("closed"), failure.getMessage());
        office.close();
    }

    @Test
    void aKilledOfficeIsReportedAndCleanedUp() {
        Office office = Office.start();
        List<ProcessHandle> processes = office.processes();
        CalcDocument document = office.newDocument();
        lastOf(processes).destroyForcibly();
        OfficeFailure failure = assertThrows(OfficeFailure.class, () -> document.at("A1"));
        assertTrue(failure.getMessage().contains("has died"), failure.getMessage());
        assertFalse(office.isAlive());
        assertTimeout(QUICK, () -> {
            document.close();
            office.close();
        });
        assertGone(office, processes);
    }

    @Test
    void theStartScriptAloneKilledTakesTheOfficeAlong() {
        Office office = Office.start();
        List<ProcessHandle> processes = office.processes();
        processes.get(0).destroyForcibly();
        processes.get(0).onExit().join();
        assertFalse(office.isAlive());
        assertTimeout(QUICK, office::close);
        assertGone(office, processes);
    }

    @Test
    void aHungOfficeIsKilledAfterAWhile() throws Exception {
        Office office = Office.start();
        office.setPatience(Duration.ofSeconds(2));
        List<ProcessHandle> processes = office.processes();
        long pid = lastOf(processes).pid();
        assertEquals(
                0, new ProcessBuilder("sh", "-c", "kill -STOP " + pid).start().waitFor());
        OfficeFailure failure =
                assertThrows(OfficeFailure.class, () -> assertTimeout(BOUNDED, () -> office.evaluate("=1")));
        assertTrue(failure.getMessage().contains("hung"), failure.getMessage());
        assertTimeout(QUICK, office::close);
        assertGone(office, processes);
    }

    /** The other threads of such an office still answer, so that no call into it hangs: what waits does. */
    @Test
    void anOfficeWhoseMainThreadHangsIsKilledAfterAWhile() throws Exception {
        Office office = Office.start();
        CalcDocument document = office.newDocument();
        List<ProcessHandle> processes = office.processes();
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch never = new CountDownLatch(1);
        CompletableFuture<OfficeFailure> busy = CompletableFuture.supplyAsync(() -> assertThrows(
                OfficeFailure.class,
                () -> MainThread.of(office, "waiting for spring", () -> {
                    begun.countDown();
                    never.await();
                    return true;
                })));
        assertTrue(begun.await(BOUNDED.toMillis(), TimeUnit.MILLISECONDS));
        office.setPatience(Duration.ofSeconds(2));
        OfficeFailure failure = assertThrows(OfficeFailure.class, () -> assertTimeout(BOUNDED, document::close));
        assertTrue(failure.getMessage().contains("hung"), failure.getMessage());
        String other = busy.get(BOUNDED.toMillis(), TimeUnit.MILLISECONDS).getMessage();
        assertTrue(other.contains("waiting for spring"), other);
        never.countDown();
        assertTimeout(QUICK, () -> {
            document.close();
            office.close();
        });
        assertGone(office, processes);
    }

    @Test
    void theSocketsOfAKilledOfficeAreRemoved() throws IOException {
        List<Path> before = sockets();
        Office office = Office.start();
        List<Path> its = new ArrayList<>(sockets());
        its.removeAll(before);
        assertTrue(its.size() >= 2, "its own pipe, and the one by which a second start finds it: " + its);
        office.processes().forEach(ProcessHandle::destroyForcibly);
        office.close();
        // Another office that started in the meantime still answers.
        its.removeIf(socket -> !Files.exists(socket) || answers(socket));
        assertEquals(List.of(), its);
    }

    @Test
    void aMissingOfficeIsNamed() {
        OfficeSetup setup = OfficeSetup.plain().using(Path.of("/no/such/soffice"));
        OfficeFailure failure = assertThrows(OfficeFailure.class, setup::start);
        assertTrue(failure.getMessage().contains("/no/such/soffice"), failure.getMessage());
    }

    @Test
    void anOfficeThatEndsAtOnceIsQuoted(@TempDir Path folder) throws IOException {
        Path note = folder.resolve("folder");
        OfficeSetup setup =
                OfficeSetup.plain().using(script(folder, "pwd > " + note + "; echo the snow is too deep; exit 3"));
        OfficeFailure failure = assertThrows(OfficeFailure.class, () -> assertTimeout(BOUNDED, setup::start));
        assertTrue(failure.getMessage().contains("the snow is too deep"), failure.getMessage());
        assertFalse(Files.exists(Path.of(Files.readString(note).strip())), "its folder is gone");
    }

    @Test
    void anOfficeThatNeverAnswersIsGivenUp(@TempDir Path folder) throws IOException {
        Path note = folder.resolve("pids");
        OfficeSetup setup = OfficeSetup.plain()
                .using(script(folder, "sleep 1000 & echo $! $$ > " + note + "; echo waiting; wait"))
                .withPatience(Duration.ofSeconds(2));
        OfficeFailure failure = assertThrows(OfficeFailure.class, () -> assertTimeout(BOUNDED, setup::start));
        assertTrue(failure.getMessage().contains("did not answer within 2 s"), failure.getMessage());
        assertTrue(failure.getMessage().contains("waiting"), failure.getMessage());
        for (String pid : Files.readString(note).strip().split(" ", -1)) {
            assertFalse(ProcessHandle.of(Long.parseLong(pid)).isPresent(), "still runs: " + pid);
        }
    }

    @Test
    void anInstallationThatHangsIsGivenUp(@TempDir Path folder) throws IOException {
        Path soffice = script(folder, "exit 1");
        Files.move(script(folder.resolve("sub"), "sleep 1000"), folder.resolve("unopkg"));
        OfficeSetup setup = OfficeSetup.plain()
                .using(soffice)
                .withExtension(SmallExtension.writeTo(folder))
                .withPatience(Duration.ofSeconds(2));
        OfficeFailure failure = assertThrows(OfficeFailure.class, () -> assertTimeout(BOUNDED, setup::start));
        assertTrue(failure.getMessage().contains("hung for 2 s"), failure.getMessage());
    }

    @Test
    void anInstallationThatOnlySaysItWorkedIsNotBelieved(@TempDir Path folder) throws IOException {
        Path soffice = script(folder, "exit 1");
        Files.move(script(folder.resolve("sub"), "echo all done"), folder.resolve("unopkg"));
        OfficeSetup setup = OfficeSetup.plain().using(soffice).withExtension(SmallExtension.writeTo(folder));
        OfficeFailure failure = assertThrows(OfficeFailure.class, setup::start);
        assertTrue(failure.getMessage().contains("did not install"), failure.getMessage());
    }

    private static Path script(Path folder, String line) throws IOException {
        Files.createDirectories(folder);
        Path script = Files.writeString(folder.resolve("soffice"), "#!/bin/sh\n" + line + "\n");
        assertTrue(script.toFile().setExecutable(true));
        return script;
    }

    /** The office itself: started last, by the script. */
    private static ProcessHandle lastOf(List<ProcessHandle> processes) {
        return processes.get(processes.size() - 1);
    }

    private static void assertGone(Office office, List<ProcessHandle> processes) {
        assertEquals(
                List.of(), processes.stream().filter(ProcessHandle::isAlive).toList());
        assertEquals(List.of(), office.processes());
        assertFalse(Files.exists(office.folder()), "left behind: " + office.folder());
    }

    private static List<Path> sockets() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("/tmp"))) {
            return files.filter(file -> file.getFileName().toString().startsWith("OSL_PIPE_"))
                    .toList();
        }
    }

    private static boolean answers(Path socket) {
        try (SocketChannel line = SocketChannel.open(UnixDomainSocketAddress.of(socket))) {
            return line.isConnected();
        } catch (IOException e) {
            return false;
        }
    }
}
