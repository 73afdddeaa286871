package org.snugsheet.office.page;

import com.sun.star.container.XNameContainer;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellHoriJustify;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Puts the cell styles of {@link CellStyleName} into a document.
 *
 * <p>An input cell is distinguished from the others by its box, not by its color alone: a gray print and a color-blind reader show
 * it too.
 */
public final class StyleSheet {
    /** The type of all pages. */
    public static final String FONT = "Liberation Sans";

    private static final String TROUBLE_WORDS = ";;;\"look below\"";

    /** The style on which all others rest in a document of somebody’s own. */
    static final String OUR_PAPER = "Snug paper";

    /** Those that say how numbers are written. */
    private static final Set<CellStyleName> CODED =
            EnumSet.of(CellStyleName.COUNT, CellStyleName.TENTHS, CellStyleName.TROUBLE);

    private final XSpreadsheetDocument document;
    private final List<CellStyle> styles = new ArrayList<>();

    private StyleSheet(XSpreadsheetDocument document) {
        this.document = document;
    }

    /**
     * Puts the styles into a new document, all of whose pages are built here.
     *
     * @param document the document
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void install(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        CellStyle.standard().font(FONT, 10).ink(Palette.TEXT).change(document);
        new StyleSheet(document).put(CellStyle.STANDARD);
    }

    /**
     * Puts the styles for pages in somebody’s document into an empty one, from which they are brought there: see {@link ImportedStyles}.
     * They bring their paper with them, so that they can be read where the office’s own ground is dark. Codes of numbers do not
     * survive the way from one document to another, so those that have one are left out.
     *
     * @param empty an empty document
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    static void installBeside(XSpreadsheetDocument empty) throws com.sun.star.uno.Exception {
        XNameContainer styles = CellStyle.styles(empty);
        CellStyle.named(OUR_PAPER)
                .font(FONT, 10)
                .ink(Palette.TEXT)
                .paper(Palette.PAPER)
                .put(empty, styles, Set.of(), CellStyle.STANDARD);
        new StyleSheet(empty).put(OUR_PAPER);
        for (CellStyleName coded : CODED) {
            styles.removeByName(coded.styleName());
        }
    }

    /** The names of all styles that pages in somebody’s document may use. */
    static List<String> besideNames() {
        List<String> names = new ArrayList<>(List.of(OUR_PAPER));
        Arrays.stream(CellStyleName.values())
                .filter(look -> !CODED.contains(look))
                .map(CellStyleName::styleName)
                .forEach(names::add);
        return List.copyOf(names);
    }

    private void put(String parent) throws com.sun.star.uno.Exception {
        defineWords();
        defineInputs();
        defineResults();
        definePaper();
        XNameContainer there = CellStyle.styles(document);
        Set<String> present = Set.of(there.getElementNames());
        for (CellStyle style : styles) {
            style.put(document, there, present, parent);
        }
    }

    private void defineWords() {
        style(CellStyleName.TITLE).size(20).bold().ink(Palette.HEADING);
        style(CellStyleName.PURPOSE).size(11).wrapped();
        style(CellStyleName.CAUTION)
                .wrapped()
                .indented(150)
                .paper(Palette.CAUTION_PAPER)
                .boxed(Palette.CAUTION, 35);
        style(CellStyleName.CAUTION_LINE)
                .wrapped()
                .indented(150)
                .paper(Palette.CAUTION_PAPER)
                .ruledBelow(Palette.CAUTION, 18);
        style(CellStyleName.SECTION).size(11).bold().low().ink(Palette.HEADING).ruledBelow(Palette.HEADING, 35);
        style(CellStyleName.NARROW_HEAD)
                .size(9)
                .bold()
                .wrapped()
                .aligned(CellHoriJustify.CENTER)
                .ruledBelow(Palette.RULE, 18);
        style(CellStyleName.HEAD).bold().aligned(CellHoriJustify.CENTER).ruledBelow(Palette.RULE, 18);
        style(CellStyleName.LABEL).ruledBelow(Palette.RULE, 9);
        style(CellStyleName.SUBLABEL)
                .size(9)
                .ink(Palette.QUIET)
                .aligned(CellHoriJustify.RIGHT)
                .ruledBelow(Palette.RULE, 9);
        style(CellStyleName.NOTE).wrapped().high();
        style(CellStyleName.HINT).size(9).ink(Palette.QUIET).indented(150);
        style(CellStyleName.FOLLOWS).size(9).ink(Palette.QUIET).indented(150);
    }

