package org.snugsheet.office.sheets.whichwrapwins;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;

/** The second page of {@link WhichWrapWins}, for the wall or the projector: who won, and bars to be seen from the last row. */
public final class ClassDisplay {

    public static final String NAME = "Class display";

    private static final float POINTS = 18;

    private ClassDisplay() {}

    static void fill(Page page, Page ranked) throws com.sun.star.uno.Exception {
        page.width("A1", 255)
                .height("A1", 16)
                // Three lines: with three jars held back it takes as many.
                .height("A2", 33)
                .height("A3", 117)
                .height("A4", 12);
        page.text("A1", "Which wrap wins?").look("A1", CellStyleName.WALL);
        page.look("A2", CellStyleName.WALL).formula("A2", "=" + Ranked.WINNER);
        page.look("A4", CellStyleName.LARGE)
                .formula("A4", "=\"A short bar is a snug jar.\"&IF(invented;\" (Invented readings.)\";\"\")");
        Ranked.bars(ranked, POINTS).draw(page, "degrees_lost", "A3");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, "Which wrap wins? Degrees lost in 10 minutes").apply(page, "A1:A4");
        page.protect();
    }
}
