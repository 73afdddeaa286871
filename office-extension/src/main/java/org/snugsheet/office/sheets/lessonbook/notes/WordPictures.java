package org.snugsheet.office.sheets.lessonbook.notes;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.ShapeGroup;
import org.snugsheet.office.sheets.builder.ShapeGroup.Stroke;

/** Six words of the lesson, each with a small drawing that can be copied to the board. Lengths are in millimeters. */
final class WordPictures {

    private static final double SLOT = 31;
    private static final double LEFT = 2;
    private static final double JAR_WIDE = 10;
    private static final double JAR_HIGH = 13;
    private static final double LINE = 0.5;
    private static final double WORD_BELOW = 26;
    private static final double POINTS = 11;

    private final Book book;
    private final Page page;
    private final double top;

    WordPictures(Book book, Page page, double top) {
        this.book = book;
        this.page = page;
        this.top = top;
    }

    void draw() throws com.sun.star.uno.Exception {
        ShapeGroup group = ShapeGroup.on(book, page);
        jar(group, middle(0), 8);
        steam(group, middle(0));
        jar(group, middle(1), 8);
        flake(group, middle(1), top + 15, 4);
        sun(group, middle(2) - 10, top + 13);
        arrow(group, middle(2) - 4, middle(2) + 5, top + 13);
        flake(group, middle(2) + 10, top + 13, 3.5);
        jar(group, middle(3), 8);
        wrap(group, middle(3));
        thermometer(group, middle(4));
        jar(group, middle(5) - 8, 8);
        jar(group, middle(5) + 8, 8);
        group.write(middle(5), top + 15, 16, "=");
        NoteWords[] words = {
            NoteWords.WORD_WARM,
            NoteWords.WORD_COLD,
            NoteWords.WORD_HEAT,
            NoteWords.WORD_WRAP,
            NoteWords.WORD_READ,
            NoteWords.WORD_FAIR
        };
        for (int i = 0; i < words.length; i++) {
            group.write(middle(i), top + WORD_BELOW, POINTS, book.language().words(words[i]));
        }
        group.finish(book.language().words(NoteWords.WORDS), book.language().words(NoteWords.WORDS_ALT));
    }

    private static double middle(int slot) {
        return LEFT + SLOT * (slot + 0.5);
    }

    /** A jar with its lid. */
    private void jar(ShapeGroup group, double x, double below) throws com.sun.star.uno.Exception {
        double y = top + below;
        group.box(x - JAR_WIDE / 2, y, JAR_WIDE, JAR_HIGH, 1.5);
        group.box(x - 3.5, y - 2, 7, 2, 0.3);
    }

    private void steam(ShapeGroup group, double x) throws com.sun.star.uno.Exception {
        List<Stroke> strokes = new ArrayList<>();
        for (double at : new double[] {x - 3, x, x + 3}) {
            strokes.add(new Stroke(at, top + 5.5, at + 1, top + 4));
            strokes.add(new Stroke(at + 1, top + 4, at - 0.5, top + 2.5));
            strokes.add(new Stroke(at - 0.5, top + 2.5, at + 0.5, top + 1));
        }
        group.lines(LINE, strokes);
    }

    private static void flake(ShapeGroup group, double x, double y, double radius) throws com.sun.star.uno.Exception {
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            double across = radius * Math.cos(Math.PI * i / 3 + Math.PI / 2);
            double down = radius * Math.sin(Math.PI * i / 3 + Math.PI / 2);
            strokes.add(new Stroke(x - across, y - down, x + across, y + down));
        }
        group.lines(LINE, strokes);
    }

    private static void sun(ShapeGroup group, double x, double y) throws com.sun.star.uno.Exception {
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            double across = Math.cos(Math.PI * i / 4);
            double down = Math.sin(Math.PI * i / 4);
            strokes.add(new Stroke(x + 2.6 * across, y + 2.6 * down, x + 4.2 * across, y + 4.2 * down));
        }
        group.lines(LINE, strokes).circle(x, y, 2);
    }

    private static void arrow(ShapeGroup group, double from, double to, double y) throws com.sun.star.uno.Exception {
        group.lines(
                0.8,
                List.of(
                        new Stroke(from, y, to, y),
                        new Stroke(to - 2, y - 1.5, to, y),
                        new Stroke(to - 2, y + 1.5, to, y)));
    }

    private void wrap(ShapeGroup group, double x) throws com.sun.star.uno.Exception {
        group.box(x - 8, top + 7.5, 16, 15.5, 2.5);
        List<Stroke> strokes = new ArrayList<>();
        for (double y = top + 10; y < top + 22; y += 2) {
            strokes.add(new Stroke(x - 7.5, y, x - 5.5, y + 1));
            strokes.add(new Stroke(x + 5.5, y + 1, x + 7.5, y));
        }
        group.lines(0.3, strokes);
    }

    private void thermometer(ShapeGroup group, double x) throws com.sun.star.uno.Exception {
        group.box(x - 1.4, top + 1, 2.8, 19, 1.4).circle(x, top + 20.5, 2.4);
        List<Stroke> strokes = new ArrayList<>();
        strokes.add(new Stroke(x, top + 19, x, top + 9));
        for (int i = 0; i < 6; i++) {
            strokes.add(new Stroke(x + 2.2, top + 4 + 2.4 * i, x + 4.2, top + 4 + 2.4 * i));
        }
        group.lines(0.6, strokes);
    }
}
