package org.snugsheet.engine.slips;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The laws at the trial rates of a sample, each worked out when it is first asked for. Hypotheses mostly change a temperature and no time: for them
 * the same values serve again.
 */
final class LawGrids {

    private final Sample sample;
    private final Map<Law, LawGrid> grids;
    private final Map<Law, List<LawValues>> starts;

    private LawGrids(Sample sample, Map<Law, LawGrid> grids, Map<Law, List<LawValues>> starts) {
        this.sample = sample;
        this.grids = grids;
        this.starts = starts;
    }

    static LawGrids of(Sample sample) {
        return new LawGrids(sample, new EnumMap<>(Law.class), new EnumMap<>(Law.class));
    }

    /** Those of another sample, which shares what is known if it may. */
    LawGrids with(Sample other) {
        return sample.hasSameLaws(other) ? new LawGrids(other, grids, starts) : of(other);
    }

    Sample sample() {
        return sample;
    }

    LawGrid of(Law law) {
        return grids.computeIfAbsent(law, asked -> LawGrid.of(sample, asked)).with(sample);
    }

    /** A law at the rates that {@link RobustStart} tries. */
    List<LawValues> starts(Law law) {
        return starts.computeIfAbsent(
                law,
                asked -> RobustStart.rates(sample)
                        .mapToObj(rate -> asked.at(sample, rate))
                        .toList());
    }
}
