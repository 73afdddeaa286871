package org.snugsheet.office.dialog;

import com.sun.star.awt.PushButtonType;
import com.sun.star.container.XNameContainer;
import com.sun.star.style.VerticalAlignment;
import com.sun.star.uno.XComponentContext;
import org.snugsheet.office.uno.Uno;

/** The controls of a window, each put below the one before. */
final class Controls {

    private static final int WIDTH = 230;
    private static final int MARGIN = 8;
    private static final int GAP = 5;
    private static final int LABEL_WIDTH = 92;

    /** High enough for the roomy fields of GNOME, which would otherwise touch each other. */
    private static final int FIELD = 15;

    private static final int LETTERS = 9;

    /** At least this many letters fit from edge to edge, however wide they are. */
    private static final int LETTERS_ACROSS = 58;

    private static final int BUTTON_WIDTH = 56;
    private static final int BUTTON_HEIGHT = 16;

    private final Object model;
    private int y = MARGIN;
    private int places;

    Controls(XComponentContext office, String title) throws com.sun.star.uno.Exception {
        model = Uno.service(office, "com.sun.star.awt.UnoControlDialogModel");
        Uno.set(model, "Title", title);
        Uno.set(model, "Width", WIDTH);
        Uno.set(model, "Moveable", true);
        Uno.set(model, "Closeable", true);
    }

    Object model() {
        return model;
    }

    Object named(String name) throws com.sun.star.uno.Exception {
        return Uno.as(XNameContainer.class, model).getByName(name);
    }

    /** How many lines a text takes from edge to edge; a word that does not fit at the end of one takes its room to the next. */
    static int lines(String words) {
        return 1 + words.length() / LETTERS_ACROSS;
    }

    /** The height of a control with so many lines of text in it. */
    static int height(int lines) {
        return Math.max(FIELD, lines * LETTERS + FIELD - LETTERS);
    }

    /** Text from edge to edge that names no field, so that none of its letters leads to one. */
    void text(String words, int lines) throws com.sun.star.uno.Exception {
        Object text = across("FixedText", "text" + places, lines * LETTERS);
        Uno.set(text, "Label", words);
        Uno.set(text, "NoLabel", true);
        Uno.set(text, "MultiLine", true);
    }

    /** A control from edge to edge. */
    Object across(String kind, String name, int height) throws com.sun.star.uno.Exception {
        Object control = add(kind, name, MARGIN, WIDTH - 2 * MARGIN, height);
        y += height + GAP;
        return control;
    }

    /** A field with its label on the left. */
    Object labelled(String label, String kind, String name, int height) throws com.sun.star.uno.Exception {
        Object words = add("FixedText", "label" + places, MARGIN, LABEL_WIDTH, FIELD);
        Uno.set(words, "Label", label);
        Uno.set(words, "VerticalAlign", VerticalAlignment.MIDDLE);
        int left = MARGIN + LABEL_WIDTH + GAP;
        Object field = add(kind, name, left, WIDTH - MARGIN - left, height);
        y += height + GAP;
        return field;
    }

    /** A button of the last line, the first from the right or the second. */
    void button(String name, String label, PushButtonType type, boolean isUsual, int fromRight)
            throws com.sun.star.uno.Exception {
        int left = WIDTH - MARGIN - fromRight * (BUTTON_WIDTH + GAP) + GAP;
        Object button = add("Button", name, left, BUTTON_WIDTH, BUTTON_HEIGHT);
        Uno.set(button, "Label", label);
        Uno.set(button, "PushButtonType", (short) type.getValue());
        Uno.set(button, "DefaultButton", isUsual);
        Uno.set(model, "Height", y + BUTTON_HEIGHT + MARGIN);
    }

    private Object add(String kind, String name, int left, int width, int height) throws com.sun.star.uno.Exception {
        Object control = Uno.make(model, "com.sun.star.awt.UnoControl" + kind + "Model");
        Uno.set(control, "PositionX", left);
        Uno.set(control, "PositionY", y);
        Uno.set(control, "Width", width);
        Uno.set(control, "Height", height);
        Uno.set(control, "TabIndex", (short) places++);
        Uno.as(XNameContainer.class, model).insertByName(name, control);
        return control;
    }
}
