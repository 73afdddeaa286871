package org.snugsheet.sheets;

import org.snugsheet.office.page.Look;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;

/** The second page of {@link WhichWrapWins}, for the wall or the projector: who won, and bars to be seen from the last row. */
final class ClassDisplay {

    static final String NAME = "Class display";

    private static final float POINTS = 18;

    private ClassDisplay() {}

    static void fill(Page page, Page ranked) throws com.sun.star.uno.Exception {
        page.width("A1", 255)
                .height("A1", 16)
                // Three lines: with three jars held back it takes as many.
                .height("A2", 33)
                .height("A3", 117)
                .height("A4", 12);
        page.text("A1", "Which wrap wins?").look("A1", Look.WALL);
        page.look("A2", Look.WALL).formula("A2", "=" + Ranked.WINNER);
        page.look("A4", Look.LARGE)
                .formula("A4", "=\"A short bar is a snug jar.\"&IF(invented;\" (Invented readings.)\";\"\")");
        Ranked.bars(ranked, POINTS).draw(page, "degrees_lost", "A3");
        new PrintSetup(PrintSetup.Way.LYING, "Which wrap wins? Degrees lost in 10 minutes").apply(page, "A1:A4");
        page.protect();
    }
}
