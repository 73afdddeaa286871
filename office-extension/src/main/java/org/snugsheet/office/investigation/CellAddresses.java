package org.snugsheet.office.investigation;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.lesson.Power;
import org.snugsheet.office.drawing.Curves;
import org.snugsheet.office.uno.CellName;

/** Where the cells to type into are on the page of an investigation, as formulas name them. */
record CellAddresses(Investigation plan, Rows rows) {

    /** The last column that is printed. */
    static final String LAST = "I";

    /** The first column of what works behind the page, from 0: so far right that no usual screen shows it beside the page. */
    static final int HELPERS = 26;

    /** With fewer readings no curve can be fitted; that this is so is no slip. */
    static final int FEWEST_READINGS = 3;

    /** The height of a line of text, in millimeters. */
    static final double LINE = 5.6;

    /** The cells of a column of the block from top to bottom, without its head. */
    List<String> cells(String column) {
        List<String> cells = new ArrayList<>();
        for (int row = rows.head() + 1; row <= rows.lastReading(); row++) {
            cells.add(column + row);
        }
        return cells;
    }

    String times() {
        return "A" + (rows.head() + 1) + ":A" + rows.lastReading();
    }

    String readings() {
        return "B" + (rows.head() + 1) + ":" + lastJar() + rows.lastReading();
    }

    String heads() {
        return "B" + rows.head() + ":" + lastJar() + rows.head();
    }

    String lastJar() {
        return CellName.column(plan.jars());
    }

    String surroundings() {
        return "A" + rows.surroundings();
    }

    String mark() {
        return "A" + (rows.surroundings() + 1);
    }

    /** The end of each call: surroundings, mark and scale. */
    String common() {
        return ";" + surroundings() + ";" + mark() + ";" + Curves.sign(plan.scale()) + ")";
    }

    /** The same for a call that speaks of wraps: how much jars wrapped alike differ comes last. */
    String wraps() {
        String common = common();
        return common.substring(0, common.length() - 1) + ";" + Power.USUAL_SPREAD + ")";
    }

    /** The readings of a jar, counted from 0. */
    String readings(int jar) {
        String column = CellName.column(1 + jar);
        return column + (rows.head() + 1) + ":" + column + rows.lastReading();
    }

    /** The same cells wherever the formula is taken. */
    static String fixed(String cells) {
        return cells.replaceAll("([A-Z]+)([0-9]+)", "\\$$1\\$$2");
    }
}
