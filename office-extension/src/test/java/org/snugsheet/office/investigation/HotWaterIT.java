package org.snugsheet.office.investigation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/**
 * A sheet that was laid out says that water is too hot for pupils, in whatever way it is typed. The limit is that of UK Department
 * for Education, Building Bulletin 87 (2003), 43 °C; the readings follow Newton’s law towards 3 °C.
 */
@ExtendWith(SharedOffice.class)
class HotWaterIT {

    private static final int[] STARTS = {39, 44, 60, 85, 95};

    private final Office office;

    HotWaterIT(Office office) {
        this.office = office;
    }

    /** The page on one scale, the jar on the same or, by its name, on the other; the first reading as number or text. */
    @ParameterizedTest
    @CsvSource({
        "C, sock, C, false",
        "C, sock, C, true",
        "C, sock, F, true",
        "C, sock °F, F, false",
        "C, sock °F, F, true",
        "F, sock, F, false",
        "F, sock, F, true",
        "F, sock, C, true",
        "F, sock (C), C, false"
    })
    void theSheetSaysIt(String scale, String name, String typed, boolean asText) {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(sheet, scale);
            int head = sheet.rowOf("minutes", "Investigation.A1");
            int jar = sheet.rowOf("sock", "Investigation.A1");
            int warmest = sheet.rowOf(InvestigationWords.START_LABEL.english(), "Investigation.A1");
            int results = sheet.rowOf(InvestigationWords.RESULTS.english(), "Investigation.A1") + 2;
            sheet.text("Investigation.A" + jar, name);
            // Beside it a jar that is cool enough: its 41 says nothing of the other.
            type(sheet, "B" + (head + 1), 41, scale, false);
            for (int start : STARTS) {
                for (int i = 0; i < 5; i++) {
                    double celsius = 3 + (start - 3) * Math.exp(-0.03 * 3 * i);
                    type(sheet, "C" + (head + 1 + i), celsius, typed, asText);
                }
                sheet.calculateAll();
                String said = sheet.at("Investigation.B" + warmest).text();
                String where = name + " " + typed + " " + start + ": " + said;
                assertEquals(start > 43, said.startsWith("Too hot for pupils"), where);
                String found = sheet.at("Investigation.C" + jar).text();
                assertEquals(start > 43, found.contains("too hot for pupils"), where + " / " + found);
                if (start < 80) {
                    assertEquals(
                            "OK", sheet.at("Investigation.I" + (results + 1)).text(), where);
                    assertEquals(
                            0.03, sheet.at("Investigation.C" + (results + 1)).number(), 0.005);
                }
            }
        }
    }

    /** Before the surroundings are known, and where it is not the first reading that is too hot. */
    @Test
    void itNeedsNeitherSurroundingsNorTheFirstReading() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(sheet, "C");
            int head = sheet.rowOf("minutes", "Investigation.A1");
            int warmest = sheet.rowOf(InvestigationWords.START_LABEL.english(), "Investigation.A1");
            sheet.text("Investigation.B" + (head + 2), "180 °F")
                    .text("Investigation.C" + (head + 1), "60")
                    .calculateAll();
            assertTrue(sheet.at("Investigation.B" + warmest).text().startsWith("Too hot for pupils"));
            sheet.text("Investigation.C" + (head + 1), "").calculateAll();
            assertTrue(sheet.at("Investigation.B" + warmest).text().startsWith("Too hot for pupils"));
        }
    }

    @ParameterizedTest
    @CsvSource({"en-US, F", "es-ES, C", "fr-FR, C", "de-DE, C"})
    void itIsSaidInTheLanguageOfTheDocument(String tag, String scale) {
        Language language = switch (tag.substring(0, 2)) {
            case "es" -> Language.SPANISH;
            case "fr" -> Language.FRENCH;
            case "de" -> Language.GERMAN;
            default -> Language.ENGLISH;
        };
        try (CalcDocument sheet = office.newDocument().locale(tag)) {
            layOut(sheet, scale);
            String page = sheet.sheetNames().get(1) + ".";
            int head = sheet.rowOf(language.words(InvestigationWords.MINUTES_HEAD), page + "A1");
            for (int i = 0; i < 5; i++) {
                double celsius = 3 + 57 * Math.exp(-0.03 * 3 * i);
                sheet.number(page + "B" + (head + 1 + i), scale.equals("F") ? celsius * 1.8 + 32 : celsius);
            }
            int jar = sheet.rowOf("bare", page + "A1");
            assertTrue(
                    sheet.calculateAll().at(page + "C" + jar).text().contains("43 °C (109 °F)"),
                    sheet.at(page + "C" + jar).text());
        }
    }

    private void layOut(CalcDocument sheet, String scale) {
        Menu.choose(
                office,
                sheet,
                MenuItem.LAY_OUT,
                Menu.QUIET,
                Uno.named("Materials", "bare;sock"),
                Uno.named("Scale", scale),
                Uno.named("Surroundings", scale.equals("F") ? "37.4" : "3"),
                Uno.named("Minutes", 30));
    }

    private static void type(CalcDocument sheet, String cell, double celsius, String scale, boolean asText) {
        double degrees = Math.rint((scale.equals("F") ? celsius * 1.8 + 32 : celsius) * 10) / 10;
        if (asText) {
            sheet.text("Investigation." + cell, degrees + " °" + scale);
        } else {
            sheet.number("Investigation." + cell, degrees);
        }
    }
}
