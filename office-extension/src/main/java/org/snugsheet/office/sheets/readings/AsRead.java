package org.snugsheet.office.sheets.readings;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.NamedRanges;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.page.TablePart;
import org.snugsheet.office.sheets.builder.Book;

/**
 * A page behind the others with the typed block as the functions take it, at the same cells: clock times are minutes since the
 * first of them. Beside it, what the functions find in it and say of each jar. Nobody types here.
 *
 * <p>All pages ask this one whether a jar can be used, so that no two of them disagree.
 */
public final class AsRead {

    public static final String NAME = "As read";

    /** What is said of a jar that has a name and no readings. */
    static final String WAITING = "waiting";

    /** What can hurt: where it is. */
    private static final int IN_A_JAR = 1;

    private static final int AROUND = 2;

    private static final String PARTS_OF_A_DAY = "typed_times;\">0\";typed_times;\"<1\"";

    private static final int HELPERS = 6;
    private static final int SHEET_COLUMNS = 9;
    private static final int CHECK_COLUMNS = 5;

    private final Page page;
    private final Page typed;
    private final Grid grid;
    private final String scale;
    private final String options;

    private AsRead(Page page, Page typed, Grid grid, String scale, String options) {
        this.page = page;
        this.typed = typed;
        this.grid = grid;
        this.scale = scale;
        this.options = options;
    }

    /**
     * Adds the page, and the names {@code times}, {@code block} and {@code readings} for what is on it; {@code check},
     * {@code own_scale} and {@code around} for each jar in its own column.
     *
     * @param book the document
     * @param typed the page that is typed on
     * @param grid where
     * @param scale a formula for the scale of the page
     * @param options the arguments behind the block: surroundings, mark, scale
     * @return the page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static Page add(Book book, Page typed, Grid grid, String scale, String options)
            throws com.sun.star.uno.Exception {
        Page page = book.lastPage(NAME);
        new AsRead(page, typed, grid, scale, options).write(book);
        return page;
    }

    private void write(Book book) throws com.sun.star.uno.Exception {
        writeTop(page, grid);
        names(book.names());
        mirror(book, page, grid);
        String there = "=$'" + typed.name() + "'.";
        for (char column = grid.first(); column <= grid.last(); column++) {
            page.formula(column + "" + grid.head(), there + column + grid.head() + "&\"\"");
        }
        jars();
        sameScale();
        findings();
        new PrintSetup(PrintSetup.Way.LANDSCAPE, "Behind the readings").applyUnprinted(page);
    }

    private void names(NamedRanges names) {
        int last = grid.lastRow();
        names.fixed("typed_times", typed, grid.minutes())
                .fixed("typed_readings", typed, grid.readings())
                .fixed("typed_heads", typed, grid.heads())
                .fixed("grid", typed, grid.typed())
                .fixed("times", page, grid.minutes())
                .fixed("block", page, grid.block())
                .fixed("all_readings", page, grid.readings())
                .fixed("jars", page, grid.heads())
                .sameColumn("readings", page, sameScale(grid.first(), grid.first()))
                .fixed("same_scale", page, sameScale(grid.first(), grid.last()))
                .sameColumn("line", page, grid.first() + "" + (last + 2))
                .sameColumn("own_scale", page, grid.first() + "" + (last + 3))
                .sameColumn("around", page, grid.first() + "" + (last + 4))
                .sameColumn("check", page, grid.first() + "" + (last + 5))
                .fixed("checks", page, grid.first() + "" + (last + 5) + ":" + grid.last() + (last + 5))
                .fixed("own_scales", page, grid.first() + "" + (last + 3) + ":" + grid.last() + (last + 3))
                .fixed("names_read", page, grid.first() + "" + (last + 6) + ":" + grid.last() + (last + 6))
                .fixed("lines", page, grid.first() + "" + (last + 2) + ":" + grid.last() + (last + 2))
                .fixed("each_jar", page, sheetCells())
                .fixed("findings", page, findingCells())
                .fixed("found_jar", page, found(0))
                .fixed("found_row", page, found(1))
                .fixed("found", page, found(2))
                .fixed("what_to_do", page, found(4))
                .fixed("accused", page, found(CHECK_COLUMNS))
                .fixed("hot_lines", page, found(CHECK_COLUMNS + 1))
                .fixed("hot", page, grid.first() + "" + (last + 7));
    }

    public static void writeTop(Page page, Grid grid) throws com.sun.star.uno.Exception {
        page.text("A1", "As the functions read it")
                .look("A1", CellStyleName.TITLE)
                .height("A1", 10);
        page.text(
                "A2",
                "Nothing to type here: what was typed on the first page, at the same cells (" + grid.block()
                        + "), with clock times as minutes; below it, what the checks find.");
        page.width("A1:Z1", 24);
    }

    /** What is typed, at the same cells of another page, by the names {@code typed_times} and {@code typed_readings}. */
    public static void mirror(Book book, Page page, Grid grid) throws com.sun.star.uno.Exception {
        // Somebody who types 9:05 types a part of a day, less than 1; texts such as 9.05 am are left to COOL.MINUTES,
        // too.
        // Readings of one lesson lie within a fifth of a day, or pass noon or midnight on a clock of twelve hours.
        book.names()
                .computed(
                        "by_clock",
                        "OR(SUMPRODUCT(--ISTEXT(typed_times))>0;AND(COUNT(typed_times)>1;MAX(typed_times)<1;"
                                + "OR(MAX(typed_times)-MIN(typed_times)<0.2;"
                                + "INDEX(typed_times;COUNT(typed_times))<MAX(typed_times))))")
                // Two parts of a day close together beside a whole minute: no thermometer is read every few seconds
                // first.
                .computed(
                        "mixed_times",
                        "AND(COUNTIFS(" + PARTS_OF_A_DAY + ")>1;COUNTIF(typed_times;\">=1\")>0;MAXIFS(typed_times;"
                                + PARTS_OF_A_DAY + ")-MINIFS(typed_times;" + PARTS_OF_A_DAY + ")<1/6)");
        page.look(grid.block(), CellStyleName.RESULT).look(grid.heads(), CellStyleName.HEAD);
        page.text(grid.times() + "" + grid.head(), "minutes").look(grid.times() + "" + grid.head(), CellStyleName.HEAD);
        page.table(
                grid.minutes(),
                "=IFERROR(IF(mixed_times;\"?\";IF(by_clock;COOL.MINUTES(typed_times);" + asTyped("typed_times") + "));"
                        + asTyped("typed_times") + ")");
        // An error that somebody typed spoils its own jar only.
        page.table(grid.readings(), "=IFERROR(" + asTyped("typed_readings") + ";\"?\")");
    }

