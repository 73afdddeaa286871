package org.snugsheet.office.sheets.typeyourreadings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.sheets.BuiltSheets;

/** The sheet for everybody’s readings, used as a class would. */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class TypeYourReadingsIT {

    private final CalcDocument sheet;

    TypeYourReadingsIT(Office office, BuiltSheets.All built) {
        sheet = office.open(built.named("type-your-readings").ods()).calculateAll();
    }

    @org.junit.jupiter.api.AfterEach
    void close() {
        sheet.close();
    }

    @Test
    void noCellFails() {
        for (List<CellResult> row : sheet.all("A6:P31")) {
            assertTrue(row.stream().noneMatch(cell -> cell instanceof CellResult.OfError), row.toString());
        }
    }

    @Test
    void theTwoSlipsOfTheExampleAreFoundAndMended() {
        assertEquals("bare jar", sheet.at("L8").text());
        assertEquals("9", sheet.at("M8").text());
        assertEquals("see checks", sheet.at("J26").text());
        assertEquals("dry leaves", sheet.at("L11").text());
        assertEquals("15", sheet.at("M11").text());

        sheet.number("E11", 28).number("H13", 32.5).calculateAll();
        for (int row = 8; row < 12; row++) {
            assertEquals("OK", sheet.at("N" + row).text());
        }
        assertEquals("OK", sheet.at("J26").text());
        // The invented jars cool with 0.045, 0.026, 0.024 and 0.017 per minute; the readings are whole degrees.
        double[] truth = {0.045, 0.026, 0.024, 0.017};
        for (int jar = 0; jar < truth.length; jar++) {
            double error =
                    Double.parseDouble(String.valueOf(sheet.at("F" + (26 + jar)).number()));
            assertEquals(truth[jar], sheet.at("E" + (26 + jar)).number(), 4 * error);
        }
    }

    @Test
    void aNewJarIsCheckedAndWorkedOut() {
        sheet.text("B12", "fleece (F)");
        double[] fahrenheit = {104, 100, 96, 93, 90, 87, 84, 81, 79, 77};
        sheet.numbersDown("I8", fahrenheit).calculateAll();
        assertEquals("fleece", sheet.at("D30").text());
        assertEquals("°F", sheet.at("I30").text());
        assertTrue(sheet.at("E30").number() > 0.01 && sheet.at("E30").number() < 0.03);
    }
}
