package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.Locale;
import com.sun.star.uno.Any;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.declare.FunctionDeclaration;

/**
 * Cells as classes really fill them, each of which once gave a wrong number or blamed the wrong row; what they gave stands in
 * engine/NOTES.md. The functions are called as the office calls them, in plain Java.
 */
class ClassroomCasesTest {

    private static final double[] DECENT = {40, 34, 30, 26, 24, 22};

    static Stream<FunctionDeclaration> functionsOfTimes() {
        return Families.functions().stream()
                .filter(function -> function.name().startsWith("COOL."))
                .filter(function -> function.arguments().stream()
                        .anyMatch(argument -> argument.name().equals("times")));
    }

    /** A column formatted 9:00, 9:05 … holds parts of a day; one formatted 0:00, 5:00 … 25:00 holds hours of a stopwatch. */
    @ParameterizedTest
    @MethodSource("functionsOfTimes")
    void every_function_of_times_refuses_clock_times_and_names_the_way_out(FunctionDeclaration function) {
        double[] clock = new double[6];
        double[] stopwatch = new double[6];
        Object[][] texts = new Object[6][];
        for (int i = 0; i < 6; i++) {
            clock[i] = (9 * 60 + 5 * i) / 1440.0;
            stopwatch[i] = 5 * i / 24.0;
            texts[i] = new Object[] {"9:0" + i};
        }
        for (Object times : new Object[] {column(clock), column(stopwatch), texts}) {
            Object[] given = function.arguments().stream()
                    .limit(function.arguments().stream()
                            .filter(one -> !one.optional())
                            .count())
                    .map(argument -> switch (argument.name()) {
                        case "times", "otherTimes" -> times;
                        case "temps", "otherTemps" -> column(DECENT);
                        case "block" ->
                            new Object[][] {
                                {40.0, 40.0}, {34.0, 36.0}, {30.0, 33.0}, {26.0, 31.0}, {24.0, 29.0}, {22.0, 27.0}
                            };
                        case "names" -> new Object[][] {{"bare", "wool"}};
                        case "surroundings" -> "10";
                        case "at" -> column(1, 2);
                        default -> throw new AssertionError(argument.name());
                    })
                    .toArray();
            String said = answered(function.name(), given);
            assertTrue(said.contains("COOL.MINUTES"), function.name() + ": " + said);
        }
    }

    @Test
    void seconds_for_minutes_are_asked_about() {
        String said = words("CHECK.READINGS", column(0, 300, 600, 900, 1200, 1500), column(DECENT), "10");
        assertTrue(said.contains("are these seconds?"), said);
    }

    @Test
    void one_question_has_one_answer() {
        double[] late = {545, 550, 555, 560, 565};
        assertThrows(
                InvalidInputException.class, () -> call("COOL.START", column(late), column(40, 36, 32, 29, 26), "10"));
        Object[][] sheet = table(
                "COOL.SHEET",
                new Object[][] {
                    {"min", "bare"}, {545.0, 40.0}, {550.0, 36.0}, {555.0, 32.0}, {560.0, 29.0}, {565.0, 26.0}
                },
                "10");
        assertFalse(Arrays.stream(sheet[1]).anyMatch(cell -> cell instanceof Double d && d > 1e6), row(sheet[1]));

        double[] flat = {40, 40, 41, 40, 40, 39, 40};
        assertThrows(
                InvalidInputException.class,
                () -> call("COOL.HALFTIME", column(0, 1, 2, 3, 4, 5, 6), column(flat), "8"));
        Object[][] block = new Object[8][];
        block[0] = new Object[] {"min", "bare"};
        for (int i = 0; i < 7; i++) {
            block[i + 1] = new Object[] {(double) i, flat[i]};
        }
        Object[] hardly = table("COOL.SHEET", block, "8")[1];
        assertFalse(hardly[4] instanceof Double, row(hardly));
    }

