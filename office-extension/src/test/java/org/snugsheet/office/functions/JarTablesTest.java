package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lang.Locale;
import com.sun.star.uno.Any;
import java.lang.reflect.Proxy;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.snugsheet.office.cells.Answer;

/** What is said of a jar is the same in every table, number and check. All readings are invented. */
class JarTablesTest {

    private static final XPropertySet ENGLISH = documentIn("en");
    private static final XPropertySet GERMAN = documentIn("de");
    private static final Object LEFT_OUT = Any.VOID;

    private static final double[] TIMES = {0, 5, 10, 15, 20, 25, 30, 35};
    private static final Object[] BARE = {40., 35., 30., 26., 23., 20., 18., 16.};
    private static final Object[] WOOL = {40., 37., 35., 33., 31., 29., 28., 26.};
    private static final Object[] FLEECE = {104., 98., 93., 88., 84., 80., 77., 74.};
    /** At minute 10 somebody typed 3.5 for 35. */
    private static final Object[] SOCKS = {40., 37., 3.5, 33., 31., 29., 28., 26.};

    private static final Object[] NONE = {"", "", "", "", "", "", "", ""};
    private static final Object[] TWO = {40., "", 35., "", "", "", "", ""};

    private final CoolFunctions cool = new CoolFunctions();
    private final CheckFunctions check = new CheckFunctions();

    @Test
    void oneSlipTakesTheRankingFromNobody() throws Exception {
        Object[][] table =
                rank(ENGLISH, heads("bare", "wool", "socks", "leaves", "straw"), BARE, WOOL, SOCKS, NONE, TWO);

        assertEquals(6, table.length);
        assertEquals("wool", table[1][1]);
        assertEquals(1.0, table[1][0]);
        assertEquals("bare", table[2][1]);
        for (int row = 3; row < 6; row++) {
            assertEquals("", table[row][0], "no place");
            assertEquals("", table[row][3], "no rate");
        }
        assertEquals("socks", table[3][1]);
        assertTrue(
                table[3][7].toString().startsWith("socks, minute 10: 3.5, but 35 would fit"), table[3][7].toString());
        assertEquals("waiting for readings", table[4][7]);
        assertEquals("Only 2 of the readings can be used, and 3 are needed.", table[5][7]);
    }

    @Test
    void aRankingWithoutTwoJarsSaysWhichAreHeldBackAndWhy() {
        IllegalArgumentException thrown = assertThrows(
                IllegalArgumentException.class, () -> rank(ENGLISH, heads("bare", "socks", "straw"), BARE, SOCKS, TWO));
        String said = Answer.refusal(thrown).orElseThrow().finding().sentence();
        assertTrue(said.startsWith("A ranking needs at least two jars"), said);
        assertTrue(said.contains("socks, minute 10: 3.5, but 35 would fit"), said);
        assertTrue(said.contains("straw: Only 2 of the readings"), said);
    }

    @Test
    void theSheetAndTheChecksAgreeOnEveryJar() throws Exception {
        Object[][] block = block(heads("bare", "wool", "socks", "leaves", "straw"), BARE, WOOL, SOCKS, NONE, TWO);
        Object[][] jars = cool.sheet(ENGLISH, block, one("8"), LEFT_OUT, LEFT_OUT);
        Object[][] found = check.sheet(ENGLISH, block, one("8"), LEFT_OUT, LEFT_OUT);

        for (int jar = 1; jar < jars.length; jar++) {
            String name = jars[jar][0].toString();
            List<Object[]> lines =
                    Arrays.stream(found).filter(line -> line[0].equals(name)).toList();
            switch (jars[jar][8].toString()) {
                case "OK" -> assertEquals("OK", lines.get(0)[2], name);
                case "waiting for readings" -> assertEquals(0, lines.size(), name);
                default -> assertTrue(jars[jar][8].toString().startsWith(lines.get(0)[2].toString()), name);
            }
        }
        assertEquals(List.of("OK", "OK", "waiting for readings"), List.of(jars[1][8], jars[2][8], jars[4][8]));
        assertEquals("", jars[3][2], "a jar held back has no rate");
        assertEquals(3.0, found[3][1], "the row of the cell");
    }

