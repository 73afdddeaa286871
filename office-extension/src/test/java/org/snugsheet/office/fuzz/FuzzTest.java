package org.snugsheet.office.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Property: whatever cells hold, a function answers with numbers and texts that a cell can show, or refuses in words, within a second;
 * and the same call has the same answer, in whatever order and on however many threads.
 *
 * <p>{@code -Dfuzz.calls=1000000} makes so many calls, {@code -Dfuzz.seed=7} others than the build does. What fails is said as a
 * formula, which is then kept in {@link FuzzCasesTest}.
 */
class FuzzTest {

    private static final int CALLS = Integer.getInteger("fuzz.calls", 4000);

    private static final long SEED = Long.getLong("fuzz.seed", 20_261_127);

    /** So many are kept to be made again; some are whole columns. */
    private static final int KEPT = Math.min(CALLS / 8, 2000);

    private static final int THREADS = 8;

    private static final int MOST_SHOWN = 20;

    @Test
    void whatever_cells_hold_a_function_answers_or_refuses() {
        RandomCalls calls = new RandomCalls(SEED);
        List<String> faults = new ArrayList<>();
        int answered = 0;
        int made = 0;
        while (made < CALLS && faults.size() < MOST_SHOWN) {
            Call call = calls.next();
            Call.Outcome outcome = call.made();
            answered += outcome.isRefused() ? 0 : 1;
            made++;
            Fault.in(call, outcome).ifPresent(faults::add);
        }
        assertEquals("", String.join("\n", faults));
        assertTrue(answered > made / 5, "too few calls make sense: " + answered + " of " + made);
    }

    @Test
    void the_same_call_has_the_same_answer_in_any_order_on_any_thread() throws Exception {
        RandomCalls calls = new RandomCalls(SEED + 1);
        List<Call> all = new ArrayList<>();
        List<String> said = new ArrayList<>();
        for (int i = 0; i < KEPT; i++) {
            Call call = calls.next();
            all.add(call);
            said.add(call.made().said());
        }
        ExecutorService pool = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<List<String>>> answers = new ArrayList<>();
            for (int thread = 0; thread < THREADS; thread++) {
                answers.add(pool.submit(changedBySomeOrder(all, said, thread)));
            }
            for (Future<List<String>> answer : answers) {
                assertEquals(List.of(), answer.get());
            }
        } finally {
            pool.shutdownNow();
        }
    }

    /** Makes a quarter of the calls, in some order, and says which were answered otherwise. */
    private static Callable<List<String>> changedBySomeOrder(List<Call> all, List<String> said, int thread) {
        return () -> {
            List<Integer> order =
                    new ArrayList<>(IntStream.range(0, all.size()).boxed().toList());
            Collections.shuffle(order, new Random(thread));
            List<String> changed = new ArrayList<>();
            for (int i : order.subList(0, all.size() / 4)) {
                String again = all.get(i).made().said();
                if (!again.equals(said.get(i))) {
                    changed.add(all.get(i) + "\n  " + said.get(i) + "\n  " + again);
                }
            }
            return changed;
        };
    }
}
