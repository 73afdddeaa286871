package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;

/** Clock times on every sheet that takes readings are minutes. */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class ClockTimesIT {
    private static final double[] CLOCK = {9, 9 + 5 / 60.0, 9 + 10 / 60.0, 9.25, 9 + 20 / 60.0, 9 + 25 / 60.0, 9.5};

    /** The cells of a clock hold parts of a day. */
    @ParameterizedTest
    @CsvSource({"first-five-minutes, B8, G15", "one-jar-one-curve, A8, E8", "design-a-wrap, F33, L33"})
    void clockTimesAreMinutes(String name, String times, String answer, Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, name)) {
            for (int row = 7; row < 12; row++) {
                // What is left of the example would go on in minutes.
                clearBelow(sheet, times, row);
            }
            sheet.numbersDown(times, 0, 5, 10, 15, 20, 25, 30).calculate();
            double before = sheet.at(answer).number();
            double[] parts = Arrays.stream(CLOCK).map(hour -> hour / 24).toArray();
            sheet.numbersDown(times, parts).calculate();
            assertTrue(before > 0);
            assertEquals(before, sheet.at(answer).number(), 1e-9 * before);
            assertEquals("", Opened.failingCells(sheet));
        }
    }

    private static void clearBelow(CalcDocument sheet, String times, int row) {
        sheet.text(times.charAt(0) + "" + (Integer.parseInt(times.substring(1)) + row), "");
    }

    private static CalcDocument open(Office office, BuiltSheets.All built, String name) {
        return office.open(built.named(name).ods());
    }
}
