package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.sheets.wintercoats.BehindTheCoats;
import org.snugsheet.office.words.Language;

/** What the sheet for winter coats works out, against sums by hand. */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class WordSheetsIT {

    /**
     * Wind chill of −6 °C at 15 km/h: 13.12 + 0.6215·T − 11.37·v^0.16 + 0.3965·T·v^0.16 (Environment Canada and US National
     * Weather Service, 2001). Outfits: ΣIclu (ANSI/ASHRAE Standard 55, whose garment values are made to be added up), with the
     * garments of ASHRAE 55 and ISO 7730. Fur: 40 mm over 0.039 W/(m·K); 1 clo is 0.155 m²·K/W.
     */
    @Test
    void coatsAreThoseOfThePublishedFormulas(Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "winter-coats")) {
            double power = Math.pow(15, 0.16);
            double chill = 13.12 + 0.6215 * -6 - 11.37 * power + 0.3965 * -6 * power;
            assertEquals(
                    "On an adult’s bare face it feels like " + Math.round(chill) + " °C.",
                    sheet.at("E7").text());
            double worn = 0.2 + 0.35 + 0.7 + 0.15 + 0.35 + 0.1 + 0.1 + 0.05;
            assertEquals(worn, sheet.at("B23").number(), 1e-9);
            double hurry = 0.08 + 0.34 + 0.6 + 0.24 + 0.02 + 0.1 + 0.05;
            assertEquals(hurry, sheet.at("C23").number(), 1e-9);
            assertEquals(0.040 / 0.039 / 0.155, sheet.at("H16").number(), 0.02);
            assertEquals(0.026 / 0.039 / 0.155, sheet.at("H19").number(), 0.02);
            assertEquals("", sheet.at("H20").text());
            assertEquals("", sheet.at("H21").text());
            assertEquals(
                    sheet.at("B23").number(),
                    sheet.at(BehindTheCoats.name(Language.ENGLISH) + ".L7").number());
        }
    }

    @Test
    void anOutfitIsJudgedByWhatTheColdAsksFor(Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "winter-coats")) {
            assertTrue(sheet.at("B24").text().startsWith("Yes"), sheet.at("B24").text());
            assertTrue(sheet.at("C24").text().startsWith("No:"), sheet.at("C24").text());
            sheet.text("B10", "standing").calculate();
            assertTrue(sheet.at("B24").text().startsWith("No outfit"), "who stands still needs more than can be worn");
            sheet.text("B15", "cape of leaves").calculate();
            assertEquals(
                    "Every garment must be one of the list.", sheet.at("B24").text());
            sheet.number("B8", 25).calculate();
            assertEquals("none told", sheet.at("H12").text());
            assertTrue(sheet.at("E7").text().startsWith("No wind chill"));
        }
    }

    /**
     * In calm air wind chill is the temperature itself. Bands for children: Child Care Weather Watch (Healthy Child Care Iowa), 0 °F;
     * Canadian Paediatric Society, −27 °C.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "C | -5 | It feels like -5 | false",
                "C | -20 | Risk of frostbite for children | true",
                "C | -30 | Too cold for children | true",
                "C | -20 °C | Risk of frostbite for children | true",
                "C | -22 °F | Too cold for children | true",
                "F | 23 | It feels like 23 | false",
                "F | -4 | Risk of frostbite for children | true",
                "F | -22 | Too cold for children | true",
                "F | -30 °C | Too cold for children | true"
            })
    void coldIsSaidForChildren(
            String scale, String air, String words, boolean risk, Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "winter-coats")) {
            sheet.text("B7", scale).number("B9", 0);
            if (air.contains("°")) {
                sheet.text("B8", air);
            } else {
                sheet.number("B8", Double.parseDouble(air));
            }
            String said = sheet.calculate().at("E9").text();
            assertTrue(said.startsWith(words), said);
            assertEquals(
                    risk,
                    sheet.at(BehindTheCoats.name(Language.ENGLISH) + ".L17").number() <= -18);
            sheet.text("B10", "standing").calculate();
            assertEquals(
                    risk,
                    sheet.at("B24").text().startsWith("No outfit keeps an adult warm"),
                    sheet.at("B24").text());
        }
    }

    private static CalcDocument open(Office office, BuiltSheets.All built, String name) {
        return office.open(built.named(name).ods());
    }
}
