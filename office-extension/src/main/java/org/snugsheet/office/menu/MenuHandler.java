package org.snugsheet.office.menu;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.DispatchDescriptor;
import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.DispatchResultState;
import com.sun.star.frame.XDispatch;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XDispatchResultListener;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XNotifyingDispatch;
import com.sun.star.frame.XStatusListener;
import com.sun.star.lang.XInitialization;
import com.sun.star.lang.XServiceInfo;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.URL;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;

/**
 * What the office calls when a line of the menu is chosen or F1 is pressed in Calc. There is one for each window.
 *
 * <p>Arguments: {@code Quiet} says nothing and asks nothing; {@code Target} is the address of the file to write, {@code Password} that
 * of a copy to share, {@code Living} whether it goes on working; {@code Jars}, {@code Materials}, {@code Minutes}, {@code Interval},
 * {@code Scale}, {@code Mark} and {@code Surroundings} are what a window would ask; {@code Language} is that of a new sheet. They serve
 * macros and tests; the menu gives none, so that the user is asked and told. A caller that asks to be notified gets the sentence.
 */
public final class MenuHandler extends WeakBase
        implements XDispatchProvider, XNotifyingDispatch, XInitialization, XServiceInfo {

    /** The office’s service for those who handle addresses of their own. */
    public static final String SERVICE = "com.sun.star.frame.ProtocolHandler";

    private static final System.Logger LOG = System.getLogger(MenuHandler.class.getName());

    private static final AtomicBoolean STARTED = new AtomicBoolean();

    private final XComponentContext office;
    private @Nullable XFrame frame;

    /**
     * For the office.
     *
     * @param office its context
     */
    public MenuHandler(XComponentContext office) {
        this.office = office;
        if (STARTED.compareAndSet(false, true)) {
            Reference.forgetSignposts(Reference.temporary());
        }
    }

    @Override
    public void initialize(Object[] arguments) {
        if (arguments.length > 0) {
            frame = UnoRuntime.queryInterface(XFrame.class, arguments[0]);
        }
    }

    @Override
    public @Nullable XDispatch queryDispatch(URL address, String target, int flags) {
        try {
            boolean ours = address.Complete.equals(FunctionHelp.ADDRESS)
                    ? chosen(new PropertyValue[0]).flatMap(FunctionHelp::asked).isPresent()
                    : SheetLine.asked(address.Complete).isPresent()
                            || MenuItem.of(address.Complete).isPresent();
            return ours ? this : null;
        } catch (RuntimeException e) {
            LOG.log(System.Logger.Level.WARNING, "Not asked, because the window is gone: " + address.Complete, e);
            return null;
        }
    }

    @Override
    public @Nullable XDispatch[] queryDispatches(DispatchDescriptor[] wanted) {
        XDispatch[] dispatches = new XDispatch[wanted.length];
        for (int i = 0; i < wanted.length; i++) {
            dispatches[i] = queryDispatch(wanted[i].FeatureURL, wanted[i].FrameName, wanted[i].SearchFlags);
        }
        return dispatches;
    }

    @Override
    public void dispatch(URL address, PropertyValue[] arguments) {
        run(address, arguments);
    }

    @Override
    public void dispatchWithNotification(
            URL address, PropertyValue[] arguments, @Nullable XDispatchResultListener listener) {
        Optional<String> said = run(address, arguments);
        if (listener != null) {
            short state = said.isPresent() ? DispatchResultState.SUCCESS : DispatchResultState.FAILURE;
            listener.dispatchFinished(new DispatchResultEvent(this, state, said.orElse("")));
        }
    }

    /** An exception that leaves here goes through the office’s menu, which ends the office. */
    private Optional<String> run(URL address, PropertyValue[] arguments) {
        if (BusyWindow.isGoingOn()) {
            return Optional.empty();
        }
        try {
            return chosen(arguments).flatMap(choice -> done(address.Complete, choice));
        } catch (RuntimeException e) {
            LOG.log(System.Logger.Level.ERROR, "Failed: " + address.Complete, e);
            return Optional.empty();
        }
    }

    private static Optional<String> done(String address, MenuInvocation choice) {
        if (address.equals(FunctionHelp.ADDRESS)) {
            return FunctionHelp.asked(choice).map(function -> MenuCommands.help(function, choice));
        }
        Optional<String> sheet = SheetLine.asked(address);
        return sheet.isPresent()
                ? sheet.map(name -> MenuCommands.open(name, choice))
                : MenuItem.of(address).map(item -> MenuCommands.run(item, choice));
    }

    private Optional<MenuInvocation> chosen(PropertyValue[] arguments) {
        return Optional.ofNullable(frame).map(window -> new MenuInvocation(office, window, List.of(arguments)));
    }

    @Override
    public void addStatusListener(XStatusListener listener, URL address) {
        // All lines can be chosen at any time; what cannot be done says why.
    }

    @Override
    public void removeStatusListener(XStatusListener listener, URL address) {
        // None was kept.
    }

    @Override
    public String getImplementationName() {
        return getClass().getName();
    }

    @Override
    public boolean supportsService(String name) {
        return SERVICE.equals(name);
    }

    @Override
    public String[] getSupportedServiceNames() {
        return new String[] {SERVICE};
    }
}
