package org.snugsheet.office.sheets.planthelesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.snugsheet.sheets.Opened.failingCells;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.CellProtection;
import com.sun.star.util.XProtectable;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.sheets.BuiltSheets;

/** What the worked sheet “plan the lesson” calculates, opened in an office that did not build it, against sums by hand. */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class PlanTheLessonIT {
    private static final String TABLE = RunSheet.NAME + ".A" + RunSheet.FIRST_ROW + ":D" + RunSheet.LAST_ROW;

    @Test
    void noCellFails(Office office, BuiltSheets.Lesson lesson) {
        try (CalcDocument document = open(office, lesson)) {
            assertEquals("", failingCells(document));
            assertTrue(document.at("A6").text().contains("within the 43 °C"));
        }
    }

    /**
     * Heat balance of mixing with enthalpies 230.26, 167.53, 50.41 kJ/kg at 55, 40, 12 °C and densities 985.7, 992.2, 999.5
     * kg/m³ (steam tables, from memory): of 248.05 g, 117.12/179.85 is hot.
     */
    @Test
    void theMixtureKeepsTheHeat(Office office, BuiltSheets.Lesson lesson) {
        try (CalcDocument document = open(office, lesson)) {
            double grams = 250 * 0.9922;
            double hot = grams * (167.53 - 50.41) / (230.26 - 50.41);
            assertEquals(hot / 0.9857, document.at("F9").number(), 0.2);
            assertEquals((grams - hot) / 0.9995, document.at("F10").number(), 0.2);
        }
    }

    /**
     * Ice by hand with 4.2 and 4.18 J/(g K) and 333.4 J/g (handbook values, from memory): 4 kg from 5 °C to 0 °C, six jars from
     * 40 °C that lose 1 − e^(−0.05·30) of it, and the room through a tub as wide as high, ISO 6946:2017, Table 7.
     */
    @Test
    void theIceTakesUpTheHeatOfTubJarsAndRoom(Office office, BuiltSheets.Lesson lesson) {
        try (CalcDocument document = open(office, lesson)) {
            double tub = 4000 * 4.2 * 5;
            double jars = 6 * 250 * 0.9922 * 4.18 * 40 * (1 - Math.exp(-1.5));
            double end = Math.PI * Math.pow(0.004 / (2 * Math.PI), 2.0 / 3);
            double room = end * (4 / 0.13 + 1 / 0.17 + 1 / 0.10) * 21 * 30 * 60;
            assertEquals((tub + jars + room) / 333.4, document.at("F11").number(), 5);
        }
    }

    /** Newton’s law: the jars differ by 35·(e^(−0.03·t) − e^(−0.05·t)), and 35·e^(−0.05·t) is 1 °C after ln(35)/0.05. */
    @Test
    void theTimesFollowFromNewtonsLaw(Office office, BuiltSheets.Lesson lesson) {
        try (CalcDocument document = open(office, lesson)) {
            double shows = document.at("F12").number();
            assertEquals(1, 35 * (Math.exp(-0.03 * shows) - Math.exp(-0.05 * shows)), 1e-6);
            assertTrue(shows < 10, "the first time, not the second");
            assertEquals(Math.log(35) / 0.05, document.at("F16").number(), 1e-6);
            assertEquals(5 + 35 * Math.exp(-1.5), document.at("Curves.B36").number(), 1e-9);
            assertEquals(5 + 35 * Math.exp(-0.9), document.at("Curves.C36").number(), 1e-9);
            assertEquals(
                    Math.floor(30 / document.at("F13").number()) + 1,
                    document.at("F14").number());
        }
    }

    @Test
    void theRunSheetSaysTheSameAsThePlanAndEndsWithItsCautions(Office office, BuiltSheets.Lesson lesson) {
        try (CalcDocument document = open(office, lesson)) {
            assertEquals(
                    document.at("F9").number(),
                    row(document, "hot water for one jar").get(1).number(),
                    1e-9);
            assertEquals(
                    document.at("F13").number(),
                    row(document, "read every").get(1).number(),
                    1e-9);
            assertEquals(
                    document.at("F15").number(),
                    row(document, "jars of each wrap").get(1).number(),
                    1e-9);
            List<String> filled = document.all(TABLE).stream()
                    .filter(row -> !row.get(0).shown().isEmpty())
                    .map(row -> row.get(3).shown())
                    .toList();
            assertEquals("Your school’s policy and local rules come first.", filled.get(filled.size() - 1));
        }
    }

    @Test
    void aStartThatIsTooHotIsRefusedInWords(Office office, BuiltSheets.Lesson lesson) {
        try (CalcDocument document = open(office, lesson)) {
            document.number("B11", 50).calculateAll();
            String words = document.at("A6").text();
            assertTrue(words.startsWith("Too hot for pupils: water of 49 °C"), words);
            assertEquals(words, document.at(RunSheet.NAME + ".A4").text());
            for (int row = 9; row <= 16; row++) {
                assertEquals("–", document.at("F" + row).text());
                assertTrue(document.at("G" + row).text().contains("too hot for pupils"));
            }
            assertTrue(
                    document.all(TABLE).stream()
                            .allMatch(row -> row.get(0).text().isEmpty()),
                    "no plan");
            assertEquals("", failingCells(document));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "es-ES", "fr-FR"})
    void aStartThatIsTooHotIsRefusedInADocumentOfAnotherLanguage(String tag, Office office, BuiltSheets.Lesson lesson) {
        try (CalcDocument document = open(office, lesson).locale(tag)) {
            document.text("B11", "122 °F").calculateAll();
            assertEquals(
                    document.at("A6").text(), document.at(RunSheet.NAME + ".A4").text());
            assertTrue(document.at("G9").text().contains("too hot for pupils"));
            assertEquals("", document.at(BehindThePlan.NAME + ".B6").text());
            document.number("B11", 43).calculateAll();
            assertTrue(document.at(RunSheet.NAME + ".A4").text().startsWith("Print this page"));
            assertEquals(43, document.at(BehindThePlan.NAME + ".B6").number(), 1e-9);
        }
    }

    @Test
    void withoutTapsAndTubTheRestOfThePlanStands(Office office, BuiltSheets.Lesson lesson) {
        try (CalcDocument document = open(office, lesson)) {
            document.text("B13", "").text("B14", "").text("B15", "").calculateAll();
            assertEquals("–", document.at("F9").text());
            assertTrue(document.at("G9").text().contains("Without taps"));
            assertEquals("–", document.at("F11").text());
            assertEquals(5, document.at("F14").number());
            assertTrue(document.all(TABLE).stream()
                    .noneMatch(row -> row.get(0).shown().equals("hot water for one jar")));
            assertEquals("", failingCells(document));
        }
    }

    /** Jars in a tray of snow; a tub is there for who types its water. */
    @Test
    void theExampleIsATrayOfSnow(Office office, BuiltSheets.Lesson lesson) {
        try (CalcDocument document = office.open(lesson.sheet().ods()).calculateAll()) {
            assertEquals(new CellResult.Blank(), document.at("B15"));
            assertEquals("–", document.at("F11").text());
            assertTrue(document.at("G11").text().startsWith("A tray of snow needs none"));
            assertTrue(document.at("F14").number() >= 5);
            assertEquals("", failingCells(document));
        }
    }

    @Test
    void onlyTheTwelveInputsAreUnlocked(Office office, BuiltSheets.Lesson lesson) throws com.sun.star.uno.Exception {
        try (CalcDocument document = open(office, lesson)) {
            int open = 0;
            for (int index = 0; index < 3; index++) {
                Object sheet =
                        as(XIndexAccess.class, document.uno().getSheets()).getByIndex(index);
                assertTrue(as(XProtectable.class, sheet).isProtected());
                for (int row = 0; row < 45; row++) {
                    for (int column = 0; column < 12; column++) {
                        Object cell = as(XSpreadsheet.class, sheet).getCellByPosition(column, row);
                        Object lock = as(XPropertySet.class, cell).getPropertyValue("CellProtection");
                        open += ((CellProtection) lock).IsLocked ? 0 : 1;
                    }
                }
            }
            assertEquals(12, open);
        }
    }

    private static CalcDocument open(Office office, BuiltSheets.Lesson lesson) {
        return office.open(lesson.sheet().ods()).number("B15", 4000).calculateAll();
    }

    private static List<CellResult> row(CalcDocument document, String what) {
        return document.all(TABLE).stream()
                .filter(row -> row.get(0).shown().equals(what))
                .findFirst()
                .orElseThrow();
    }

    private static <T> T as(Class<T> type, Object object) {
        return UnoRuntime.queryInterface(type, object);
    }
}
