package org.snugsheet.office.investigation;

import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.office.drawing.Curves;
import org.snugsheet.office.functions.check.ProblemWords;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.TablePart;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.words.Language;

/**
 * What the checks find, above the readings: beside the name of each jar the first finding, with its place as a person sees it, and
 * the cells in question marked. Nothing is found before anything is typed, and missing surroundings are asked for once.
 */
final class ResultsSection {

    private static final String LAST = CellAddresses.LAST;

    /** The column behind a jar’s findings. */
    private static final int WARMEST = 5;

    /** As many findings of one jar mark their cells. */
    private static final int MOST = 3;

    /** Two lines of a finding; no more, so that even with eight jars the page opens with the cautions in sight. */
    private static final double NAME_HEIGHT = 7.6;

    private final Investigation plan;
    private final Language language;
    private final Page page;
    private final Rows rows;
    private final CellAddresses places;
    private final HelperCells behind;

    ResultsSection(Investigation plan, Language language, Page page, CellAddresses places, HelperCells behind) {
        this.plan = plan;
        this.language = language;
        this.page = page;
        this.rows = places.rows();
        this.places = places;
        this.behind = behind;
    }

    /** How many rows they take behind the page, those of the block above them included. */
    static int rows(Investigation plan) {
        return plan.times().size() + 2 + MOST * plan.jars();
    }

    void write(Curves curves) throws com.sun.star.uno.Exception {
        surroundings();
        for (int jar = 0; jar < plan.jars(); jar++) {
            jar(jar);
            warmest(jar, curves.readings(jar));
        }
    }

    /** The cells with the warmest water of each jar, on the scale of the page. */
    String warmest() {
        return helper(0, WARMEST, 0) + ":" + helper(plan.jars() - 1, WARMEST, MOST - 1);
    }

    /** The heading of a part. */
    static void section(Page page, Language language, int row, InvestigationWords words)
            throws com.sun.star.uno.Exception {
        page.look("A" + row + ":" + LAST + row, CellStyleName.SECTION).text("A" + row, language.words(words));
        page.height("A" + row, 8);
    }

    private void surroundings() throws com.sun.star.uno.Exception {
        String missing = "AND(ISBLANK(" + CellAddresses.fixed(places.surroundings()) + ");COUNTA("
                + CellAddresses.fixed(places.readings()) + ")>0)";
        String label =
                language.say(InvestigationWords.SURROUNDINGS_LABEL, plan.scale().symbol());
        page.formula(
                "B" + rows.surroundings(),
                "=IF(" + missing + ";\"" + language.words(InvestigationWords.SURROUNDINGS_ASKED) + "\";\"" + label
                        + "\")");
        Highlight.when(
                page,
                "B" + rows.surroundings() + ":" + LAST + rows.surroundings(),
                missing,
                CellStyleName.TROUBLE_MESSAGE);
    }

    private void jar(int jar) throws com.sun.star.uno.Exception {
        int row = rows.name(jar);
        String said = "C" + row + ":" + LAST + row;
        page.text("B" + row, language.say(InvestigationWords.JAR_LABEL, jar + 1))
                .look("B" + row, CellStyleName.HINT);
        page.merge(said).look(said, CellStyleName.SMALL_MESSAGE).height("A" + row, NAME_HEIGHT);
        String table = helper(jar, 0, 0) + ":" + helper(jar, 4, MOST - 1);
        String quiet = "OR(COUNTA(" + places.readings(jar) + ")=0;ISBLANK(" + places.surroundings() + "))";
        String check = "CHECK.SHEET(" + behind.alone(jar) + places.common();
        page.table(table, "=IF(" + quiet + ";\"\";IFERROR(" + TablePart.of(page, table, check, 2, 1) + ";\"\"))");
        // There is no room for two, and how hot the water is, is said below the jars too.
        // A slip without a row is that of the scale, of which the caution speaks itself.
        String first = "IF(AND(" + isHot(jar, 0) + ";" + helper(jar, 1, 1) + "<>\"\";" + helper(jar, 3, 1) + "&\"\"<>\""
                + language.words(ProblemWords.CAUTION) + "\");2;1)";
        String what = "INDEX(" + helper(jar, 2, 0) + ":" + helper(jar, 2, 1) + ";" + first + ")";
        String toDo = "INDEX(" + helper(jar, 4, 0) + ":" + helper(jar, 4, 1) + ";" + first + ")";
        // While the first readings are taken, that they are few is no news; a slip in one of them has its row, and is
        // told.
        String early = "AND(COUNTA(" + places.readings(jar) + ")<" + CellAddresses.FEWEST_READINGS + ";"
                + helper(jar, 1, 0) + "=\"\")";
        page.formula("C" + row, "=IF(" + early + ";\"\";TRIM(" + what + "&\" \"&" + toDo + "))");
        Highlight.unlessOk(page, said, CellAddresses.fixed("C" + row), CellStyleName.SMALL_TROUBLE);
        String found = CellAddresses.fixed(helper(jar, 1, 0) + ":" + helper(jar, 1, MOST - 1));
        Highlight.when(
                page, places.readings(jar), "COUNTIF(" + found + ";ROW()-" + rows.head() + ")>0", CellStyleName.FOUND);
    }

    /** The first reading of a jar; its warmest where the checks find that too hot, so that a slip of the pen is not taken for water. */
    private void warmest(int jar, String readings) throws com.sun.star.uno.Exception {
        double steam = new Temperature(100).in(plan.scale());
        String first = readings.substring(0, readings.indexOf(':'));
        page.formula(
                helper(jar, WARMEST, 0),
                "=IF(OR(" + isHot(jar, 0) + ";" + isHot(jar, 1) + ";" + isHot(jar, 2) + ");MAXIFS(" + readings + ";"
                        + readings + ";\"<=\"&" + steam + ");IF(" + first + "<=" + steam + ";" + first + ";\"\"))");
    }

    /** Whether a finding is about hot water in the jar: one of those that can hurt, and it has a row; &"" or no text equals another. */
    private String isHot(int jar, int line) {
        return "AND(" + helper(jar, 3, line) + "&\"\"=\"" + language.words(ProblemWords.CAN_HURT) + "\";"
                + helper(jar, 1, line) + "<>\"\")";
    }

    private String helper(int jar, int column, int line) {
        return CellName.of(CellAddresses.HELPERS + column, plan.times().size() + 2 + MOST * jar + line);
    }
}
