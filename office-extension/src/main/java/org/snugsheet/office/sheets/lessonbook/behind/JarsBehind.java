package org.snugsheet.office.sheets.lessonbook.behind;

import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.functions.check.ProblemWords;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.NamedRanges;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.TablePart;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.sheets.lessonbook.layout.JarsRows;
import org.snugsheet.office.sheets.lessonbook.layout.Names;
import org.snugsheet.office.sheets.lessonbook.readings.ReadingsPage;
import org.snugsheet.office.sheets.readings.AsRead;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.words.Language;

/**
 * The readings as the functions take them, and one line for each jar: what is expected of it, what the checks find, and what its curve
 * tells. A jar with an open finding has no curve, so that no page can claim anything of it.
 */
public final class JarsBehind {

    // The columns of the table with one line for each jar.
    private static final String NUMBER = "A";
    private static final String WRAP = "B";
    private static final String OWN = "C";
    private static final String THICKNESS = "D";
    private static final String MATERIAL = "E";
    private static final String EXPECTED = "F";
    private static final String READ = "G";
    private static final String STATE = "H";
    private static final String WORD = "I";
    private static final String FINDING = "J";
    private static final String HURT = "K";
    private static final String FOUND_ROW = "L";
    private static final String RATE = "M";
    private static final String RATE_ERROR = "N";
    private static final String HALF = "O";
    private static final String HALF_ERROR = "P";
    private static final String SUBTRACTED = "Q";
    private static final String ALSO_COLD = "AK";
    // The layers of a jar: its glass, its wrap, the bag around it.
    private static final String GLASS = "S";
    private static final String BAG = "U";
    private static final String GLASS_NAME = "V";
    private static final String BAG_NAME = "X";

    // A jar for jam: glass of 3 mm, two and a half times as high as its radius, 0.7 J/K of glass for each milliliter
    // (common
    // practice, no source).
    private static final String RADIUS = "(400*volume/PI())^(1/3)";
    private static final String GLASS_HEAT = "(0.7*volume)";
    private static final double BAG_MILLIMETERS = 0.05;
    // Where a jar is on its way down for most of a lesson, as a share of how much warmer than the surroundings it
    // began.
    private static final double ON_ITS_WAY = 0.75;

    private final Page page;
    private final Page readings;
    private final BookPlan plan;
    private final JarsRows rows;
    private final Language language;
    private final NamedRanges names;

    /**
     * All jars, worked out.
     *
     * @param page the page behind the others
     * @param readings the page with the readings
     * @param plan how large the book is
     * @param book the book
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public JarsBehind(Page page, Page readings, BookPlan plan, Book book) throws com.sun.star.uno.Exception {
        this.page = page;
        this.readings = readings;
        this.plan = plan;
        this.rows = new JarsRows(plan);
        this.language = book.language();
        this.names = book.names();
    }

    /**
     * Writes it.
     *
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public void write() throws com.sun.star.uno.Exception {
        name();
        times();
        for (int jar = 0; jar < plan.jars(); jar++) {
            copy(jar);
            about(jar);
            expected(jar);
            findings(jar);
            fitted(jar);
        }
        new RankingBehind(page, plan, names).write();
        new CurvesBehind(page, plan).write();
    }

    private void name() {
        names.fixed(Names.TIMES, page, rows.times())
                .fixed(Names.PLANNED, page, rows.planned())
                .fixed("jar_heads", page, rows.heads())
                .fixed("trusted", page, rows.trusted());
        String[][] columns = {
            {Names.NUMBERS, NUMBER},
            {Names.WRAPS, WRAP},
            {"own_scales", OWN},
            {Names.THICKNESSES, THICKNESS},
            {Names.EXPECTED, EXPECTED},
            {Names.STATES, STATE},
            {Names.WORDS, WORD},
            {Names.FINDINGS, FINDING},
            {Names.HURTS, HURT},
            {Names.FOUND_ROWS, FOUND_ROW},
            {Names.RATES, RATE},
            {Names.RATE_ERRORS, RATE_ERROR},
            {Names.HALF_TIMES, HALF},
            {Names.HALF_ERRORS, HALF_ERROR},
            {Names.SUBTRACTED, SUBTRACTED},
            {Names.ALSO_COLD, ALSO_COLD}
        };
        for (String[] each : columns) {
            names.fixed(each[0], page, rows.ofJars(each[1]));
        }
        AsRead.nameClock(names);
    }

    private void times() throws com.sun.star.uno.Exception {
        String head = String.valueOf(rows.block());
        String typed = "IF(LEN(typed_times)=0;\"\";typed_times)";
        page.table(
                rows.times(),
                "=IF(COUNTA(typed_times)=0;planned;IFERROR(IF(mixed_times;\"?\";IF(by_clock;COOL.MINUTES(typed_times);"
                        + typed + "));" + typed + "))");
        page.look(rows.times(), CellStyleName.RESULT);
        String column = rows.planned().split("[0-9]")[0];
        for (int i = 0; i < plan.readings(); i++) {
            page.formula(column + (rows.block() + 1 + i), "=IF(" + i + "*interval<=lesson;" + i + "*interval;\"\")");
        }
        page.text(column + head, Names.PLANNED);
        page.text("A" + head, Names.TIMES);
    }

    /** An error that somebody typed spoils its own jar only; a thermometer with a scale of its own is read with its sign. */
    private void copy(int jar) throws com.sun.star.uno.Exception {
        String column = CellName.column(1 + jar);
        String trusted = CellName.column(rows.trustedColumn() + jar);
        page.formula(column + rows.block(), "=" + WRAP + rows.jar(jar));
        for (int i = 0; i < plan.readings(); i++) {
            int row = rows.block() + 1 + i;
            String typed = "$'" + readings.name() + "'." + ReadingsPage.column(jar) + (ReadingsPage.FIRST_ROW + i);
            String own = OWN + rows.jar(jar);
            page.formula(
                    column + row,
                    "=IFERROR(IF(LEN(" + typed + ")=0;\"\";IF(AND(ISNUMBER(" + typed + ");" + own + "<>scale);" + typed
                            + "&\" °\"&" + own + ";" + typed + "));\"?\")");
            page.formula(trusted + row, "=IF(" + STATE + rows.jar(jar) + "=2;" + column + row + ";\"\")");
        }
        page.look(rows.readings(jar), CellStyleName.RESULT);
    }

