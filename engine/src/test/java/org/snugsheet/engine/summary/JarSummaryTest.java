package org.snugsheet.engine.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.comparison.RankedMaterial;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Block;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.slips.Slip;
import org.snugsheet.engine.slips.SlipKind;

/** One jar is looked at once, and everything that is said of it comes from there. The readings are invented. */
class JarSummaryTest {

    private static final String TIMES = "0 5 10 15 20 25 30 35";
    private static final String BARE = "40 35 30 26 23 20 18 16";
    private static final String WOOL = "40 37 35 33 31 29 28 26";
    private static final String FLEECE = "104 98 93 88 84 80 77 74";

    @Test
    void aCleanJarIsUsableAndHasItsNumbers() {
        JarSummary jar = jar("bare", TIMES, BARE, "8");

        assertTrue(jar.isUsable());
        assertEquals(List.of(), jar.findings());
        assertEquals(
                Math.log(2) / jar.fit().rate().orRefuse().perSecond(),
                jar.fit().halfTime().orRefuse(),
                1e-9);
        assertEquals(40, jar.fit().start().orRefuse().celsius(), 0.5);
    }

    /** From minute 545 back to minute 0 the fitted curve leads to 7e10 °C; the rate is as good as from minute 0. */
    @Test
    void aClockThatStartsLongBeforeCostsTheStartAlone() {
        JarSummary jar = jar("bare", "545 550 555 560 565 570 575 580", BARE, "8");

        assertTrue(jar.isUsable());
        assertEquals(Optional.empty(), jar.fit().start().found());
        assertEquals(
                Problem.START_OUT_OF_REACH,
                jar.fit().start().whyNot().orElseThrow().problem());
        assertTrue(jar.fit().rate().found().isPresent());
        assertEquals(List.of(SlipKind.CAUTION), kinds(jar));
    }

    @Test
    void aJarThatHardlyCoolsHasNoHalfTimeAndCanStillBeUsed() {
        JarSummary jar = jar("bare", "0 1 2 3 4 5 6", "40 40 41 40 40 39 40", "8");

        assertEquals(
                Problem.HARDLY_COOLS,
                jar.fit().halfTime().whyNot().orElseThrow().problem());
        assertEquals(
                Problem.HARDLY_COOLS,
                assertThrows(
                                InvalidInputException.class,
                                () -> jar.fit().halfTime().orRefuse())
                        .problem());
        assertTrue(jar.fit().rate().found().isPresent());
    }

    @Test
    void aSlipHoldsBackAndIsNamedByMinuteAndJar() {
        JarSummary jar = jar("wool sock", TIMES, "40 35 30 62 23 20 18 16", "8");

        assertFalse(jar.isUsable());
        assertEquals(
                "wool sock, minute 15: 62, but 26 would fit; two digits may be swapped. Look again; if so, type 26.",
                jar.heldBackBecause().orElseThrow().sentence());
        assertEquals(4, jar.findings().get(0).row().orElseThrow());
    }

    @Test
    void columnsWithoutANameAreNamedByRowAndMinute() {
        TypedJar typed = new TypedJar(
                Optional.empty(),
                entries(TIMES),
                entries("40 35 30 62 23 20 18 16"),
                entries("8"),
                Graduation.usual(Scale.CELSIUS),
                Scale.CELSIUS);

        assertTrue(JarSummary.of(typed)
                .findings()
                .get(0)
                .finding()
                .sentence()
                .startsWith("Row 4 (minute 15): 62, but 26 would fit"));
    }

    @Test
    void aRefusedFitNamesItsPlaceToo() {
        JarSummary jar = jar("bare", "0 5 10", "40 soon 30", "8");

        Finding why = jar.fit().fit().whyNot().orElseThrow();
        assertEquals(
                "bare, minute 5: “soon” is not a temperature. Type a number, or leave the cell blank.", why.sentence());
        assertEquals(Optional.of(why), jar.heldBackBecause());
    }

    @Test
    void aJarWithoutReadingsWaitsAndOneWithTwoHasTooFew() {
        JarSummary none = jar("bare", TIMES, "- - - - - - - -", "8");
        JarSummary two = jar("bare", TIMES, "40 35 - - - - - -", "8");

        assertTrue(none.isWaiting());
        assertFalse(none.isUsable());
        assertFalse(two.isWaiting());
        assertEquals(
                Problem.TOO_FEW_READINGS, two.heldBackBecause().orElseThrow().problem());
    }

    @Test
    void whatAllJarsShareIsSaidOnce() {
        List<JarSummary> jars = List.of(
                jar("bare", TIMES, BARE, ""),
                jar("wool", TIMES, "40 37 35 73 31 29 28 26", ""),
                jar("leaves", TIMES, "- - - - - - - -", ""));
        SheetSummary sheet = SheetSummary.of(jars);

        assertEquals(List.of(Problem.SURROUNDINGS_BLANK), problems(sheet.common()));
        assertEquals(List.of(), sheet.own(jars.get(0)));
        assertEquals(List.of(Problem.WARMER_THAN_BEFORE, Problem.ROW_TOO_HOT), problems(sheet.own(jars.get(1))));
        assertEquals(List.of(4, 4), rows(sheet.own(jars.get(1))));
        assertEquals(List.of(), sheet.own(jars.get(2)));
        assertFalse(jars.get(0).isUsable());
    }

