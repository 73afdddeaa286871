package org.snugsheet.office.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Properties: what changes nothing about a jar changes no answer – the scale, the order of rows, a column typed twice, the unit. */
class InvariantsTest {

    /** A class’s jar: °C in tenths, so that °F are exact to the last digits. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Jar(double[] minutes, double[] celsius, double surroundings, double mark) {

        static Jar drawn(Random random) {
            int count = 5 + random.nextInt(12);
            double mark = random.nextBoolean() ? 1 : 0.5;
            double around = random.nextInt(20);
            double start = 36 + random.nextInt(7);
            double rate = 0.01 + 0.06 * random.nextDouble();
            double every = 1 + random.nextInt(5);
            double[] minutes = new double[count];
            double[] celsius = new double[count];
            for (int i = 0; i < count; i++) {
                minutes[i] = every * i;
                double seen = around + (start - around) * Math.exp(-rate * minutes[i]) + 0.3 * random.nextGaussian();
                celsius[i] = mark * Math.rint(seen / mark);
            }
            return new Jar(minutes, celsius, around, mark);
        }

        Object[] given(boolean fahrenheit) {
            return new Object[] {
                column(minutes),
                column(Arrays.stream(celsius)
                        .map(degrees -> on(degrees, fahrenheit))
                        .toArray()),
                on(surroundings, fahrenheit),
                fahrenheit ? 1.8 * mark : mark,
                fahrenheit ? "F" : "C"
            };
        }
    }

    @RepeatedTest(60)
    void the_scale_changes_no_rate(RepetitionInfo seed) {
        Jar jar = Jar.drawn(new Random(seed.getCurrentRepetition()));
        for (String name : List.of("COOL.RATE", "COOL.RATE.ERROR", "COOL.HALFTIME", "COOL.HALFTIME.ERROR")) {
            assertAlike(answer(name, jar.given(false)), answer(name, jar.given(true)), 1e-6, name + jar);
        }
        assertAlike(
                fahrenheit(answer("COOL.START", jar.given(false))), answer("COOL.START", jar.given(true)), 1e-6, "");
        for (String name : List.of("COOL.MISFIT", "COOL.START.ERROR")) {
            Object celsius = answer(name, jar.given(false));
            assertAlike(
                    celsius instanceof Double kelvins ? 1.8 * kelvins : celsius,
                    answer(name, jar.given(true)),
                    1e-6,
                    name + jar);
        }
    }

    @RepeatedTest(20)
    void the_scale_changes_no_plan(RepetitionInfo seed) {
        Random random = new Random(seed.getCurrentRepetition());
        double rate = 0.02 + 0.05 * random.nextDouble();
        double start = 30 + random.nextInt(13);
        double around = random.nextInt(20);
        Object[] celsius = {start, around};
        Object[] fahrenheit = {on(start, true), on(around, true)};
        for (String name : List.of("PLAN.CERTAINTY", "PLAN.POWER", "PLAN.REPEATS")) {
            List<Object> first = new ArrayList<>(name.equals("PLAN.POWER") ? List.of(4.0) : List.of());
            first.add(rate);
            if (!name.equals("PLAN.CERTAINTY")) {
                first.add(rate / 1.4);
            }
            List<Object> rest = new ArrayList<>(List.of(30.0, 3.0));
            if (name.equals("PLAN.POWER")) {
                rest.add(0.1);
            } else if (name.equals("PLAN.REPEATS")) {
                rest.addAll(List.of(0.8, 0.1));
            }
            Object one = answer(name, joined(first, celsius, rest, 1.0, Call.LEFT_OUT, "C"));
            Object other = answer(name, joined(first, fahrenheit, rest, 1.8, Call.LEFT_OUT, "F"));
            // A reading that falls on the edge between two marks may be rounded to either.
            assertAlike(one, other, name.equals("PLAN.CERTAINTY") ? 1e-9 : 0.03, name);
        }
    }

    @RepeatedTest(40)
    void a_column_typed_twice_is_a_jar_twice(RepetitionInfo seed) {
        Random random = new Random(seed.getCurrentRepetition());
        Jar jar = Jar.drawn(random);
        Object[][] once = new Object[jar.minutes.length + 1][];
        Object[][] twice = new Object[once.length][];
        once[0] = new Object[] {"min", "bare"};
        twice[0] = new Object[] {"min", "bare", "bare"};
        for (int i = 0; i < jar.minutes.length; i++) {
            once[i + 1] = new Object[] {jar.minutes[i], jar.celsius[i]};
            twice[i + 1] = new Object[] {jar.minutes[i], jar.celsius[i], jar.celsius[i]};
        }
        Object[][] one = (Object[][]) answer("COOL.SHEET", once, jar.surroundings, jar.mark, "C");
        Object[][] two = (Object[][]) answer("COOL.SHEET", twice, jar.surroundings, jar.mark, "C");
        assertEquals(numbers(one[1]), numbers(two[1]));
        assertEquals(numbers(one[1]), numbers(two[2]));
    }

    @RepeatedTest(40)
    void the_order_of_jars_changes_no_rank(RepetitionInfo seed) {
        Random random = new Random(seed.getCurrentRepetition());
        Jar first = Jar.drawn(random);
        List<Integer> order = new ArrayList<>(List.of(0, 1, 2, 3));
        double[] slower = {1, 1.3, 1.6, 2.5};
        Object[] sorted = ranked(first, slower, order);
        Collections.shuffle(order, random);
        Object[] shuffled = ranked(first, slower, order);
        assertTrue(
                Arrays.deepEquals(sorted, shuffled), () -> Arrays.deepToString(sorted) + Arrays.deepToString(shuffled));
    }

    private static Object[] ranked(Jar jar, double[] slower, List<Integer> order) {
        Object[][] block = new Object[jar.minutes.length][order.size()];
        Object[] names = new Object[order.size()];
        for (int column = 0; column < order.size(); column++) {
            int which = order.get(column);
            names[column] = "wrap " + which;
            for (int i = 0; i < block.length; i++) {
                double left = (jar.celsius[i] - jar.surroundings) / (jar.celsius[0] - jar.surroundings);
                double slow = jar.surroundings
                        + (jar.celsius[0] - jar.surroundings) * Math.pow(Math.max(left, 0.02), 1 / slower[which]);
                block[i][column] = 0.5 * Math.rint(slow / 0.5);
            }
        }
        Object table =
                answer("COOL.RANK", column(jar.minutes), block, new Object[][] {names}, jar.surroundings, 0.5, "C");
        // Jars that are left out stand below in the order typed.
        return table instanceof Object[][] rows
                ? Arrays.stream(rows).filter(row -> row[0] instanceof Double).toArray()
                : new Object[] {String.valueOf(table)};
    }

    /** Units of one quantity, each the name of which is in the reference. */
    @ParameterizedTest
    @ValueSource(
            strings = {"mm cm m km in ft", "ml l m3 gal", "g kg lb oz", "J kJ cal kcal kWh BTU", "W kW", "clo tog m2K/W"
            })
    void any_way_round_through_units_ends_where_it_began(String units) {
        Random random = new Random(units.hashCode());
        List<String> known = Arrays.stream(units.split(" "))
                .filter(unit -> answer("TEMP.UNIT", 1.0, unit, unit) instanceof Double)
                .toList();
        assertFalse(known.isEmpty());
        for (int i = 0; i < 100; i++) {
            double value = Math.pow(10, random.nextInt(9) - 4) * (1 + random.nextDouble());
            Object now = value;
            String from = known.get(0);
            for (int step = 0; step < 4; step++) {
                String to = known.get(random.nextInt(known.size()));
                now = answer("TEMP.UNIT", now, from, to);
                from = to;
            }
            assertAlike(value, answer("TEMP.UNIT", now, from, known.get(0)), 1e-9, units);
        }
    }

