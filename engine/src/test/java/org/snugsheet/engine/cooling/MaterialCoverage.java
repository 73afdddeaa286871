package org.snugsheet.engine.cooling;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.NamedEstimate;
import org.snugsheet.engine.comparison.RankedPair;
import org.snugsheet.engine.comparison.Ranking;
import org.snugsheet.engine.comparison.ReplicateGroup;
import org.snugsheet.engine.comparison.Verdict;
import org.snugsheet.engine.reading.Surroundings;

/**
 * How often comparisons of several jars of one material err, found by inventing whole lessons with rounded readings.
 *
 * <p>All jars of a lesson stand in one room and are filled from one kettle; how warm both are is drawn anew for each lesson.
 *
 * @param lesson how they are read; the half-time is that of the material
 * @param jars how many of each material
 * @param spread the standard deviation of the true cooling constants of jars of one material, as a share of them
 * @param startsApart how far, in kelvins, a jar’s start may lie above or below that of the kettle
 * @param readOnce whether the surroundings are read once on the jars’ thermometer and rounded to its mark; otherwise they are known to
 *     every digit, so that nothing but readings and jars errs
 */
record MaterialCoverage(Coverage lesson, int jars, double spread, double startsApart, boolean readOnce) {

    MaterialCoverage(Coverage lesson, int jars, double spread, double startsApart) {
        this(lesson, jars, spread, startsApart, false);
    }

    private interface Play {
        boolean holds(SplittableRandom random, double room, double start);
    }

    /** How often the limits of a material’s cooling constant hold the truth. */
    Coverage.Count limits(int runs, long seed) {
        double truth = Math.log(2) / lesson.halfTime();
        return tally(
                runs,
                seed,
                (random, room, start) -> new ReplicateGroup(estimates(random, room, start))
                        .estimate()
                        .interval(Verdict.CONFIDENCE)
                        .contains(truth));
    }

    /** How often a table of materials that are all alike claims nothing; of two it is what a verdict on them says. */
    Coverage.Count noFalseClaim(int materials, int runs, long seed) {
        return tally(runs, seed, (random, room, start) -> {
            List<NamedEstimate> all = new ArrayList<>();
            for (int material = 0; material < materials; material++) {
                for (Estimate jar : estimates(random, room, start)) {
                    all.add(new NamedEstimate("wrap " + material, jar));
                }
            }
            return Ranking.of(all).pairs().stream().noneMatch(RankedPair::isSeparated);
        });
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "%d jars of spread %.2f, starts %.1f K apart, %s", jars, spread, startsApart, lesson);
    }

    private Coverage.Count tally(int runs, long seed, Play play) {
        SplittableRandom random = new SplittableRandom(seed);
        int refused = 0;
        int held = 0;
        for (int run = 0; run < runs; run++) {
            double room = random.nextDouble(0, 8);
            double start = random.nextDouble(38, 43);
            try {
                held += play.holds(random, room, start) ? 1 : 0;
            } catch (InvalidInputException refusal) {
                refused++;
            }
        }
        return new Coverage.Count(runs, runs - refused, held);
    }

    private List<Estimate> estimates(SplittableRandom random, double room, double start) {
        List<Estimate> estimates = new ArrayList<>();
        for (int i = 0; i < jars; i++) {
            double faster = 1 + spread * random.nextGaussian();
            Coverage own = new Coverage(
                    lesson.readings(), lesson.mark(), lesson.scale(), lesson.halfTime() / faster, lesson.noise());
            double filled = startsApart > 0 ? start + random.nextDouble(-startsApart, startsApart) : start;
            Coverage.Jar jar = Coverage.Jar.of(own, room, filled, random);
            Surroundings around =
                    readOnce ? Surroundings.constant(jar.around()) : new Surroundings.Constant(jar.room(), true);
            estimates.add(CoolingFit.of(jar.readings(), around, own.grain()).conservativeEstimate());
        }
        return estimates;
    }
}
