package org.snugsheet.office.investigation;

import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.XComponentContext;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.office.drawing.Curves;
import org.snugsheet.office.drawing.DrawingWords;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.NewPage;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.words.DocumentRegion;
import org.snugsheet.office.words.Language;

/** The sheet of an investigation: what is where on it. The page is nine columns wide; the cells behind it are further right. */
public final class InvestigationSheet {

    private static final String LAST = CellAddresses.LAST;
    private static final double LINE = CellAddresses.LINE;
    private static final int LETTERS_ACROSS = 140;

    /** With more, the results and the chart do not go on one sheet of Letter paper. */
    private static final int MOST_BESIDE_THE_CHART = 6;

    private final Investigation plan;
    private final Language language;
    private final Page page;
    private final Rows rows;
    private final CellAddresses places;

    private InvestigationSheet(Investigation plan, Language language, Page page) {
        this.plan = plan;
        this.language = language;
        this.page = page;
        this.rows = Rows.of(plan);
        this.places = new CellAddresses(plan, rows);
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
        return NewPage.in(
                office,
                document,
                language.words(InvestigationWords.PAGE),
                "A1:" + LAST + Rows.of(plan).end(),
                page -> new InvestigationSheet(plan, language, page).fill(office));
    }

    /**
     * Where a person begins to fill in the page.
     *
     * @param plan what is planned
     * @return the first cell that can be typed into
     */
    public static String firstToType(Investigation plan) {
        return new CellAddresses(plan, Rows.of(plan)).surroundings();
    }

    private void fill(XComponentContext office) throws com.sun.star.uno.Exception {
        sizes();
        top();
        Curves curves = curves().write(language);
        entries();
        HelperCells behind = new HelperCells(plan, page, places);
        behind.write(curves.times());
        ResultsSection findings = new ResultsSection(plan, language, page, places, behind);
        findings.write(curves);
        warmest(findings);
        new Results(plan, language, page, places, behind).write();
        page.newPaperAt("A" + rows.results());
        if (plan.jars() > MOST_BESIDE_THE_CHART) {
            page.newPaperAt("A" + rows.chart());
        }
        page.protect();
        // Last, because then the office may record steps again.
        curves.draw(office, "A" + rows.chart() + ":" + LAST + rows.end(), language);
        new PrintSetup(PrintSetup.Way.PORTRAIT, language.words(InvestigationWords.TITLE))
                .on(DocumentRegion.of(page.document()).hasLetterPaper() ? Paper.LETTER : Paper.A4)
                .withBreaks()
                .applyStyle(page);
    }

    private void sizes() throws com.sun.star.uno.Exception {
        page.width("A1", 32).width("B1:" + LAST + "1", 25.5);
        // A half-time has the longest word for a head, in Spanish.
        page.width("E1", 27.5).width("G1", 27.5);
        page.height("A1:A" + rows.end(), LINE).height("A1", 10).height("A2", 6.5);
    }

    private void top() throws com.sun.star.uno.Exception {
        page.text("A1", language.words(InvestigationWords.TITLE)).look("A1", CellStyleName.TITLE);
        across(2, CellStyleName.FOLLOWS).text("A2", language.words(InvestigationWords.PURPOSE));
        ResultsSection.section(page, language, rows.cautions(), InvestigationWords.CAUTIONS);
        for (int i = 0; i < Rows.CAUTIONS.size(); i++) {
            int row = rows.cautions() + 1 + i;
            String words = Rows.CAUTIONS.get(i).stream().map(language::words).collect(Collectors.joining(" "));
            String all = i == 0 ? StartLimit.in(language) + " " + words : words;
            across(row, CellStyleName.CAUTION).text("A" + row, all);
            if (all.length() > LETTERS_ACROSS) {
                page.height("A" + row, 1.6 * LINE);
            }
        }
    }

