package org.snugsheet.engine.jar;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.insulation.AirGap;
import org.snugsheet.engine.insulation.Layer;
import org.snugsheet.engine.insulation.Layers;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Temperature;

/**
 * The comparison of the resistance that the readings show with the one that the layers should give.
 *
 * <p>The layers should give a range, because published conductivities differ. Measured and expected values agree if the
 * limits of the one overlap the range of the other. If they do not, each usual {@link Reason} is applied to the design at its
 * worst, with the most favorable published conductivities: a reason that reaches the measured limits could be the whole
 * cause; one that does not could not.
 *
 * @param measured the measured resistance with its error, m²·K/W
 * @param limits its limits
 * @param expected the expected resistance, from the worst published conductivities to the best, m²·K/W
 * @param typical the expected resistance with typical conductivities, m²·K/W
 * @param reasons the expected resistance that each reason could lead to, for those that act in this direction; empty if the
 *     two agree. The value is in m²·K/W, except for the two about surroundings, for which it is the difference in kelvins
 *     that they would need
 * @param enough the reasons that could be the whole cause, in the order of {@link Reason}
 */
public record Agreement(
        Estimate measured,
        Interval limits,
        Interval expected,
        double typical,
        Map<Reason, Double> reasons,
        List<Reason> enough) {

    /** A larger error of the bath would have been noticed; common practice, no source. */
    private static final double UNNOTICED_KELVINS = 5;

    /** A gap wider than this would be seen. */
    private static final Length UNNOTICED_GAP = new Length(0.01);

    /** An agreement, or none. */
    public Agreement {
        reasons = Map.copyOf(reasons);
        enough = List.copyOf(enough);
    }

    /**
     * Whether the readings and the layers agree.
     *
     * @return true if they do
     */
    public boolean agrees() {
        return limits.high() >= expected.low() && limits.low() <= expected.high();
    }

    /**
     * Compares a measured resistance with a design.
     *
     * @param measured the resistance of the whole jar that the readings show, m²·K/W of all its surface
     * @param confidence how often the limits hold the truth, such as 0.95
     * @param design how the jar was wrapped
     * @param water the mean temperature of the water
     * @param surroundings the temperature of the place of the jar
     * @return the comparison
     * @throws org.snugsheet.engine.InvalidInputException as {@link Design#between} refuses
     */
    public static Agreement of(
            Estimate measured, double confidence, Design design, Temperature water, Temperature surroundings) {
        // What is soaked there anyway has one figure, and not the range of the dry stuff.
        Design there = design.withSide(design.sideWhereItStands());
        Judge judge = new Judge(there, water, surroundings);
        double low = judge.resistance(there.withSide(there.side().each(Layer::atWorst)));
        double high = judge.resistance(there.withSide(there.side().each(Layer::atBest)));
        double typical = judge.resistance(there);
        Interval limits = measured.interval(confidence);
        Interval expected = new Interval(Math.min(low, high), Math.max(low, high));

        Map<Reason, Double> reasons = new EnumMap<>(Reason.class);
        List<Reason> enough = new ArrayList<>();
        if (limits.high() < expected.low()) {
            judge.lower(reasons, measured.value() / expected.low());
            reasons.forEach((reason, value) -> addIf(
                    reason == Reason.COLDER_SURROUNDINGS ? value <= UNNOTICED_KELVINS : value <= limits.high(),
                    reason,
                    enough));
        } else if (limits.low() > expected.high()) {
            judge.higher(reasons, measured.value() / expected.high());
            reasons.forEach((reason, value) -> addIf(
                    reason == Reason.WARMER_SURROUNDINGS ? value <= UNNOTICED_KELVINS : value >= limits.low(),
                    reason,
                    enough));
        }
        return new Agreement(measured, limits, expected, typical, reasons, enough);
    }

    private static void addIf(boolean fits, Reason reason, List<Reason> enough) {
        if (fits) {
            enough.add(reason);
        }
    }

    private record Judge(Design design, Temperature water, Temperature surroundings) {

        double resistance(Design changed) {
            return changed.between(water, surroundings).resistance().squareMeterKelvinsPerWatt();
        }

        void lower(Map<Reason, Double> reasons, double share) {
            Layers side = design.side().each(Layer::atWorst);
            if (side.fromInside().stream().anyMatch(Judge::soaks)) {
                reasons.put(Reason.SOAKED_WRAP, resistance(design.withSide(side.each(Layer::soaked))));
            }
            if (side.fromInside().stream().anyMatch(Judge::gives)) {
                reasons.put(Reason.SQUASHED_WRAP, resistance(design.withSide(side.each(Judge::squashed))));
            }
            if (design.lid().squareMeterKelvinsPerWatt() > 0) {
                reasons.put(
                        Reason.GAP_AT_THE_LID, resistance(design.withSide(side).withBareLid()));
            }
            if (share > 0) {
                reasons.put(Reason.COLDER_SURROUNDINGS, Math.abs(difference()) * (1 / share - 1));
            }
        }

        void higher(Map<Reason, Double> reasons, double share) {
            Layers side = design.side().each(Layer::atBest);
            if (!side.fromInside().isEmpty()) {
                Layers loose = side.with(AirGap.upright(UNNOTICED_GAP));
                reasons.put(Reason.AIR_BETWEEN_LAYERS, resistance(design.withSide(loose)));
            }
            reasons.put(Reason.WARMER_SURROUNDINGS, Math.abs(difference()) * (1 - 1 / share));
        }

        /**
         * The temperature change of the place that would double the heat flow of the jar. In a tub only a part of it goes
         * there.
         */
        private double difference() {
            HeatFlow flow = design.between(water, surroundings);
            return water.minus(flow.end()).kelvins() / flow.shareToThePlace();
        }

        private static boolean soaks(Layer layer) {
            return !layer.soaked().equals(layer);
        }

        /** Materials that are mostly air can be squashed: ISO 10456 calls a material insulating below 0.1 W/(m·K). */
        private static boolean gives(Layer layer) {
            return layer.material()
                    .filter(stuff -> stuff.typical().wattsPerMeterKelvin() < 0.1)
                    .isPresent();
        }

        private static Layer squashed(Layer layer) {
            return gives(layer)
                    ? layer.withThickness(new Length(layer.thickness().meters() / 2))
                    : layer;
        }
    }
}
