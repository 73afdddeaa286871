package org.snugsheet.engine.summary;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.slips.Slip;
import org.snugsheet.engine.slips.SlipKind;
import org.snugsheet.engine.winter.Frostbite;

/**
 * Finds what can hurt in what was typed for a jar: water that is too hot for pupils, and surroundings so cold that bare skin
 * freezes. The limits and their sources are those of {@link SafeStart} and {@link Frostbite.ForChildren}.
 *
 * <p>Hot water comes before every slip: readings of 85 °C may have been meant in °F, but if they were not, somebody can be
 * scalded. Readings above 100 °C certainly were. A number that a slip explains as another one, such as 62 for 26, is not hot
 * water; one that is hotter than the reading before it may not be, so there the slip comes first.
 */
final class WhatCanHurt {

    /** Slips in which the number typed was meant as a cooler one. */
    private static final Set<SlipKind> MISPRINTS = EnumSet.of(
            SlipKind.READING_ON_OTHER_SCALE,
            SlipKind.DIGITS_SWAPPED,
            SlipKind.COMMA_LOST,
            SlipKind.SIGN_WRONG,
            SlipKind.TENS_MISREAD);

    /** Slips in which the numbers may be right, on another scale. */
    private static final Set<SlipKind> OTHER_SCALE =
            EnumSet.of(SlipKind.COLUMN_ON_OTHER_SCALE, SlipKind.ALL_ON_OTHER_SCALE);

    private WhatCanHurt() {}

    /** All findings of a jar in order: dangers first, then its slips. */
    static List<Slip> among(TypedJar jar, List<Slip> slips) {
        List<Slip> all = new ArrayList<>(slips);
        if (slips.stream().noneMatch(slip -> slip.kind() == SlipKind.SURROUNDINGS_ON_OTHER_SCALE)) {
            Collection<Temperature> around =
                    temperatures(jar.surroundings(), jar.scale()).values();
            tooCold(around).ifPresent(finding -> all.add(0, new Slip(SlipKind.BITTER_COLD, 1, finding)));
            tooHot(around).ifPresent(finding -> all.add(0, new Slip(SlipKind.HOT_WATER, 1, finding)));
        }
        inReadings(jar, slips).ifPresent(finding -> {
            boolean goesBack = slips.stream()
                    .anyMatch(slip ->
                            slip.kind() == SlipKind.GOES_BACK && slip.row().equals(finding.row()));
            all.add(goesBack ? all.size() : 0, new Slip(SlipKind.HOT_WATER, 1, finding));
        });
        return all;
    }

    private static Optional<Finding> inReadings(TypedJar jar, List<Slip> slips) {
        boolean otherScale = slips.stream().anyMatch(slip -> OTHER_SCALE.contains(slip.kind()));
        if (otherScale
                && temperatures(jar.temperatures(), jar.scale()).values().stream()
                        .anyMatch(WhatCanHurt::isSteam)) {
            return Optional.empty();
        }
        Map<Integer, Temperature> readings = temperatures(jar.temperatures(), jar.scale());
        slips.stream()
                .filter(slip -> MISPRINTS.contains(slip.kind()))
                .forEach(slip -> slip.row().ifPresent(readings::remove));
        return warmest(readings).map(hot -> {
            Temperature water = hot.getValue();
            return jar.located(
                    otherScale
                            ? Finding.atRow(
                                    hot.getKey(),
                                    Problem.ROW_TOO_HOT_OR_OTHER_SCALE,
                                    water.celsius(),
                                    water.in(Scale.FAHRENHEIT),
                                    Scale.FAHRENHEIT.symbol())
                            : Finding.atRow(
                                    hot.getKey(), Problem.ROW_TOO_HOT, water.celsius(), water.in(Scale.FAHRENHEIT)));
        });
    }

    private static boolean isSteam(Temperature reading) {
        return reading.compareTo(SafeStart.SCHOOL_LIMIT) > 0 && !SafeStart.isTooHot(reading);
    }

    private static Optional<Finding> tooHot(Collection<Temperature> surroundings) {
        return surroundings.stream()
                .filter(SafeStart::isTooHot)
                .max(Comparator.naturalOrder())
                .map(around -> Finding.of(Problem.SURROUNDINGS_TOO_HOT, around.celsius(), around.in(Scale.FAHRENHEIT)));
    }

    private static Optional<Finding> tooCold(Collection<Temperature> surroundings) {
        return surroundings.stream()
                .min(Comparator.naturalOrder())
                .filter(Frostbite::threatensChildren)
                .map(around ->
                        Finding.of(Problem.SURROUNDINGS_TOO_COLD, around.celsius(), around.in(Scale.FAHRENHEIT)));
    }

    /** The first of the warmest that are too hot. */
    private static Optional<Map.Entry<Integer, Temperature>> warmest(Map<Integer, Temperature> temperatures) {
        return temperatures.entrySet().stream()
                .filter(one -> SafeStart.isTooHot(one.getValue()))
                .max(Map.Entry.<Integer, Temperature>comparingByValue()
                        .thenComparing(
                                Map.Entry.<Integer, Temperature>comparingByKey().reversed()));
    }

    /** What can be read, by its row. */
    private static Map<Integer, Temperature> temperatures(List<Entry> entries, Scale scale) {
        Map<Integer, Temperature> temperatures = new TreeMap<>();
        for (int row = 1; row <= entries.size(); row++) {
            int here = row;
            read(entries.get(row - 1), scale).ifPresent(temperature -> temperatures.put(here, temperature));
        }
        return temperatures;
    }

    private static Optional<Temperature> read(Entry entry, Scale scale) {
        try {
            return entry instanceof Entry.Missing ? Optional.empty() : Optional.of(entry.asTemperature(1, scale));
        } catch (InvalidInputException noTemperature) {
            // The checks themselves say so.
            return Optional.empty();
        }
    }
}
