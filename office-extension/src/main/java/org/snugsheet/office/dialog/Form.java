package org.snugsheet.office.dialog;

import com.sun.star.awt.PushButtonType;
import com.sun.star.awt.XControl;
import com.sun.star.awt.XControlContainer;
import com.sun.star.awt.XControlModel;
import com.sun.star.awt.XDialog;
import com.sun.star.awt.XToolkit;
import com.sun.star.awt.XWindowPeer;
import com.sun.star.container.XNameContainer;
import com.sun.star.frame.XFrame;
import com.sun.star.lang.XComponent;
import com.sun.star.uno.XComponentContext;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.Refusal;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Declined;
import org.snugsheet.office.words.Language;

/** A window of labelled fields, built from top to bottom, with a button to accept and one to give up. */
public final class Form implements AutoCloseable {

    private static final int WIDTH = 230;
    private static final int MARGIN = 8;
    private static final int GAP = 4;
    private static final int LINE = 12;
    private static final int LABEL_WIDTH = 92;
    private static final int BUTTON_WIDTH = 52;
    private static final int BUTTON_HEIGHT = 15;
    private static final int ACCEPTED = 1;

    private final XComponentContext office;
    private final Language language;
    private final Object model;
    private final Object dialog;
    private int y = MARGIN;
    private int places;

    /**
     * An empty form.
     *
     * @param office the office’s context
     * @param language the language it speaks
     * @param title its title
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public Form(XComponentContext office, Language language, Phrase title) throws com.sun.star.uno.Exception {
        this.office = office;
        this.language = language;
        this.model = Uno.service(office, "com.sun.star.awt.UnoControlDialogModel");
        this.dialog = Uno.service(office, "com.sun.star.awt.UnoControlDialog");
        Uno.set(model, "Title", language.words(title));
        Uno.set(model, "Width", WIDTH);
        Uno.set(model, "Moveable", true);
        Uno.set(model, "Closeable", true);
    }

    /**
     * Adds a text to read.
     *
     * @param words the text
     * @param lines how many lines it takes
     * @return this form
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public Form text(String words, int lines) throws com.sun.star.uno.Exception {
        Object text = add("FixedText", "text" + places, MARGIN, WIDTH - 2 * MARGIN, lines * LINE - GAP);
        Uno.set(text, "Label", words);
        // It names no field, so that none of its letters leads to one.
        Uno.set(text, "NoLabel", true);
        Uno.set(text, "MultiLine", true);
        return below(lines * LINE);
    }

    /**
     * Adds a text that may be long, with a bar to scroll it; it can be marked and copied.
     *
     * @param words the text
     * @param lines how many lines are seen at once
     * @return this form
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public Form reading(String words, int lines) throws com.sun.star.uno.Exception {
        Object text = add("Edit", "reading", MARGIN, WIDTH - 2 * MARGIN, lines * LINE);
        Uno.set(text, "Text", words);
        Uno.set(text, "ReadOnly", true);
        Uno.set(text, "MultiLine", true);
        Uno.set(text, "VScroll", true);
        return below(lines * LINE + GAP);
    }

    /**
     * Adds a field for a text.
     *
     * @param name the field’s name, never shown
     * @param label what is asked, with its letter
     * @param value what stands in it at first; several lines make it as high
     * @return this form
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public Form field(String name, Phrase label, String value) throws com.sun.star.uno.Exception {
        int lines = 1 + (int) value.chars().filter(letter -> letter == '\n').count();
        label(label);
        Object field = beside("Edit", name, lines * LINE);
        Uno.set(field, "Text", value);
        if (lines > 1) {
            Uno.set(field, "MultiLine", true);
            Uno.set(field, "VScroll", true);
        }
        return below(lines * LINE + GAP);
    }

    /**
     * Adds a field for a whole number.
     *
     * @param name the field’s name
     * @param label what is asked
     * @param value the number at first
     * @param least the smallest
     * @param most the largest
     * @return this form
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public Form number(String name, Phrase label, int value, int least, int most) throws com.sun.star.uno.Exception {
        label(label);
        Object field = beside("NumericField", name, LINE);
        Uno.set(field, "DecimalAccuracy", (short) 0);
        Uno.set(field, "ValueMin", (double) least);
        Uno.set(field, "ValueMax", (double) most);
        Uno.set(field, "Value", (double) value);
        Uno.set(field, "Spin", true);
        return below(LINE + GAP);
    }

    /**
     * Adds a choice.
     *
     * @param name the field’s name
     * @param label what is asked
     * @param choices what to choose from
     * @param chosen which one at first
     * @return this form
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public Form choice(String name, Phrase label, List<String> choices, int chosen) throws com.sun.star.uno.Exception {
        label(label);
        Object field = beside("ListBox", name, LINE);
        Uno.set(field, "StringItemList", choices.toArray(String[]::new));
        Uno.set(field, "SelectedItems", new short[] {(short) chosen});
        Uno.set(field, "Dropdown", true);
        return below(LINE + GAP);
    }

    /**
     * Asks until the answers go together or the window is cancelled.
     *
     * @param <T> what the answers are
     * @param above the window in front of which it stands
     * @param trouble tells what is wrong with the answers
     * @param answers reads them
     * @return the answers; empty if the window was cancelled
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public <T> Optional<T> askUntil(XFrame above, Trouble trouble, Answers<T> answers)
            throws com.sun.star.uno.Exception {
        button("accept", DialogWords.ACCEPT, PushButtonType.OK, 2);
        button("cancel", DialogWords.CANCEL, PushButtonType.CANCEL, 1);
        open(above);
        while (isAccepted()) {
            try {
                return Optional.of(answers.read());
            } catch (Declined declined) {
                trouble.tell(declined.sentence(language));
            } catch (Refusal refusal) {
                trouble.tell(language.say(refusal.finding()));
            }
        }
        return Optional.empty();
    }

    /**
     * Shows what there is to read, until the window is closed.
     *
     * @param above the window in front of which it stands
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public void tell(XFrame above) throws com.sun.star.uno.Exception {
        button("accept", DialogWords.READ, PushButtonType.OK, 1);
        open(above);
        isAccepted();
    }

    /**
     * What stands in a field.
     *
     * @param name the field’s name
     * @return its text
     * @throws com.sun.star.uno.Exception if there is no such field
     */
    public String textOf(String name) throws com.sun.star.uno.Exception {
        return String.valueOf(Uno.property(field(name), "Text"));
    }