    @Test
    void groups_keep_the_names_they_were_given() throws Exception {
        Object[][] rank = table(
                "COOL.RANK",
                column(0, 5, 10, 15, 20, 25),
                new Object[][] {{40.0, 40.0}, {34.0, 37.0}, {30.0, 34.0}, {26.0, 32.0}, {24.0, 30.0}, {22.0, 28.0}},
                new Object[][] {{1.0, 2.0}},
                "10");
        assertEquals("2", rank[1][1]);
        assertEquals("1", rank[2][1]);
        Object[][] german = (Object[][]) callIn(
                "de",
                "COOL.SHEET",
                new Object[][] {{"min", ""}, {0.0, 40.0}, {5.0, 34.0}, {10.0, 30.0}, {15.0, 26.0}, {20.0, 24.0}},
                "10");
        assertTrue(String.valueOf(german[1][0]).startsWith("Gefäß"), row(german[1]));
    }

    /** The row that is wrong, and what would fit there; or at least the row. */
    @ParameterizedTest
    @CsvSource({
        "0 3 6 9 12 15, 14 39 36 34 33 31, 18, Row 1, 41",
        "0 4 8 12 16 20, 43 41 40 39 37 97, 13, Row 6, 97",
        "0 3 6 9 12 15 18 21, 4.15 39.4 37.4 35.5 33.8 32.2 30.6 29.2, 5, Row 1, 41.5",
        "0 3 6 9 12 15 18 21, 41.5 39.4 37.4 3.55 33.8 32.2 30.6 29.2, 5, Row 4, 35.5",
        "0 3 6 9 12 15 18 21, 41.5 39.4 -37.4 35.5 33.8 32.2 30.6 29.2, 5, Row 3, 37.4",
        "0 3 6 9 12 15 18 21, 41.5 39.4 37.4 35.5 43.8 32.2 30.6 29.2, 5, Row 5, 33.8"
    })
    void the_row_that_is_wrong_is_blamed(String minutes, String seen, String around, String row, String fits) {
        Object[] given = {column(numbers(minutes)), column(numbers(seen)), around};
        String said = words("CHECK.READINGS", given);
        // The table has what to do in a column of its own.
        Object[][] all = table("CHECK.ALL", given);
        assertTrue(said.startsWith(String.valueOf(all[1][1])), row(all[1]));
        assertTrue(said.startsWith(row + " ") && said.contains(fits), said);
    }

    /** Two rows swapped: nobody is told a number that nobody typed. */
    @Test
    void no_reading_is_quoted_that_nobody_typed() {
        double[] minutes = {0, 3, 6, 9, 12, 15, 18, 21, 24};
        double[] seen = {35, 36, 37, 33, 32, 31, 30, 29, 28};
        for (Object[] line : table("CHECK.ALL", column(minutes), column(seen), "19")) {
            assertFalse(String.valueOf(line[1]).contains("73"), row(line));
        }
    }

    /** One reading typed twice, so that all below it stand a row too low: a thermometer with fine marks shows it. */
    @Test
    void a_reading_typed_twice_is_told_at_its_row_where_it_shows() {
        double[] minutes = {0, 3, 6, 9, 12, 15, 18, 21};
        double[] seen = {41.5, 39.4, 37.4, 37.4, 35.5, 33.8, 32.2, 30.6};
        String said = words("CHECK.READINGS", column(minutes), column(seen), "5", 0.1);
        assertTrue(said.startsWith("Row 4 (minute 9): the readings jump here"), said);
        assertEquals("OK", words("CHECK.READINGS", column(minutes), column(seen), "5", 1.0));
    }

    @Test
    void an_option_typed_as_zero_is_zero_or_refused() {
        assertThrows(
                InvalidInputException.class,
                () -> call("PLAN.BATH", 4000.0, 5.0, 6.0, 250.0, 40.0, 0.05, 30.0, 21.0, 0.0));
        double nothing = (double) call("PLAN.BATH", 4000.0, 5.0, 6.0, 250.0, 40.0, 0.05, 30.0, 21.0, "0");
        double hardly = (double) call("PLAN.BATH", 4000.0, 5.0, 6.0, 250.0, 40.0, 0.05, 30.0, 21.0, 1e-9);
        assertEquals(13.24, nothing, 0.005);
        assertEquals(hardly, nothing, 1e-6);
        assertThrows(InvalidInputException.class, () -> call("PLAN.POWER", 4.0, 0.05, 0.04, 40.0, 5.0, 30.0, 3.0, 0.0));
    }