    private void about(int jar) throws com.sun.star.uno.Exception {
        int row = rows.jar(jar);
        String typed = "INDEX(typed_wraps;" + (jar + 1) + ")";
        String thick = "INDEX(typed_thicknesses;" + (jar + 1) + ")";
        page.number(NUMBER + row, jar + 1);
        page.formula(READ + row, "=COUNTIF(" + rows.readings(jar) + ";\"?*\")+COUNT(" + rows.readings(jar) + ")");
        page.formula(
                WRAP + row,
                "=IF(LEN(TRIM(" + typed + "))>0;TRIM(" + typed + ");IF(" + READ + row + "=0;\"\";"
                        + FormulaText.quoted(language.say(BookWords.JAR, jar + 1)) + "))");
        String scale = "INDEX(typed_scales;" + (jar + 1) + ")";
        page.formula(
                OWN + row, "=IF(LEN(" + scale + ")=0;scale;IF(ISNUMBER(SEARCH(\"F\";" + scale + "));\"F\";\"C\"))");
        page.formula(MATERIAL + row, "=IF(" + WRAP + row + "=bare_word;\"\";" + WRAP + row + ")");
        page.formula(
                THICKNESS + row,
                "=IF(" + MATERIAL + row + "=\"\";\"\";IF(ISNUMBER(" + thick + ");" + thick + ";IFERROR(WRAP.USUAL("
                        + MATERIAL + row + ");\"\")))");
    }

    private void expected(int jar) throws com.sun.star.uno.Exception {
        int row = rows.jar(jar);
        page.number(GLASS + row, 3).text(GLASS_NAME + row, "glass");
        page.formula("T" + row, "=" + THICKNESS + row)
                .formula("W" + row, "=IF(T" + row + "=\"\";\"\";" + MATERIAL + row + ")");
        String bagged = "AND(place<3;kept_dry=1;T" + row + "<>\"\")";
        page.formula(BAG + row, "=IF(" + bagged + ";" + BAG_MILLIMETERS + ";\"\")");
        page.formula(BAG_NAME + row, "=IF(" + bagged + ";\"plastic film\";\"\")");
        page.formula(
                EXPECTED + row,
                "=IF(OR(" + WRAP + row + "=\"\";AND(" + MATERIAL + row + "<>\"\";" + THICKNESS + row
                        + "=\"\"));\"\";IFERROR(WRAP.EXPECT(volume;" + RADIUS + ";" + GLASS + row + ":" + BAG + row
                        + ";"
                        + GLASS_NAME + row + ":" + BAG_NAME + row + ";cold+" + ON_ITS_WAY
                        + "*(start-cold);cold;where;;;room;" + GLASS_HEAT + ";scale);\"\"))");
    }

