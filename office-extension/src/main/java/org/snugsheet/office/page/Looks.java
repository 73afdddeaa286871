package org.snugsheet.office.page;

import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellHoriJustify;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Puts the cell styles of {@link Look} into a document.
 *
 * <p>An input cell is told from the others by its box, not by its colour alone: a grey print and a colour-blind reader show
 * it too.
 */
public final class Looks {
    /** The type of all pages. */
    public static final String FONT = "Liberation Sans";

    private static final String TROUBLE_WORDS = ";;;\"look below\"";

    /** The style on which all others rest in a document of somebody’s own. */
    static final String OUR_PAPER = "Snug paper";

    /** Those that say how numbers are written. */
    private static final Set<Look> CODED = EnumSet.of(Look.COUNT, Look.TENTHS, Look.TROUBLE);

    private final XSpreadsheetDocument document;
    private final String parent;

    private Looks(XSpreadsheetDocument document, String parent) {
        this.document = document;
        this.parent = parent;
    }

    /**
     * Puts the styles into a new document, all of whose pages are ours.
     *
     * @param document the document
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void install(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        CellStyle.standard(document).font(FONT, 10).ink(Palette.TEXT);
        new Looks(document, CellStyle.STANDARD).define();
    }

    /**
     * Puts the styles for pages in somebody’s document into an empty one, from which they are brought there: see {@link BroughtLooks}.
     * They bring their paper with them, so that they can be read where the office’s own ground is dark. Codes of numbers do not
     * survive the way from one document to another, so those that have one are left out.
     *
     * @param empty an empty document
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    static void installBeside(XSpreadsheetDocument empty) throws com.sun.star.uno.Exception {
        CellStyle.add(empty, OUR_PAPER, CellStyle.STANDARD)
                .font(FONT, 10)
                .ink(Palette.TEXT)
                .paper(Palette.PAPER);
        new Looks(empty, OUR_PAPER).define();
        for (Look coded : CODED) {
            CellStyle.styles(empty).removeByName(coded.styleName());
        }
    }

    /** The names of all styles that pages in somebody’s document may use. */
    static List<String> besideNames() {
        List<String> names = new ArrayList<>(List.of(OUR_PAPER));
        Arrays.stream(Look.values())
                .filter(look -> !CODED.contains(look))
                .map(Look::styleName)
                .forEach(names::add);
        return List.copyOf(names);
    }

    private void define() throws com.sun.star.uno.Exception {
        defineWords();
        defineInputs();
        defineResults();
    }

    private void defineWords() throws com.sun.star.uno.Exception {
        style(Look.TITLE).size(20).bold().ink(Palette.HEADING);
        style(Look.PURPOSE).size(11).wrapped();
        style(Look.CAUTION).wrapped().indented(150).paper(Palette.CAUTION_PAPER).boxed(Palette.CAUTION, 35);
        style(Look.CAUTION_LINE)
                .wrapped()
                .indented(150)
                .paper(Palette.CAUTION_PAPER)
                .ruledBelow(Palette.CAUTION, 18);
        style(Look.SECTION).size(11).bold().low().ink(Palette.HEADING).ruledBelow(Palette.HEADING, 35);
        style(Look.NARROW_HEAD)
                .size(8)
                .bold()
                .wrapped()
                .aligned(CellHoriJustify.CENTER)
                .ruledBelow(Palette.RULE, 18);
        style(Look.HEAD).bold().aligned(CellHoriJustify.CENTER).ruledBelow(Palette.RULE, 18);
        style(Look.LABEL).ruledBelow(Palette.RULE, 9);
        style(Look.SUBLABEL)
                .size(9)
                .ink(Palette.QUIET)
                .aligned(CellHoriJustify.RIGHT)
                .ruledBelow(Palette.RULE, 9);
        style(Look.NOTE).wrapped().high();
        style(Look.HINT).size(9).ink(Palette.QUIET).indented(150);
        style(Look.FOLLOWS).size(9).ink(Palette.QUIET).indented(150);
    }

    private void defineInputs() throws com.sun.star.uno.Exception {
        boxed(Look.INPUT).unlocked();
        boxed(Look.INPUT_HEAD).bold().unlocked();
        boxed(Look.INPUT_LARGE).size(18).bold().unlocked();
        boxed(Look.SAMPLE);
        style(Look.FOUND)
                .bold()
                .ink(Palette.CAUTION)
                .paper(Palette.CAUTION_PAPER)
                .aligned(CellHoriJustify.CENTER)
                .boxed(Palette.CAUTION, 53)
                .unlocked();
    }

    private void defineResults() throws com.sun.star.uno.Exception {
        style(Look.RESULT).aligned(CellHoriJustify.CENTER).ruledBelow(Palette.RULE, 9);
        style(Look.ANSWER).size(14).bold().aligned(CellHoriJustify.CENTER).ruledBelow(Palette.RULE, 9);
        style(Look.COUNT)
                .aligned(CellHoriJustify.CENTER)
                .ruledBelow(Palette.RULE, 9)
                .numbers("0");
        style(Look.TENTHS)
                .aligned(CellHoriJustify.CENTER)
                .ruledBelow(Palette.RULE, 9)
                .numbers("[>=100]0;0.0");
        style(Look.UNCERTAINTY)
                .size(9)
                .ink(Palette.QUIET)
                .aligned(CellHoriJustify.CENTER)
                .ruledBelow(Palette.RULE, 9);
        style(Look.MESSAGE).wrapped();
        style(Look.SENTENCE).size(14).bold().wrapped().ink(Palette.HEADING);
        style(Look.WALL).size(24).bold().wrapped().ink(Palette.HEADING);
        style(Look.BOX).size(16).bold().aligned(CellHoriJustify.CENTER).boxed(Palette.TEXT, 35);
        style(Look.LARGE).size(18).bold().aligned(CellHoriJustify.CENTER);
        // The sentence itself does not fit under a jar; it is shown in full in the message below.
        style(Look.TROUBLE)
                .bold()
                .ink(Palette.CAUTION)
                .aligned(CellHoriJustify.CENTER)
                .paper(Palette.CAUTION_PAPER)
                .boxed(Palette.CAUTION, 35)
                .numbers(TROUBLE_WORDS);
        style(Look.ALARM)
                .size(14)
                .wrapped()
                .bold()
                .indented(150)
                .ink(Palette.CAUTION)
                .paper(Palette.CAUTION_PAPER)
                .boxed(Palette.CAUTION, 70);
        style(Look.TROUBLE_MESSAGE).wrapped().bold().ink(Palette.CAUTION);
        style(Look.HOT).wrapped().bold().ink(Palette.CAUTION).paper(Palette.CAUTION_PAPER);
        style(Look.SMALL_MESSAGE).size(9).wrapped();
        style(Look.SMALL_TROUBLE).size(9).wrapped().bold().ink(Palette.CAUTION);
    }

    private CellStyle boxed(Look look) throws com.sun.star.uno.Exception {
        return style(look)
                .paper(Palette.INPUT_PAPER)
                .boxed(Palette.INPUT_FRAME, 26)
                .aligned(CellHoriJustify.CENTER);
    }

    private CellStyle style(Look look) throws com.sun.star.uno.Exception {
        return CellStyle.add(document, look.styleName(), parent);
    }
}
