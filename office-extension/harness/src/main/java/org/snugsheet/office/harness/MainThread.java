package org.snugsheet.office.harness;

import com.sun.star.awt.XCallback;
import com.sun.star.lang.DisposedException;
import com.sun.star.uno.Any;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Work in the office’s main thread, where all that the menu, the keyboard and the mouse do is done. */
public final class MainThread {
    private static final int LOOK_MILLIS = 100;

    private MainThread() {}

    /**
     * Does something there, while no window is painted. Between two calls from outside the office would paint, and what it does then is
     * no part of the work; now and then it paints what is just going, and ends.
     *
     * <p>Not from within such work: it would wait for itself.
     *
     * @param what for the message, such as {@code "closing a document"}
     */
    public static <T> T of(Office office, String what, Callable<T> work) {
        CompletableFuture<T> done = new CompletableFuture<>();
        XCallback callback = nothing -> {
            try {
                done.complete(work.call());
            } catch (Exception | Error failed) {
                done.completeExceptionally(failed);
            }
        };
        return office.call(what, () -> {
            office.queue().addCallback(callback, Any.VOID);
            return outcome(office, done);
        });
    }

    /** No call into the office waits here, which would end with it; so its end is looked for. */
    private static <T> T outcome(Office office, CompletableFuture<T> done) throws Exception {
        while (true) {
            try {
                return done.get(LOOK_MILLIS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException stillBusy) {
                if (!office.isAlive()) {
                    throw new DisposedException("The office’s main thread has gone");
                }
            } catch (ExecutionException failed) {
                if (failed.getCause() instanceof com.sun.star.uno.RuntimeException thrown) {
                    throw thrown;
                }
                throw failed;
            }
        }
    }
}
