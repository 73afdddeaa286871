package org.snugsheet.office.drawing;

import com.sun.star.uno.XComponentContext;
import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.functions.check.ProblemWords;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.page.ScatterChart;
import org.snugsheet.office.page.SeriesColor;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.words.Language;

/**
 * The curves of a block of readings: the numbers behind them on one page, and the chart.
 *
 * <p>All numbers are formulas. The readings are brought onto one scale, for a jar’s name may end in another; what cannot be read
 * stays as it is, so that the fit refuses it as it must.
 *
 * <p>Times and readings are counted from the top of the block, and below them is room: where a row is put in between or taken away, the
 * office makes the ranges longer or shorter, and each time keeps its own readings.
 */
public final class Curves {

    /** More curves with their bands are a tangle in one chart (common practice, no source). */
    public static final int MOST_JARS = 8;

    private static final int STEPS = 40;

    /** So many rows may be put in between the readings later. */
    static final int ROOM = 6;

    /** How the numbers are shown; the chart draws them as they are. */
    private static final String ROUNDED = "0.0";

    private final Page page;
    private final Source source;
    private final int left;
    private final int top;

    /**
     * Where the readings are.
     *
     * @param times the cells of the times, with their sheet
     * @param rows how many they are
     * @param jars the jars
     * @param surroundings the temperature around the jars, as an argument of a formula
     * @param mark the mark of the thermometer, as an argument of a formula
     * @param scale the scale of the chart, of the surroundings and of jars that name no other
     */
    public record Source(String times, int rows, List<Jar> jars, String surroundings, String mark, Scale scale) {

        /** A source; the list is copied. */
        public Source {
            jars = List.copyOf(jars);
        }
    }

    /**
     * One jar.
     *
     * @param name the cell with its name, with its sheet
     * @param readings the cells of its readings, with their sheet
     */
    public record Jar(String name, String readings) {}

    /**
     * Curves to be written.
     *
     * @param page the page that takes the numbers
     * @param source where the readings are
     * @param left the first column of the numbers, from 0
     * @param top their first row, from 0
     */
    public Curves(Page page, Source source, int left, int top) {
        this.page = page;
        this.source = source;
        this.left = left;
        this.top = top;
    }

    /**
     * Writes the numbers.
     *
     * @param language the language of their heads
     * @return these curves
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public Curves write(Language language) throws com.sun.star.uno.Exception {
        page.text(cell(0, 1), language.words(DrawingWords.MINUTES));
        page.text(cell(fitted(0) - 1, 1), language.words(DrawingWords.MINUTES));
        page.table(column(0), new TimesColumn(source.times(), rows()).formula(page, column(0)));
        String times = column(0);
        for (int step = 0; step <= STEPS; step++) {
            page.formula(
                    cell(fitted(0) - 1, 2 + step),
                    "=IF(COUNT(" + times + ")<2;\"\";MIN(" + times + ")+" + step + "*(MAX(" + times + ")-MIN(" + times
                            + "))/" + STEPS + ")");
        }
        for (int jar = 0; jar < source.jars().size(); jar++) {
            write(jar, language);
        }
        if (isAroundRead()) {
            AroundColumn read = new AroundColumn(source.surroundings(), source.times());
            page.text(
                    cell(around(), 1), language.words(DrawingWords.SURROUNDINGS).replace("~", ""));
            for (int row = 1; row <= rows(); row++) {
                page.formula(cell(around(), 1 + row), read.formula(row));
            }
        }
        int last = around();
        page.numbers(range(0, 2, last, 2 + Math.max(STEPS, rows())), ROUNDED);
        return this;
    }

    private void write(int jar, Language language) throws com.sun.star.uno.Exception {
        Jar from = source.jars().get(jar);
        String common = sign(source.scale());
        String name = "TRIM(" + from.name() + ")";
        // The head of a block may name the scale of its column: see the engine’s Block.
        page.formula(
                cell(1 + jar, 0),
                "=IF(OR(RIGHT(" + name + ";2)=\"°F\";RIGHT(" + name + ";3)=\"(F)\");\"F\";IF(OR(RIGHT(" + name
                        + ";2)=\"°C\";RIGHT(" + name + ";3)=\"(C)\");\"C\";" + common + "))");
        String own = cell(1 + jar, 0);
        page.formula(cell(1 + jar, 1), "=" + from.name() + "&\"\"");
        for (int row = 1; row <= rows(); row++) {
            String reading = "INDEX(" + from.readings() + ";" + row + ")";
            page.formula(
                    cell(1 + jar, 1 + row),
                    "=IF(" + row + ">ROWS(" + from.readings() + ");\"\";IF(ISBLANK(" + reading
                            + ");\"\";IFERROR(TEMP.CONVERT(TEMP.READ(" + reading + ";" + own + ");" + own + ";" + common
                            + ");" + reading + ")))");
        }
        String problems = "CHECK.ALL(" + arguments(jar) + ")";
        // The head of that column is no caution either; in a copy that goes on working #N/A stands below the last
        // finding.
        String sure = "IFERROR(INDEX(" + problems + ";0;3);\"\")&\"\"";
        page.formula(
                checked(jar),
                "=IFERROR(IF(SUMPRODUCT((" + sure + "<>\"\")*(" + sure + "<>\"" + language.words(ProblemWords.CAUTION)
                        + "\"))=1;\"OK\";INDEX(" + problems + ";2;2)&\"\");\"\")");
        String at = range(fitted(0) - 1, 2, fitted(0) - 1, 2 + STEPS);
        page.table(
                range(fitted(jar), 1, fitted(jar) + 2, 2 + STEPS),
                "=IF(" + checked(jar) + "=\"OK\";IFERROR(COOL.CURVE(" + at + ";" + arguments(jar) + ");\"\");\"\")");
    }

    /**
     * A formula that says whether a jar’s readings are in order: the first finding, and after a caution what holds the jar back. First of all
     * it says whether there are more readings than the page has room for.
     *
     * @param jar which jar, from 0
     * @param language the language of the checks
     * @return the formula
     */
    public String check(int jar, Language language) {
        String caution = "&\"\"=\"" + language.words(ProblemWords.CAUTION) + "\"";
        String problems = "CHECK.ALL(" + arguments(jar) + ")";
        String second = "INDEX(" + problems + ";3;";
        return "=IF(ROWS(" + source.times() + ")>" + rows() + ";\"" + language.words(DrawingWords.NO_ROOM)
                + "\";TRIM(CHECK.READINGS(" + arguments(jar) + ")&IFERROR(IF(AND(INDEX(" + problems + ";2;3)" + caution
                + ";NOT(" + second + "3)" + caution + "));\" \"&" + second + "2)&\" \"&" + second + "4);\"\");\"\"))";
    }

