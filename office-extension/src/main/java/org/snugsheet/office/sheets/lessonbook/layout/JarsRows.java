package org.snugsheet.office.sheets.lessonbook.layout;

import org.snugsheet.office.uno.CellName;

/**
 * Where each part is on the page behind the others. The parts are below each other, and all as large as the plan says.
 *
 * @param plan how large the book is
 */
public record JarsRows(BookPlan plan) {

    /** How many findings of a jar are kept. */
    public static final int FINDINGS = 4;

    /** How many points a curve has. */
    public static final int STEPS = 41;

    /** Below the settings and the lists. */
    private static final int BLOCK = 30;

    private static final int GAP = 3;

    /** The row with the names of the jars above the readings. */
    public int block() {
        return BLOCK;
    }

    /** The row above the first jar of the table with one line for each. */
    int jarsHead() {
        return BLOCK + plan.readings() + GAP;
    }

    /** The row of a jar in that table, counted from 0. */
    public int jar(int jar) {
        return jarsHead() + 1 + jar;
    }

    /** The first row of what is found in a jar. */
    public int findings(int jar) {
        return jarsHead() + plan.jars() + GAP + FINDINGS * jar;
    }

    /** The row above the ranking. */
    public int rankingHead() {
        return findings(plan.jars()) + GAP;
    }

    /** The row above the curves. */
    public int curvesHead() {
        return rankingHead() + plan.jars() + GAP;
    }

    /** The row above the readings on the scale that is shown. */
    public int shownHead() {
        return curvesHead() + STEPS + GAP;
    }

    /** Below all of it. */
    public int end() {
        return shownHead() + plan.readings() + GAP;
    }

    /** The cells of a column of the block, from 0: the times, the jars, the surroundings, the planned times. */
    String blockColumn(int column) {
        return below(column, BLOCK, plan.readings());
    }

    /** The readings of a jar, counted from 0. */
    public String readings(int jar) {
        return blockColumn(1 + jar);
    }

    /** The readings of a jar if it is in no doubt, otherwise nothing. */
    String trusted(int jar) {
        return blockColumn(trustedColumn() + jar);
    }

    /** The readings of all jars that are in no doubt. */
    public String trusted() {
        String last = trusted(plan.jars() - 1);
        return trusted(0).split(":")[0] + ":" + last.split(":")[1];
    }

    /** The first column of the readings that are in no doubt. */
    public int trustedColumn() {
        return plan.jars() + 4;
    }

    /** The names above the readings. */
    public String heads() {
        return CellName.of(1, BLOCK - 1) + ":" + CellName.of(plan.jars(), BLOCK - 1);
    }

    String aroundColumn() {
        return blockColumn(plan.jars() + 1);
    }

    /** The planned times. */
    public String planned() {
        return blockColumn(plan.jars() + 2);
    }

    /** The times of the readings. */
    public String times() {
        return blockColumn(0);
    }

    /** A column of the table of jars. */
    public String ofJars(String column) {
        return column + jar(0) + ":" + column + jar(plan.jars() - 1);
    }

    /** A column of the ranking, below its head. */
    public String ofRanking(String column) {
        return column + (rankingHead() + 1) + ":" + column + (rankingHead() + plan.jars());
    }

    /** The ranking as it is answered, with its heads. */
    public String ranking() {
        return "A" + rankingHead() + ":H" + (rankingHead() + plan.jars());
    }

    /** The minutes of the curves. */
    public String curveMinutes() {
        return below(0, curvesHead(), STEPS);
    }

    /** The curve of a jar: 0 itself, 1 its lower and 2 its upper limit. */
    public String curve(int jar, int line) {
        return below(1 + 3 * jar + line, curvesHead(), STEPS);
    }

    /** The readings of a jar on the scale that is shown. */
    public String shown(int jar) {
        return below(1 + jar, shownHead(), plan.readings());
    }

    /** The cell with the name of a jar. */
    public String name(int jar) {
        return CellName.of(1 + jar, shownHead() - 1);
    }

    /** The times beside them. */
    public String shownTimes() {
        return below(0, shownHead(), plan.readings());
    }

    private static String below(int column, int head, int rows) {
        return CellName.of(column, head) + ":" + CellName.of(column, head + rows - 1);
    }
}
