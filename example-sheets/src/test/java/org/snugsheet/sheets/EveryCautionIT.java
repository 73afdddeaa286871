package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.sheets.WorkedSheets;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.sheets.lessonbook.LessonBook;

/**
 * Walks every worked sheet that meets water or weather, at 39, 44, 60 and 95 °C and at −5, −20 and −30 °C, on both scales, typed as
 * a number and as a text, and finds the caution where a person meets it: in front of all else, and beside what is typed. The same
 * walk through the functions is {@code WhatCanHurtTest}.
 *
 * <p>Limits: 43 °C, UK Department for Education, Building Bulletin 87 (2003); −18 °C (0 °F), Child Care Weather Watch (Healthy Child
 * Care Iowa); −27 °C (−16 °F), Canadian Paediatric Society. The readings follow Newton’s law.
 */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class EveryCautionIT {

    private static final int[] STARTS = {39, 44, 60, 85, 95};
    private static final int[] COLD = {-5, -20, -30};
    private static final double RATE = 0.03;

    /** The pages that take readings or a temperature, each with the tests here that walk it. */
    private static final Map<String, String> WALKED = Map.of(
            "first-five-minutes", "itIsSaidBesideTheReadings",
            "one-jar-one-curve", "itIsSaidBesideTheReadings",
            "lesson-book", "aBookSaysItBesideItsReadings",
            "example-class", "aBookSaysItBesideItsReadings, hotWaterInBitterColdIsSaidAsBoth, theRankingStays",
            "design-a-wrap", "itIsSaidBesideTheReadings, aDesignSaysItBesideItsStart",
            "winter-coats", "theWeatherIsSaidForChildren",
            "weather-diary", "aVeryColdDayIsSaid");

    @Test
    void noWorkedSheetIsForgotten() {
        assertEquals(
                WorkedSheets.all().stream().map(WorkedSheet::fileName).sorted().toList(),
                WALKED.keySet().stream().sorted().toList());
        List<String> tests = Arrays.stream(EveryCautionIT.class.getDeclaredMethods())
                .map(Method::getName)
                .toList();
        WALKED.values().forEach(names -> assertTrue(tests.containsAll(List.of(names.split(", "))), names));
    }

    /** The diary of the weather speaks of a day on which bare skin can freeze, whichever scale it is typed in. */
    @ParameterizedTest
    @EnumSource
    void aVeryColdDayIsSaid(Way way, Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "weather-diary")) {
            sheet.text("A8", way == Way.FAHRENHEIT || way == Way.FAHRENHEIT_AS_TEXT ? "F" : "C");
            for (int celsius : COLD) {
                way.type(sheet, "D12", celsius);
                String said = sheet.calculate().at("A9").text();
                assertEquals(celsius <= -18, said.contains("bare skin can freeze"), way + " " + celsius + ": " + said);
                assertEquals(celsius <= -18, said.contains("school’s rules"), said);
            }
        }
    }

    /** Pages with one jar or more, its readings, the cell for the surroundings, that of the message, and one with a rate. */
    @ParameterizedTest
    @CsvSource({
        "first-five-minutes, B8, C8, D20, D21, F7, G15",
        "one-jar-one-curve, A8, B8, C20, C21, A24, E8",
        "design-a-wrap, F33, G33, B7, B12, A34, L33"
    })
    void itIsSaidBesideTheReadings(
            String name,
            String times,
            String readings,
            String scale,
            String surroundings,
            String message,
            String rate,
            Office office,
            BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, name)) {
            for (int row = 0; row < 12; row++) {
                if (row > 6) {
                    sheet.text(below(times, row), "").text(below(readings, row), "");
                } else {
                    sheet.number(below(times, row), 5.0 * row);
                }
            }
            for (Way way : Way.values()) {
                boolean fahrenheit = way == Way.FAHRENHEIT || way == Way.FAHRENHEIT_AS_TEXT;
                if (fahrenheit && scale.isEmpty()) {
                    continue;
                }
                if (!scale.isEmpty()) {
                    sheet.text(scale, fahrenheit ? "F" : "C");
                }
                sheet.number(surroundings, fahrenheit ? 41 : 5);
                for (int start : STARTS) {
                    way.typeAll(sheet, readings, cooling(start, 5, 5, 7));
                    String said = sheet.calculate().at(message).text();
                    String where = name + " " + way + " " + start + ": " + said;
                    assertEquals(start > 43, said.contains("too hot for pupils"), where);
                    assertEquals(start > 43, said.contains("no more than 43 °C (109 °F)"), where);
                    int scaleNamed = said.indexOf("Name the scale");
                    assertTrue(scaleNamed < 0 || scaleNamed > said.indexOf("too hot for pupils"), where);
                    if (start <= 60 && !rate.isEmpty()) {
                        assertEquals(RATE, sheet.at(rate).number(), 0.004, where);
                    }
                    assertEquals("", Opened.failingCells(sheet), where);
                }
                if (name.equals("design-a-wrap")) {
                    way.type(sheet, "B11", 39);
                }
                for (int around : COLD) {
                    way.typeAll(sheet, readings, cooling(39, around, 5, 7));
                    way.type(sheet, surroundings, around);
                    String said = sheet.calculate().at(message).text();
                    String where = name + " " + way + " around " + around + ": " + said;
                    assertEquals(around <= -18, said.contains("can freeze bare skin"), where);
                    assertEquals(around <= -18, said.contains("from -27 °C (-16 °F) on they stay in"), where);
                    assertEquals("", Opened.failingCells(sheet), where);
                }
                sheet.number(surroundings, fahrenheit ? 41 : 5);
            }
        }
    }

    /** A book says it of each jar and of the cold around them, below its readings. */
    @ParameterizedTest
    @ValueSource(strings = {"lesson-book", "example-class"})
    void aBookSaysItBesideItsReadings(String name, Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, name)) {
            for (Way way : Way.values()) {
                boolean fahrenheit = way == Way.FAHRENHEIT || way == Way.FAHRENHEIT_AS_TEXT;
                sheet.text("Start.B7", fahrenheit ? "°F" : "°C").number("Start.B11", fahrenheit ? 41 : 5);
                for (int start : STARTS) {
                    way.typeAll(sheet, "Readings.C5", cooling(start, 5, 3, 11));
                    String said = sheet.calculate().at("Readings.A17").text();
                    String where = name + " " + way + " " + start + ": " + said;
                    assertEquals(start > 43, said.contains("too hot for pupils"), where);
                    assertEquals(start > 43, said.contains("no more than 43 °C (109 °F)"), where);
                    assertEquals("", Opened.failingCells(sheet), where);
                }
                for (int around : COLD) {
                    way.typeAll(sheet, "Readings.C5", cooling(39, around, 3, 11));
                    way.type(sheet, "Start.B11", around);
                    String said = sheet.calculate().at("Readings.A17").text();
                    String where = name + " " + way + " around " + around + ": " + said;
                    assertEquals(around <= -18, said.contains("can freeze bare skin"), where);
                    String beside = sheet.at("Start.C11").text();
                    assertEquals(around <= -18, beside.contains("children"), way + " " + around + ": " + beside);
                    assertEquals(around <= -27, beside.contains("stay in"), way + " " + around + ": " + beside);
                }
            }
        }
    }

    /** Neither hides the other. */
    @Test
    void hotWaterInBitterColdIsSaidAsBoth(Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "example-class")) {
            String said = sheet.number("Readings.C5", 60)
                    .number("Start.B11", -20)
                    .calculate()
                    .at("Readings.A17")
                    .text();
            assertTrue(said.contains("water of 60 °C (140 °F) is too hot for pupils"), said);
            assertTrue(said.contains("can freeze bare skin"), said);
            assertTrue(said.indexOf("too hot") < said.indexOf("freeze"), said);
        }
    }

    /** Hot water is a caution, not a slip: its jar keeps its place. */
    @Test
    void theRankingStays(Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "example-class")) {
            for (int row = 0; row <= 10; row++) {
                sheet.number("Readings.C" + (5 + row), 1 + 50 * Math.exp(-0.05 * 3 * row));
            }
            sheet.calculate();
            assertEquals("OK", sheet.at("Readings.C16").text());
            List<List<CellResult>> ranked = sheet.all(LessonBook.example().results());
            assertTrue(ranked.stream()
                    .anyMatch(row -> row.get(1).text().equals("no wrap") && row.get(0) instanceof CellResult.OfNumber));
        }
    }

    @Test
    void aDesignSaysItBesideItsStart(Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "design-a-wrap")) {
            for (Way way : Way.values()) {
                boolean fahrenheit = way == Way.FAHRENHEIT || way == Way.FAHRENHEIT_AS_TEXT;
                sheet.text("B7", fahrenheit ? "F" : "C").number("B12", fahrenheit ? 41 : 5);
                for (int start : STARTS) {
                    way.type(sheet, "B11", start);
                    String said = sheet.calculate().at("C11").text();
                    assertEquals(start > 43, said.startsWith("too hot for pupils"), way + " " + start + ": " + said);
                }
                itIsSaidBesideTheSurroundings(sheet, way);
            }
        }
    }

    private static void itIsSaidBesideTheSurroundings(CalcDocument sheet, Way way) {
        for (int around : COLD) {
            way.type(sheet, "B12", around);
            String said = sheet.calculate().at("C12").text();
            assertEquals(around <= -18, said.contains("children"), way + " " + around + ": " + said);
            assertEquals(around <= -27, said.contains("stay in"), way + " " + around + ": " + said);
        }
    }

    @Test
    void theWeatherIsSaidForChildren(Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "winter-coats")) {
            sheet.number("B9", 0);
            for (Way way : Way.values()) {
                boolean fahrenheit = way == Way.FAHRENHEIT || way == Way.FAHRENHEIT_AS_TEXT;
                sheet.text("B7", fahrenheit ? "F" : "C");
                for (int air : COLD) {
                    way.type(sheet, "B8", air);
                    String said = sheet.calculate().at("E9").text();
                    String where = way + " " + air + ": " + said;
                    assertTrue(said.contains("feels like"), where);
                    assertEquals(air == -20, said.startsWith("Risk of frostbite for children"), where);
                    assertEquals(air == -30, said.startsWith("Too cold for children"), where);
                }
            }
        }
    }

    private enum Way {
        CELSIUS,
        CELSIUS_AS_TEXT,
        FAHRENHEIT,
        FAHRENHEIT_AS_TEXT;

        void type(CalcDocument sheet, String cell, double celsius) {
            typeAll(sheet, cell, celsius);
        }

        void typeAll(CalcDocument sheet, String top, double... celsius) {
            sheet.down(top, Arrays.stream(celsius).mapToObj(this::typed).toArray());
        }

        private Object typed(double celsius) {
            double degrees = this == CELSIUS || this == CELSIUS_AS_TEXT ? celsius : celsius * 1.8 + 32;
            double rounded = Math.rint(degrees * 2) / 2;
            return switch (this) {
                case CELSIUS, FAHRENHEIT -> rounded;
                case CELSIUS_AS_TEXT -> rounded + " °C";
                case FAHRENHEIT_AS_TEXT -> rounded + " °F";
            };
        }
    }

    /** What a jar would read every so many minutes. */
    private static double[] cooling(double start, double around, int minutes, int readings) {
        return IntStream.range(0, readings)
                .mapToDouble(reading -> around + (start - around) * Math.exp(-RATE * minutes * reading))
                .toArray();
    }

    private static String below(String cell, int rows) {
        return cell.charAt(0) + "" + (Integer.parseInt(cell.substring(1)) + rows);
    }

    private static CalcDocument open(Office office, BuiltSheets.All built, String name) {
        return office.open(built.named(name).ods()).calculatedOnlyWhenTold();
    }
}
