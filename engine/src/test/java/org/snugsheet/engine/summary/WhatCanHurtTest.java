package org.snugsheet.engine.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.slips.Slip;
import org.snugsheet.engine.slips.SlipKind;

/**
 * Water that is too hot for pupils is said first, whatever else is found, and leaves the results alone; so is bitter cold. The limit is that of UK
 * Department for Education, Building Bulletin 87 (2003), 43 °C; the readings are invented, by Newton’s law towards 5 °C.
 */
class WhatCanHurtTest {

    private static final double[] MINUTES = {0, 5, 10, 15, 20, 25, 30};

    @ParameterizedTest
    @CsvSource({
        "39, C, false", "43, C, false", "44, C, true", "60, C, true", "80, C, true", "85, C, true", "95, C, true",
        "39, F, false", "43, F, false", "44, F, true", "60, F, true", "80, F, true", "85, F, true", "95, F, true"
    })
    void itIsFoundOnEitherScaleAsNumberAndAsText(double start, String letter, boolean tooHot) {
        Scale scale = Scale.parse(letter);
        for (How how : How.values()) {
            JarSummary jar = cooling(start, scale, how);
            List<Problem> found = jar.findings().stream()
                    .map(slip -> slip.finding().problem())
                    .toList();
            if (tooHot) {
                Slip first = jar.findings().get(0);
                assertEquals(SlipKind.HOT_WATER, first.kind(), how + ": " + found);
                assertEquals(1, first.row().orElseThrow());
                String said = first.finding().sentence();
                assertTrue(said.startsWith("Row 1 (minute 0): water of " + (int) start + " °C ("), said);
                assertTrue(said.contains("too hot for pupils") && said.contains("43 °C (109 °F)"), said);
            } else {
                assertEquals(List.of(), found, how.name());
            }
            assertTrue(jar.fit().fit().found().isPresent());
        }
    }

    @Test
    void theJarIsUsedAsItIs() {
        JarSummary jar = cooling(60, Scale.CELSIUS, How.NUMBERS);

        assertTrue(jar.isUsable());
        assertEquals(
                List.of(SlipKind.HOT_WATER),
                jar.findings().stream().map(Slip::kind).toList());
        assertEquals(60, jar.fit().start().orRefuse().celsius(), 0.5);
    }

    /** From here on the numbers alone could be °F; whoever reads only the first line must not take it for a slip of the pen. */
    @ParameterizedTest
    @CsvSource({"85", "90", "95", "99"})
    void whereItCouldBeFahrenheitTheCautionSaysBoth(double start) {
        JarSummary jar = cooling(start, Scale.CELSIUS, How.NUMBERS);
        List<Slip> findings = jar.findings();

        assertEquals(SlipKind.HOT_WATER, findings.get(0).kind());
        if (findings.size() > 1) {
            assertEquals(SlipKind.ALL_ON_OTHER_SCALE, findings.get(1).kind());
            assertTrue(findings.get(0)
                    .finding()
                    .sentence()
                    .endsWith("Only an adult handles it; if it was read in °F, name that scale."));
        }
    }

    @Test
    void noWaterIsHotterThanSteam() {
        double[] fahrenheit = {104, 98, 93, 88, 84, 80, 77};
        JarSummary jar = jar(entries(fahrenheit, How.NUMBERS, Scale.CELSIUS), "40", Scale.CELSIUS);

        assertFalse(jar.isUsable());
        assertTrue(jar.findings().stream().noneMatch(slip -> slip.kind() == SlipKind.HOT_WATER));
    }

    @Test
    void aNumberThatIsTakenForACoolerOneIsNoWater() {
        double[] swapped = {40, 35, 30, 62, 23, 20, 18};
        JarSummary jar = jar(entries(swapped, How.NUMBERS, Scale.CELSIUS), "8", Scale.CELSIUS);

        assertEquals(
                List.of(SlipKind.DIGITS_SWAPPED),
                jar.findings().stream().map(Slip::kind).toList());
    }

