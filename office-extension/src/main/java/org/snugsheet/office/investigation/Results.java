package org.snugsheet.office.investigation;

import org.snugsheet.engine.lesson.Power;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.words.Language;

/** What is worked out below the cells to type into: the results of each jar, and the order of the wraps. */
final class Results {

    private static final String LAST = CellAddresses.LAST;
    private static final double LINE = CellAddresses.LINE;

    /** So small that a whole finding fits in four lines. */
    private static final float REMARK_POINTS = 8;

    private final Investigation plan;
    private final Language language;
    private final Page page;
    private final Rows rows;
    private final CellAddresses places;
    private final HelperCells behind;

    Results(Investigation plan, Language language, Page page, CellAddresses places, HelperCells behind) {
        this.plan = plan;
        this.language = language;
        this.page = page;
        this.rows = places.rows();
        this.places = places;
        this.behind = behind;
    }

    void write() throws com.sun.star.uno.Exception {
        results();
        ranking();
    }

    private void results() throws com.sun.star.uno.Exception {
        ResultsSection.section(page, language, rows.results(), InvestigationWords.RESULTS);
        int head = rows.results() + 1;
        int last = head + plan.jars();
        String sheet = "COOL.SHEET(" + behind.block() + places.common();
        page.look("A" + head + ":" + LAST + head, CellStyleName.NARROW_HEAD);
        page.height("A" + head, 2 * LINE);
        page.look("A" + (head + 1) + ":A" + last, CellStyleName.LABEL)
                .look("B" + (head + 1) + ":" + LAST + last, CellStyleName.RESULT);
        page.growingTable("A" + head + ":H" + last, sheet);
        page.formula(LAST + head, "=IFERROR(INDEX(" + sheet + ";1;9)&\"\";\"\")");
        for (int row = head + 1; row <= last; row++) {
            String usable = "INDEX(" + sheet + ";" + (row - head + 1) + ";9)&\"\"";
            String otherwise = "\"" + language.words(InvestigationWords.SEE_CHECKS) + "\"";
            page.formula(
                    LAST + row,
                    "=IF(COUNTA(" + places.readings(row - head - 1) + ")<" + CellAddresses.FEWEST_READINGS
                            + ";\"\";IFERROR(IF(" + usable + "=\"OK\";\"OK\";" + otherwise + ");\"\"))");
            page.height("A" + row, 1.5 * LINE);
            Highlight.unlessOk(page, LAST + row, CellAddresses.fixed(LAST + row), CellStyleName.TROUBLE_MESSAGE);
        }
        numbers(head + 1, last, "B", "0", "C", "0.0000", "D", "\"± \"0.0000", "E", "0.0", "F", "0.0", "H", "0.00");
    }

    private void ranking() throws com.sun.star.uno.Exception {
        ResultsSection.section(page, language, rows.ranking(), InvestigationWords.RANKING);
        int head = rows.ranking() + 2;
        int last = head + plan.jars();
        page.look("A" + head + ":" + LAST + head, CellStyleName.NARROW_HEAD);
        page.height("A" + head, 2 * LINE);
        page.look("A" + (head + 1) + ":" + LAST + last, CellStyleName.RESULT);
        String rank = "COOL.RANK(" + behind.minutes() + ";" + behind.readings() + ";" + places.heads() + places.wraps();
        page.growingTable("A" + head + ":G" + last, rank);
        for (int row = head; row <= last; row++) {
            page.merge("H" + row + ":" + LAST + row).wrapped("A" + row + ":" + LAST + row);
        }
        page.formula(
                "H" + head, "=IF(A" + head + "=\"\";\"\";\"" + language.words(InvestigationWords.REMARK_HEAD) + "\")");
        for (int row = head + 1; row <= last; row++) {
            // Beside the name, the name at the beginning of a finding would only take room.
            page.formula(
                    "H" + row,
                    "=IFERROR(SUBSTITUTE(INDEX(" + rank + ";" + (row - head + 1) + ";8)&\"\";B" + row
                            + "&\", \";\"\";1);\"\")");
            page.size("H" + row, REMARK_POINTS).height("A" + row, 2.5 * LINE);
        }
        page.formula(
                "A" + (head - 1),
                "=IF(A" + head + "=\"\";\"" + language.words(InvestigationWords.NO_RANKING) + "\";\""
                        + language.say(InvestigationWords.WHY_SPREAD, Power.USUAL_SPREAD) + "\")");
        page.look("A" + (head - 1), CellStyleName.HINT);
        numbers(head + 1, last, "A", "0", "C", "0", "D", "0.0000", "E", "0.0000", "F", "0.0000", "G", "0.0");
    }

    private void numbers(int from, int to, String... columnsAndCodes) throws com.sun.star.uno.Exception {
        for (int i = 0; i < columnsAndCodes.length; i += 2) {
            page.numbers(columnsAndCodes[i] + from + ":" + columnsAndCodes[i] + to, columnsAndCodes[i + 1]);
        }
    }
}