    // ---- helpers

    private static Object answer(String name, Object... given) {
        return new Call(new FormulaText(name, Arrays.asList(given)), "en")
                .made()
                .answer();
    }

    private static void assertAlike(Object one, Object other, double within, String what) {
        if (one instanceof Double number && other instanceof Double same) {
            assertEquals(number, same, within * Math.max(1e-3, Math.abs(number)), what);
        } else {
            // Both refuse, or the test is wrong.
            assertTrue(one instanceof Exception && other instanceof Exception, what + ": " + one + ", " + other);
        }
    }

    private static Object fahrenheit(Object celsius) {
        return celsius instanceof Double degrees ? on(degrees, true) : celsius;
    }

    private static double on(double celsius, boolean fahrenheit) {
        return fahrenheit ? 1.8 * celsius + 32 : celsius;
    }

    private static Object[][] column(double... values) {
        return Arrays.stream(values).mapToObj(value -> new Object[] {value}).toArray(Object[][]::new);
    }

    private static List<Object> numbers(Object[] row) {
        return Arrays.stream(row).filter(Double.class::isInstance).toList();
    }

    private static Object[] joined(List<Object> first, Object[] second, List<Object> third, Object... last) {
        List<Object> all = new ArrayList<>(first);
        all.addAll(List.of(second));
        all.addAll(third);
        all.addAll(Arrays.asList(last));
        return all.toArray();
    }
}
