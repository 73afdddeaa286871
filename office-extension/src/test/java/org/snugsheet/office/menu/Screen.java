package org.snugsheet.office.menu;

import java.awt.AWTException;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.function.BooleanSupplier;
import javax.imageio.ImageIO;
import org.snugsheet.office.harness.Patience;

/** The screen and the keyboard of a person in front of the office. */
final class Screen {

    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final int PAUSE = 500;
    private static final int LONG = 4000;

    /** A blinking cursor is no change. */
    private static final double STIR = 0.0005;

    private static final int STILL = 3;

    private final Robot robot;
    private final Rectangle whole;
    private final Path folder;

    Screen(Path folder) {
        try {
            this.robot = new Robot();
        } catch (AWTException noScreen) {
            throw new IllegalStateException("Pictures need a screen", noScreen);
        }
        robot.setAutoDelay(40);
        this.whole = new Rectangle(Toolkit.getDefaultToolkit().getScreenSize());
        this.folder = folder;
    }

    int width() {
        return whole.width;
    }

    int height() {
        return whole.height;
    }

    /** Points at a place and clicks it. */
    void click(int x, int y) {
        robot.mouseMove(x, y);
        robot.mousePress(java.awt.event.InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(java.awt.event.InputEvent.BUTTON1_DOWN_MASK);
    }

    /** Presses keys together and lets them go, the last one first. */
    void press(int... keys) {
        for (int key : keys) {
            robot.keyPress(key);
        }
        for (int i = keys.length - 1; i >= 0; i--) {
            robot.keyRelease(keys[i]);
        }
    }

    /** Types plain letters, digits and points. */
    void type(String text) {
        text.chars().forEach(letter -> press(KeyEvent.getExtendedKeyCodeForChar(letter)));
    }

    /** Presses the letter that leads to a field or a line, the one after the ~ of its label. */
    void lead(String label) {
        press(KeyEvent.VK_ALT, letterOf(label));
    }

    /** The key of the letter after the ~. */
    static int letterOf(String label) {
        return KeyEvent.getExtendedKeyCodeForChar(Character.toLowerCase(label.charAt(label.indexOf('~') + 1)));
    }

    /** Does something and waits until it has come to be seen and nothing moves any more. */
    void after(Runnable done) {
        BufferedImage before = seen();
        done.run();
        await("a change", () -> change(before, seen()) > STIR);
        still();
    }

    /** Waits for something. */
    void await(String what, BooleanSupplier come) {
        Instant end = Instant.now().plus(Patience.scaled(PATIENCE));
        while (!come.getAsBoolean()) {
            if (Instant.now().isAfter(end)) {
                keep("missed");
                throw new AssertionError("Waited in vain for " + what);
            }
            robot.delay(PAUSE);
        }
    }

    /** Waits until the office, which looks as if nothing happened, has had time to do its work. */
    void rest() {
        robot.delay(LONG);
        still();
    }

    /** Waits until nothing moves any more. */
    void still() {
        BufferedImage last = seen();
        for (int same = 0; same < STILL; ) {
            robot.delay(PAUSE);
            BufferedImage next = seen();
            same = change(last, next) > STIR ? 0 : same + 1;
            last = next;
        }
    }

    /** Writes a picture of the whole screen. */
    void keep(String name) {
        try {
            Files.createDirectories(folder);
            ImageIO.write(seen(), "png", folder.resolve(name + ".png").toFile());
        } catch (IOException full) {
            throw new IllegalStateException(full);
        }
    }

    private BufferedImage seen() {
        return robot.createScreenCapture(whole);
    }

    private static double change(BufferedImage one, BufferedImage other) {
        int[] was = one.getRGB(0, 0, one.getWidth(), one.getHeight(), null, 0, one.getWidth());
        int[] is = other.getRGB(0, 0, other.getWidth(), other.getHeight(), null, 0, other.getWidth());
        int different = 0;
        for (int i = 0; i < was.length; i++) {
            different += was[i] == is[i] ? 0 : 1;
        }
        return (double) different / was.length;
    }
}
