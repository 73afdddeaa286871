package org.snugsheet.office.investigation;

import com.sun.star.table.CellHoriJustify;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Look;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** What is worked out below the cells to type into: the checks, the results of each jar, and the order of the wraps. */
final class Findings {

    private static final String LAST = Places.LAST;
    private static final double LINE = Places.LINE;

    private final Investigation plan;
    private final Language language;
    private final Page page;
    private final Rows rows;
    private final Places places;

    Findings(Investigation plan, Language language, Page page, Places places) {
        this.plan = plan;
        this.language = language;
        this.page = page;
        this.rows = places.rows();
        this.places = places;
    }

    void write() throws com.sun.star.uno.Exception {
        checks();
        results();
        ranking();
    }

    /** The heading of a part. */
    static void section(Page page, Language language, int row, InvestigationWords words)
            throws com.sun.star.uno.Exception {
        page.look("A" + row + ":" + LAST + row, Look.SECTION).text("A" + row, language.words(words));
        page.height("A" + row, 8);
    }

    private void checks() throws com.sun.star.uno.Exception {
        section(page, language, rows.checks(), InvestigationWords.CHECKS);
        int last = rows.checks() + 1 + rows.checkLines();
        String found = CellName.of(Places.HELPERS, rows.checks()) + ":" + CellName.of(Places.HELPERS + 4, last - 1);
        page.growingTable(found, "CHECK.SHEET(" + places.block() + places.common());
        for (int row = rows.checks() + 1; row <= last; row++) {
            boolean head = row == rows.checks() + 1;
            page.merge("C" + row + ":E" + row).merge("G" + row + ":" + LAST + row);
            page.look("A" + row + ":" + LAST + row, head ? Look.HEAD : Look.NOTE)
                    .wrapped("A" + row + ":" + LAST + row);
            String[] shown = {"A", "B", "C", "F", "G"};
            for (int i = 0; i < shown.length; i++) {
                page.formula(shown[i] + row, "=" + CellName.of(Places.HELPERS + i, row - 1) + "&\"\"");
            }
            if (!head) {
                page.height("A" + row, 1.8 * LINE);
                Highlight.unlessOk(page, "A" + row + ":" + LAST + row, Places.fixed("C" + row), Look.TROUBLE_MESSAGE);
                // The number of a row stands below its head, clear of a long name.
                Uno.set(page.sheet().getCellRangeByName("B" + row), "HoriJustify", CellHoriJustify.CENTER);
            }
        }
    }

    private void results() throws com.sun.star.uno.Exception {
        section(page, language, rows.results(), InvestigationWords.RESULTS);
        int head = rows.results() + 1;
        int last = head + plan.jars();
        String sheet = "COOL.SHEET(" + places.block() + places.common();
        page.look("A" + head + ":" + LAST + head, Look.NARROW_HEAD);
        page.height("A" + head, 2 * LINE);
        page.look("A" + (head + 1) + ":A" + last, Look.LABEL).look("B" + (head + 1) + ":" + LAST + last, Look.RESULT);
        page.growingTable("A" + head + ":H" + last, sheet);
        page.formula(LAST + head, "=IFERROR(INDEX(" + sheet + ";1;9)&\"\";\"\")");
        for (int row = head + 1; row <= last; row++) {
            String usable = "INDEX(" + sheet + ";" + (row - head + 1) + ";9)&\"\"";
            String otherwise = "\"" + language.words(InvestigationWords.SEE_CHECKS) + "\"";
            page.formula(
                    LAST + row,
                    "=IF($A" + row + "=\"\";\"\";IF(" + accused(row) + ";" + otherwise + ";IFERROR(IF(" + usable
                            + "=\"OK\";\"OK\";" + otherwise + ");\"\")))");
            page.wrapped(LAST + row).height("A" + row, 2 * LINE);
            Highlight.unlessOk(page, LAST + row, Places.fixed(LAST + row), Look.TROUBLE_MESSAGE);
        }
        numbers(head + 1, last, "B", "0", "C", "0.0000", "D", "\"± \"0.0000", "E", "0.0", "F", "0.0", "H", "0.00");
    }

    /** Whether the checks find something in the jar of a row. */
    private String accused(int row) {
        int from = rows.checks() + 2;
        int to = rows.checks() + 1 + rows.checkLines();
        return "COUNTIFS(" + Places.fixed("A" + from + ":A" + to) + ";$A" + row + ";"
                + Places.fixed("C" + from + ":C" + to) + ";\"<>OK\")>0";
    }

    private void ranking() throws com.sun.star.uno.Exception {
        section(page, language, rows.ranking(), InvestigationWords.RANKING);
        int head = rows.ranking() + 2;
        int last = head + plan.jars();
        page.look("A" + head + ":" + LAST + head, Look.NARROW_HEAD);
        page.height("A" + head, 2 * LINE);
        page.look("A" + (head + 1) + ":" + LAST + last, Look.RESULT);
        String rank = "COOL.RANK(" + places.times() + ";" + places.readings() + ";" + places.heads() + places.common();
        page.growingTable("A" + head + ":G" + last, rank);
        for (int row = head; row <= last; row++) {
            String ties = "H" + row + ":" + LAST + row;
            page.merge(ties).formula("H" + row, "=IFERROR(INDEX(" + rank + ";" + (row - head + 1) + ";8)&\"\";\"\")");
            page.wrapped("A" + row + ":" + LAST + row).height("A" + row, 1.8 * LINE);
        }
        page.formula(
                "A" + (head - 1),
                "=IF(A" + head + "=\"\";\"" + language.words(InvestigationWords.NO_RANKING) + "\";\"\")");
        page.look("A" + (head - 1), Look.HINT);
        numbers(head + 1, last, "A", "0", "C", "0", "D", "0.0000", "E", "0.0000", "F", "0.0000", "G", "0.0");
    }

    private void numbers(int from, int to, String... columnsAndCodes) throws com.sun.star.uno.Exception {
        for (int i = 0; i < columnsAndCodes.length; i += 2) {
            page.numbers(columnsAndCodes[i] + from + ":" + columnsAndCodes[i] + to, columnsAndCodes[i + 1]);
        }
    }
}
