package org.snugsheet.office.menu;

import com.sun.star.awt.XWindow;
import com.sun.star.frame.XFrame;
import com.sun.star.task.XStatusIndicator;
import com.sun.star.task.XStatusIndicatorFactory;
import com.sun.star.uno.UnoRuntime;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.snugsheet.office.sharing.Progress;

/**
 * Work that takes a while, with a bar at the foot of the window. Whenever the bar moves, the office handles what is waiting:
 * a key or a click of somebody who cannot wait would come in the middle of it. So until it is done the window takes none, and nothing
 * new is begun.
 */
final class BusyWindow implements Progress, AutoCloseable {

    private static final AtomicBoolean BUSY = new AtomicBoolean();

    /** Often enough for an eye. */
    private static final int STEPS = 50;

    private final Optional<XStatusIndicator> bar;
    private final Optional<XWindow> window;
    private final String words;
    private int shown = -1;

    private BusyWindow(Optional<XFrame> seen, String words) {
        this.words = words;
        this.bar = seen.map(frame -> UnoRuntime.queryInterface(XStatusIndicatorFactory.class, frame))
                .map(XStatusIndicatorFactory::createStatusIndicator);
        this.window = seen.map(XFrame::getContainerWindow);
    }

    /**
     * Begins.
     *
     * @param choice what was chosen
     * @param words what is being done
     * @return to be closed when it is done
     */
    static BusyWindow on(MenuInvocation choice, MenuWords words) {
        Optional<XFrame> seen = choice.isQuiet() ? Optional.empty() : Optional.of(choice.window());
        return on(seen, choice.language().words(words));
    }

    /** Begins in a window, if one is looked at. */
    static BusyWindow on(Optional<XFrame> seen, String words) {
        BusyWindow working = new BusyWindow(seen, words);
        BUSY.set(true);
        working.window.ifPresent(window -> window.setEnable(false));
        return working;
    }

    /** Whether such work is going on. */
    static boolean isGoingOn() {
        return BUSY.get();
    }

    @Override
    public void at(int done, int all) {
        int step = done * STEPS / Math.max(1, all);
        if (bar.isEmpty() || step == shown) {
            return;
        }
        if (shown < 0) {
            bar.get().start(words, STEPS);
        }
        shown = step;
        bar.get().setValue(step);
    }

    @Override
    public Optional<XStatusIndicator> bar() {
        return bar;
    }

    @Override
    public void close() {
        bar.ifPresent(XStatusIndicator::end);
        window.ifPresent(one -> one.setEnable(true));
        BUSY.set(false);
    }
}
