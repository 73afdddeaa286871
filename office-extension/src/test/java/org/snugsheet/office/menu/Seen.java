package org.snugsheet.office.menu;

import com.sun.star.awt.Key;
import com.sun.star.awt.XButton;
import com.sun.star.awt.XExtendedToolkit;
import com.sun.star.awt.XFixedText;
import com.sun.star.awt.XTopWindow;
import com.sun.star.awt.XVclContainer;
import com.sun.star.awt.XVclWindowPeer;
import com.sun.star.awt.XWindow;
import com.sun.star.awt.XWindow2;
import com.sun.star.lang.DisposedException;
import com.sun.star.lang.IndexOutOfBoundsException;
import com.sun.star.uno.UnoRuntime;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.Patience;
import org.snugsheet.office.uno.Uno;

/**
 * A window that is open in the office, read by what is written on its parts and worked by the keyboard. Its accessibility would
 * tell more, but from 26 on the office does not hand that out with its windows.
 */
final class Seen {

    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final long PAUSE = 100;

    private final Keyboard keyboard;
    private final XTopWindow window;

    private Seen(Office office, XTopWindow window) {
        this.keyboard = new Keyboard(office);
        this.window = window;
    }

    /** Waits for the window of this title. */
    static Seen window(Office office, String title) throws Exception {
        long end = end();
        while (System.nanoTime() < end) {
            Optional<XTopWindow> found = find(office, title);
            if (found.isPresent()) {
                return new Seen(office, found.get());
            }
            Thread.sleep(PAUSE);
        }
        throw new AssertionError("No window " + title + " among "
                + shown(office).stream().map(Seen::written).toList());
    }

    /** Waits until no window of this title is left: a pressed button works a moment later. */
    static void awaitGone(Office office, String title) throws Exception {
        long end = end();
        while (find(office, title).isPresent()) {
            if (System.nanoTime() > end) {
                throw new AssertionError(title + " stays open");
            }
            Thread.sleep(PAUSE);
        }
    }

    /** What a choice told, once its last window is closed. */
    static String told(CompletableFuture<String> choice) throws Exception {
        return choice.get(Patience.scaled(PATIENCE).toMillis(), TimeUnit.MILLISECONDS);
    }

    /** The names of its fields and buttons, in the order in which the tabulator key reaches them. */
    List<String> stops() {
        List<String> names = new ArrayList<>();
        String label = "";
        for (XWindow part : parts()) {
            if (isLabel(part)) {
                label = written(part);
            } else {
                names.add(isField(part) ? label : written(part));
            }
        }
        return names;
    }

    /** Everything written in the window. */
    String text() throws Exception {
        StringBuilder text = new StringBuilder(written(window)).append('\n');
        for (XWindow part : parts()) {
            text.append(isField(part) ? keyboard.copy(part) : written(part)).append('\n');
        }
        return text.toString();
    }

    /** Types into the field that this label names. */
    void type(String label, String text) throws Exception {
        int place = stops().indexOf(label);
        if (place < 0) {
            throw new AssertionError(label + " is not among " + stops());
        }
        List<XWindow> stops = parts().stream().filter(part -> !isLabel(part)).toList();
        keyboard.retype(stops.get(place), text);
    }

    /** Presses a button. */
    void press(String button) throws Exception {
        for (XWindow part : parts()) {
            if (UnoRuntime.queryInterface(XButton.class, part) != null
                    && written(part).equals(button)) {
                keyboard.press(part, Key.RETURN, '\r', 0);
                return;
            }
        }
        throw new AssertionError(button + " is not among " + stops());
    }

    private List<XWindow> parts() {
        List<XWindow> parts = new ArrayList<>();
        for (XWindow part : Uno.as(XVclContainer.class, window).getWindows()) {
            // The bars of a form that needs none, and the picture of a message.
            if (Uno.as(XWindow2.class, part).isVisible()
                    && Uno.as(XWindow2.class, part).isEnabled()) {
                parts.add(part);
            }
        }
        return parts;
    }

    private static boolean isLabel(XWindow part) {
        return UnoRuntime.queryInterface(XFixedText.class, part) != null;
    }

    /** Around a field the office draws a border, on which nothing is written. */
    private static boolean isField(XWindow part) {
        return !isLabel(part) && written(part).isEmpty();
    }

    /** As it is read, without the mark before the letter that leads there. */
    private static String written(Object part) {
        try {
            return String.valueOf(Uno.as(XVclWindowPeer.class, part).getProperty("Text"))
                    .replace("~", "");
        } catch (DisposedException gone) {
            return "";
        }
    }

    private static Optional<XTopWindow> find(Office office, String title) throws Exception {
        return shown(office).stream()
                .filter(window -> title.equals(written(window)))
                .findFirst();
    }

    /** The windows that are open; one may go while they are listed, and then is not among them. */
    private static List<XTopWindow> shown(Office office) throws Exception {
        XExtendedToolkit toolkit = office.service("com.sun.star.awt.Toolkit", XExtendedToolkit.class);
        List<XTopWindow> windows = new ArrayList<>();
        for (int i = 0; i < toolkit.getTopWindowCount(); i++) {
            try {
                XTopWindow top = toolkit.getTopWindow(i);
                // A window that is made but not yet shown would lose what is pressed.
                if (top != null && Uno.as(XWindow2.class, top).isVisible()) {
                    windows.add(top);
                }
            } catch (DisposedException | IndexOutOfBoundsException gone) {
                if (!office.isAlive()) {
                    throw gone;
                }
            }
        }
        return windows;
    }

    private static long end() {
        return System.nanoTime() + Patience.scaled(PATIENCE).toNanos();
    }
}