    @Test
    void blankSurroundingsAreAskedForOnceAndOnlyWhenSomethingIsTyped() {
        Object[][] block = block(heads("bare", "wool", "leaves"), BARE, WOOL, NONE);
        Object[][] found = check.sheet(ENGLISH, block, one(""), LEFT_OUT, LEFT_OUT);

        assertEquals(2, found.length);
        assertEquals("all jars", found[1][0]);
        assertEquals("The cell for the surroundings is blank.", found[1][2]);

        Object[][] nothing = block(heads("bare", "wool"), NONE, NONE);
        assertEquals(1, check.sheet(ENGLISH, nothing, one(""), LEFT_OUT, LEFT_OUT).length);
    }

    /** The readings of the fleece are the same temperatures in both blocks, but for rounding. */
    @Test
    void aJarsOwnScaleIsObeyedEverywhere() throws Exception {
        Object[] celsius = Arrays.stream(FLEECE)
                .map(f -> (Object) Double.valueOf(((double) f - 32) / 1.8))
                .toArray();
        Object[][] ranked = rank(ENGLISH, heads("bare", "fleece °F"), BARE, FLEECE);
        Object[][] plain = rank(ENGLISH, heads("bare", "fleece"), BARE, celsius);
        assertEquals("fleece", ranked[1][1]);
        assertEquals((double) plain[1][3], (double) ranked[1][3], 1e-12);

        Object[][] block = block(heads("bare", "fleece °F"), BARE, FLEECE);
        Object[][] jars = cool.sheet(ENGLISH, block, one("8"), LEFT_OUT, LEFT_OUT);
        assertEquals("OK", jars[2][8]);
        assertEquals((double) ranked[1][3], (double) jars[2][2], 1e-12);
        assertEquals("OK", check.sheet(ENGLISH, block, one("8"), LEFT_OUT, LEFT_OUT)[2][2]);

        // On a page in °F it is the other jar that names its scale; the surroundings are on the page’s.
        Object[][] other = block(heads("bare (C)", "fleece"), BARE, FLEECE);
        assertEquals((double) jars[2][2], (double) cool.sheet(ENGLISH, other, one("46.4"), LEFT_OUT, "F")[2][2], 1e-12);
    }

    @Test
    void groupsKeepTheirNumbersAndAJarWithoutANameGetsOneInTheLanguage() throws Exception {
        Object[][] block = block(new Object[] {1., 2.5, ""}, BARE, WOOL, BARE);
        Object[][] jars = cool.sheet(GERMAN, block, one("8"), LEFT_OUT, LEFT_OUT);
        assertEquals(List.of("1", "2.5", "Gefäß 3"), List.of(jars[1][0], jars[2][0], jars[3][0]));
        Object[][] ranked = rank(GERMAN, new Object[] {1., 2., ""}, BARE, WOOL, BARE);
        assertEquals(List.of("2", "1", "Gefäß 3"), List.of(ranked[1][1], ranked[2][1], ranked[3][1]));
    }

    /** Minute 545 is 9:05: back to minute 0 the curve leads to 7e10 °C, and COOL.START has always refused that. */
    @Test
    void whatANumberRefusesNoTableShows() throws Exception {
        double[] late = {545, 550, 555, 560, 565, 570, 575, 580};
        Object[][] jars = cool.sheet(ENGLISH, block(late, heads("bare"), BARE), one("8"), LEFT_OUT, LEFT_OUT);
        assertEquals("out of reach", jars[1][5]);
        assertEquals("OK", jars[1][8]);
        assertThrows(
                IllegalArgumentException.class,
                () -> cool.start(column(late), column(BARE), one("8"), LEFT_OUT, LEFT_OUT));
        Object[][] found = check.all(ENGLISH, column(late), column(BARE), one("8"), LEFT_OUT, LEFT_OUT);
        assertEquals("a caution", found[1][2]);

        double[] brief = {0, 1, 2, 3, 4, 5, 6};
        Object[] still = {40., 40., 41., 40., 40., 39., 40.};
        assertThrows(
                IllegalArgumentException.class,
                () -> cool.halftime(column(brief), column(still), one("8"), LEFT_OUT, LEFT_OUT));
        Object[] cools = Arrays.copyOf(BARE, brief.length);
        Object[][] both = block(brief, heads("still", "bare"), still, cools);
        assertEquals("hardly cools", cool.sheet(ENGLISH, both, one("8"), LEFT_OUT, LEFT_OUT)[1][4]);
        Object[][] ranked = cool.rank(
                ENGLISH,
                column(brief),
                columns(still, cools),
                new Object[][] {heads("still", "bare")},
                one("8"),
                LEFT_OUT,
                LEFT_OUT,
                LEFT_OUT);
        assertEquals("still", ranked[1][1]);
        assertEquals("hardly cools", ranked[1][6]);
        Object[][] report =
                cool.report(ENGLISH, column(brief), column(still), one("8"), LEFT_OUT, LEFT_OUT, LEFT_OUT, LEFT_OUT);
        assertEquals("longer than", report[2][1]);
    }

