package org.snugsheet.office.menu;

import com.sun.star.awt.Key;
import com.sun.star.awt.KeyEvent;
import com.sun.star.awt.KeyModifier;
import com.sun.star.awt.XToolkitRobot;
import com.sun.star.awt.XWindow;
import com.sun.star.datatransfer.DataFlavor;
import com.sun.star.datatransfer.XTransferable;
import com.sun.star.datatransfer.clipboard.XClipboard;
import com.sun.star.uno.Type;
import java.time.Duration;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.Patience;

/** Somebody at the keyboard of an office, also of one that nobody sees. */
final class Keyboard {

    private static final Duration PATIENCE = Duration.ofSeconds(1);
    private static final long PAUSE = 100;
    private static final DataFlavor TEXT = new DataFlavor("text/plain;charset=utf-16", "text", new Type(String.class));

    private final XToolkitRobot keys;
    private final XClipboard clipboard;

    Keyboard(Office office) {
        keys = office.service("com.sun.star.awt.Toolkit", XToolkitRobot.class);
        clipboard = office.service("com.sun.star.datatransfer.clipboard.SystemClipboard", XClipboard.class);
    }

    /** One key, in the part of a window that gets the focus first. */
    void press(XWindow part, short code, char sign, int modifiers) throws Exception {
        part.setFocus();
        strike(part, code, sign, modifiers);
    }

    /** Another text in place of all that is in a field. */
    void retype(XWindow field, String text) throws Exception {
        press(field, Key.A, '\1', KeyModifier.MOD1);
        for (int i = 0; i < text.length(); i++) {
            strike(field, (short) 0, text.charAt(i), 0);
        }
    }

    /** What is in a field, taken by the clipboard; "" where nothing can be copied. */
    String copy(XWindow field) throws Exception {
        clipboard.setContents(null, null);
        press(field, Key.A, '\1', KeyModifier.MOD1);
        strike(field, Key.C, '\3', KeyModifier.MOD1);
        long end = System.nanoTime() + Patience.scaled(PATIENCE).toNanos();
        while (System.nanoTime() < end) {
            XTransferable copied = clipboard.getContents();
            if (copied != null && copied.isDataFlavorSupported(TEXT)) {
                return String.valueOf(copied.getTransferData(TEXT));
            }
            Thread.sleep(PAUSE);
        }
        return "";
    }

    private void strike(XWindow part, short code, char sign, int modifiers) throws Exception {
        KeyEvent key = new KeyEvent();
        key.Source = part;
        key.KeyCode = code;
        key.KeyChar = sign;
        key.Modifiers = (short) modifiers;
        keys.keyPress(key);
        keys.keyRelease(key);
    }
}
