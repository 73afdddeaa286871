package org.snugsheet.engine.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

class RankingTest {

    @Test
    void theSlowestIsFirstAndWhatCannotBeToldApartSharesAPlace() {
        Ranking ranking = Ranking.of(List.of(
                jar("bare", 0.040, 0.001),
                jar("socks", 0.021, 0.001),
                jar("leaves", 0.020, 0.001),
                jar("fleece", 0.012, 0.001)));

        assertEquals(List.of("fleece", "leaves", "socks", "bare"), names(ranking.materials()));
        assertEquals(List.of(1, 2, 2, 4), places(ranking));
        assertEquals(6, ranking.pairs().size());
        assertFalse(ranking.pair(1, 2).isSeparated());
        assertEquals(List.of("socks"), names(ranking.notToldApartFrom(1)));
        assertEquals(List.of(), names(ranking.notToldApartFrom(0)));
    }

    @Test
    void aPairSaysHowManyTimesSlowerTheBetterOneCools() {
        Ranking ranking = Ranking.of(List.of(jar("bare", 0.040, 0.001), jar("fleece", 0.010, 0.001)));

        RankedPair pair = ranking.pair(1, 0);
        assertEquals("fleece", pair.better().name());
        assertEquals("bare", pair.worse().name());
        assertEquals(4, pair.ratio().value(), 1e-12);
        assertEquals(0.95, pair.confidence(), 1e-12);
        assertEquals(pair.ratio().interval(0.95).low(), pair.interval().low(), 1e-9);
        // the only pair: nothing to adjust
        assertEquals(pair.p(), pair.adjustedP(), 0);
        assertSame(pair, ranking.pair(0, 1));
    }

    @Test
    void withMorePairsEachIsHeldToAStricterLevel() {
        Estimate socks = new Estimate(0.0200, 0.001, 10);
        Estimate fleece = new Estimate(0.0168, 0.001, 10);
        List<NamedEstimate> two = List.of(new NamedEstimate("socks", socks), new NamedEstimate("fleece", fleece));
        List<NamedEstimate> more = new ArrayList<>(two);
        more.add(jar("leaves", 0.0195, 0.002));
        more.add(jar("paper", 0.0190, 0.002));

        assertTrue(Ranking.of(two).pair(0, 1).isSeparated());
        Ranking ranking = Ranking.of(more);
        RankedPair pair = ranking.pair(0, 3);
        assertEquals("socks", pair.worse().name());
        assertEquals(Ranking.of(two).pair(0, 1).p(), pair.p(), 1e-15);
        assertEquals(6 * pair.p(), pair.adjustedP(), 1e-12);
        assertFalse(pair.isSeparated());
        assertEquals(1 - 0.05 / 6, pair.confidence(), 1e-12);
    }

    /** Each differs from the next by too little, the first from the last by enough. */
    @Test
    void inARowOfNeighborsTheFirstThatIsSeparatedOpensAPlace() {
        Ranking ranking = Ranking.of(List.of(
                jar("a", 0.0100, 0.001), jar("b", 0.0130, 0.001), jar("c", 0.0160, 0.001), jar("d", 0.0190, 0.001)));

        assertEquals(List.of(1, 1, 3, 3), places(ranking));
        assertFalse(ranking.pair(1, 2).isSeparated());
        assertTrue(ranking.pair(0, 2).isSeparated());
        assertEquals(List.of("a", "c"), names(ranking.notToldApartFrom(1)));
    }

    /** The best is so poorly known that nothing is told apart from it, but the second and third are told apart. */
    @Test
    void onePlaceNeverHoldsTwoThatAreSeparated() {
        Ranking ranking = Ranking.of(List.of(jar("a", 0.010, 0.010), jar("b", 0.011, 0.0005), jar("c", 0.016, 0.0005)));

        assertFalse(ranking.pair(0, 2).isSeparated());
        assertTrue(ranking.pair(1, 2).isSeparated());
        assertEquals(List.of(1, 1, 3), places(ranking));
    }