    /** The cell that says whether a jar’s readings are in order: with an open finding it has no curve. */
    private String checked(int jar) {
        return cell(fitted(jar), 0);
    }

    /**
     * The cells with the times in minutes.
     *
     * @return the cells
     */
    public String times() {
        return column(0);
    }

    /**
     * The cells with the readings of a jar, on the common scale.
     *
     * @param jar which jar, from 0
     * @return the cells
     */
    public String readings(int jar) {
        return column(1 + jar);
    }

    /**
     * The cell with the name of a jar.
     *
     * @param jar which jar, from 0
     * @return the cell
     */
    public String name(int jar) {
        return cell(1 + jar, 1);
    }

    /**
     * The first cell of a jar’s curve: it is empty as long as there is no curve.
     *
     * @param jar which jar, from 0
     * @return the cell
     */
    public String firstOfCurve(int jar) {
        return cell(fitted(jar), 2);
    }

    /**
     * Draws the chart.
     *
     * @param office the office’s context
     * @param cells the cells that it covers
     * @param language the language of its words
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void draw(XComponentContext office, String cells, Language language) throws com.sun.star.uno.Exception {
        List<Plot> plots = new ArrayList<>();
        for (int jar = 0; jar < source.jars().size(); jar++) {
            for (int band = 1; band <= 2; band++) {
                plots.add(curve(Plot.Form.EDGE, jar, band));
            }
        }
        for (int jar = 0; jar < source.jars().size(); jar++) {
            plots.add(curve(Plot.Form.LINE, jar, 0));
        }
        for (int jar = 0; jar < source.jars().size(); jar++) {
            plots.add(new Plot(Plot.Form.POINTS, cells(column(0)), cells(column(1 + jar)), cells(name(jar)), ink(jar)));
        }
        new ScatterChart(
                        language.words(DrawingWords.TITLE),
                        language.words(DrawingWords.MINUTES_AXIS),
                        language.say(
                                DrawingWords.TEMPERATURE_AXIS, source.scale().symbol()),
                        language.say(DrawingWords.IN_WORDS, source.jars().size()),
                        plots)
                .draw(office, page, "", cells);
    }

    private Plot curve(Plot.Form form, int jar, int line) {
        String at = range(fitted(0) - 1, 2, fitted(0) - 1, 2 + STEPS);
        String up = range(fitted(jar) + line, 2, fitted(jar) + line, 2 + STEPS);
        return new Plot(form, cells(at), cells(up), cells(name(jar)), ink(jar));
    }

    private static SeriesColor ink(int jar) {
        return SeriesColor.forJars().get(jar % MOST_JARS);
    }

    private String arguments(int jar) {
        String common = sign(source.scale());
        String own = cell(1 + jar, 0);
        String around = isAroundRead() ? column(around()) : source.surroundings();
        return column(0) + ";" + column(1 + jar) + ";" + around + ";TEMP.CHANGE(" + source.mark() + ";" + own + ";"
                + common + ");" + common;
    }

    private Plot.Cells cells(String address) {
        return new Plot.Cells(page, address);
    }

    private int fitted(int jar) {
        return 2 + source.jars().size() + 3 * jar;
    }

    private boolean isAroundRead() {
        return AroundColumn.is(source.surroundings(), source.rows());
    }

    /** The column behind those of the last jar. */
    private int around() {
        return fitted(source.jars().size());
    }

    private int rows() {
        return source.rows() + ROOM;
    }

    private String column(int column) {
        return range(column, 2, column, 1 + rows());
    }

    private String cell(int column, int row) {
        return CellName.of(left + column, top + row);
    }

    private String range(int fromColumn, int fromRow, int toColumn, int toRow) {
        return cell(fromColumn, fromRow) + ":" + cell(toColumn, toRow);
    }

    /**
     * A scale as a formula names it.
     *
     * @param scale the scale
     * @return its letter in quotation marks
     */
    public static String sign(Scale scale) {
        return scale == Scale.FAHRENHEIT ? "\"F\"" : "\"C\"";
    }
}