    /**
     * What stands in a field for a number.
     *
     * @param name the field’s name
     * @return its number
     * @throws com.sun.star.uno.Exception if there is no such field
     */
    public int numberOf(String name) throws com.sun.star.uno.Exception {
        return (int) Math.rint(((Number) Uno.property(field(name), "Value")).doubleValue());
    }

    /**
     * What is chosen.
     *
     * @param name the field’s name
     * @return which one, from 0
     * @throws com.sun.star.uno.Exception if there is no such field
     */
    public int choiceOf(String name) throws com.sun.star.uno.Exception {
        return ((short[]) Uno.property(field(name), "SelectedItems"))[0];
    }

    /**
     * A control of the window that is open, to listen to it.
     *
     * @param name the field’s name
     * @return the control
     */
    public XControl control(String name) {
        return Uno.as(XControlContainer.class, dialog).getControl(name);
    }

    /**
     * Puts another text into a field.
     *
     * @param name the field’s name
     * @param text the text
     * @throws com.sun.star.uno.Exception if there is no such field
     */
    public void write(String name, String text) throws com.sun.star.uno.Exception {
        Uno.set(field(name), "Text", text);
    }

    @Override
    public void close() {
        Uno.as(XComponent.class, dialog).dispose();
    }

    private void open(XFrame above) throws com.sun.star.uno.Exception {
        Uno.set(model, "Height", y + BUTTON_HEIGHT + MARGIN);
        XWindowPeer parent = Uno.as(XWindowPeer.class, above.getContainerWindow());
        XToolkit toolkit = Uno.as(XToolkit.class, Uno.service(office, "com.sun.star.awt.Toolkit"));
        XControl control = Uno.as(XControl.class, dialog);
        control.createPeer(toolkit, parent);
    }

    private boolean isAccepted() {
        return Uno.as(XDialog.class, dialog).execute() == ACCEPTED;
    }

    /**
     * Joins model and window, so that its controls can be listened to before it is shown.
     *
     * @return this form
     */
    public Form ready() {
        Uno.as(XControl.class, dialog).setModel(Uno.as(XControlModel.class, model));
        return this;
    }

    private void label(Phrase words) throws com.sun.star.uno.Exception {
        Object label = add("FixedText", "label" + places, MARGIN, LABEL_WIDTH, LINE);
        Uno.set(label, "Label", language.words(words));
        Uno.set(label, "VerticalAlign", com.sun.star.style.VerticalAlignment.MIDDLE);
    }

    private Object beside(String kind, String name, int height) throws com.sun.star.uno.Exception {
        int left = MARGIN + LABEL_WIDTH + GAP;
        return add(kind, name, left, WIDTH - MARGIN - left, height);
    }

    private void button(String name, Phrase words, PushButtonType type, int fromRight)
            throws com.sun.star.uno.Exception {
        int left = WIDTH - MARGIN - fromRight * (BUTTON_WIDTH + GAP) + GAP;
        Object button = add("Button", name, left, BUTTON_WIDTH, BUTTON_HEIGHT);
        Uno.set(button, "Label", language.words(words));
        Uno.set(button, "PushButtonType", (short) type.getValue());
        Uno.set(button, "DefaultButton", type == PushButtonType.OK);
    }

    private Object add(String kind, String name, int left, int width, int height) throws com.sun.star.uno.Exception {
        Object field = Uno.make(model, "com.sun.star.awt.UnoControl" + kind + "Model");
        Uno.set(field, "PositionX", left);
        Uno.set(field, "PositionY", y);
        Uno.set(field, "Width", width);
        Uno.set(field, "Height", height);
        Uno.set(field, "TabIndex", (short) places++);
        Uno.as(XNameContainer.class, model).insertByName(name, field);
        return field;
    }

    private Object field(String name) throws com.sun.star.uno.Exception {
        return Uno.as(XNameContainer.class, model).getByName(name);
    }

    private Form below(int height) {
        y += height;
        return this;
    }
}
