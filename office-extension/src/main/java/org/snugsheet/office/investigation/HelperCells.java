package org.snugsheet.office.investigation;

import org.snugsheet.office.page.Page;
import org.snugsheet.office.uno.CellName;

/**
 * The readings once more, behind the page, with their times in minutes whatever was typed for them: all jars as one block, and each
 * jar as a block of its own, since several may have one name.
 */
final class HelperCells {

    private final Investigation plan;
    private final Page page;
    private final CellAddresses places;
    private final int last;

    HelperCells(Investigation plan, Page page, CellAddresses places) {
        this.plan = plan;
        this.page = page;
        this.places = places;
        this.last = plan.times().size();
    }

    /**
     * Writes them.
     *
     * @param minutes the cells with the times in minutes
     */
    void write(String minutes) throws com.sun.star.uno.Exception {
        page.table(minutes(), "=" + minutes);
        for (int jar = 0; jar < plan.jars(); jar++) {
            page.table(cell(alone(jar, 0), 1) + ":" + cell(alone(jar, 0), last), "=" + minutes);
            copy(jar, 1 + jar);
            copy(jar, alone(jar, 1));
        }
    }

    private void copy(int jar, int to) throws com.sun.star.uno.Exception {
        String readings = places.readings(jar);
        page.formula(cell(to, 0), "=" + CellName.column(1 + jar) + places.rows().head());
        page.table(cell(to, 1) + ":" + cell(to, last), "=IF(ISBLANK(" + readings + ");\"\";" + readings + ")");
    }

    String minutes() {
        return cell(0, 1) + ":" + cell(0, last);
    }

    String readings() {
        return cell(1, 1) + ":" + cell(plan.jars(), last);
    }

    /** NamedRanges, times and readings of all jars. */
    String block() {
        return cell(0, 0) + ":" + cell(plan.jars(), last);
    }

    /** The same of one jar, counted from 0. */
    String alone(int jar) {
        return cell(alone(jar, 0), 0) + ":" + cell(alone(jar, 1), last);
    }

    private int alone(int jar, int column) {
        return plan.jars() + 2 + 2 * jar + column;
    }

    private static String cell(int column, int row) {
        return CellName.of(CellAddresses.HELPERS + column, row);
    }
}
