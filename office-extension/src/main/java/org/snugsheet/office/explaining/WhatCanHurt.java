package org.snugsheet.office.explaining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.winter.Frostbite;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.declare.TemperatureOf.Matter;
import org.snugsheet.office.functions.Families;
import org.snugsheet.office.words.Language;

/**
 * What can hurt in what a call was given: water that is too hot for pupils, weather that is too cold for bare skin. Its answer may be a
 * number, which cannot say so. What each argument is the temperature of is read from its declaration; the limits and their sources
 * are those of the engine’s SafeStart and Frostbite.
 */
final class WhatCanHurt {

    private WhatCanHurt() {}

    /**
     * What to say of a call.
     *
     * @param function the function
     * @param givens as many as it has arguments, all known
     * @param language the language to say it in
     * @return a sentence or two; empty if nothing given can hurt
     */
    static Optional<String> in(FunctionDeclaration function, List<ArgumentValue> givens, Language language) {
        try {
            GivenTemperatures given = new GivenTemperatures(function, givens);
            List<String> said = new ArrayList<>();
            Stream.of(Matter.WATER, Matter.JARS, Matter.SHEET, Matter.SURROUNDINGS)
                    .flatMap(given::of)
                    .filter(SafeStart::isTooHot)
                    .max(Comparator.naturalOrder())
                    .ifPresent(hottest ->
                            said.add(language.words(SafeStart.cautions(hottest).get(0))));
            if (given.of(Matter.SURROUNDINGS).anyMatch(Frostbite::threatensChildren)) {
                said.add(language.words(Caution.OUTDOORS));
            }
            if (given.of(Matter.WEATHER).findAny().isPresent()) {
                weather(function, givens, language).ifPresent(said::add);
            }
            return said.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", said));
        } catch (InvalidInputException noScale) {
            // The call itself says so.
            return Optional.empty();
        }
    }

    /** What COLD.FROSTBITE says of the same weather. */
    private static Optional<String> weather(
            FunctionDeclaration function, List<ArgumentValue> givens, Language language) {
        FunctionDeclaration frostbite = Families.functions().stream()
                .filter(one -> one.name().equals("COLD.FROSTBITE"))
                .findFirst()
                .orElseThrow();
        ArgumentValue wind = GivenTemperatures.named("wind", function, givens);
        ArgumentValue calm = ArgumentValue.of("0", new Object[][] {{0.0}}, true, Optional.empty());
        List<ArgumentValue> theirs = List.of(
                GivenTemperatures.named("temp", function, givens),
                wind.isLeftOut() ? calm : wind,
                GivenTemperatures.named("scale", function, givens));
        return CallReplay.of(frostbite, theirs, language).answer().map(String::valueOf);
    }
}
