package org.snugsheet.office.explaining;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.declare.FunctionDeclaration.ArgumentDeclaration;
import org.snugsheet.office.declare.TemperatureOf.Matter;
import org.snugsheet.office.functions.Families;
import org.snugsheet.office.words.Language;

/**
 * What is said of a call with hot water or cold weather, and that no function is forgotten: {@link FunctionsWalked} goes through
 * those whose arguments are declared to be temperatures; here is held that all such arguments are.
 */
class WhatCanHurtTest {

    private static final Pattern A_TEMPERATURE = Pattern.compile("\\b[Tt]emperatures?\\b");

    /** Texts that speak of temperatures without asking for one. */
    private static final Set<String> OF_OTHERS = Set.of("Texts.SCALE");

    @Test
    void nothingHotOrColdGoesUnsaid() {
        assertEquals(List.of(), FunctionsWalked.unsaid());
    }

    @Test
    void noTemperatureIsUndeclared() {
        for (FunctionDeclaration function : Families.functions()) {
            for (ArgumentDeclaration argument : function.arguments()) {
                if (A_TEMPERATURE.matcher(argument.text()).find() && !OF_OTHERS.contains(argument.key())) {
                    assertTrue(argument.temperature().isPresent(), argument.key());
                }
            }
        }
    }

    /** What is told a scale is told a temperature. */
    @Test
    void whatTakesAScaleTakesATemperature() {
        for (FunctionDeclaration function : Families.functions()) {
            boolean scale =
                    function.arguments().stream().anyMatch(one -> one.name().equals("scale"));
            boolean temperature = function.arguments().stream()
                    .anyMatch(one -> one.temperature().isPresent());
            assertTrue(temperature || !scale, function.name());
        }
    }

    /** Those that are told a temperature of which nobody knows whether it is of water, each with its reason. */
    @Test
    void nothingIsExemptWithoutAReason() {
        assertEquals(
                List.of("TEMP.CONVERT", "TEMP.READ", "TEMP.ROUND"),
                Families.functions().stream()
                        .filter(function -> function.arguments().stream().anyMatch(one -> one.asksFor(Matter.ANYTHING)))
                        .map(FunctionDeclaration::name)
                        .toList(),
                "asked for a temperature of ANYTHING: rather say of what, and only if nobody can know add it here");
        for (FunctionDeclaration function : Families.functions()) {
            for (ArgumentDeclaration argument : function.arguments()) {
                argument.temperature()
                        .ifPresent(declared -> assertEquals(
                                declared.value() == Matter.ANYTHING,
                                !declared.because().isBlank(),
                                argument.key()));
            }
        }
    }

    @Test
    void theHottestCounts() {
        FunctionDeclaration rate = FunctionsWalked.function("COOL.RATE");
        List<ArgumentValue> givens = FunctionsWalked.leftOut(rate);
        givens.set(1, ArgumentValue.of("B1:B3", new Object[][] {{41.0}, {""}, {"180 °F"}}, false, Optional.empty()));
        assertEquals(Optional.of(Caution.SCALDS_AT_ONCE.english()), WhatCanHurt.in(rate, givens, Language.ENGLISH));
    }

    /** In a block each jar has the scale of its heading; the minutes beside it and the headings are no water. */
    @ParameterizedTest
    @CsvSource({
        "wool, C, 41, false",
        "wool, C, 60, true",
        "wool °F, C, 60, false",
        "wool °F, C, 140, true",
        "wool (C), F, 41, false",
        "wool (C), F, 60, true",
        "60, C, 41, false"
    })
    void aBlockIsReadAsTheFunctionsReadIt(String name, String scale, double reading, boolean tooHot) {
        FunctionDeclaration sheet = FunctionsWalked.function("COOL.SHEET");
        List<ArgumentValue> givens = FunctionsWalked.leftOut(sheet);
        Object[][] block = {{"min", name}, {0.0, reading}, {90.0, reading}};
        givens.set(0, ArgumentValue.of("A1:B3", block, false, Optional.empty()));
        givens.set(3, ArgumentValue.of(scale, new Object[][] {{scale}}, true, Optional.empty()));
        assertEquals(tooHot, WhatCanHurt.in(sheet, givens, Language.ENGLISH).isPresent());

        FunctionDeclaration rank = FunctionsWalked.function("COOL.RANK");
        List<ArgumentValue> ofRank = FunctionsWalked.leftOut(rank);
        ofRank.set(0, ArgumentValue.of("A2:A3", new Object[][] {{0.0}, {90.0}}, false, Optional.empty()));
        ofRank.set(1, ArgumentValue.of("B2:B3", new Object[][] {{reading}, {reading}}, false, Optional.empty()));
        ofRank.set(2, ArgumentValue.of("B1", new Object[][] {{name}}, true, Optional.empty()));
        ofRank.set(5, ArgumentValue.of(scale, new Object[][] {{scale}}, true, Optional.empty()));
        assertEquals(tooHot, WhatCanHurt.in(rank, ofRank, Language.ENGLISH).isPresent());
    }

    /** A tub of 60 °C is as hot as a jar; a word for the surroundings is no temperature. */
    @Test
    void surroundingsCountToo() {
        FunctionDeclaration rate = FunctionsWalked.function("COOL.RATE");
        List<ArgumentValue> givens = FunctionsWalked.leftOut(rate);
        for (String word : List.of("fit", "melting ice", "")) {
            givens.set(2, ArgumentValue.of("C1", new Object[][] {{word}}, true, Optional.empty()));
            assertFalse(WhatCanHurt.in(rate, givens, Language.ENGLISH).isPresent(), word);
        }
        givens.set(2, ArgumentValue.of("C1", new Object[][] {{60.0}}, true, Optional.empty()));
        assertTrue(WhatCanHurt.in(rate, givens, Language.ENGLISH).isPresent());
    }
}
