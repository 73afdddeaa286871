package org.snugsheet.office.harness;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Does something drastic unless closed in time. A call into a hung office cannot be interrupted, but it ends when the
 * office is killed.
 */
final class Watchdog implements AutoCloseable {
    private final Thread thread;
    private final AtomicBoolean bitten = new AtomicBoolean();

    private Watchdog(Duration limit, Runnable action) {
        thread = new Thread(
                () -> {
                    try {
                        Thread.sleep(limit.toMillis());
                        bitten.set(true);
                        action.run();
                    } catch (InterruptedException e) {
                        // Closed in time.
                    }
                },
                "watchdog of an office");
        thread.setDaemon(true);
    }

    static Watchdog over(Duration limit, Runnable action) {
        Watchdog watchdog = new Watchdog(limit, action);
        watchdog.thread.start();
        return watchdog;
    }

    boolean hasBitten() {
        return bitten.get();
    }

    @Override
    public void close() {
        thread.interrupt();
    }
}