    private void defineInputs() {
        boxed(CellStyleName.INPUT).unlocked();
        boxed(CellStyleName.SAMPLE);
        style(CellStyleName.FOUND)
                .bold()
                .ink(Palette.CAUTION)
                .paper(Palette.CAUTION_PAPER)
                .aligned(CellHoriJustify.CENTER)
                .boxed(Palette.CAUTION, 53)
                .unlocked();
    }

    private void defineResults() throws com.sun.star.uno.Exception {
        style(CellStyleName.RESULT).aligned(CellHoriJustify.CENTER).ruledBelow(Palette.RULE, 9);
        style(CellStyleName.ANSWER)
                .size(14)
                .bold()
                .aligned(CellHoriJustify.CENTER)
                .ruledBelow(Palette.RULE, 9);
        style(CellStyleName.COUNT)
                .aligned(CellHoriJustify.CENTER)
                .ruledBelow(Palette.RULE, 9)
                .numbers(NumberCode.key(document, "0"));
        style(CellStyleName.TENTHS)
                .aligned(CellHoriJustify.CENTER)
                .ruledBelow(Palette.RULE, 9)
                .numbers(NumberCode.key(document, "[>=100]0;0.0"));
        style(CellStyleName.UNCERTAINTY)
                .size(9)
                .ink(Palette.QUIET)
                .aligned(CellHoriJustify.CENTER)
                .ruledBelow(Palette.RULE, 9);
        style(CellStyleName.MESSAGE).wrapped();
        style(CellStyleName.SENTENCE).size(14).bold().wrapped().ink(Palette.HEADING);
        style(CellStyleName.WALL).size(24).bold().wrapped().ink(Palette.HEADING);
        style(CellStyleName.BOX).size(16).bold().aligned(CellHoriJustify.CENTER).boxed(Palette.TEXT, 35);
        style(CellStyleName.WALL_NAME).size(24).bold();
        style(CellStyleName.AT_THE_EDGE).size(14).low().aligned(CellHoriJustify.RIGHT);
        style(CellStyleName.FILLED).paper(Palette.FILLED).boxed(Palette.TEXT, 35);
        style(CellStyleName.LARGE).size(18).bold().aligned(CellHoriJustify.CENTER);
        // The sentence itself does not fit under a jar; it is shown in full in the message below.
        style(CellStyleName.TROUBLE)
                .bold()
                .ink(Palette.CAUTION)
                .aligned(CellHoriJustify.CENTER)
                .paper(Palette.CAUTION_PAPER)
                .boxed(Palette.CAUTION, 35)
                .numbers(NumberCode.key(document, TROUBLE_WORDS));
        style(CellStyleName.ALARM)
                .size(14)
                .wrapped()
                .bold()
                .indented(150)
                .ink(Palette.CAUTION)
                .paper(Palette.CAUTION_PAPER)
                .boxed(Palette.CAUTION, 70);
        style(CellStyleName.TROUBLE_MESSAGE).wrapped().bold().ink(Palette.CAUTION);
        style(CellStyleName.HOT).wrapped().bold().ink(Palette.CAUTION).paper(Palette.CAUTION_PAPER);
        style(CellStyleName.SMALL_MESSAGE).size(9).wrapped();
        style(CellStyleName.SMALL_TROUBLE).size(9).wrapped().bold().ink(Palette.CAUTION);
    }

    /** What children read and write on. */
    private void definePaper() {
        style(CellStyleName.PENCIL_LINE).ruledBelow(Palette.TEXT, 26);
        style(CellStyleName.SQUARES).boxed(Palette.SQUARES, 5);
        style(CellStyleName.CHILD_TITLE).size(22).bold().ink(Palette.HEADING).shrunk();
        style(CellStyleName.CHILD).size(14).wrapped().low();
        style(CellStyleName.CHILD_WORD).size(14).bold().aligned(CellHoriJustify.CENTER);
        style(CellStyleName.CHILD_NUMBER).size(12).bold().aligned(CellHoriJustify.RIGHT);
    }

    private CellStyle boxed(CellStyleName look) {
        return style(look)
                .paper(Palette.INPUT_PAPER)
                .boxed(Palette.INPUT_FRAME, 26)
                .aligned(CellHoriJustify.CENTER);
    }

    private CellStyle style(CellStyleName look) {
        CellStyle style = CellStyle.named(look.styleName());
        styles.add(style);
        return style;
    }
}