    private void findings(int jar) throws com.sun.star.uno.Exception {
        int row = rows.jar(jar);
        int top = rows.findings(jar);
        int end = top + JarsRows.FINDINGS - 1;
        String table = "A" + top + ":D" + end;
        page.table(
                table,
                "=IF(OR(" + READ + row + "=0;around_known=0);\"\";IFERROR("
                        + TablePart.of(page, table, "CHECK.ALL(" + arguments(jar) + ")", 2, 1) + "&\"\";\"\"))");
        for (int line = top; line <= end; line++) {
            page.formula(
                    "E" + line,
                    "=IF(C" + line + "=\"\";\"\";IF(C" + line + "=" + quoted(ProblemWords.CAN_HURT) + ";IF(A" + line
                            + "=\"\";\"cold\";\"hot\");IF(C" + line + "=" + quoted(ProblemWords.CAUTION)
                            + ";\"caution\";\"slip\")))");
        }
        String kinds = "E" + top + ":E" + end;
        String slip = "MATCH(\"slip\";" + kinds + ";0)";
        String hot = "MATCH(\"hot\";" + kinds + ";0)";
        String cold = "MATCH(\"cold\";" + kinds + ";0)";
        page.formula(HURT + row, "=IFERROR(" + said(top, end, hot) + ";IFERROR(" + said(top, end, cold) + ";\"\"))");
        // Neither hides the other.
        page.formula(ALSO_COLD + row, "=IF(ISNUMBER(" + hot + ");IFERROR(" + said(top, end, cold) + ";\"\");\"\")");
        String check = "CHECK.READINGS(" + arguments(jar) + ")";
        page.formula(
                FINDING + row,
                "=IF(" + READ + row + "=0;\"\";IF(around_known=0;"
                        + FormulaText.quoted(language.say(BehindWords.TYPE_COLD, language.words(BookWords.START_PAGE)))
                        + ";IF(mixed_times;" + quoted(BehindWords.MIXED_TIMES) + ";IFERROR(" + said(top, end, slip)
                        + ";IF(COUNTIF(" + kinds + ";\"?*\")>0;\"\";IF(" + check + "=\"OK\";\"\";" + check + "))))))");
        page.formula(
                STATE + row,
                "=IF(" + WRAP + row + "=\"\";0;IF(" + READ + row + "=0;1;IF(around_known=0;5;IF(" + FINDING + row
                        + "=\"\";2;IF(AND(" + READ + row + "<3;ISERROR(" + slip + "));4;3)))))");
        page.formula(FOUND_ROW + row, "=IFERROR(VALUE(INDEX(A" + top + ":A" + end + ";" + slip + "));0)");
        page.formula(
                WORD + row,
                "=CHOOSE(" + STATE + row + "+1;\"\";" + quoted(BehindWords.WAITING) + ";" + quoted(BehindWords.OK)
                        + ";IF(" + FOUND_ROW
                        + row + "=0;" + quoted(BehindWords.SEE_BELOW) + ";"
                        + FormulaText.sentence(language, BehindWords.LOOK_AT, "INDEX(times;" + FOUND_ROW + row + ")")
                        + ");" + quoted(BehindWords.MORE) + ";" + quoted(BehindWords.HOW_COLD) + ")");
    }

    /** What is found and what to do about it; its place is the minute, not the row, which is nowhere to be seen. */
    private String said(int top, int end, String place) {
        String what = "INDEX(B" + top + ":B" + end + ";" + place + ")";
        String row = "INDEX(A" + top + ":A" + end + ";" + place + ")";
        String rest = "MID(" + what + ";FIND(\":\";" + what + ")+2;999)";
        String seen = FormulaText.sentence(language, BehindWords.AT_MINUTE, "INDEX(times;VALUE(" + row + "))", rest);
        return "TRIM(IF(LEN(" + row + ")=0;" + what + ";IF(IFERROR(FIND(\")\";" + what + ");99)<IFERROR(FIND(\":\";"
                + what + ");0);" + seen + ";" + what + "))&\" \"&INDEX(D" + top + ":D" + end + ";" + place + "))";
    }

    private void fitted(int jar) throws com.sun.star.uno.Exception {
        value(RATE, jar, "COOL.RATE");
        value(RATE_ERROR, jar, "COOL.RATE.ERROR");
        value(HALF, jar, "COOL.HALFTIME");
        value(HALF_ERROR, jar, "COOL.HALFTIME.ERROR");
        String shown = rows.shown(jar);
        // The first that was read and the last. Cell by cell, for some programs look at one cell of a range only when
        // they are asked
        // whether it is a number.
        StringBuilder first = new StringBuilder();
        String column = shown.replaceAll("[0-9].*", "");
        int top = Integer.parseInt(shown.replaceAll(":.*|[A-Z]", ""));
        for (int i = 0; i < plan.readings(); i++) {
            String cell = column + (top + i);
            first.append("IF(ISNUMBER(" + cell + ");" + cell + ";");
        }
        first.append("0").append(")".repeat(plan.readings()));
        page.formula(
                SUBTRACTED + rows.jar(jar),
                "=IF(OR(" + STATE + rows.jar(jar) + "<>2;COUNT(" + shown + ")<2);\"\";" + first + "-LOOKUP(9E99;"
                        + shown + "))");
    }

    private void value(String column, int jar, String function) throws com.sun.star.uno.Exception {
        page.formula(
                column + rows.jar(jar),
                "=IF(" + STATE + rows.jar(jar) + "=2;IFERROR(" + function + "(" + arguments(jar) + ");\"\");\"\")");
    }

    /** A thermometer on the other scale has marks of its own. */
    private String arguments(int jar) {
        String own = OWN + rows.jar(jar);
        String mark = "IF(" + own + "=scale;mark;TEMP.CHANGE(IF(" + own + "=\"F\";" + usualMark(Scale.FAHRENHEIT) + ";"
                + usualMark(Scale.CELSIUS) + ");" + own + ";scale))";
        return "times;" + rows.readings(jar) + ";around;" + mark + ";scale";
    }

    private static String usualMark(Scale scale) {
        return scale == Scale.FAHRENHEIT ? "2" : "1";
    }

    private String quoted(org.snugsheet.engine.Phrase phrase) {
        return FormulaText.quoted(language, phrase);
    }
}
