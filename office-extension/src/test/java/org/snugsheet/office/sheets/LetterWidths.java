package org.snugsheet.office.sheets;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.snugsheet.office.page.StyleSheet;

/** How wide words are drawn in the type of the sheets, in millimeters. */
final class LetterWidths {

    private static final float LARGE = 1000;
    private static final double MILLIMETERS_PER_POINT = 25.4 / 72;
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private static final Font PLAIN = font(Font.PLAIN);
    private static final Font BOLD = font(Font.BOLD);

    private static final Map<Integer, Boolean> WIDEST_IN_BOLD = new ConcurrentHashMap<>();

    private LetterWidths() {}

    private static Font font(int style) {
        Font font = new Font(StyleSheet.FONT, style, 1).deriveFont(LARGE);
        if (!font.getFamily().equals(StyleSheet.FONT)) {
            throw new IllegalStateException("Install " + StyleSheet.FONT + ": Java sees " + font.getFamily());
        }
        return font;
    }

    /** Words of one size and weight. */
    record Run(String words, double points, boolean bold) {}

    static double of(Run run) {
        return (run.bold() ? BOLD : PLAIN).getStringBounds(run.words(), EXACT).getWidth()
                / LARGE
                * run.points()
                * MILLIMETERS_PER_POINT;
    }

    /** Whether no letter of these words is narrower in bold than it is plain; few letters are, such as @. */
    static boolean isWidestInBold(String words) {
        return words.codePoints()
                .allMatch(letter -> WIDEST_IN_BOLD.computeIfAbsent(letter, each -> {
                    String one = Character.toString(each);
                    return of(new Run(one, 1, true)) >= of(new Run(one, 1, false));
                }));
    }

    /** From one line to the next. */
    static double lineHeight(double points) {
        return PLAIN.getLineMetrics("Ág", EXACT).getHeight() / LARGE * points * MILLIMETERS_PER_POINT;
    }

    /**
     * How many lines a paragraph takes when it goes on in the next at blanks; a word alone that is too wide counts as very many, for it is
     * broken where no reader would.
     */
    static int lines(List<Run> paragraph, double width) {
        int lines = 1;
        double at = 0;
        for (Run word : words(paragraph)) {
            double wide = of(word);
            double bare = of(new Run(word.words().stripTrailing(), word.points(), word.bold()));
            if (bare > width) {
                return Integer.MAX_VALUE / 2;
            }
            if (at + bare > width) {
                lines++;
                at = 0;
            }
            at += wide;
        }
        return lines;
    }

    private static List<Run> words(List<Run> paragraph) {
        List<Run> words = new ArrayList<>();
        for (Run run : paragraph) {
            // A line may end behind a blank and behind a hyphen, but not at a blank that keeps words together.
            for (String word : run.words().split("(?<= )|(?<=\\p{L}-)(?=\\p{L})", -1)) {
                if (!word.isEmpty()) {
                    words.add(new Run(word, run.points(), run.bold()));
                }
            }
        }
        return words;
    }
}
