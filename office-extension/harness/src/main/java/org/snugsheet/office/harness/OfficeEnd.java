package org.snugsheet.office.harness;

import com.sun.star.container.XEnumeration;
import com.sun.star.frame.XDesktop;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.XModifiable;
import java.time.Duration;

/** How an office ends: by itself when it is asked, or by force when it takes too long. */
final class OfficeEnd {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private OfficeEnd() {}

    static void ask(OfficeProcess process, XComponentContext context) {
        try (Watchdog watchdog = Watchdog.over(Patience.scaled(PATIENCE), process::kill)) {
            try {
                XDesktop desktop = UnoObjects.as(
                        XDesktop.class,
                        context.getServiceManager().createInstanceWithContext("com.sun.star.frame.Desktop", context));
                forgetChanges(desktop);
                desktop.terminate();
            } catch (com.sun.star.uno.Exception | com.sun.star.uno.RuntimeException e) {
                // The line may break before the answer comes; whether the office goes is seen next.
            }
            while (process.isAlive() && !watchdog.hasBitten()) {
                Workspace.pause(20);
            }
        }
    }

    /** An office with windows would ask, of each document that is still open, whether to save it, and wait for ever. */
    private static void forgetChanges(XDesktop desktop) throws com.sun.star.uno.Exception {
        XEnumeration open = desktop.getComponents().createEnumeration();
        while (open.hasMoreElements()) {
            XModifiable document = UnoRuntime.queryInterface(XModifiable.class, open.nextElement());
            if (document != null) {
                document.setModified(false);
            }
        }
    }
}
