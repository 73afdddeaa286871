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
 * <p>Each kind of slip tells {@link SlipHypothesis stories}: this reading was 34 and not 43, these times run one step late. A story is
 * believed if the mended column follows a law of cooling so much better that the gain outweighs how rare such slips are; the
 * one that gains most is believed first, and the column is looked at again without it. Readings that stay off the curve with no
 * story to explain them are pointed out as they are.
 */
public final class SlipFinder {

    /** By how much a story has to be better than none, as twice the logarithm of odds: odds of seven to one. */
    static final double LEAST_GAIN = 4;

    private static final int MOST_SLIPS = 12;

    /** Of each kind; a first look by one law misleads where that law was bent to fit the slip. */
    private static final int MOST_STORIES = 3;

    /** Fewer readings are met by some curve whatever they are. */
    private static final int FEWEST = 4;

    /**
     * More than a class reads in an hour. Longer columns come from loggers, which swap no digits; and every reading has stories of its own,
     * each of which asks for fits of all readings, so that they would take minutes. Common practice, no source.
     */
    private static final int MOST_WITH_STORIES = 64;

    private static final List<SlipDetector> SUSPICIONS = List.of(
            new DigitSlips(),
            new OneReadingOnOtherScale(),
            new WholeOnOtherScale(),
            new TimeSlips(),
            new Steps(),
            new Stuck());

    private SlipFinder() {}

    /**
     * All slips in the readings of a jar.
     *
     * @param minutes what was typed for the times, one for each row
     * @param temperatures what was typed for the readings
     * @param surroundings what was typed for the surroundings: one temperature, one for each row, or the word {@code fit}
     * @param mark the mark of the thermometer
     * @param scale the scale of what was typed without one
     * @return the slips, the surest first; empty if the column is clean
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

    /** How sure a story is from its gain: half of it is the logarithm of the odds. */
    static double certainty(double gain) {
        return 1 / (1 + Math.exp(-gain / 2));
    }

    private static List<Slip> in(Column typed) {
        List<Slip> slips = new ArrayList<>();
        Column column = typed;
        while (slips.size() < MOST_SLIPS && column.size() >= FEWEST && column.firstNotLater() > 0) {
            SlipHypothesis story = likeliest(TimeSlips.notLater(column, column.firstNotLater()));
            slips.add(new Slip(story.kind(), 1, story.finding()));
            column = story.mended();
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
            RobustFit clues = RobustFit.of(column);
            Optional<Believed> believed = surest(column, clues);
            if (believed.isEmpty()) {
                slips.addAll(Misreadings.in(column, clues));
                return slips;
            }
            slips.add(believed.get().slip());
            column = believed.get().story().mended();
        }
        return slips;
    }

    /** A story with its slip, and by how much it outweighs what it needs. */
    private record Believed(SlipHypothesis story, Slip slip, double margin) {}

    private static Optional<Believed> surest(Column column, RobustFit clues) {
        if (column.size() > MOST_WITH_STORIES) {
            return Optional.empty();
        }
        return SUSPICIONS.stream()
                .flatMap(suspicion -> suspicion
                        .stories(column, clues)
                        .filter(story -> clues.room() > story.cost())
                        .sorted(Comparator.comparingDouble(story -> firstLook(story, clues)))
                        .limit(MOST_STORIES))
                .map(story -> weighed(story, clues))
                .filter(believed -> believed.margin() > 0)
                .max(Comparator.comparingDouble(Believed::margin));
    }

    /** What a story costs and leaves unexplained by the law that fits best so far: enough to choose which to weigh in full. */
    private static double firstLook(SlipHypothesis story, RobustFit clues) {
        Law law = clues.fit().law();
        return RobustFit.byOneLaw(story.weighed(), law).score() + story.cost();
    }

    private static Believed weighed(SlipHypothesis story, RobustFit clues) {
        RobustFit mended = RobustFit.of(story.weighed());
        double gain = clues.score() - mended.score() - story.cost();
        if (story.accused() >= 0) {
            // That the reading is wrong is known; the story only says how, and does not if the mended one is wrong too.
            double certainty = Misreadings.certainty(clues, story.accused());
            double margin = mended.isMisread(story.accused()) ? Double.NEGATIVE_INFINITY : gain;
            return new Believed(story, new Slip(story.kind(), certainty, story.finding()), margin);
        }
        Slip slip = new Slip(story.kind(), certainty(gain), story.finding());
        return new Believed(story, slip, gain - LEAST_GAIN);
    }

    private static SlipHypothesis likeliest(List<SlipHypothesis> stories) {
        return stories.stream()
                .min(Comparator.comparingDouble(SlipFinder::weightOf))
                .orElseThrow();
    }

    private static double weightOf(SlipHypothesis story) {
        Column column = story.weighed();
        while (column.firstNotLater() > 0) {
            column = column.without(column.firstNotLater());
        }
        int lost = story.weighed().size() - column.size();
        double unfit = column.size() < FEWEST ? 0 : RobustFit.of(column).score();
        return unfit + story.cost() + lost * (SlipDetector.RARE + 2);
    }
}