    @Test
    void placesKeepToTheirRule() {
        Chance chance = new Chance(61);
        for (int i = 0; i < 60; i++) {
            List<NamedEstimate> jars = new ArrayList<>();
            for (int j = 0; j < 7; j++) {
                jars.add(new NamedEstimate("jar " + j, chance.jar(0.02 + 0.002 * j, 0.001 * (1 + j % 3), 6)));
            }
            Ranking ranking = Ranking.of(jars);
            List<Integer> places = places(ranking);
            for (int m = 0; m < 7; m++) {
                boolean separated = false;
                for (int above = 0; above < m; above++) {
                    boolean shared = places.get(above).equals(places.get(m));
                    assertFalse(shared && ranking.pair(above, m).isSeparated());
                    separated |= places.get(above).equals(places.get(Math.max(0, m - 1)))
                            && ranking.pair(above, m).isSeparated();
                }
                int expected = m == 0 ? 1 : separated ? m + 1 : places.get(m - 1);
                assertEquals(expected, places.get(m));
            }
        }
    }

    @Test
    void jarsOfOneNameAreOneMaterial() {
        Ranking ranking = Ranking.of(List.of(
                jar("Socks", 0.020, 0.0005),
                jar("bare", 0.041, 0.0005),
                jar(" socks ", 0.022, 0.0005),
                jar("Bare", 0.039, 0.0005),
                jar("SOCKS", 0.018, 0.0005),
                jar("fleece", 0.010, 0.0005)));

        assertEquals(List.of("fleece", "Socks", "bare"), names(ranking.materials()));
        RankedMaterial socks = ranking.materials().get(1);
        assertEquals(3, socks.jars().jars().size());
        assertEquals(0.020, socks.estimate().value(), 1e-15);
        assertEquals(2, socks.estimate().degreesOfFreedom());
        assertTrue(ranking.materials().get(0).jars().isSingleJar());
        assertFalse(socks.jars().isSingleJar());
    }

    /** Single jars are told apart by their readings; that jars of one wrap differ as much shows only when there are more. */
    @Test
    void theSpreadBetweenJarsCanUndoADifference() {
        Ranking single = Ranking.of(List.of(jar("socks", 0.020, 0.0005), jar("leaves", 0.025, 0.0005)));
        assertTrue(single.pair(0, 1).isSeparated());

        Ranking several = Ranking.of(List.of(
                jar("socks", 0.020, 0.0005),
                jar("leaves", 0.025, 0.0005),
                jar("socks", 0.026, 0.0005),
                jar("leaves", 0.019, 0.0005)));
        assertFalse(several.pair(0, 1).isSeparated());
        assertEquals(List.of(1, 1), places(several));
    }

    @Test
    void aPairOfMaterialsIsComparedByTheSpreadBetweenTheirJars() {
        List<NamedEstimate> jars = new ArrayList<>();
        for (int material = 0; material < 5; material++) {
            jars.add(jar("wrap " + material, 0.0200 + 0.002 * material, 0.001));
            jars.add(jar("wrap " + material, 0.0205 + 0.002 * material, 0.001));
        }
        Ranking ranking = Ranking.of(jars);

        RankedPair pair = ranking.pair(0, 4);
        assertEquals(0.995, pair.confidence(), 1e-12);
        assertEquals(pair.better().jars().bySpread(), pair.ratio().second());
        assertEquals(pair.better().jars().estimate(), pair.ratio().second());
    }

    @Test
    void equalOnesKeepTheOrderInWhichTheyWereNamed() {
        Ranking ranking = Ranking.of(List.of(jar("b", 0.02, 0.001), jar("a", 0.02, 0.001), jar("c", 0.02, 0.001)));

        assertEquals(List.of("b", "a", "c"), names(ranking.materials()));
        assertEquals(List.of(1, 1, 1), places(ranking));
    }

    @Test
    void aJarThatWarmsIsRankedAndOnlyItsRatioRefused() {
        Ranking ranking = Ranking.of(List.of(jar("bare", 0.03, 0.001), jar("odd", -0.03, 0.001)));

        assertEquals("odd", ranking.materials().get(0).name());
        assertSame(Problem.NO_RATIO, refused(() -> ranking.pair(0, 1).interval()));
    }

    @Test
    void whatCannotBeRankedIsRefused() {
        assertSame(Problem.NOTHING_TO_RANK, refused(() -> Ranking.of(List.of())));
        assertSame(
                Problem.NOTHING_TO_RANK,
                refused(() -> Ranking.of(List.of(jar("socks", 0.02, 0.001), jar("Socks", 0.03, 0.001)))));
        InvalidInputException refusal = assertThrows(
                InvalidInputException.class,
                () -> Ranking.of(List.of(jar("socks", 0.02, 0.001), jar("  ", 0.03, 0.001))));
        assertEquals("Jar 2 has no name. Type there what it is wrapped in.", refusal.getMessage());
        Ranking ranking = Ranking.of(List.of(jar("a", 0.02, 0.001), jar("b", 0.03, 0.001)));
        assertThrows(IllegalArgumentException.class, () -> ranking.pair(1, 1));
        assertThrows(IllegalArgumentException.class, () -> ranking.pair(0, 2));
    }

