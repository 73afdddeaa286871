package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lang.Locale;
import com.sun.star.uno.Any;
import java.lang.reflect.Proxy;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.Problem;
import org.snugsheet.office.cells.Answer;

/** Property: what cannot be is refused in words, and soon; no cell gets an infinity, and none keeps the office busy for ever. */
class WhatCannotBeTest {

    private static final Object LEFT_OUT = Any.VOID;

    /** Many times what it takes. */
    private static final Duration SOON = Duration.ofSeconds(5);

    private final CoolFunctions cool = new CoolFunctions();
    private final PlanFunctions plan = new PlanFunctions();

    @ParameterizedTest
    @ValueSource(strings = {"2147483648", "1e9", "1e300", "1441"})
    void aLessonLongerThanADayIsRefusedAtOnce(String minutes) {
        assertRefused(
                Problem.LESSON_TOO_LONG,
                () -> plan.readings(one("0.04"), one("40"), one("5"), one(minutes), 0.02, 1.0, LEFT_OUT, LEFT_OUT));
        assertRefused(
                Problem.LESSON_TOO_LONG,
                () -> plan.interval(one("0.04"), one("40"), one("5"), one(minutes), 0.02, 1.0, LEFT_OUT, LEFT_OUT));
        assertRefused(
                Problem.LESSON_TOO_LONG,
                () -> plan.certainty(
                        one("0.04"), one("40"), one("5"), one(minutes), one("5"), LEFT_OUT, LEFT_OUT, LEFT_OUT));
    }

