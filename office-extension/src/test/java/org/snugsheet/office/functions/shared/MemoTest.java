package org.snugsheet.office.functions.shared;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.sun.star.uno.Any;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.cooling.CoolingFit;

class MemoTest {

    @Test
    void oneKeyIsWorkedOutOnceAndTheOldestIsForgotten() {
        AtomicInteger made = new AtomicInteger();
        Memo<String, String> memo = new Memo<>(2, key -> key + made.incrementAndGet());

        assertEquals("a1", memo.get("a"));
        assertEquals("a1", memo.get("a"));
        assertEquals("b2", memo.get("b"));
        assertEquals("c3", memo.get("c"));
        assertEquals(2, memo.remembered());
        assertEquals("a4", memo.get("a"));
    }

    @Test
    void aRefusalIsNotRemembered() {
        Memo<Integer, Integer> memo = new Memo<>(2, key -> {
            throw InvalidInputException.of(Problem.NO_READINGS);
        });

        assertThrows(InvalidInputException.class, () -> memo.get(1));
        assertEquals(0, memo.remembered());
    }

    /** Thousands of jars through a memo that is too small for them, from many threads, twice: each answer is its own fit’s. */
    @Test
    void theMemoChangesNoAnswer() {
        JarCells[] jars = IntStream.range(0, 500).mapToObj(MemoTest::jar).toArray(JarCells[]::new);

        IntStream.range(0, 4000).parallel().forEach(i -> {
            JarCells jar = jars[(i * 7919) % jars.length];
            CoolingFit remembered = jar.fit();
            CoolingFit fresh = CoolingFit.of(jar.readings(), jar.surroundings(), jar.mark());
            assertEquals(fresh.constant(), remembered.constant());
            assertEquals(fresh.constantError(), remembered.constantError());
            assertEquals(fresh.start(), remembered.start());
        });
    }

    @Test
    void sameReadingsShareAFitAndAChangedOneDoesNot() {
        assertSame(jar(3).fit(), jar(3).fit());
        assertNotEquals(jar(3), jar(4));
        Object[][] times = {{0.0}, {5.0}, {10.0}};
        Object[][] temps = {{40.0}, {35.0}, {31.0}};
        JarCells coarse = JarCells.of(times, temps, new String[][] {{"5"}}, 2.0, Any.VOID);
        JarCells fine = JarCells.of(times, temps, new String[][] {{"5"}}, 0.1, Any.VOID);
        assertNotEquals(coarse.fit().constantError(), fine.fit().constantError());
    }

    private static JarCells jar(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Object[][] times = new Object[8][1];
        Object[][] temps = new Object[8][1];
        for (int i = 0; i < times.length; i++) {
            times[i][0] = 5.0 * i;
            temps[i][0] = 4 + 36 * Math.exp(-0.02 * 5 * i) + random.nextDouble(-0.5, 0.5);
        }
        return JarCells.of(times, temps, new String[][] {{"4"}}, Any.VOID, Any.VOID);
    }
}
