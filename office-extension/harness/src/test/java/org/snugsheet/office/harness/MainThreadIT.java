package org.snugsheet.office.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.lang.EventObject;
import com.sun.star.util.XCloseBroadcaster;
import com.sun.star.util.XCloseListener;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Work in the office’s main thread, and that documents are closed there. */
@ExtendWith(SharedOffice.class)
class MainThreadIT {

    @Test
    void workThereIsAnswered(@WithoutExtension Office office) {
        try (CalcDocument document = office.newDocument()) {
            assertEquals(
                    4.0,
                    MainThread.of(
                            office,
                            "adding",
                            () -> document.formula("A1", "=2+2").at("A1").number()));
        }
    }

    @Test
    void workThatFailsIsSaidToHaveFailed(@WithoutExtension Office office) {
        OfficeFailure failure = assertThrows(
                OfficeFailure.class,
                () -> MainThread.of(office, "skating", () -> {
                    throw new IllegalStateException("the ice is thin");
                }));
        assertTrue(failure.getMessage().contains("skating"), failure.getMessage());
        assertTrue(failure.getMessage().contains("the ice is thin"), failure.getMessage());
        assertTrue(office.isAlive());
    }

    /** A check of a test that fails there must not leave the test waiting. */
    @Test
    void aFailedCheckIsNotWaitedFor(@WithoutExtension Office office) {
        OfficeFailure failure = assertThrows(
                OfficeFailure.class,
                () -> MainThread.of(office, "checking", () -> {
                    throw new AssertionError("no jar is warm");
                }));
        assertTrue(failure.getMessage().contains("no jar is warm"), failure.getMessage());
    }

    /** What the office asks of us while it works for one of our threads comes back to that thread. */
    @Test
    void documentsAreClosedThere(@WithoutExtension Office office) throws Exception {
        CompletableFuture<Thread> asked = new CompletableFuture<>();
        CalcDocument document = office.newDocument();
        UnoObjects.as(XCloseBroadcaster.class, document.uno()).addCloseListener(new XCloseListener() {
            @Override
            public void queryClosing(EventObject event, boolean ours) {
                asked.complete(Thread.currentThread());
            }

            @Override
            public void notifyClosing(EventObject event) {
                // The first question is enough.
            }

            @Override
            public void disposing(EventObject event) {
                // Nothing is kept.
            }
        });
        document.close();
        assertNotSame(Thread.currentThread(), asked.get(10, TimeUnit.SECONDS));
    }
}