    @Test
    void aReadingOnItsOwnScaleIsReadOnThat() {
        List<Entry> typed = entries(new double[] {40, 36, 33, 30, 28, 26, 24}, How.NUMBERS, Scale.CELSIUS);
        List<Entry> cool = new ArrayList<>(typed);
        cool.set(0, Entry.of("104 °F"));
        List<Entry> hot = new ArrayList<>(typed);
        hot.set(0, Entry.of("180 °F"));

        assertEquals(List.of(), jar(cool, "10", Scale.CELSIUS).findings());
        assertEquals(
                Problem.ROW_TOO_HOT,
                jar(hot, "10", Scale.CELSIUS).findings().get(0).finding().problem());
    }

    @ParameterizedTest
    @CsvSource({"60, C", "140, F", "60 °C, F", "140 °F, C"})
    void aBathThatIsTooHotIsSaidToo(String bath, String letter) {
        Scale scale = Scale.parse(letter);
        List<Entry> readings = new ArrayList<>();
        for (double minute : MINUTES) {
            readings.add(Entry.of(Math.rint(new Temperature(60 - 40 * Math.exp(-0.01 * minute)).in(scale) * 10) / 10));
        }

        assertEquals(
                List.of(Problem.SURROUNDINGS_TOO_HOT),
                jar(readings, bath, scale).findings().stream()
                        .map(slip -> slip.finding().problem())
                        .toList());
    }

    /** −18 °C, 0 °F: Child Care Weather Watch (Healthy Child Care Iowa), significant risk of frostbite. */
    @ParameterizedTest
    @CsvSource({
        "-5, C, false", "-17, C, false", "-18, C, true", "-20, C, true", "-30, C, true", "-20 °C, F, true",
        "23, F, false", "1, F, false", "0, F, true", "-4, F, true", "-22, F, true", "-22 °F, C, true"
    })
    void surroundingsThatFreezeSkinAreSaid(String around, String letter, boolean tooCold) {
        List<Entry> readings = new ArrayList<>();
        double celsius = Entry.of(around).asTemperature(1, Scale.parse(letter)).celsius();
        for (double minute : MINUTES) {
            double water = celsius + (40 - celsius) * Math.exp(-0.01 * minute);
            readings.add(Entry.of(Math.rint(new Temperature(water).in(Scale.parse(letter)) * 10) / 10));
        }
        JarSummary jar = jar(readings, around, Scale.parse(letter));

        assertEquals(
                tooCold ? List.of(SlipKind.BITTER_COLD) : List.of(),
                jar.findings().stream().map(Slip::kind).toList());
        assertTrue(jar.isUsable());
    }

    private enum How {
        NUMBERS,
        TEXTS,
        TEXTS_WITH_UNIT
    }

    /** A jar that starts at so many °C, read in the scale to a tenth of a degree. */
    private static JarSummary cooling(double start, Scale scale, How how) {
        double[] readings = new double[MINUTES.length];
        for (int i = 0; i < readings.length; i++) {
            readings[i] =
                    Math.rint(new Temperature(5 + (start - 5) * Math.exp(-0.03 * MINUTES[i])).in(scale) * 10) / 10;
        }
        return jar(entries(readings, how, scale), scale == Scale.CELSIUS ? "5" : "41", scale);
    }

    private static List<Entry> entries(double[] readings, How how, Scale scale) {
        List<Entry> entries = new ArrayList<>();
        for (double reading : readings) {
            entries.add(
                    switch (how) {
                        case NUMBERS -> Entry.of(reading);
                        case TEXTS -> Entry.of(String.valueOf(reading));
                        case TEXTS_WITH_UNIT -> Entry.of(reading + " " + scale.symbol());
                    });
        }
        return entries;
    }

    private static JarSummary jar(List<Entry> readings, String surroundings, Scale scale) {
        List<Entry> minutes = new ArrayList<>();
        for (double minute : MINUTES) {
            minutes.add(Entry.of(minute));
        }
        return JarSummary.of(new TypedJar(
                Optional.empty(),
                minutes,
                readings,
                List.of(Entry.ofWritten(surroundings)),
                Graduation.of(0.5, scale),
                scale));
    }
}
