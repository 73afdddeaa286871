package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;

/** The first example of the README, typed into a real office as it is printed. */
@ExtendWith(SharedOffice.class)
class ReadmeIT {

    private static final Pattern ROW =
            Pattern.compile("(?m)^\\| (\\d) \\| *(\\S*) *\\| *(\\S*) *\\| *(\\S*) *\\| *(\\S*) *\\|$");

    @Test
    void theFirstExampleAnswersAsPrinted(Office office) throws IOException {
        String readme = Files.readString(Path.of("../README.md"));
        try (CalcDocument sheet = office.newDocument()) {
            Matcher row = ROW.matcher(readme);
            int rows = 0;
            while (row.find()) {
                type(sheet, "A" + row.group(1), row.group(2));
                type(sheet, "B" + row.group(1), row.group(3));
                type(sheet, "C" + row.group(1), row.group(4));
                type(sheet, "D" + row.group(1), row.group(5).replace("`", ""));
                rows++;
            }
            assertEquals(5, rows);
            String told = String.format(
                    Locale.ROOT,
                    "%.1f minutes, give or take %.1f",
                    sheet.at("D1").number(),
                    sheet.at("D2").number());
            assertTrue(readme.replace('\n', ' ').contains(told), told);
            assertEquals("OK", sheet.at("D3").text());
        }
    }

    private static void type(CalcDocument sheet, String address, String typed) {
        if (typed.startsWith("=")) {
            sheet.formula(address, typed);
        } else if (!typed.isEmpty()) {
            sheet.number(address, Double.parseDouble(typed));
        }
    }
}
