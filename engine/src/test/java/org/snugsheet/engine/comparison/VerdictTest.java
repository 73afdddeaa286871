package org.snugsheet.engine.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.comparison.Verdict.CannotTell;
import org.snugsheet.engine.comparison.Verdict.FirstSlower;
import org.snugsheet.engine.comparison.Verdict.SecondSlower;

class VerdictTest {

    private static final Estimate BARE = new Estimate(0.031, 0.001, 8);
    private static final Estimate FLEECE = new Estimate(0.014, 0.001, 8);

    @Test
    void theSlowerOneIsNamedAndTheRatioSaysHowManyTimes() {
        SecondSlower second = assertInstanceOf(SecondSlower.class, Verdict.of(BARE, FLEECE));
        assertEquals(31.0 / 14, second.ratio().value(), 1e-12);
        assertTrue(second.interval().low() > 1 && second.interval().contains(31.0 / 14));
        assertTrue(second.p() < 1e-6);

        FirstSlower first = assertInstanceOf(FirstSlower.class, Verdict.of(FLEECE, BARE));
        assertEquals(second.ratio(), first.ratio());
        assertEquals(second.interval(), first.interval());
        assertEquals(second.p(), first.p(), 1e-15);
    }

    @Test
    void likeJarsCannotBeTold() {
        CannotTell verdict = assertInstanceOf(CannotTell.class, Verdict.of(FLEECE, new Estimate(0.015, 0.001, 8)));
        assertEquals(14.0 / 15, verdict.ratio().value(), 1e-12);
        assertTrue(verdict.interval().contains(1));
        assertTrue(verdict.p() > 0.4);
    }

    @Test
    void aJarThatMayNotCoolAtAllIsSlowerWithoutUpperLimit() {
        SecondSlower verdict = assertInstanceOf(SecondSlower.class, Verdict.of(BARE, new Estimate(-0.0002, 0.001, 8)));
        assertEquals(Double.POSITIVE_INFINITY, verdict.interval().high());
        assertTrue(verdict.interval().low() > 10);
    }

    /** Welch’s test finds a difference (see RatioTest), but the limits reach from 0 to infinity: nothing is claimed. */
    @Test
    void nothingIsClaimedWhereTheLimitsReachOverOne() {
        CannotTell verdict =
                assertInstanceOf(CannotTell.class, Verdict.of(new Estimate(12, 1, 1), new Estimate(5, 1, 1)));
        assertTrue(verdict.p() < 0.05);
        assertEquals(new Interval(0, Double.POSITIVE_INFINITY), verdict.interval());
    }

    @Test
    void aJarThatWarmsIsRefused() {
        assertThrows(InvalidInputException.class, () -> Verdict.of(BARE, new Estimate(-0.02, 0.001, 8)));
    }

    /** Of 2000 pairs of like jars 100 may be told apart; 145 are more than four standard deviations above. */
    @ParameterizedTest
    @CsvSource({"3, 3, 1", "8, 8, 1", "3, 18, 1", "18, 3, 1", "8, 8, 3"})
    void aDifferenceThatIsNotThereIsSeldomClaimed(int degreesOfFreedom, int others, double otherError) {
        Chance chance = new Chance(31);
        int claims = 0;
        int blind = 0;
        for (int i = 0; i < 2000; i++) {
            Estimate first = chance.jar(0.02, 0.001, degreesOfFreedom);
            Estimate second = chance.jar(0.02, 0.001 * otherError, others);
            claims += Verdict.of(first, second) instanceof CannotTell ? 0 : 1;
            double both = Math.hypot(first.standardError(), second.standardError());
            blind += Math.abs(first.value() - second.value()) > 1.96 * both ? 1 : 0;
        }
        assertTrue(claims <= 145, "claims: " + claims);
        assertTrue(claims >= 50, "and the test is not blunt: " + claims);
        assertTrue(blind > claims, "1.96 standard errors would claim more: " + blind);
    }

    /** The same for materials whose jars differ by twice what their readings leave open. */
    @ParameterizedTest
    @CsvSource({"2, 2", "3, 3", "2, 6", "6, 6"})
    void materialsAlikeAreSeldomToldApart(int jars, int others) {
        Chance chance = new Chance(32);
        double[] error = {0.001};
        int claims = 0;
        int blind = 0;
        for (int i = 0; i < 1000; i++) {
            List<Estimate> first = chance.jars(jars, 0.02, 0.002, error, 6);
            List<Estimate> second = chance.jars(others, 0.02, 0.002, error, 6);
            ReplicateGroup one = new ReplicateGroup(first);
            ReplicateGroup other = new ReplicateGroup(second);
            claims += Verdict.of(one.estimate(), other.estimate()) instanceof CannotTell ? 0 : 1;
            blind += Verdict.of(one.byReadings(), other.byReadings()) instanceof CannotTell ? 0 : 1;
        }
        assertTrue(claims <= 85, "claims: " + claims);
        assertTrue(blind > 200, "without the spread between jars it would be many: " + blind);
    }

    @Test
    void aDifferenceThatIsThereIsFound() {
        Chance chance = new Chance(33);
        int found = 0;
        for (int i = 0; i < 500; i++) {
            Verdict verdict = Verdict.of(chance.jar(0.030, 0.001, 8), chance.jar(0.024, 0.001, 8));
            found += verdict instanceof SecondSlower ? 1 : 0;
        }
        assertTrue(found > 450, "found: " + found);
    }
}