    @Test
    void aLessonOfADayIsPlanned() {
        assertTimeoutPreemptively(
                SOON,
                () -> plan.interval(one("0.001"), one("40"), one("5"), one("1440"), 0.02, 1.0, LEFT_OUT, LEFT_OUT));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e-320", "1e-9", "1e300", "1001"})
    void noJarCoolsSo(String rate) {
        assertRefused(
                Problem.RATE_OUT_OF_RANGE, () -> plan.longest(one(rate), one("40"), one("5"), LEFT_OUT, LEFT_OUT));
        assertRefused(
                Problem.RATE_OUT_OF_RANGE,
                () -> plan.certainty(
                        one(rate), one("40"), one("5"), one("40"), one("5"), LEFT_OUT, LEFT_OUT, LEFT_OUT));
        assertRefused(
                Problem.RATE_OUT_OF_RANGE,
                () -> plan.lesson(
                        english(),
                        one("30"),
                        one("250"),
                        one("40"),
                        one("5"),
                        one(rate),
                        one("0.03"),
                        LEFT_OUT,
                        LEFT_OUT,
                        LEFT_OUT,
                        LEFT_OUT,
                        LEFT_OUT,
                        LEFT_OUT,
                        LEFT_OUT));
    }

    @Test
    void noAnswerIsInfinite() {
        assertRefused(
                Problem.ANSWER_TOO_LARGE, () -> cool.heat(one("1e308"), one("40"), one("20"), LEFT_OUT, LEFT_OUT));
        assertRefused(Problem.ANSWER_TOO_LARGE, () -> new TempFunctions().unit(one("1e308"), one("km"), one("mm")));
        assertRefused(Problem.ANSWER_TOO_LARGE, () -> Answer.of(() -> new Object[][] {{"x", Double.NaN}}));
    }

    @Test
    void aWholeColumnIsRefusedAtOnce() {
        String[][] column = new String[1 << 20][];
        for (int row = 0; row < column.length; row++) {
            column[row] = new String[] {"20"};
        }
        TempFunctions temp = new TempFunctions();
        assertRefused(Problem.TOO_MANY_CELLS, () -> temp.convert(column, one("C"), one("F")));
        assertRefused(Problem.TOO_MANY_CELLS, () -> temp.change(column, one("C"), one("F")));
        assertRefused(Problem.TOO_MANY_CELLS, () -> cool.minutes(column));
    }

    @Test
    void nobodyWearsOrWrapsAMillionThings() {
        Object[][] garments = column("T-shirt", 1 << 20);
        assertRefused(Problem.TOO_MANY_CELLS, () -> new ColdFunctions().outfit(garments, LEFT_OUT));
        // Each layer was copied with all before it.
        Object[][] thicknesses = column(3.0, 20_000);
        Object[][] materials = column("wool", 20_000);
        WrapFunctions wrap = new WrapFunctions();
        assertRefused(Problem.TOO_MANY_CELLS, () -> wrap.flat(thicknesses, materials, LEFT_OUT, LEFT_OUT, LEFT_OUT));
        assertRefused(
                Problem.TOO_MANY_CELLS,
                () -> wrap.round(one("35"), thicknesses, materials, LEFT_OUT, LEFT_OUT, LEFT_OUT));
    }

    /** Somebody selects the column by its letter. The sums are those of the sources: ASHRAE 55 for clo, R = d/λ for layers. */
    @Test
    void theBlanksOfAWholeColumnAreNoGarmentsAndNoLayers() throws Exception {
        Object[][] garments = column("", 1 << 20);
        garments[0] = new Object[] {"T-shirt"};
        garments[3] = new Object[] {"thick trousers"};
        garments[garments.length - 1] = new Object[] {"boots"};
        assertEquals(0.08 + 0.24 + 0.10, new ColdFunctions().outfit(garments, LEFT_OUT), 1e-12);
        Object[][] thicknesses = column("", 1 << 20);
        Object[][] conductivities = column("", 1 << 20);
        thicknesses[1] = new Object[] {20.0};
        conductivities[1] = new Object[] {0.04};
        assertEquals(0.5, new WrapFunctions().flat(thicknesses, conductivities, LEFT_OUT, LEFT_OUT, LEFT_OUT), 1e-12);
    }

    /** 256 jars of 10,000 readings: a day’s logging by machines, and not a class. */
    @Test
    void aBlockOfMillionsIsRefusedAtOnce() {
        Object[] row = new Object[256];
        Arrays.fill(row, 20.0);
        Object[][] block = new Object[10_000][];
        Arrays.fill(block, row);
        assertRefused(
                Problem.TOO_MANY_CELLS,
                () -> cool.rank(english(), block, block, block, one("3"), LEFT_OUT, LEFT_OUT, LEFT_OUT));
        assertRefused(Problem.TOO_MANY_CELLS, () -> cool.sheet(english(), block, one("3"), LEFT_OUT, LEFT_OUT));
    }

    /** Each jar is fitted: 200 of 1,000 readings took 24 s, and 16,000 of seven readings 3 s. */
    @ParameterizedTest
    @CsvSource({"1001, 8, TOO_MANY_CELLS", "8, 202, TOO_MANY_JARS", "2, 16384, TOO_MANY_JARS"})
    void moreJarsThanASchoolHasAreRefusedBeforeAnyIsFitted(int rows, int columns, Problem problem) {
        Object[][] block = new Object[rows][columns];
        for (int row = 0; row < rows; row++) {
            Arrays.fill(block[row], row == 0 ? "fleece" : (Object) (40.0 - row * 0.01));
            block[row][0] = row == 0 ? "min" : (Object) (double) row;
        }
        assertRefused(problem, () -> cool.sheet(english(), block, one("3"), LEFT_OUT, LEFT_OUT));
        Object[][] table = new CheckFunctions().sheet(english(), block, one("3"), LEFT_OUT, LEFT_OUT);
        assertEquals(2, table.length, "one line, which says so");
        assertTrue(String.valueOf(table[1][2]).startsWith("These are "), String.valueOf(table[1][2]));
    }

    /** Longer than a number holds, or none at all: no two of its digits were swapped. */
    @ParameterizedTest
    @ValueSource(doubles = {1e15, 1e300, Double.MAX_VALUE, -Double.MAX_VALUE})
    void aNumberOfManyDigitsIsChecked(double reading) {
        Object[][] minutes = {{0.0}, {5.0}, {10.0}, {15.0}, {20.0}, {25.0}, {30.0}};
        Object[][] temps = {{38.0}, {32.0}, {reading}, {22.0}, {19.0}, {16.0}, {14.0}};
        for (Object scale : new Object[] {"C", "F"}) {
            Object[][] found = new CheckFunctions().all(english(), minutes, temps, one("3"), LEFT_OUT, scale);
            assertTrue(found.length > 1);
        }
    }

    private static void assertRefused(Problem problem, Executable call) {
        IllegalArgumentException thrown =
                assertTimeoutPreemptively(SOON, () -> assertThrows(IllegalArgumentException.class, call));
        assertEquals(Optional.of(problem), Answer.refusal(thrown).map(refusal -> refusal.problem()));
    }

    private static Object[][] column(Object cell, int rows) {
        Object[][] column = new Object[rows][];
        Arrays.fill(column, new Object[] {cell});
        return column;
    }

    private static String[][] one(String cell) {
        return new String[][] {{cell}};
    }

    private static XPropertySet english() {
        Locale locale = new Locale("en", "", "");
        return (XPropertySet) Proxy.newProxyInstance(
                WhatCannotBeTest.class.getClassLoader(),
                new Class<?>[] {XPropertySet.class},
                (proxy, method, given) -> locale);
    }
}