    private static String asTyped(String cells) {
        return "IF(LEN(" + cells + ")=0;\"\";" + cells + ")";
    }

    private void jars() throws com.sun.star.uno.Exception {
        int row = grid.lastRow() + 2;
        String[] labels = {"line below", "own scale", "around", "can it be used", "name", "too hot"};
        for (int i = 0; i < HELPERS; i++) {
            page.text(grid.times() + "" + (row + i), labels[i])
                    .look(grid.times() + "" + (row + i), CellStyleName.LABEL);
        }
        page.look(grid.first() + "" + row + ":" + grid.last() + (row + HELPERS - 1), CellStyleName.RESULT);
        String sheet = sheetCells();
        page.look(sheet, CellStyleName.RESULT).growingTable(sheet, "COOL.SHEET(block;" + options + ")");
        String index = "INDEX(" + fixed(sheet) + ";line+1;";
        for (char column = grid.first(); column <= grid.last(); column++) {
            String before = "$" + grid.times() + row + ":" + (char) (column - 1) + row;
            String readings =
                    "$'" + typed.name() + "'." + column + "$" + grid.firstRow() + ":" + column + "$" + grid.lastRow();
            page.formula(
                    column + "" + row,
                    "=IF(LEN(" + column + grid.head() + ")+COUNTA(" + readings + ")=0;\"\";COUNT(" + before + ")+1)");
            page.formula(column + "" + (row + 1), "=IF(line=\"\";" + scale + ";RIGHT(" + index + "7)&\"\";1))");
            page.formula(
                    column + "" + (row + 2),
                    "=IF(AND(own_scale<>" + scale + ";ISNUMBER(surroundings));surroundings&\" °\"&" + scale + ";"
                            + asTyped("surroundings") + ")");
            page.formula(column + "" + (row + 4), "=IF(line=\"\";\"\";" + index + "1)&\"\")");
            page.formula(
                    column + "" + (row + 3),
                    "=IF(line=\"\";\"\";IF(COUNTA(" + readings + ")=0;\"" + WAITING
                            + "\";IF(" + index + "9)&\"\"=\"OK\";\"OK\";IFERROR(" + said(column + "" + (row + 4)) + ";"
                            + index + "9)&\"\"))))");
        }
    }

