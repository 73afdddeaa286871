package org.snugsheet.office.menu;

import com.sun.star.accessibility.AccessibleRole;
import com.sun.star.accessibility.XAccessible;
import com.sun.star.accessibility.XAccessibleAction;
import com.sun.star.accessibility.XAccessibleContext;
import com.sun.star.accessibility.XAccessibleEditableText;
import com.sun.star.accessibility.XAccessibleText;
import com.sun.star.awt.XExtendedToolkit;
import com.sun.star.awt.XTopWindow;
import com.sun.star.awt.XWindow2;
import com.sun.star.uno.UnoRuntime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.uno.Uno;

/** A window that stands open in the office, as a screen reader finds and works it. */
final class Seen {

    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final long PAUSE = 100;

    private final XAccessibleContext window;

    private Seen(XAccessibleContext window) {
        this.window = window;
    }

    /** Waits for the window of this title. */
    static Seen window(Office office, String title) throws Exception {
        Instant end = Instant.now().plus(PATIENCE);
        while (Instant.now().isBefore(end)) {
            Optional<XAccessibleContext> found = find(office, title);
            if (found.isPresent()) {
                return new Seen(found.get());
            }
            Thread.sleep(PAUSE);
        }
        throw new AssertionError("No window " + title);
    }

    /** Waits until no window of this title is left: a pressed button works a moment later. */
    static void awaitGone(Office office, String title) throws Exception {
        Instant end = Instant.now().plus(PATIENCE);
        while (find(office, title).isPresent()) {
            if (Instant.now().isAfter(end)) {
                throw new AssertionError(title + " stays open");
            }
            Thread.sleep(PAUSE);
        }
    }

    /** The names of its fields and buttons, in the order in which the tabulator key reaches them. */
    List<String> stops() throws Exception {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < window.getAccessibleChildCount(); i++) {
            XAccessibleContext part = window.getAccessibleChild(i).getAccessibleContext();
            if (part.getAccessibleRole() != AccessibleRole.LABEL) {
                names.add(part.getAccessibleName());
            }
        }
        return names;
    }

    /** Everything written in the window. */
    String text() throws Exception {
        StringBuilder text = new StringBuilder();
        for (XAccessibleContext part : all()) {
            XAccessibleText written = UnoRuntime.queryInterface(XAccessibleText.class, part);
            text.append(written == null ? part.getAccessibleName() : written.getText())
                    .append('\n');
        }
        return text.toString();
    }

    /** Types into the field that this label names. */
    void type(String label, String text) throws Exception {
        for (XAccessibleContext part : all()) {
            XAccessibleEditableText field = UnoRuntime.queryInterface(XAccessibleEditableText.class, part);
            if (field != null && part.getAccessibleName().equals(label)) {
                field.setText(text);
                return;
            }
        }
        throw new AssertionError(label + " is not among " + stops());
    }

    /** Presses a button. */
    void press(String button) throws Exception {
        for (XAccessibleContext part : all()) {
            if (part.getAccessibleRole() == AccessibleRole.PUSH_BUTTON
                    && part.getAccessibleName().equals(button)) {
                Uno.as(XAccessibleAction.class, part).doAccessibleAction(0);
                return;
            }
        }
        throw new AssertionError(button + " is not among " + stops());
    }

    private List<XAccessibleContext> all() throws Exception {
        List<XAccessibleContext> parts = new ArrayList<>();
        collect(window, parts);
        return parts;
    }

    private static void collect(XAccessibleContext from, List<XAccessibleContext> parts) throws Exception {
        parts.add(from);
        for (int i = 0; i < from.getAccessibleChildCount(); i++) {
            XAccessible child = from.getAccessibleChild(i);
            if (child != null) {
                collect(child.getAccessibleContext(), parts);
            }
        }
    }

    private static Optional<XAccessibleContext> find(Office office, String title) throws Exception {
        XExtendedToolkit toolkit = Uno.as(
                XExtendedToolkit.class,
                office.uno().getServiceManager().createInstanceWithContext("com.sun.star.awt.Toolkit", office.uno()));
        for (int i = 0; i < toolkit.getTopWindowCount(); i++) {
            XTopWindow top = toolkit.getTopWindow(i);
            @Nullable XAccessible seen = UnoRuntime.queryInterface(XAccessible.class, top);
            // A window that is made but not yet shown would lose what is pressed.
            if (seen != null && Uno.as(XWindow2.class, top).isVisible()) {
                XAccessibleContext window = seen.getAccessibleContext();
                if (title.equals(window.getAccessibleName())) {
                    return Optional.of(window);
                }
            }
        }
        return Optional.empty();
    }
}
