package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.awt.XWindow;
import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.DispatchResultState;
import com.sun.star.frame.XController;
import com.sun.star.frame.XDispatchResultListener;
import com.sun.star.frame.XFrame;
import com.sun.star.lang.DisposedException;
import com.sun.star.lang.EventObject;
import com.sun.star.lang.XMultiComponentFactory;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.URL;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A window that goes while a choice is made: what is thrown then must not reach the office, which it would end. */
class MenuHandlerTest {

    /** Kept, or what is set on it would be forgotten with it. */
    private static final Logger LOG = Logger.getLogger("org.snugsheet.office.menu");

    private final MenuHandler handler = new MenuHandler(gone(XComponentContext.class));

    private final List<LogRecord> logged = new ArrayList<>();

    private final Handler keeper = new Handler() {
        @Override
        public void publish(LogRecord entry) {
            logged.add(entry);
        }

        @Override
        public void flush() {
            // Nothing is held back.
        }

        @Override
        public void close() {
            // Nothing is open.
        }
    };

    @BeforeEach
    void keepWhatIsLogged() {
        LOG.setUseParentHandlers(false);
        LOG.addHandler(keeper);
    }

    @AfterEach
    void keepNoMore() {
        LOG.removeHandler(keeper);
        LOG.setUseParentHandlers(true);
    }

    @ParameterizedTest
    @EnumSource
    void aWindowThatIsGoneIsNoEndOfTheOffice(MenuItem item) {
        handler.initialize(new Object[] {gone(XFrame.class)});
        URL address = address(item.address());
        handler.dispatch(address, new PropertyValue[0]);
        List<Short> states = new ArrayList<>();
        handler.dispatchWithNotification(address, new PropertyValue[0], new XDispatchResultListener() {
            @Override
            public void dispatchFinished(com.sun.star.frame.DispatchResultEvent result) {
                states.add(result.State);
            }

            @Override
            public void disposing(EventObject event) {
                // Nothing is kept.
            }
        });
        assertEquals(List.of(DispatchResultState.FAILURE), states);
        assertLogged(item.address(), Level.SEVERE);
    }

    /** The office asks before F1 does anything; so does it while the window goes. */
    @Test
    void askingWhoAnswersF1IsNoEndEither() {
        handler.initialize(new Object[] {gone(XFrame.class)});
        assertNull(handler.queryDispatch(address(FunctionHelp.ADDRESS), "", 0));
        assertLogged(FunctionHelp.ADDRESS, Level.WARNING);
    }

    /** A line of the menu that fails is told in plain words; what happened is in the log. */
    @Test
    void whatTheOfficeThrewIsInTheLog() {
        List<String> asked = new ArrayList<>();
        XFrame window = answering(XFrame.class, Map.of("getController", gone(XController.class)), asked);
        XMultiComponentFactory noServices =
                throwing(XMultiComponentFactory.class, new com.sun.star.uno.Exception("no settings, so English"));
        XComponentContext office = answering(XComponentContext.class, Map.of("getServiceManager", noServices), asked);
        String said = MenuCommands.run(MenuItem.EXPLAIN, new MenuInvocation(office, window, List.of(Menu.QUIET)));
        assertEquals(MenuWords.FAILED.english(), said);
        assertLogged(MenuItem.EXPLAIN.address(), Level.SEVERE);
    }

    private void assertLogged(String address, Level level) {
        assertFalse(logged.isEmpty());
        for (LogRecord entry : logged) {
            assertEquals(level, entry.getLevel());
            assertTrue(entry.getMessage().contains(address), entry.getMessage());
            assertInstanceOf(DisposedException.class, entry.getThrown());
        }
    }

    /** Somebody cannot wait, and chooses again while a copy is being made. */
    @Test
    void nothingElseIsBegunWhileAPieceOfWorkGoesOn() {
        List<String> asked = new ArrayList<>();
        XWindow window = answering(XWindow.class, Map.of(), asked);
        handler.initialize(new Object[] {answering(XFrame.class, Map.of("getContainerWindow", window), asked)});
        URL address = address(MenuItem.SHARE.address());
        try (BusyWindow working =
                BusyWindow.on(Optional.of(answering(XFrame.class, Map.of("getContainerWindow", window), asked)), "")) {
            assertEquals(List.of("getContainerWindow", "setEnable[false]"), asked);
            asked.clear();
            working.at(1, 2);
            handler.dispatch(address, new PropertyValue[0]);
            assertEquals(List.of(), asked, "nothing was looked for, not even the document");
        }
        assertEquals(List.of("setEnable[true]"), asked);
        asked.clear();
        handler.dispatch(address, new PropertyValue[0]);
        assertFalse(asked.isEmpty(), "afterwards all goes on");
    }

    private static <T> T answering(Class<T> type, Map<String, Object> answers, List<String> asked) {
        return type.cast(Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, (self, method, given) -> {
            asked.add(method.getName() + (given == null ? "" : Arrays.toString(given)));
            return answers.get(method.getName());
        }));
    }

    @Test
    void withoutAWindowNothingHappens() {
        handler.dispatch(address(MenuItem.CAUTIONS.address()), new PropertyValue[0]);
        assertNull(handler.queryDispatch(address("elsewhere:"), "", 0));
    }

    private static URL address(String complete) {
        URL address = new URL();
        address.Complete = complete;
        return address;
    }

    private static <T> T gone(Class<T> type) {
        return throwing(type, new DisposedException("gone"));
    }

    private static <T> T throwing(Class<T> type, Exception thrown) {
        return type.cast(Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, (self, method, given) -> {
            throw thrown;
        }));
    }
}
