package org.snugsheet.office.investigation;

import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.XComponentContext;
import java.util.ArrayList;
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

    private static final String LAST = Places.LAST;
    private static final double LINE = Places.LINE;
    private static final int LETTERS_ACROSS = 140;

    private final Investigation plan;
    private final Language language;
    private final Page page;
    private final Rows rows;
    private final Places places;

    private LaidOut(Investigation plan, Language language, Page page) {
        this.plan = plan;
        this.language = language;
        this.page = page;
        this.rows = Rows.of(plan);
        this.places = new Places(plan, rows);
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
            new Findings(plan, language, page, laidOut.places).write();
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
        page.width("A1", 32).width("B1:" + LAST + "1", 25.5);
        // A half-time has the longest word for a head, in Spanish.
        page.width("E1", 27.5).width("G1", 27.5);
        page.height("A1:A" + rows.end(), LINE).height("A1", 10).height("A2", 9);
    }

    private void top() throws com.sun.star.uno.Exception {
        page.text("A1", language.words(InvestigationWords.TITLE)).look("A1", Look.TITLE);
        across(2, Look.PURPOSE).text("A2", language.words(InvestigationWords.PURPOSE));
        Findings.section(page, language, rows.cautions(), InvestigationWords.CAUTIONS);
        List<String> cautions = new ArrayList<>();
        cautions.add(language.say(
                InvestigationWords.START_LIMIT,
                SafeStart.SCHOOL_LIMIT.in(Scale.CELSIUS),
                Math.floor(SafeStart.SCHOOL_LIMIT.in(Scale.FAHRENHEIT))));
        Caution.ofEveryLesson().forEach(caution -> cautions.add(language.words(caution)));
        for (int i = 0; i < cautions.size(); i++) {
            int row = rows.cautions() + 1 + i;
            across(row, Look.CAUTION).text("A" + row, cautions.get(i));
            if (cautions.get(i).length() > LETTERS_ACROSS) {
                page.height("A" + row, 2 * LINE);
            }
        }
    }

    private void entries() throws com.sun.star.uno.Exception {
        Findings.section(page, language, rows.readings(), InvestigationWords.READINGS);
        int head = rows.head();
        page.text("A" + head, language.words(InvestigationWords.MINUTES_HEAD)).look("A" + head, Look.HEAD);
        List<String> names = plan.names();
        for (int jar = 0; jar < plan.jars(); jar++) {
            page.text(CellName.column(1 + jar) + head, names.get(jar));
        }
        page.look(places.heads(), Look.INPUT_HEAD).wrapped(places.heads()).height("A" + head, 9);
        List<Integer> times = plan.times();
        for (int i = 0; i < times.size(); i++) {
            page.number("A" + (head + 1 + i), times.get(i));
        }
        page.look("A" + (head + 1) + ":" + places.lastJar() + rows.lastReading(), Look.INPUT);
        given(rows.surroundings(), InvestigationWords.SURROUNDINGS_LABEL, InvestigationWords.SURROUNDINGS_HINT);
        given(rows.surroundings() + 1, InvestigationWords.MARK_LABEL, InvestigationWords.MARK_HINT);
        if (!plan.surroundings().isEmpty()) {
            type("B" + rows.surroundings(), plan.surroundings());
        }
        page.number("B" + (rows.surroundings() + 1), plan.mark());
        int start = rows.surroundings() + 2;
        String first = "B" + (head + 1) + ":" + places.lastJar() + (head + 1);
        String said = "B" + start + ":" + LAST + start;
        page.text("A" + start, language.words(InvestigationWords.START_LABEL)).look("A" + start, Look.LABEL);
        page.merge(said).look(said, Look.MESSAGE).height("A" + start, 2.6 * LINE);
        page.formula(
                "B" + start,
                "=IF(COUNT(" + first + ")=0;\"\";PLAN.SAFE(MAX(" + first + ");" + Curves.sign(plan.scale()) + "))");
        // The limit is compared on the scale that is typed.
        double limit = SafeStart.SCHOOL_LIMIT.in(plan.scale());
        Highlight.when(page, said, "MAX(" + Places.fixed(first) + ")>" + limit, Look.TROUBLE_MESSAGE);
        String what = language.words(InvestigationWords.READINGS);
        InputRules.on(page)
                .hint(
                        places.heads(),
                        language.words(InvestigationWords.PAGE),
                        language.words(InvestigationWords.NAME_HINT))
                .hint(
                        "B" + (head + 1) + ":" + places.lastJar() + rows.lastReading(),
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

    private void chart(XComponentContext office) throws com.sun.star.uno.Exception {
        List<String> times = places.cells("A");
        List<Curves.Jar> jars = new ArrayList<>();
        for (int jar = 0; jar < plan.jars(); jar++) {
            String column = CellName.column(1 + jar);
            jars.add(new Curves.Jar(column + rows.head(), places.cells(column)));
        }
        Curves.Source source = new Curves.Source(times, jars, places.surroundings(), places.mark(), plan.scale());
        int top = rows.checks() + 2 + rows.checkLines();
        page.text(CellName.of(Places.HELPERS, top), language.words(DrawingWords.BEHIND))
                .look(CellName.of(Places.HELPERS, top), Look.HINT);
        new Curves(page, source, Places.HELPERS, top + 1)
                .write(language)
                .draw(office, "curves", "A" + rows.chart() + ":" + LAST + rows.end(), language);
    }

    private Page across(int row, Look look) throws com.sun.star.uno.Exception {
        String cells = "A" + row + ":" + LAST + row;
        return page.merge(cells).look(cells, look);
    }
}