    /** What is wrong with a jar, and what to do about it. */
    private static String said(String jar) {
        return finding("MATCH(" + jar + ";accused;0)");
    }

    /** The finding of a line of the table, and what to do about it. */
    private static String finding(String place) {
        return "TRIM(INDEX(found;" + place + ")&\" \"&INDEX(what_to_do;" + place + "))";
    }

    /** The readings on the scale of the page: those of a jar with a scale of its own bear its sign. */
    private void sameScale() throws com.sun.star.uno.Exception {
        page.look(sameScale(grid.first(), grid.last()), CellStyleName.RESULT);
        for (char column = grid.first(); column <= grid.last(); column++) {
            for (int row = 0; row < grid.rows(); row++) {
                String reading = column + "" + (grid.firstRow() + row);
                page.formula(
                        column + "" + (sameScaleTop() + row),
                        "=IF(AND(ISNUMBER(" + reading + ");own_scale<>" + scale + ");" + reading + "&\" °\"&own_scale;"
                                + reading + ")");
            }
        }
    }

    private int sameScaleTop() {
        return grid.lastRow() + 8;
    }

    private String sameScale(char from, char to) {
        return from + "" + sameScaleTop() + ":" + to + (sameScaleTop() + grid.rows() - 1);
    }

    private void findings() throws com.sun.star.uno.Exception {
        String cells = findingCells();
        String inJars = "COUNTIF(hot_lines;" + IN_A_JAR + ")";
        String around = "MATCH(" + AROUND + ";hot_lines;0)";
        // Behind hot water there is room for what it is, up to its colon; all of it is said once the water is right.
        String cold = "LEFT(INDEX(found;" + around + ");FIND(\":\";INDEX(found;" + around + ")&\":\")-1)&\".\"";
        for (int row = findingTop() + 1; row <= findingLast(); row++) {
            // The jar that a finding holds back; a caution does not.
            // Hot water in a jar goes before the cold around all of them.
            page.formula(
                    "G" + row,
                    "=IF(" + JarFindings.canHurt("D" + row) + ";IF(A" + row + "=\"all jars\";" + AROUND + ";" + IN_A_JAR
                            + ");\"\")");
            page.formula(
                    "F" + row,
                    "=IF(OR(C" + row + "=\"\";C" + row + "=\"OK\";D" + row + "=\"a caution\";G" + row + "<>\"\");\"\";A"
                            + row + ")");
        }
        page.formula(
                grid.first() + "" + (grid.lastRow() + 7),
                "=IFERROR(" + finding("MATCH(" + IN_A_JAR + ";hot_lines;0)") + "&IF(" + inJars
                        + "=1;\"\";\" The same is true of \"&(" + inJars + "-1)&\" more.\")&IFERROR(\" \"&" + cold
                        + ";\"\");IFERROR(" + finding(around) + ";\"\"))");
        // Joined with "" again, or a text of the table would equal no other text.
        page.look(cells, CellStyleName.RESULT)
                .table(
                        cells,
                        "=IFERROR(" + TablePart.of(page, cells, "CHECK.SHEET(block;" + options + ")", 1, 1)
                                + "&\"\";\"\")");
    }

    private String sheetCells() {
        int top = sameScaleTop() + grid.rows() + 1;
        return "A" + top + ":" + (char) ('A' + SHEET_COLUMNS - 1) + (top + grid.jars());
    }

    private int findingTop() {
        return sameScaleTop() + grid.rows() + 3 + grid.jars();
    }

    private int findingLast() {
        return findingTop() + 2 * grid.jars() + 6;
    }

    private String findingCells() {
        return "A" + findingTop() + ":" + (char) ('A' + CHECK_COLUMNS - 1) + findingLast();
    }

    private String found(int column) {
        char letter = (char) ('A' + column);
        return letter + "" + (findingTop() + 1) + ":" + letter + findingLast();
    }

    private static String fixed(String cells) {
        return cells.replaceAll("([A-Z]+)([0-9]+)", "\\$$1\\$$2");
    }

    /** The row behind all others, from which on more may be kept on this page. */
    public static String below(Grid grid) {
        return "A" + (grid.lastRow() + grid.rows() + 28 + 3 * grid.jars());
    }
}