    /** Of 1000 tables of five like materials at most 50 may claim anything; 85 are more than five standard deviations above. */
    @ParameterizedTest
    @CsvSource({"1, 0", "2, 1", "3, 2", "6, 2"})
    void tablesOfLikeMaterialsSeldomClaimAnything(int count, double between) {
        Chance chance = new Chance(62);
        int claims = 0;
        int unadjusted = 0;
        for (int i = 0; i < 1000; i++) {
            List<NamedEstimate> jars = new ArrayList<>();
            for (int material = 0; material < 5; material++) {
                for (Estimate estimate : chance.jars(count, 20, between, new double[] {1}, 6)) {
                    jars.add(new NamedEstimate("wrap " + material, estimate));
                }
            }
            Ranking ranking = Ranking.of(jars);
            claims += ranking.pairs().stream().anyMatch(RankedPair::isSeparated) ? 1 : 0;
            unadjusted += ranking.pairs().stream().anyMatch(pair -> pair.p() < 0.05) ? 1 : 0;
        }
        assertTrue(claims <= 85, "claims: " + claims);
        assertTrue(unadjusted > 100, "without Holm it would be many: " + unadjusted);
    }

    /**
     * Wraps that are alike, one jar each, read to two per cent, while jars wrapped alike differ by a tenth: without the spread two of
     * three tables call one wrap better than another. With it, of 1000 tables at most 50 may, but for chance.
     */
    @ParameterizedTest
    @CsvSource({"2", "5"})
    void oneJarEachSeldomTellsLikeWrapsApartIfTheSpreadIsCounted(int wraps) {
        Chance chance = new Chance(63);
        int claims = 0;
        int without = 0;
        for (int i = 0; i < 1000; i++) {
            List<NamedEstimate> jars = new ArrayList<>();
            for (int wrap = 0; wrap < wraps; wrap++) {
                jars.add(new NamedEstimate(
                        "wrap " + wrap,
                        chance.jars(1, 1, 0.1, new double[] {0.02}, 8).get(0)));
            }
            claims += isAnySeparated(Ranking.of(jars, 0.1)) ? 1 : 0;
            without += isAnySeparated(Ranking.of(jars)) ? 1 : 0;
        }
        assertTrue(claims <= 65, "claims: " + claims);
        assertTrue(without > 500, "without the spread: " + without);
    }

    /** Where several jars show how much they differ, nothing is assumed of it. */
    @Test
    void theSpreadCountsOnlyWhereOneJarStandsForItsWrap() {
        List<NamedEstimate> jars = List.of(
                jar("socks", 0.020, 0.0004),
                jar("socks", 0.021, 0.0004),
                jar("leaves", 0.012, 0.0003),
                jar("leaves", 0.013, 0.0003),
                jar("bare", 0.040, 0.0006));
        Ranking without = Ranking.of(jars);
        Ranking counted = Ranking.of(jars, 0.1);

        assertEquals(
                without.materials().get(0).estimate(),
                counted.materials().get(0).estimate());
        Estimate bare = counted.materials().get(2).estimate();
        // JCGM 100:2008, 5.1.2: 0.0006 and a tenth of 0.040 together
        assertEquals(Math.hypot(0.0006, 0.004), bare.standardError(), 1e-15);
        assertSame(Problem.NOT_A_SHARE, refused(() -> Ranking.of(jars, 10)));
        assertSame(Problem.NOT_A_SHARE, refused(() -> Ranking.of(jars, -0.1)));
    }

    private static boolean isAnySeparated(Ranking ranking) {
        return ranking.pairs().stream().anyMatch(RankedPair::isSeparated);
    }

    private static NamedEstimate jar(String name, double rate, double error) {
        return new NamedEstimate(name, new Estimate(rate, error, 10));
    }

    private static List<String> names(List<RankedMaterial> materials) {
        return materials.stream().map(RankedMaterial::name).toList();
    }

    private static List<Integer> places(Ranking ranking) {
        return ranking.materials().stream().map(RankedMaterial::place).toList();
    }

    private static Problem refused(Runnable question) {
        return assertThrows(InvalidInputException.class, question::run).problem();
    }
}
