package org.snugsheet.office.explaining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.Families;
import org.snugsheet.office.words.Language;

/**
 * What can hurt in what a call was given: water that is too hot for pupils, weather that is too cold for bare skin. Its answer may be a
 * number, which cannot say so. The limits and their sources are those of the engine’s SafeStart and Frostbite.
 */
final class WhatCanHurt {

    /** The arguments that are temperatures of water, where it is a jar’s; other CHECK functions and those of PLAN say it themselves. */
    private static final Set<String> OF_WATER =
            Set.of("temps", "otherTemps", "start", "from", "to", "temp", "bathTemp", "warm");

    private WhatCanHurt() {}

    /**
     * What to say of a call.
     *
     * @param function the function
     * @param givens as many as it has arguments, all known
     * @param language the language to say it in
     * @return a sentence or two; empty if nothing given can hurt
     */
    static Optional<String> in(FunctionDeclaration function, List<Given> givens, Language language) {
        try {
            boolean ofWater = function.name().startsWith("COOL.")
                    || function.name().startsWith("WRAP.")
                    || function.name().equals("CHECK.FAIR");
            if (ofWater) {
                return water(function, givens, language);
            }
            boolean ofWeather =
                    function.name().equals("COLD.WINDCHILL") || function.name().startsWith("COLD.NEEDED");
            return ofWeather ? weather(function, givens, language) : Optional.empty();
        } catch (Refusal noScale) {
            // The call itself says so.
            return Optional.empty();
        }
    }

    private static Optional<String> water(FunctionDeclaration function, List<Given> givens, Language language) {
        Scale scale = scale(function, givens);
        List<Temperature> hot = new ArrayList<>();
        for (int i = 0; i < givens.size(); i++) {
            if (OF_WATER.contains(function.arguments().get(i).name())) {
                givens.get(i).values().stream()
                        .flatMap(value -> temperature(value, scale))
                        .filter(SafeStart::isTooHot)
                        .forEach(hot::add);
            }
        }
        return hot.stream()
                .max(Comparator.naturalOrder())
                .map(hottest -> language.words(SafeStart.cautions(hottest).get(0)));
    }

    private static Optional<String> weather(FunctionDeclaration function, List<Given> givens, Language language) {
        FunctionDeclaration frostbite = Families.functions().stream()
                .filter(one -> one.name().equals("COLD.FROSTBITE"))
                .findFirst()
                .orElseThrow();
        Given wind = given(function, givens, "wind");
        Given calm = Given.of("0", new Object[][] {{0.0}}, true, Optional.empty());
        List<Given> theirs = List.of(
                given(function, givens, "temp"), wind.isLeftOut() ? calm : wind, given(function, givens, "scale"));
        return Rerun.of(frostbite, theirs, language).answer().map(String::valueOf);
    }

    private static Stream<Temperature> temperature(Object value, Scale scale) {
        Entry entry = value instanceof Double number ? Entry.of(number) : Entry.ofWritten(String.valueOf(value));
        try {
            return entry instanceof Entry.Gap ? Stream.empty() : Stream.of(entry.asTemperature(1, scale));
        } catch (Refusal noTemperature) {
            return Stream.empty();
        }
    }

    private static Scale scale(FunctionDeclaration function, List<Given> givens) {
        return given(function, givens, "scale").values().stream()
                .map(String::valueOf)
                .filter(text -> !text.isBlank() && !text.equals("0.0"))
                .findFirst()
                .map(Scale::parse)
                .orElse(Scale.CELSIUS);
    }

    private static Given given(FunctionDeclaration function, List<Given> givens, String name) {
        for (int i = 0; i < givens.size(); i++) {
            if (function.arguments().get(i).name().equals(name)) {
                return givens.get(i);
            }
        }
        return Given.LEFT_OUT;
    }
}
