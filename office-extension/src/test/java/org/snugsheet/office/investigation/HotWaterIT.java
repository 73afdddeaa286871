package org.snugsheet.office.investigation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.words.Language;

/**
 * A sheet that was laid out says that water is too hot for pupils, in whatever way it is typed. The limit is that of UK Department
 * for Education, Building Bulletin 87 (2003), 43 °C; the readings follow Newton’s law towards 3 °C.
 */
@ExtendWith(SharedOffice.class)
class HotWaterIT {

    private final Office office;

    HotWaterIT(Office office) {
        this.office = office;
    }

    @Test
    void theSheetSaysIt() {
        assertEquals(List.of(), LaidOutPageWalked.unsaid(office));
    }

    /** Before the surroundings are known, and where it is not the first reading that is too hot. */
    @Test
    void itNeedsNeitherSurroundingsNorTheFirstReading() {
        try (CalcDocument sheet = office.newDocument()) {
            LaidOutPageWalked.layOut(office, sheet, "C");
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
            LaidOutPageWalked.layOut(office, sheet, scale);
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
}