    @Test
    void theReportSaysThatAJarIsToBeCheckedFirst() throws Exception {
        Object[] swapped = {40., 37., 53., 33., 31., 29., 28., 26.};
        Object[][] report =
                cool.report(ENGLISH, column(TIMES), column(swapped), one("8"), LEFT_OUT, LEFT_OUT, LEFT_OUT, LEFT_OUT);
        Object[] last = report[report.length - 1];
        assertEquals("To be checked", last[0]);
        assertTrue(last[1].toString().startsWith("Row 3 (minute 10): 53, but 35 would fit"), last[1].toString());
        assertEquals(check.readings(ENGLISH, column(TIMES), column(swapped), one("8"), LEFT_OUT, LEFT_OUT), last[1]);
    }

    /** The fit refuses before anybody looked for a slip, and blames an innocent row: the checks go on looking. */
    @Test
    void theFirstLineOfAllFindingsIsWhatTheCheckSays() {
        Object[] swapped = {14., 39., 36., 34., 33., 31.};
        double[] times = {0, 3, 6, 9, 12, 15};
        Object[][] all = check.all(ENGLISH, column(times), column(swapped), one("18"), LEFT_OUT, LEFT_OUT);
        String said = check.readings(ENGLISH, column(times), column(swapped), one("18"), LEFT_OUT, LEFT_OUT);
        assertEquals(all[1][1] + " " + all[1][3], said);
        assertTrue(said.startsWith("Row 1 (minute 0): 14, but 41 would fit"), said);

        Object[] wild = {43., 41., 40., 39., 37., 97.};
        double[] fours = {0, 4, 8, 12, 16, 20};
        String row = check.readings(ENGLISH, column(fours), column(wild), one("13"), LEFT_OUT, LEFT_OUT);
        assertTrue(row.startsWith("Row 6 (minute 20): 97"), row);
    }

    /** 9:05 in a time cell is 0.378; a stopwatch’s 5:00 typed there is 0.208. */
    @Test
    void timesOfDayAreRefusedAndTheSentenceNamesTheCall() {
        Object[] readings = {40., 35., 30., 26., 23., 20.};
        for (double step : new double[] {5 / 1440., 5 / 24.}) {
            double[] times = new double[6];
            for (int i = 0; i < 6; i++) {
                times[i] = (step < 0.1 ? 0.375 : 0) + i * step;
            }
            assertNamesTheCall(assertThrows(
                    IllegalArgumentException.class,
                    () -> cool.rate(column(times), column(readings), one("8"), LEFT_OUT, LEFT_OUT)));
            assertNamesTheCall(assertThrows(
                    IllegalArgumentException.class,
                    () -> cool.slower(
                            column(times),
                            column(readings),
                            column(times),
                            column(readings),
                            one("8"),
                            LEFT_OUT,
                            LEFT_OUT)));
            String said = check.readings(ENGLISH, column(times), column(readings), one("8"), LEFT_OUT, LEFT_OUT);
            assertTrue(said.contains("COOL.MINUTES(A2:A9)"), said);
        }
        Object[] texts = {"9:00", "9:05", "9:10", "9:15", "9:20", "9:25"};
        assertNamesTheCall(assertThrows(
                IllegalArgumentException.class,
                () -> cool.halftime(columns(texts), column(readings), one("8"), LEFT_OUT, LEFT_OUT)));
        assertNamesTheCall(assertThrows(
                IllegalArgumentException.class,
                () -> cool.curve(ENGLISH, columns(texts), column(TIMES), column(BARE), one("8"), LEFT_OUT, LEFT_OUT)));
    }

    @Test
    void secondsForMinutesAreAskedAbout() {
        double[] seconds = {0, 300, 600, 900, 1200, 1500, 1800, 2100};
        String said = check.readings(ENGLISH, column(seconds), column(BARE), one("8"), LEFT_OUT, LEFT_OUT);
        assertTrue(said.contains("are these seconds?"), said);
    }

