package org.snugsheet.office.harness;

import java.lang.management.ManagementFactory;
import java.lang.management.OperatingSystemMXBean;
import java.time.Duration;

/** How long to wait before something counts as hung: a machine with much to do is slow, and slowness is no failure. */
public final class Patience {
    /** Beyond it a wait is lost time, however much there is to do. */
    private static final double MOST = 10;

    private Patience() {}

    /**
     * A limit that holds on an idle machine, made longer by what this one has to do now: five programs that share
     * one processor take five times as long.
     */
    public static Duration scaled(Duration limit) {
        OperatingSystemMXBean machine = ManagementFactory.getOperatingSystemMXBean();
        return scaled(limit, machine.getSystemLoadAverage() / machine.getAvailableProcessors());
    }

    /**
     * The same for a given number of programs for each processor; a negative one is not known.
     *
     * @return never less than the limit
     */
    static Duration scaled(Duration limit, double perProcessor) {
        double factor = Math.min(MOST, Math.max(1, perProcessor));
        return Duration.ofMillis(Math.round(limit.toMillis() * factor));
    }
}
