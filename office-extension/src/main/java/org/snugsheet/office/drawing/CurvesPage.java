package org.snugsheet.office.drawing;

import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.text.XText;
import com.sun.star.uno.XComponentContext;
import java.util.ArrayList;
import java.util.List;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.NewPage;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DocumentRegion;
import org.snugsheet.office.words.Language;

/**
 * A sheet with the curves of a block.
 *
 * @param page the name of the sheet
 * @param without the jars that have no curve
 */
public record CurvesPage(String page, List<String> without) {

    private static final String CHART = "A1:I26";
    private static final int CHECKS_ROW = 28;

    /** As many letters of a check fit into two lines. */
    private static final int TWO_LINES = 190;

    /** A drawing; the list is copied. */
    public CurvesPage {
        without = List.copyOf(without);
    }

    /**
     * Draws the curves on a new sheet behind the others.
     *
     * @param office the office’s context
     * @param document the document
     * @param source where the readings are
     * @param language the language of its words
     * @return the drawing
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static CurvesPage of(
            XComponentContext office, XSpreadsheetDocument document, Curves.Source source, Language language)
            throws com.sun.star.uno.Exception {
        List<String> without = new ArrayList<>();
        int jars = source.jars().size();
        String printed = "A1:I" + (CHECKS_ROW + jars);
        Page page = NewPage.in(office, document, language.words(DrawingWords.PAGE), printed, sheet -> {
            without.clear();
            sheet.width("A1", 34).width("B1:I1", 22).height("A1:A26", 5.2);
            int numbers = CHECKS_ROW + jars + 2;
            Curves curves = new Curves(sheet, source, 0, numbers).write(language);
            sheet.look("A" + CHECKS_ROW + ":I" + CHECKS_ROW, CellStyleName.SECTION)
                    .text("A" + CHECKS_ROW, language.words(DrawingWords.CHECKS));
            for (int jar = 0; jar < jars; jar++) {
                int row = CHECKS_ROW + 1 + jar;
                sheet.formula("A" + row, "=" + curves.name(jar)).look("A" + row, CellStyleName.LABEL);
                String said = "B" + row + ":I" + row;
                sheet.merge(said).look(said, CellStyleName.MESSAGE).formula("B" + row, curves.check(jar, language));
                Highlight.unlessOk(sheet, said, "$B$" + row, CellStyleName.TROUBLE_MESSAGE);
                sheet.height("A" + row, shown(sheet, "B" + row).length() > TWO_LINES ? 14 : 9.5);
                if (shown(sheet, curves.firstOfCurve(jar)).isEmpty()) {
                    without.add(shown(sheet, curves.name(jar)));
                }
            }
            sheet.text("A" + numbers, language.words(DrawingWords.BEHIND)).look("A" + numbers, CellStyleName.HINT);
            // Last, because then the office may record steps again.
            curves.draw(office, CHART, language);
            new PrintSetup(PrintSetup.Way.LANDSCAPE, language.words(DrawingWords.TITLE))
                    .applyStyle(sheet.on(DocumentRegion.of(document).hasLetterPaper() ? Paper.LETTER : Paper.A4));
        });
        return new CurvesPage(page.name(), without);
    }

    private static String shown(Page page, String cell) throws com.sun.star.uno.Exception {
        return Uno.as(XText.class, page.sheet().getCellRangeByName(cell).getCellByPosition(0, 0))
                .getString();
    }
}