    @Test
    void nothing_is_answered_beyond_sense_or_source() {
        assertThrows(InvalidInputException.class, () -> call("COOL.TEMP", 10.0, 40.0, 10.0, -0.05));
        assertThrows(InvalidInputException.class, () -> call("COLD.NEEDED", -40.0, "standing", 60.0));
        assertThrows(InvalidInputException.class, () -> call("COLD.NEEDED", -100.0, "shovelling"));
        assertEquals(1000.0, (double) call("TEMP.UNIT", 1.0, "kcal", "cal"), 1e-9);
        assertEquals(0.18, (double) call("WRAP.LAYER", 50.0, "air"), 1e-9);
    }

    /** 83 W through a lid under water once; now the side loses what is lost. */
    @Test
    void a_jar_in_a_tub_has_its_lid_in_the_air() {
        Object[] jar = {250.0, 35.0, column(3, 10), new Object[][] {{"glass"}, {"wool"}}, 40.0, 5.0, "stirred water"};
        double rate = (double) call("WRAP.EXPECT", jar);
        assertEquals(15.3, Math.log(2) / rate, 0.1);
        double watts = (double) call("WRAP.FLOW", jar);
        assertEquals(26.7, watts, 0.1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"wool", "fleece", "newspaper"})
    void soaked_stuff_conducts_as_water_does(String material) {
        double soaked = (double) call("WRAP.CONDUCTIVITY", material, "soaked");
        assertEquals(0.6, soaked, 0.02);
    }

    // ---- calls as the office makes them

    private static String answered(String name, Object... given) {
        try {
            Object answer = call(name, given);
            return answer instanceof Object[][] rows
                    ? Arrays.stream(rows).map(ClassroomCasesTest::row).toList().toString()
                    : String.valueOf(answer);
        } catch (InvalidInputException refusal) {
            return refusal.finding().sentence();
        }
    }

    private static String words(String name, Object... given) {
        return String.valueOf(call(name, given));
    }

    private static Object[][] table(String name, Object... given) {
        return (Object[][]) call(name, given);
    }

    private static Object call(String name, Object... given) {
        return callIn("en", name, given);
    }

    private static Object callIn(String language, String name, Object... given) {
        Method method = Families.functions().stream()
                .filter(function -> function.name().equals(name))
                .map(FunctionDeclaration::method)
                .findFirst()
                .orElseThrow();
        List<Object> values = new ArrayList<>();
        int next = 0;
        for (Class<?> type : method.getParameterTypes()) {
            values.add(
                    type == XPropertySet.class
                            ? documentIn(language)
                            : next < given.length ? handedOver(given[next++], type) : Any.VOID);
        }
        try {
            Object family = Families.newService(method.getDeclaringClass());
            return method.invoke(family, values.toArray());
        } catch (InvocationTargetException thrown) {
            throw Answer.refusal(thrown.getTargetException())
                    .orElseThrow(() -> new AssertionError(thrown.getTargetException()));
        } catch (ReflectiveOperationException impossible) {
            throw new LinkageError(name, impossible);
        }
    }

    private static Object handedOver(Object given, Class<?> type) {
        Object[][] cells = given instanceof Object[][] many ? many : new Object[][] {{given}};
        if (type == String[][].class) {
            return Arrays.stream(cells)
                    .map(line -> Arrays.stream(line).map(String::valueOf).toArray(String[]::new))
                    .toArray(String[][]::new);
        }
        return type == Object[][].class ? cells : given;
    }

    private static XPropertySet documentIn(String language) {
        Locale locale = new Locale(language, "", "");
        return (XPropertySet) Proxy.newProxyInstance(
                ClassroomCasesTest.class.getClassLoader(),
                new Class<?>[] {XPropertySet.class},
                (proxy, method, arguments) -> locale);
    }

    private static Object[][] column(double... values) {
        return Arrays.stream(values).mapToObj(value -> new Object[] {value}).toArray(Object[][]::new);
    }

    private static double[] numbers(String line) {
        return Arrays.stream(line.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    private static String row(Object[] cells) {
        return Arrays.toString(cells);
    }
}
