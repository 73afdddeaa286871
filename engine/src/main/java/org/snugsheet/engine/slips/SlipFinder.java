package org.snugsheet.engine.slips;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;

/**
 * Finds the slips in what a class typed for one jar, from the numbers alone.
 *
 * <p>For each kind of slip there are {@linkplain SlipHypothesis hypotheses}: this reading was 34, not 43; these times run one
 * step late. A hypothesis is accepted if the corrected column follows a law of cooling so much better that the gain outweighs
 * how rare such slips are. The one that gains most is accepted first, and the corrected column is examined again. Readings
 * that stay off the curve without an explanation are reported as they are.
 */
public final class SlipFinder {

    /** How much better than no slip a hypothesis must be, as twice the logarithm of the odds: seven to one. */
    static final double LEAST_GAIN = 4;

    private static final int MOST_SLIPS = 12;

    /**
     * How many hypotheses of each kind are weighed in full. A first look by one law misleads where that law was bent to fit
     * the slip.
     */
    private static final int MOST_HYPOTHESES = 3;

    /** Some curve passes near any three readings, whatever they are. */
    private static final int FEWEST = 4;

    /**
     * More than a class reads in an hour. Longer columns come from loggers, which swap no digits; and every reading has hypotheses of its
     * own, each of which asks for fits of all readings, so that they would take minutes. Common practice, no source.
     */
    private static final int MOST_WITH_HYPOTHESES = 64;

    private static final List<SlipDetector> DETECTORS = List.of(
            new DigitSlips(),
            new OneReadingOnOtherScale(),
            new WholeOnOtherScale(),
            new TimeSlips(),
            new Steps(),
            new Stuck());

    private SlipFinder() {}

    /**
     * Finds all slips in the readings of a jar.
     *
     * @param minutes what was typed for the times, one for each row
     * @param temperatures what was typed for the readings
     * @param surroundings what was typed for the surroundings: one temperature, one for each row, or the word {@code fit}
     * @param mark the mark of the thermometer
     * @param scale the scale of what was typed without one
     * @return the slips, the most certain first; empty if the column is clean
     */
    public static List<Slip> find(
            List<Entry> minutes, List<Entry> temperatures, List<Entry> surroundings, Graduation mark, Scale scale) {
        TypedColumn typed = TypedColumn.of(minutes, temperatures, surroundings, mark, scale);
        List<Slip> slips = new ArrayList<>(typed.slips());
        slips.addAll(in(typed.column()));
        if (slips.isEmpty()) {
            typed.refusal().ifPresent(slips::add);
        }
        slips.sort(Comparator.comparingDouble(Slip::certainty)
                .reversed()
                .thenComparingInt(slip -> slip.row().orElse(0)));
        return List.copyOf(slips);
    }

    /** The certainty that follows from a gain: half of the gain is the logarithm of the odds. */
    static double certainty(double gain) {
        return 1 / (1 + Math.exp(-gain / 2));
    }

    private static List<Slip> in(Column typed) {
        List<Slip> slips = new ArrayList<>();
        Column column = typed;
        while (slips.size() < MOST_SLIPS && column.size() >= FEWEST && column.firstNotLater() > 0) {
            SlipHypothesis hypothesis = likeliest(TimeSlips.notLater(column, column.firstNotLater()));
            slips.add(new Slip(hypothesis.kind(), 1, hypothesis.finding()));
            column = hypothesis.corrected();
        }
        if (column.size() < FEWEST || column.firstNotLater() > 0) {
            return slips;
        }
        Optional<Slip> constant = ConstantColumn.in(column);
        if (constant.isPresent()) {
            slips.add(constant.get());
            return slips;
        }
        while (slips.size() < MOST_SLIPS) {
            RobustFit robust = RobustFit.of(column);
            Optional<Accepted> accepted = surest(column, robust);
            if (accepted.isEmpty()) {
                slips.addAll(Misreadings.in(column, robust));
                return slips;
            }
            slips.add(accepted.get().slip());
            column = accepted.get().hypothesis().corrected();
        }
        return slips;
    }

    /** A hypothesis with its slip, and by how much it exceeds what it needs to be accepted. */
    private record Accepted(SlipHypothesis hypothesis, Slip slip, double margin) {}

    /** A hypothesis with its score, which takes a fit: so it is worked out once and not at each comparison. */
    private record Candidate(SlipHypothesis hypothesis, double score) {}

    private static Optional<Accepted> surest(Column column, RobustFit robust) {
        if (column.size() > MOST_WITH_HYPOTHESES) {
            return Optional.empty();
        }
        return DETECTORS.stream()
                .flatMap(detector -> detector.hypotheses(column, robust)
                        .filter(hypothesis -> robust.room() > hypothesis.cost())
                        .map(hypothesis -> new Candidate(hypothesis, firstLook(hypothesis, robust)))
                        .sorted(Comparator.comparingDouble(Candidate::score))
                        .limit(MOST_HYPOTHESES))
                .map(candidate -> weighed(candidate.hypothesis(), robust))
                .filter(accepted -> accepted.margin() > 0)
                .max(Comparator.comparingDouble(Accepted::margin));
    }

    /** The score of a hypothesis by the law that fits best so far: enough to choose which hypotheses to weigh in full. */
    private static double firstLook(SlipHypothesis hypothesis, RobustFit robust) {
        return robust.ofOtherByThisLaw(hypothesis.weighed()).score() + hypothesis.cost();
    }

    private static Accepted weighed(SlipHypothesis hypothesis, RobustFit robust) {
        RobustFit corrected = robust.ofOther(hypothesis.weighed());
        double gain = robust.score() - corrected.score() - hypothesis.cost();
        if (hypothesis.accused() >= 0) {
            // The reading is known to be wrong; the hypothesis only says how. It fails if the corrected reading is
            // wrong too.
            double certainty = Misreadings.certainty(robust, hypothesis.accused());
            double margin = corrected.isMisread(hypothesis.accused()) ? Double.NEGATIVE_INFINITY : gain;
            return new Accepted(hypothesis, new Slip(hypothesis.kind(), certainty, hypothesis.finding()), margin);
        }
        Slip slip = new Slip(hypothesis.kind(), certainty(gain), hypothesis.finding());
        return new Accepted(hypothesis, slip, gain - LEAST_GAIN);
    }

    private static SlipHypothesis likeliest(List<SlipHypothesis> hypotheses) {
        return hypotheses.stream()
                .map(hypothesis -> new Candidate(hypothesis, weightOf(hypothesis)))
                .min(Comparator.comparingDouble(Candidate::score))
                .orElseThrow()
                .hypothesis();
    }

    private static double weightOf(SlipHypothesis hypothesis) {
        Column column = hypothesis.weighed();
        while (column.firstNotLater() > 0) {
            column = column.without(column.firstNotLater());
        }
        int lost = hypothesis.weighed().size() - column.size();
        double unfit = column.size() < FEWEST ? 0 : RobustFit.of(column).score();
        return unfit + hypothesis.cost() + lost * (SlipDetector.RARE + 2);
    }
}