    /**
     * Apart from the readings, all cells to type into are in the first column, above the times: so Enter at the end of one column of
     * readings leads to the top of the next, and no other cell to type into lies on that way. After the very last reading Enter
     * starts again at the top of the first column: there are the names, and a number typed over a name is asked about.
     */
    private void entries() throws com.sun.star.uno.Exception {
        ResultsSection.section(page, language, rows.readings(), InvestigationWords.READINGS);
        given(places.surroundings(), rows.surroundings());
        given(places.mark(), rows.surroundings() + 1);
        page.text(
                "B" + (rows.surroundings() + 1),
                language.say(InvestigationWords.MARK_LABEL, plan.scale().symbol()));
        if (!plan.surroundings().isEmpty()) {
            type(places.surroundings(), plan.surroundings());
        }
        page.number(places.mark(), plan.mark());
        int head = rows.head();
        page.text("A" + head, language.words(InvestigationWords.MINUTES_HEAD)).look("A" + head, CellStyleName.HEAD);
        List<String> names = plan.names();
        for (int jar = 0; jar < plan.jars(); jar++) {
            page.text("A" + rows.name(jar), names.get(jar)).look("A" + rows.name(jar), CellStyleName.INPUT_HEAD);
            page.formula(CellName.column(1 + jar) + head, "=A" + rows.name(jar) + "&\"\"");
        }
        InputRules.on(page)
                .nameWithoutHint(
                        "A" + rows.name(0) + ":A" + rows.name(plan.jars() - 1),
                        language.words(InvestigationWords.TITLE),
                        language.words(InvestigationWords.NUMBER_FOR_NAME));
        page.look(places.heads(), CellStyleName.HEAD).wrapped(places.heads()).height("A" + head, 9);
        List<Integer> times = plan.times();
        for (int i = 0; i < times.size(); i++) {
            page.number("A" + (head + 1 + i), times.get(i));
        }
        page.look("A" + (head + 1) + ":" + places.lastJar() + rows.lastReading(), CellStyleName.INPUT);
        page.text(
                        "A" + (rows.lastReading() + 1),
                        language.words(InvestigationWords.READING_HINT) + " "
                                + language.words(InvestigationWords.NAME_HINT))
                .look("A" + (rows.lastReading() + 1), CellStyleName.HINT);
    }

    private void warmest(ResultsSection findings) throws com.sun.star.uno.Exception {
        int start = rows.start();
        String warmest = "MAX(" + findings.warmest() + ")";
        String said = "B" + start + ":" + LAST + start;
        page.text("A" + start, language.words(InvestigationWords.START_LABEL))
                .look("A" + start, CellStyleName.LABEL)
                .wrapped("A" + start);
        page.merge(said).look(said, CellStyleName.MESSAGE).height("A" + start, 2.6 * LINE);
        page.formula(
                "B" + start,
                "=IF(COUNT(" + findings.warmest() + ")=0;\"\";IFERROR(PLAN.SAFE(" + warmest + ";"
                        + Curves.sign(plan.scale()) + ");\"\"))");
        // The limit is compared on the scale that is typed.
        double limit = SafeStart.SCHOOL_LIMIT.in(plan.scale());
        Highlight.when(page, said, CellAddresses.fixed(warmest) + ">" + limit, CellStyleName.HOT);
    }

    private void given(String cell, int row) throws com.sun.star.uno.Exception {
        page.look(cell, CellStyleName.INPUT).merge("B" + row + ":" + LAST + row).look("B" + row, CellStyleName.MESSAGE);
    }

    private void type(String cell, String typed) throws com.sun.star.uno.Exception {
        if (Entry.ofWritten(typed) instanceof Entry.Value number) {
            page.number(cell, number.value());
        } else {
            page.text(cell, typed);
        }
    }

    private Curves curves() throws com.sun.star.uno.Exception {
        List<String> times = places.cells("A");
        List<Curves.Jar> jars = new ArrayList<>();
        for (int jar = 0; jar < plan.jars(); jar++) {
            String column = CellName.column(1 + jar);
            jars.add(new Curves.Jar(column + rows.head(), places.cells(column)));
        }
        Curves.Source source = new Curves.Source(times, jars, places.surroundings(), places.mark(), plan.scale());
        int top = ResultsSection.rows(plan) + 1;
        page.text(CellName.of(CellAddresses.HELPERS, top), language.words(DrawingWords.BEHIND))
                .look(CellName.of(CellAddresses.HELPERS, top), CellStyleName.HINT);
        return new Curves(page, source, CellAddresses.HELPERS, top + 1);
    }

    private Page across(int row, CellStyleName look) throws com.sun.star.uno.Exception {
        String cells = "A" + row + ":" + LAST + row;
        return page.merge(cells).look(cells, look);
    }
}
