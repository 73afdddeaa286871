package org.snugsheet.office.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;

/**
 * What a copy and the way back cost: in proportion to the number of formulas. Counted is the time the office’s own processes were
 * at work, so that others on the same machine do not matter; the choices are made by the menu’s address, as in the hand.
 *
 * <p>A measurement, not one of the tests of every build: {@code -Dit.test=CostIT -Dsharing.formulas=400,800,3000} makes it and prints;
 * {@code -Dsharing.ending=.xlsx} for another kind of file.
 */
@EnabledIfSystemProperty(
        named = "sharing.formulas",
        matches = ".+",
        disabledReason = "A measurement, made when asked for")
@ExtendWith(SharedOffice.class)
class CostIT {

    private static final String SIZES = System.getProperty("sharing.formulas", "300,1200");
    private static final String ENDING = System.getProperty("sharing.ending", ".ods");
    private static final int READINGS = 12;
    private static final List<String> OF_ONE_JAR = List.of("COOL.RATE", "COOL.HALFTIME", "COOL.START", "COOL.MISFIT");

    /** What was tried first took 4 s for 400 formulas and 25 s for 800: 6 times as long for twice as many. */
    private static final double PROPORTION = 1.5;

    @Test
    void growsWithTheNumberOfFormulasOnly(Office office, @TempDir Path folder) {
        // The first of all finds Java cold.
        measure(office, folder.resolve("warm.ods"), 200);
        List<Integer> sizes = new ArrayList<>();
        List<Cost> costs = new ArrayList<>();
        for (String size : SIZES.split(",", -1)) {
            sizes.add(Integer.valueOf(size));
            Cost cost = measure(office, folder.resolve(size + ENDING), Integer.parseInt(size));
            costs.add(cost);
            System.out.printf(
                    Locale.ROOT,
                    "%s formulas: copy %.1f s, opened %.1f s, back %.1f s; at work %.1f s and %.1f s%n",
                    size,
                    seconds(cost.share()),
                    seconds(cost.open()),
                    seconds(cost.back()),
                    seconds(cost.shareWork()),
                    seconds(cost.backWork()));
        }
        int last = sizes.size() - 1;
        double larger = (double) sizes.get(last) / sizes.get(0);
        assertTrue(ratio(costs.get(last).shareWork(), costs.get(0).shareWork()) < PROPORTION * larger, "copy " + costs);
        assertTrue(ratio(costs.get(last).backWork(), costs.get(0).backWork()) < PROPORTION * larger, "back " + costs);
    }

    private record Cost(Duration share, Duration open, Duration back, Duration shareWork, Duration backWork) {}

    private static Cost measure(Office office, Path copy, int formulas) {
        long start;
        Duration work;
        Duration share;
        Duration shareWork;
        try (CalcDocument sheet = filled(office, formulas)) {
            work = work(office);
            start = System.nanoTime();
            Menu.share(office, sheet, copy);
            share = since(start);
            shareWork = work(office).minus(work);
        }
        start = System.nanoTime();
        try (CalcDocument sheet = office.open(copy)) {
            Duration open = since(start);
            work = work(office);
            start = System.nanoTime();
            String told = Menu.choose(office, sheet, MenuItem.BRING_BACK, Menu.QUIET);
            assertEquals("back", told.matches("(?s).*: " + String.format("%,d", formulas) + "\\..*") ? "back" : told);
            return new Cost(share, open, since(start), shareWork, work(office).minus(work));
        }
    }

    private static CalcDocument filled(Office office, int formulas) {
        CalcDocument sheet = office.newDocument();
        int jars = (formulas - 1) / OF_ONE_JAR.size() + 1;
        double[] times = new double[jars * READINGS];
        double[] temperatures = new double[jars * READINGS];
        for (int i = 0; i < times.length; i++) {
            times[i] = 4 * (i % READINGS);
            temperatures[i] = Math.rint(2 * (5 + 35 * Math.pow(2, -times[i] / (20 + i / READINGS % 30)))) / 2;
        }
        List<String> all = new ArrayList<>();
        for (int i = 0; i < formulas; i++) {
            int from = i / OF_ONE_JAR.size() * READINGS + 1;
            int to = from + READINGS - 1;
            all.add(OF_ONE_JAR.get(i % OF_ONE_JAR.size()) + "(A" + from + ":A" + to + ";B" + from + ":B" + to
                    + ";$C$1)");
        }
        return sheet.numbersDown("A1", times)
                .numbersDown("B1", temperatures)
                .number("C1", 5)
                .formulasDown("E1", all);
    }

    private static Duration work(Office office) {
        return office.processes().stream()
                .map(one -> one.info().totalCpuDuration().orElse(Duration.ZERO))
                .reduce(Duration.ZERO, Duration::plus);
    }

    private static Duration since(long start) {
        return Duration.ofNanos(System.nanoTime() - start);
    }

    private static double seconds(Duration duration) {
        return duration.toMillis() / 1000.0;
    }

    private static double ratio(Duration one, Duration other) {
        return (double) one.toMillis() / Math.max(1, other.toMillis());
    }
}