    private static void assertNamesTheCall(IllegalArgumentException thrown) {
        String said = Answer.refusal(thrown).orElseThrow().finding().sentence();
        assertTrue(said.contains("COOL.MINUTES(A2:A9)"), said);
    }

    /** One jar is no wrap, unless it is counted in how much jars wrapped alike differ; a blank cell, which comes as 0, is left out. */
    @Test
    void theTableSpeaksOfJarsWhereOneJarWasRead() throws Exception {
        Object[] alike = heads("bare", "wool");
        Object[] twice = heads("bare", "wool", "wool");
        assertEquals("Jar", rank(ENGLISH, alike, BARE, WOOL)[0][1]);
        assertEquals("Jar", rank(0.0, alike, BARE, WOOL)[0][1]);
        assertEquals("Material", rank(0.1, alike, BARE, WOOL)[0][1]);
        assertEquals("Material, or its one jar", rank(ENGLISH, twice, BARE, WOOL, WOOL)[0][1]);
        double narrow = (double) rank(ENGLISH, alike, BARE, WOOL)[2][5];
        double wide = (double) rank(0.1, alike, BARE, WOOL)[2][5];
        assertTrue(wide > narrow, narrow + " and " + wide);
        assertThrows(IllegalArgumentException.class, () -> rank(10.0, alike, BARE, WOOL));
    }

    @Test
    void aVerdictWithASpreadSaysSo() throws Exception {
        String said = verdict(0.05);
        assertTrue(said.startsWith("The second jar takes "), said);
        assertTrue(said.endsWith("Counted in: jars wrapped alike may differ by 5%."), said);
        assertTrue(verdict(0.4).startsWith("These readings cannot tell"), verdict(0.4));
        assertFalse(verdict(LEFT_OUT).contains("Counted in"));
    }

    private String verdict(Object spread) throws Exception {
        return cool.verdict(
                ENGLISH,
                column(TIMES),
                column(BARE),
                column(TIMES),
                column(WOOL),
                one("8"),
                LEFT_OUT,
                LEFT_OUT,
                spread);
    }

    private Object[][] rank(double spread, Object[] names, Object[]... jars) throws Exception {
        return cool.rank(
                ENGLISH, column(TIMES), columns(jars), new Object[][] {names}, one("8"), LEFT_OUT, LEFT_OUT, spread);
    }

    private Object[][] rank(XPropertySet document, Object[] names, Object[]... jars) throws Exception {
        return cool.rank(
                document, column(TIMES), columns(jars), new Object[][] {names}, one("8"), LEFT_OUT, LEFT_OUT, LEFT_OUT);
    }

    private static Object[] heads(String... names) {
        return Arrays.copyOf(names, names.length, Object[].class);
    }

    private static Object[][] block(Object[] heads, Object[]... jars) {
        return block(TIMES, heads, jars);
    }

    private static Object[][] block(double[] times, Object[] heads, Object[]... jars) {
        Object[][] block = new Object[times.length + 1][jars.length + 1];
        block[0][0] = "min";
        for (int jar = 0; jar < jars.length; jar++) {
            block[0][jar + 1] = heads[jar];
            for (int row = 0; row < times.length; row++) {
                block[row + 1][0] = times[row];
                block[row + 1][jar + 1] = jars[jar][row];
            }
        }
        return block;
    }

    private static Object[][] columns(Object[]... jars) {
        Object[][] rows = new Object[jars[0].length][jars.length];
        for (int jar = 0; jar < jars.length; jar++) {
            for (int row = 0; row < rows.length; row++) {
                rows[row][jar] = jars[jar][row];
            }
        }
        return rows;
    }

    private static Object[][] column(Object... cells) {
        return columns(cells);
    }

    private static Object[][] column(double... numbers) {
        return columns(Arrays.stream(numbers).boxed().toArray());
    }

    private static String[][] one(String typed) {
        return new String[][] {{typed}};
    }

    private static XPropertySet documentIn(String language) {
        Locale locale = new Locale(language, "", "");
        return (XPropertySet) Proxy.newProxyInstance(
                JarTablesTest.class.getClassLoader(),
                new Class<?>[] {XPropertySet.class},
                (proxy, method, arguments) -> locale);
    }
}
