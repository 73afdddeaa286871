package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XTextRange;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.uno.Uno;

/**
 * The pictures of the README show what the sheets show now: beside each is the text of its page, word by word and number by
 * number. If it is no longer so, {@code bash example-sheets/pictures/draw.sh} draws them again and takes the words that this test leaves.
 */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class PicturesAreFreshIT {

    private static final Path WORDS = Path.of("target", "pictures");

    @ParameterizedTest
    @CsvSource({
        "first-five-minutes, 0, first-five-minutes",
        "example-class, 0, book-start",
        "example-class, 6, book-wall",
        "example-class, 2, book-drawn",
        "example-class, 3, book-pupil"
    })
    void theySayWhatTheirPagesSay(String sheet, String pages, String picture, Office office, BuiltSheets.All built)
            throws IOException {
        StringBuilder read = new StringBuilder();
        try (CalcDocument document = office.open(built.named(sheet).ods()).calculateAll()) {
            for (String page : pages.split(" ", -1)) {
                read.append(office.call(
                        "reading a page", () -> shown(Uno.sheets(document.uno()).get(Integer.parseInt(page)))));
            }
        }
        String words = read.toString();
        Files.createDirectories(WORDS);
        Files.writeString(WORDS.resolve(picture + ".txt"), words);
        assertEquals(Files.readString(Path.of("pictures", picture + ".txt")), words, "draw the pictures anew");
    }

    private static String shown(XSpreadsheet page) throws com.sun.star.uno.Exception {
        XSheetCellCursor all = page.createCursor();
        Uno.as(XUsedAreaCursor.class, all).gotoEndOfUsedArea(true);
        CellRangeAddress used = Uno.as(XCellRangeAddressable.class, all).getRangeAddress();
        XCellRange cells = Uno.as(XCellRange.class, all);
        // A page for pupils has thousands of blank cells, and what each one shows would be three calls.
        String[][] held = Uno.as(XCellRangeFormula.class, all).getFormulaArray();
        StringBuilder words = new StringBuilder();
        for (int row = 0; row <= used.EndRow; row++) {
            for (int column = 0; column <= used.EndColumn; column++) {
                if (!held[row][column].isEmpty()) {
                    String shown = Uno.as(XTextRange.class, cells.getCellByPosition(column, row))
                            .getString();
                    words.append(shown.isEmpty() ? "" : shown.replace('\n', ' ') + "\n");
                }
            }
        }
        return words.toString();
    }
}
