package org.snugsheet.office.investigation;

import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.XComponentContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.office.drawing.Curves;
import org.snugsheet.office.drawing.DrawingWords;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.Look;
import org.snugsheet.office.page.NewPage;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.words.DocumentRegion;
import org.snugsheet.office.words.Language;

/** The sheet of an investigation: what stands where on it. The page is nine columns wide, what works behind it further right. */
public final class LaidOut {

    private static final String LAST = "I";
    private static final int HELPERS = 11;
    private static final double LINE = 5.6;
    private static final int CHART_ROWS = 20;
    private static final int FEWEST_CHECK_LINES = 6;

    private final Investigation plan;
    private final Language language;
    private final Page page;
    private final Rows rows;
    private final String common;

    private LaidOut(Investigation plan, Language language, Page page) {
        this.plan = plan;
        this.language = language;
        this.page = page;
        this.rows = Rows.of(plan);
        this.common = ";" + mark() + ";" + Curves.sign(plan.scale()) + ")";
    }

    /**
     * Lays it out on a new sheet behind the others.
     *
     * @param office the office’s context
     * @param document the document
     * @param plan what is planned
     * @param language the language of its words
     * @return the page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static Page on(
            XComponentContext office, XSpreadsheetDocument document, Investigation plan, Language language)
            throws com.sun.star.uno.Exception {
        return NewPage.in(document, language.words(InvestigationWords.PAGE), page -> {
            LaidOut laidOut = new LaidOut(plan, language, page);
            laidOut.sizes();
            laidOut.top();
            laidOut.entries();
            laidOut.checks();
            laidOut.results();
            laidOut.ranking();
            laidOut.chart(office);
            new PrintSetup(PrintSetup.Way.UPRIGHT, language.words(InvestigationWords.TITLE))
                    .on(DocumentRegion.of(document).hasLetterPaper() ? Paper.LETTER : Paper.A4)
                    .withBreaks()
                    .apply(page, "A1:" + LAST + laidOut.rows.end());
            page.newPaperAt("A" + laidOut.rows.results());
            page.protect();
        });
    }

    private void sizes() throws com.sun.star.uno.Exception {
        page.width("A1", 36).width("B1:" + LAST + "1", 23);
        page.height("A1:A" + rows.end(), LINE).height("A1", 10).height("A2", 9);
    }

    private void top() throws com.sun.star.uno.Exception {
        page.text("A1", language.words(InvestigationWords.TITLE)).look("A1", Look.TITLE);
        across(2, Look.PURPOSE).text("A2", language.words(InvestigationWords.PURPOSE));
        section(rows.cautions(), InvestigationWords.CAUTIONS);
        List<String> cautions = new ArrayList<>();
        cautions.add(language.say(
                InvestigationWords.START_LIMIT,
                SafeStart.SCHOOL_LIMIT.in(Scale.CELSIUS),
                Math.floor(SafeStart.SCHOOL_LIMIT.in(Scale.FAHRENHEIT))));
        Arrays.stream(Caution.values())
                .filter(Caution::isOfEveryLesson)
                .map(language::words)
                .forEach(cautions::add);
        for (int i = 0; i < cautions.size(); i++) {
            int row = rows.cautions() + 1 + i;
            across(row, Look.CAUTION).text("A" + row, cautions.get(i));
        }
    }

    private void entries() throws com.sun.star.uno.Exception {
        section(rows.readings(), InvestigationWords.READINGS);
        int head = rows.head();
        page.text("A" + head, language.words(InvestigationWords.MINUTES_HEAD)).look("A" + head, Look.HEAD);
        List<String> names = plan.names();
        for (int jar = 0; jar < plan.jars(); jar++) {
            page.text(CellName.column(1 + jar) + head, names.get(jar));
        }
        page.look(heads(), Look.INPUT_HEAD).wrapped(heads()).height("A" + head, 9);
        List<Integer> times = plan.times();
        for (int i = 0; i < times.size(); i++) {
            page.number("A" + (head + 1 + i), times.get(i));
        }
        page.look("A" + (head + 1) + ":" + lastJar() + rows.lastReading(), Look.INPUT);
        given(rows.surroundings(), InvestigationWords.SURROUNDINGS_LABEL, InvestigationWords.SURROUNDINGS_HINT);
        given(rows.surroundings() + 1, InvestigationWords.MARK_LABEL, InvestigationWords.MARK_HINT);
        if (!plan.surroundings().isEmpty()) {
            type("B" + rows.surroundings(), plan.surroundings());
        }
        page.number("B" + (rows.surroundings() + 1), plan.mark());
        int start = rows.surroundings() + 2;
        String first = "B" + (head + 1) + ":" + lastJar() + (head + 1);
        String said = "B" + start + ":" + LAST + start;
        page.text("A" + start, language.words(InvestigationWords.START_LABEL)).look("A" + start, Look.LABEL);
        page.merge(said).look(said, Look.MESSAGE).height("A" + start, 2 * LINE);
        page.formula(
                "B" + start,
                "=IF(COUNT(" + first + ")=0;\"\";PLAN.SAFE(MAX(" + first + ");" + Curves.sign(plan.scale()) + "))");
        // The limit is compared on the scale that is typed.
        double limit = SafeStart.SCHOOL_LIMIT.in(plan.scale());
        Highlight.when(page, said, "MAX(" + fixed(first) + ")>" + limit, Look.TROUBLE_MESSAGE);
        String what = language.words(InvestigationWords.READINGS);
        InputRules.on(page)
                .hint(heads(), language.words(InvestigationWords.PAGE), language.words(InvestigationWords.NAME_HINT))
                .hint(
                        "B" + (head + 1) + ":" + lastJar() + rows.lastReading(),
                        what,
                        language.words(InvestigationWords.READING_HINT));
    }

    private void given(int row, InvestigationWords label, InvestigationWords hint) throws com.sun.star.uno.Exception {
        page.text("A" + row, language.say(label, plan.scale().symbol())).look("A" + row, Look.LABEL);
        page.look("B" + row, Look.INPUT);
        page.text("C" + row, language.words(hint)).look("C" + row, Look.HINT);
    }

    private void type(String cell, String typed) throws com.sun.star.uno.Exception {
        if (Entry.ofWritten(typed) instanceof Entry.Value number) {
            page.number(cell, number.value());
        } else {
            page.text(cell, typed);
        }
    }

    private void checks() throws com.sun.star.uno.Exception {
        section(rows.checks(), InvestigationWords.CHECKS);
        int last = rows.checks() + 1 + rows.checkLines();
        String found = CellName.of(HELPERS, rows.checks()) + ":" + CellName.of(HELPERS + 4, last - 1);
        page.growingTable(found, "CHECK.SHEET(" + block() + ";" + surroundings() + common);
        for (int row = rows.checks() + 1; row <= last; row++) {
            boolean head = row == rows.checks() + 1;
            page.merge("C" + row + ":E" + row).merge("G" + row + ":" + LAST + row);
            page.look("A" + row + ":" + LAST + row, head ? Look.HEAD : Look.NOTE)
                    .wrapped("A" + row + ":" + LAST + row);
            String[] shown = {"A", "B", "C", "F", "G"};
            for (int i = 0; i < shown.length; i++) {
                page.formula(shown[i] + row, "=" + CellName.of(HELPERS + i, row - 1) + "&\"\"");
            }
            if (!head) {
                page.height("A" + row, 1.8 * LINE);
                String said = "AND($C" + row + "<>\"OK\";$C" + row + "<>\"\")";
                Highlight.when(page, "A" + row + ":" + LAST + row, said, Look.TROUBLE_MESSAGE);
            }
        }
    }

    private void results() throws com.sun.star.uno.Exception {
        section(rows.results(), InvestigationWords.RESULTS);
        int head = rows.results() + 1;
        int last = head + plan.jars();
        String sheet = "COOL.SHEET(" + block() + ";" + surroundings() + common;
        page.look("A" + head + ":" + LAST + head, Look.HEAD).wrapped("A" + head + ":" + LAST + head);
        page.height("A" + head, 2 * LINE);
        page.look("A" + (head + 1) + ":A" + last, Look.LABEL).look("B" + (head + 1) + ":" + LAST + last, Look.RESULT);
        page.growingTable("A" + head + ":H" + last, sheet);
        page.formula(LAST + head, "=IFERROR(INDEX(" + sheet + ";1;9)&\"\";\"\")");
        for (int row = head + 1; row <= last; row++) {
            String usable = "INDEX(" + sheet + ";" + (row - head + 1) + ";9)&\"\"";
            String otherwise = "\"" + language.words(InvestigationWords.SEE_CHECKS) + "\"";
            page.formula(LAST + row, "=IFERROR(IF(" + usable + "=\"OK\";\"OK\";" + otherwise + ");\"\")");
            page.wrapped(LAST + row).height("A" + row, 2 * LINE);
            Highlight.when(page, LAST + row, "AND($I" + row + "<>\"OK\";$I" + row + "<>\"\")", Look.TROUBLE_MESSAGE);
        }
        numbers(head + 1, last, "B", "0", "C", "0.0000", "D", "\"± \"0.0000", "E", "0.0", "F", "0.0", "H", "0.00");
    }

    private void ranking() throws com.sun.star.uno.Exception {
        section(rows.ranking(), InvestigationWords.RANKING);
        int head = rows.ranking() + 2;
        int last = head + plan.jars();
        page.look("A" + head + ":" + LAST + head, Look.HEAD).wrapped("A" + head + ":" + LAST + head);
        page.height("A" + head, 2 * LINE);
        page.look("A" + (head + 1) + ":" + LAST + last, Look.RESULT);
        page.growingTable(
                "A" + head + ":H" + last,
                "COOL.RANK(" + column("A") + ";B" + (rows.head() + 1) + ":" + lastJar() + rows.lastReading() + ";"
                        + heads() + ";" + surroundings() + common);
        for (int row = head; row <= last; row++) {
            page.merge("H" + row + ":" + LAST + row).wrapped("H" + row);
        }
        page.formula(
                "A" + (head - 1),
                "=IF(A" + head + "=\"\";\"" + language.words(InvestigationWords.NO_RANKING) + "\";\"\")");
        page.look("A" + (head - 1), Look.HINT);
        numbers(head + 1, last, "A", "0", "C", "0", "D", "0.0000", "E", "0.0000", "F", "0.0000", "G", "0.0");
    }

    private void chart(XComponentContext office) throws com.sun.star.uno.Exception {
        List<String> times = cells("A");
        List<Curves.Jar> jars = new ArrayList<>();
        for (int jar = 0; jar < plan.jars(); jar++) {
            String column = CellName.column(1 + jar);
            jars.add(new Curves.Jar(column + rows.head(), cells(column)));
        }
        Curves.Source source = new Curves.Source(times, jars, surroundings(), mark(), plan.scale());
        int top = rows.checks() + 2 + rows.checkLines();
        page.text(CellName.of(HELPERS, top), language.words(DrawingWords.BEHIND))
                .look(CellName.of(HELPERS, top), Look.HINT);
        new Curves(page, source, HELPERS, top + 1)
                .write(language)
                .draw(office, "curves", "A" + rows.chart() + ":" + LAST + rows.end(), language);
    }

    private void numbers(int from, int to, String... columnsAndCodes) throws com.sun.star.uno.Exception {
        for (int i = 0; i < columnsAndCodes.length; i += 2) {
            page.numbers(columnsAndCodes[i] + from + ":" + columnsAndCodes[i] + to, columnsAndCodes[i + 1]);
        }
    }

    private void section(int row, InvestigationWords words) throws com.sun.star.uno.Exception {
        page.look("A" + row + ":" + LAST + row, Look.SECTION).text("A" + row, language.words(words));
        page.height("A" + row, 8);
    }

    private Page across(int row, Look look) throws com.sun.star.uno.Exception {
        String cells = "A" + row + ":" + LAST + row;
        return page.merge(cells).look(cells, look);
    }

    private List<String> cells(String column) {
        List<String> cells = new ArrayList<>();
        for (int row = rows.head() + 1; row <= rows.lastReading(); row++) {
            cells.add(column + row);
        }
        return cells;
    }

    private String column(String column) {
        return column + (rows.head() + 1) + ":" + column + rows.lastReading();
    }

    private String block() {
        return "A" + rows.head() + ":" + lastJar() + rows.lastReading();
    }

    private String heads() {
        return "B" + rows.head() + ":" + lastJar() + rows.head();
    }

    private String lastJar() {
        return CellName.column(plan.jars());
    }

    private String surroundings() {
        return "B" + rows.surroundings();
    }

    private String mark() {
        return "B" + (rows.surroundings() + 1);
    }

    private static String fixed(String cells) {
        return cells.replaceAll("([A-Z]+)([0-9]+)", "\\$$1\\$$2");
    }

    /** In which row each part begins, counted from 1. */
    private record Rows(
            int cautions,
            int readings,
            int head,
            int lastReading,
            int surroundings,
            int checks,
            int checkLines,
            int results,
            int ranking,
            int chart,
            int end) {

        static Rows of(Investigation plan) {
            int jars = plan.jars();
            int cautions = 3;
            long lines = 1
                    + Arrays.stream(Caution.values())
                            .filter(Caution::isOfEveryLesson)
                            .count();
            int readings = cautions + (int) lines + 1;
            int head = readings + 1;
            int lastReading = head + plan.times().size();
            int surroundings = lastReading + 1;
            int checks = surroundings + 3;
            int checkLines = Math.max(jars, FEWEST_CHECK_LINES);
            int results = checks + checkLines + 2;
            int ranking = results + jars + 2;
            int chart = ranking + jars + 4;
            return new Rows(
                    cautions,
                    readings,
                    head,
                    lastReading,
                    surroundings,
                    checks,
                    checkLines,
                    results,
                    ranking,
                    chart,
                    chart + CHART_ROWS - 1);
        }
    }
}
