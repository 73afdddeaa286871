package org.snugsheet.office.page;

/** The cell styles of a worked sheet; what each looks like is in {@link StyleSheet}. */
public enum CellStyleName {
    /** The name of the sheet, once, at the top. */
    TITLE("Snug title"),
    /** What the sheet is for, in one sentence. */
    PURPOSE("Snug purpose"),
    /** What can hurt. */
    CAUTION("Snug caution"),
    /** One of several lines of what can hurt. */
    CAUTION_LINE("Snug caution line"),
    /** The heading of a block. */
    SECTION("Snug section"),
    /** The heading of a column. */
    HEAD("Snug head"),
    /** The heading of a narrow column, which may take two lines. */
    NARROW_HEAD("Snug narrow head"),
    /** The name of a row, with its unit. */
    LABEL("Snug label"),
    /** The label of an uncertainty, below that of its quantity. */
    SUBLABEL("Snug sublabel"),
    /** A cell to type into: boxed, tinted and unlocked. */
    INPUT("Snug input"),
    /** Shows what an input cell looks like, but cannot be typed into. */
    SAMPLE("Snug input sample"),
    /** A calculated value. */
    RESULT("Snug result"),
    /** A calculated value that can be read from across the room. */
    ANSWER("Snug answer"),
    /** A calculated sentence in large type. */
    SENTENCE("Snug sentence"),
    /** A sentence that a whole class reads from the wall. */
    WALL("Snug wall"),
    /** A word or a number in large type. */
    LARGE("Snug large"),
    /** An empty box to write into with a pencil. */
    BOX("Snug box"),
    /** A name beside a bar on the wall. */
    WALL_NAME("Snug wall name"),
    /** A number at the edge of a box of a graph. */
    AT_THE_EDGE("Snug at the edge"),
    /** A line to write on with a pencil. */
    PENCIL_LINE("Snug pencil line"),
    /** One square of squared paper. */
    SQUARES("Snug squares"),
    /** The top of a sheet of paper for a child, in smaller type if it is long. */
    CHILD_TITLE("Snug child title"),
    /** What a child is asked or told. */
    CHILD("Snug child"),
    /** A word or a number for a child, in the middle of its cell. */
    CHILD_WORD("Snug child word"),
    /** A number beside a thermometer or squared paper. */
    CHILD_NUMBER("Snug child number"),
    /** A box of a graph that is filled. */
    FILLED("Snug filled"),
    /** A calculated count. */
    COUNT("Snug count"),
    /** A result with one decimal, or none from 100 on. */
    TENTHS("Snug tenths"),
    /** The uncertainty of the value above it. */
    UNCERTAINTY("Snug uncertainty"),
    /** A calculated sentence. */
    MESSAGE("Snug message"),
    /** A result when there is something to fix. */
    TROUBLE("Snug trouble"),
    /** What an input cell becomes when a finding speaks of it. */
    FOUND("Snug found"),
    /** A sentence when there is something to fix. */
    TROUBLE_MESSAGE("Snug trouble message"),
    /** A calculated sentence in small type, in a line of many. */
    SMALL_MESSAGE("Snug small message"),
    /** The same when there is something to fix. */
    SMALL_TROUBLE("Snug small trouble"),
    /** What a sentence becomes when somebody could be hurt. */
    ALARM("Snug alarm"),
    /** What a sentence in usual type becomes when somebody could be hurt. */
    HOT("Snug hot"),
    /** A remark in running text. */
    NOTE("Snug note"),
    /** A remark in small type beside a cell. */
    HINT("Snug hint"),
    /**
     * A sentence that promises that results follow what is typed. A copy to share, in which they do not, finds such cells by the
     * name of the style and empties them.
     */
    FOLLOWS("Snugsheet follows");

    private final String styleName;

    CellStyleName(String styleName) {
        this.styleName = styleName;
    }

    /**
     * The name of the style, as the office lists it.
     *
     * @return the name
     */
    public String styleName() {
        return styleName;
    }
}