    @Test
    void aWrongTimeIsSaidOnceAndWithoutAJar() {
        String times = "0 5 10 15 15 25 30 35";
        SheetSummary sheet = SheetSummary.of(List.of(jar("bare", times, BARE, "8"), jar("wool", times, WOOL, "8")));

        assertEquals(1, sheet.common().size());
        String said = sheet.common().get(0).finding().sentence();
        assertTrue(said.startsWith("Minute 15: "), said);
        assertEquals(5, sheet.common().get(0).row().orElseThrow());
        for (JarSummary jar : sheet.jars()) {
            assertEquals(List.of(), sheet.own(jar));
        }
    }

    @Test
    void nothingIsSaidBeforeAnythingIsTyped() {
        SheetSummary sheet = SheetSummary.of(List.of(jar("bare", TIMES, "- - - - - - - -", "")));
        assertEquals(List.of(), sheet.common());
        assertEquals(List.of(), sheet.own(sheet.jars().get(0)));
    }

    @Test
    void aJarObeysTheScaleInItsHeadingAndTheSurroundingsTheCommonOne() {
        List<JarSummary> jars = block("bare|" + BARE, "fleece °F|" + FLEECE);

        assertEquals(Scale.FAHRENHEIT, jars.get(1).typed().scale());
        assertTrue(jars.get(1).isUsable(), jars.get(1).findings().toString());
        assertEquals(8, jars.get(1).fit().fit().orRefuse().surroundings().celsius(), 1e-9);
        assertEquals("fleece", jars.get(1).typed().name().orElseThrow());
    }

    @Test
    void aRankingListsThoseHeldBackAndTiesNeverSpeakOfThem() {
        JarRanking all = JarRanking.of(
                block(
                        "bare|" + BARE,
                        "wool|" + WOOL,
                        "socks|40 37 35 33 13 29 28 26",
                        "leaves|- - - - - - - -",
                        "fleece °F|" + FLEECE),
                0);

        assertEquals(
                List.of("socks", "leaves"),
                all.heldBack().stream()
                        .map(jar -> jar.typed().name().orElseThrow())
                        .toList());
        assertEquals(3, all.ranking().materials().size());
        for (int i = 0; i < 3; i++) {
            for (RankedMaterial tied : all.ranking().notToldApartFrom(i)) {
                assertFalse(tied.name().equals("socks") || tied.name().equals("leaves"));
            }
        }
        RankedMaterial last = all.ranking().materials().get(2);
        assertEquals("bare", last.name());
        assertEquals(
                all.ranked().get(0).fit().halfTime().orRefuse(),
                all.halfTime(last).orRefuse());
    }

    /** A thermometer that lags by a minute or two, invented: nothing is wrong with any one reading, so the jar is ranked all the same. */
    @Test
    void readingsThatWanderTogetherAreACautionAndHoldNoJarBack() {
        List<Entry> minutes = new ArrayList<>();
        List<Entry> celsius = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            minutes.add(Entry.of(2 * i));
            celsius.add(Entry.of(Math.rint(10 * (8 + 32 * Math.exp(-0.04 * 2 * i) + 0.25 * Math.sin(0.55 * i))) / 10));
        }
        JarSummary jar = JarSummary.of(new TypedJar(
                Optional.of("wool"),
                minutes,
                celsius,
                List.of(Entry.of(8)),
                Graduation.of(0.1, Scale.CELSIUS),
                Scale.CELSIUS));

        assertEquals(1, jar.findings().size(), jar.findings().toString());
        assertEquals(Problem.READINGS_WANDER, jar.findings().get(0).finding().problem());
        assertTrue(jar.isUsable());
    }

    @Test
    void aRankingOfOneUsableJarSaysWhichOthersAreHeldBackAndWhy() {
        InvalidInputException refusal = assertThrows(
                InvalidInputException.class,
                () -> JarRanking.of(
                        block("bare|" + BARE, "socks|40 37 35 33 13 29 28 26", "leaves|- - - - - - - -"), 0));

        assertEquals(Problem.TOO_FEW_TO_RANK, refusal.problem());
        String said = refusal.finding().sentence();
        assertTrue(said.contains("socks, minute 20: 13, but 31 would fit"), said);
        assertTrue(said.contains("leaves: There are no readings yet."), said);
    }

    private static List<JarSummary> block(String... jars) {
        List<String[]> split = Arrays.stream(jars).map(jar -> jar.split("\\|")).toList();
        Block block = Block.of(
                entries(TIMES),
                split.stream().map(jar -> Entry.of(jar[0])).toList(),
                split.stream().map(jar -> entries(jar[1])).toList());
        return TypedJar.of(block, jar -> jar.heading().name(), entries("8"), Optional.empty(), Scale.CELSIUS).stream()
                .map(JarSummary::of)
                .toList();
    }

    private static JarSummary jar(String name, String times, String readings, String surroundings) {
        return JarSummary.of(new TypedJar(
                Optional.of(name),
                entries(times),
                entries(readings),
                entries(surroundings),
                Graduation.usual(Scale.CELSIUS),
                Scale.CELSIUS));
    }

    private static List<Entry> entries(String typed) {
        return Arrays.stream(typed.split(" ", -1)).map(Entry::ofWritten).toList();
    }

    private static List<SlipKind> kinds(JarSummary jar) {
        return jar.findings().stream().map(Slip::kind).toList();
    }

    private static List<Problem> problems(List<Slip> slips) {
        return slips.stream().map(slip -> slip.finding().problem()).toList();
    }

    private static List<Integer> rows(List<Slip> slips) {
        return slips.stream().map(slip -> slip.row().orElse(0)).toList();
    }
}
