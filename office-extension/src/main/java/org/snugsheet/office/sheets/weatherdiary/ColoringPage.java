package org.snugsheet.office.sheets.weatherdiary;

import static org.snugsheet.office.sheets.weatherdiary.WeatherDiary.DAYS;

import org.snugsheet.engine.Phrase;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.words.Language;

/** For children, to print: the bars of the month as empty boxes to color, and boxes to draw in. */
final class ColoringPage {

    private static final int FIRST_KIND = 4;
    private static final int BOXES = 2;
    private static final String LAST = CellName.column(BOXES + DAYS - 1);
    private static final float POINTS = 16;

    private final Page page;
    private final Language language;

    ColoringPage(Page page, Language language) {
        this.page = page;
        this.language = language;
    }

    void write() throws com.sun.star.uno.Exception {
        page.width("A1", 44).width("B1", 24).width("C1:" + LAST + "1", 5.6);
        page.merge("A1:" + LAST + "1").merge("A2:" + LAST + "2");
        page.text("A1", words(DiaryWords.TITLE)).look("A1", CellStyleName.WALL).height("A1", 14);
        page.text("A2", words(DiaryWords.NAME) + "  ______________________________")
                .look("A2", CellStyleName.NOTE)
                .size("A2", POINTS)
                .height("A2", 14);
        line(3, DiaryWords.COLOR_BOXES);
        for (int i = 0; i < Kinds.SKIES.size(); i++) {
            int row = FIRST_KIND + i;
            page.height("A" + row, 14);
            page.text("A" + row, words(Kinds.SKIES.get(i).words()))
                    .look("A" + row, CellStyleName.LABEL)
                    .size("A" + row, POINTS);
            page.text("B" + row, Kinds.SKIES.get(i).picture())
                    .look("B" + row, CellStyleName.LARGE)
                    .size("B" + row, 26);
            page.look("C" + row + ":" + LAST + row, CellStyleName.BOX);
        }
        int row = FIRST_KIND + Kinds.SKIES.size() + 1;
        line(row, DiaryWords.MOST_OFTEN);
        box(row + 1);
        line(row + 3, DiaryWords.WARMER_WHEN);
        page.height("A" + (row + 4), 14);
        page.text("A" + (row + 4), words(DiaryWords.MORNING)).look("A" + (row + 4), CellStyleName.LARGE);
        String noon = "C" + (row + 4) + ":" + LAST + (row + 4);
        page.merge(noon).look(noon, CellStyleName.LARGE).text("C" + (row + 4), words(DiaryWords.NOON));
        line(row + 6, DiaryWords.NEXT);
        box(row + 7);
        // The office cuts a page off above a last row that holds nothing itself.
        page.text("B" + (row + 8), "☀ ☁ ☂ ❄").look("B" + (row + 8), CellStyleName.LARGE);
        new PrintSetup(PrintSetup.Way.PORTRAIT, words(DiaryWords.TITLE)).apply(page, "A1:" + LAST + (row + 8));
        page.protect();
    }

    private void line(int row, Phrase words) throws com.sun.star.uno.Exception {
        page.text("A" + row, words(words))
                .look("A" + row, CellStyleName.NOTE)
                .size("A" + row, POINTS)
                .height("A" + row, 10);
        String cells = "A" + row + ":" + LAST + row;
        page.merge(cells);
    }

    private void box(int row) throws com.sun.star.uno.Exception {
        String cells = "A" + row + ":" + LAST + row;
        page.merge(cells).look(cells, CellStyleName.BOX).height("A" + row, 42);
    }

    private String words(Phrase phrase) {
        return language.words(phrase);
    }
}
