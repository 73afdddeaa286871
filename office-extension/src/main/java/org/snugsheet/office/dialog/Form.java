package org.snugsheet.office.dialog;

import com.sun.star.awt.PosSize;
import com.sun.star.awt.PushButtonType;
import com.sun.star.awt.Rectangle;
import com.sun.star.awt.Selection;
import com.sun.star.awt.XButton;
import com.sun.star.awt.XControl;
import com.sun.star.awt.XControlContainer;
import com.sun.star.awt.XControlModel;
import com.sun.star.awt.XDialog;
import com.sun.star.awt.XTextComponent;
import com.sun.star.awt.XToolkit;
import com.sun.star.awt.XWindow;
import com.sun.star.awt.XWindowPeer;
import com.sun.star.frame.XFrame;
import com.sun.star.lang.XComponent;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** A window of labelled fields, built from top to bottom, with a button to accept and one to give up. */
public final class Form implements AutoCloseable {

    private static final String ACCEPT = "accept";

    private final XComponentContext office;
    private final Language language;
    private final Controls controls;
    private final Object dialog;

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
        this.controls = new Controls(office, language.words(title));
        this.dialog = Uno.service(office, "com.sun.star.awt.UnoControlDialog");
    }

    /**
     * Adds a text to read.
     *
     * @param words the text
     * @return this form
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public Form text(String words) throws com.sun.star.uno.Exception {
        controls.text(words, Controls.lines(words));
        return this;
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
        Object text = controls.across("Edit", "reading", Controls.height(lines));
        Uno.set(text, "Text", words);
        Uno.set(text, "ReadOnly", true);
        Uno.set(text, "MultiLine", true);
        Uno.set(text, "VScroll", true);
        return this;
    }

    /**
     * Adds a field for a text.
     *
     * @param name the field’s name, never shown
     * @param label what is asked, with its letter
     * @param value its first content; several lines make it as high
     * @return this form
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public Form field(String name, Phrase label, String value) throws com.sun.star.uno.Exception {
        int lines = 1 + (int) value.chars().filter(letter -> letter == '\n').count();
        Object field = labelled(label, "Edit", name, lines);
        Uno.set(field, "Text", value);
        if (lines > 1) {
            Uno.set(field, "MultiLine", true);
            Uno.set(field, "VScroll", true);
        }
        return this;
    }

    /**
     * Adds a field for a password: it shows a star for each letter.
     *
     * @param name the field’s name
     * @param label what is asked
     * @return this form
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public Form secret(String name, Phrase label) throws com.sun.star.uno.Exception {
        Uno.set(labelled(label, "Edit", name, 1), "EchoChar", (short) '*');
        return this;
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
        Object field = labelled(label, "ListBox", name, 1);
        Uno.set(field, "StringItemList", choices.toArray(String[]::new));
        Uno.set(field, "SelectedItems", new short[] {(short) chosen});
        Uno.set(field, "Dropdown", true);
        return this;
    }

    /**
     * Joins model and window, so that its controls can be listened to before it is shown.
     *
     * @return this form
     */
    public Form ready() {
        Uno.as(XControl.class, dialog).setModel(Uno.as(XControlModel.class, controls.model()));
        return this;
    }

    /**
     * Asks until the answers go together or the window is cancelled.
     *
     * @param <T> what the answers are
     * @param above the window behind it
     * @param errorDisplay tells what is wrong with the answers
     * @param answers reads them
     * @return the answers; empty if the window was cancelled
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public <T> Optional<T> askUntil(XFrame above, ErrorDisplay errorDisplay, FormReader<T> answers)
            throws com.sun.star.uno.Exception {
        controls.button(ACCEPT, language.words(DialogWords.ACCEPT), PushButtonType.STANDARD, true, 2);
        controls.button("cancel", language.words(DialogWords.CANCEL), PushButtonType.CANCEL, false, 1);
        AcceptListener<T> accepting = new AcceptListener<>(dialog, language, errorDisplay, answers);
        Uno.as(XButton.class, control(ACCEPT)).addActionListener(accepting);
        show(above);
        return accepting.answered();
    }

    /**
     * Shows what there is to read, until the window is closed.
     *
     * @param above the window behind it
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public void tell(XFrame above) throws com.sun.star.uno.Exception {
        controls.button(ACCEPT, language.words(DialogWords.READ), PushButtonType.OK, true, 1);
        show(above);
    }

    /**
     * The content of a field.
     *
     * @param name the field’s name
     * @return its text
     * @throws com.sun.star.uno.Exception if there is no such field
     */
    public String textOf(String name) throws com.sun.star.uno.Exception {
        return String.valueOf(Uno.property(controls.named(name), "Text"));
    }

    /**
     * What is chosen.
     *
     * @param name the field’s name
     * @return which one, from 0
     * @throws com.sun.star.uno.Exception if there is no such field
     */
    public int choiceOf(String name) throws com.sun.star.uno.Exception {
        return ((short[]) Uno.property(controls.named(name), "SelectedItems"))[0];
    }

    /**
     * A control of the window, to listen to it.
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
        Uno.set(controls.named(name), "Text", text);
    }

    /**
     * Empties fields, to be typed into again from the first of them on.
     *
     * @param names the fields’ names
     * @throws com.sun.star.uno.Exception if there is no such field
     */
    public void again(String... names) throws com.sun.star.uno.Exception {
        for (String name : names) {
            write(name, "");
        }
        Uno.as(XWindow.class, control(names[0])).setFocus();
    }

    @Override
    public void close() {
        Uno.as(XComponent.class, dialog).dispose();
    }

    private Object labelled(Phrase label, String kind, String name, int lines) throws com.sun.star.uno.Exception {
        return controls.labelled(language.words(label), kind, name, Controls.height(lines));
    }

    private void show(XFrame above) throws com.sun.star.uno.Exception {
        XWindow behind = above.getContainerWindow();
        XToolkit toolkit = Uno.as(XToolkit.class, Uno.service(office, "com.sun.star.awt.Toolkit"));
        Uno.as(XControl.class, dialog).createPeer(toolkit, Uno.as(XWindowPeer.class, behind));
        // Otherwise it would open in the corner.
        Rectangle around = behind.getPosSize();
        XWindow window = Uno.as(XWindow.class, dialog);
        Rectangle own = window.getPosSize();
        window.setPosSize(
                Math.max(0, (around.Width - own.Width) / 2),
                Math.max(0, (around.Height - own.Height) / 2),
                0,
                0,
                PosSize.POS);
        selectFirst();
        Uno.as(XDialog.class, dialog).execute();
    }

    /** What is typed first replaces the content of the first field, as it does in a field that is reached by the Tab key. */
    private void selectFirst() throws com.sun.star.uno.Exception {
        for (XControl control : Uno.as(XControlContainer.class, dialog).getControls()) {
            XTextComponent field = UnoRuntime.queryInterface(XTextComponent.class, control);
            if (field != null && field.isEditable() && !isOfManyLines(control)) {
                field.setSelection(new Selection(0, field.getText().length()));
                return;
            }
        }
    }

    private static boolean isOfManyLines(XControl control) throws com.sun.star.uno.Exception {
        return Boolean.TRUE.equals(Uno.property(control.getModel(), "MultiLine"));
    }
}
