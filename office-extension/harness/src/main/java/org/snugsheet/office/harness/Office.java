package org.snugsheet.office.harness;

import com.sun.star.awt.XRequestCallback;
import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XEnumeration;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XDesktop;
import com.sun.star.lang.DisposedException;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;

/**
 * A real LibreOffice, running without a window, with a profile of its own.
 *
 * <pre>{@code
 * try (Office office = Office.startWith(oxt)) {
 *     assertEquals(4, office.evaluate("=2+2").number());
 * }
 * }</pre>
 *
 * <p>Several may run at once. Every call has a time limit: when it is over the office is killed, and that call and all
 * later ones fail with {@link OfficeFailure}. Whatever happens, {@link #close()} leaves no process and no file; so does
 * an interrupted build, as long as its Java can still run a shutdown hook. Not for use by two threads at once.
 */
public final class Office implements AutoCloseable {
    private final OfficeSetup setup;
    private final OfficeProcess process;
    private final XComponentContext context;
    private final AtomicBoolean closed = new AtomicBoolean();
    private final AtomicBoolean hung = new AtomicBoolean();
    private Duration patience;
    private @Nullable CalcDocument scratch;
    private volatile @Nullable XRequestCallback queue;

    private Office(OfficeSetup setup, OfficeProcess process, XComponentContext context) {
        this.setup = setup;
        this.process = process;
        this.context = context;
        this.patience = setup.patience();
    }

    /** An office as delivered, in American English. */
    public static Office start() {
        return OfficeSetup.plain().start();
    }

    /** An office in American English into which this packed extension has really been installed. */
    public static Office startWith(Path oxt) {
        return OfficeSetup.plain().withExtension(oxt).start();
    }

    static Office start(OfficeSetup setup) {
        return connect(setup, OfficeProcess.launch(setup));
    }

    private static Office connect(OfficeSetup setup, OfficeProcess process) {
        try {
            return new Office(setup, process, process.connect());
        } catch (RuntimeException | Error e) {
            process.dispose();
            throw e;
        }
    }

    /** A new, empty document with one sheet. */
    public CalcDocument newDocument() {
        return load("private:factory/scalc");
    }

    /** The same in a window, which nobody sees: a few steps of the office, such as to undo a new sheet, ask for the one in front. */
    public CalcDocument newDocumentInView() {
        return load("private:factory/scalc", true);
    }

    /** Opens any file that the office can read as a spreadsheet; changes stay in memory until saved. */
    public CalcDocument open(Path file) {
        return load(Workspace.url(file.toAbsolutePath()));
    }

    /**
     * What a cell with this formula shows, in an otherwise empty sheet.
     *
     * @param formula in English with semicolons, such as {@code =SUM(1;2)}; the equals sign may be left out
     */
    public CellResult evaluate(String formula) {
        CalcDocument sheet = scratch;
        if (sheet == null) {
            sheet = newDocument();
            scratch = sheet;
        }
        return sheet.formula("A1", formula).at("A1");
    }

    /** What the office tells a user about its functions, those of extensions included. */
    public FunctionWizard functionWizard() {
        return FunctionWizard.of(this);
    }

    /** False once the office has ended, for whatever reason. */
    public boolean isAlive() {
        return !closed.get() && process.isAlive();
    }

    /** The running processes: the start script, the office, and what they started in turn. */
    public List<ProcessHandle> processes() {
        return process.living();
    }

    /** The temporary folder that holds the profile and the log. */
    public Path folder() {
        return process.workspace().folder();
    }

    /** From now on a single call may take this long. */
    public void setPatience(Duration limit) {
        patience = limit;
    }

    /** What this office was started from. */
    public OfficeSetup setup() {
        return setup;
    }

    /** For whatever this class has no method for; {@code getServiceManager()} of it makes any UNO service. */
    public XComponentContext uno() {
        return context;
    }

    /** One service of the office by its full name, such as {@code com.sun.star.sheet.FunctionAccess}. */
    public <T> T service(String name, Class<T> type) {
        return call("making " + name, () -> {
            Object service = context.getServiceManager().createInstanceWithContext(name, context);
            if (service == null) {
                throw new OfficeFailure("The office has no service " + name);
            }
            return UnoObjects.as(type, service);
        });
    }

    /** Where work waits for the office’s main thread; asked for once, because each document that is closed needs it. */
    XRequestCallback queue() {
        XRequestCallback known = queue;
        if (known == null) {
            known = service("com.sun.star.awt.AsyncCallback", XRequestCallback.class);
            queue = known;
        }
        return known;
    }

    /**
     * Runs calls to the office under the time limit, and turns what UNO throws into {@link OfficeFailure}.
     *
     * @param what for the message, such as {@code "saving a.ods"}
     */
    public <T> T call(String what, Callable<T> work) {
        if (closed.get()) {
            throw new OfficeFailure("The office was closed before " + what);
        }
        if (!process.isAlive()) {
            throw died(what, null);
        }
        try (Watchdog watchdog = Watchdog.over(patience, this::killHung)) {
            try {
                return work.call();
            } catch (DisposedException e) {
                // Calls lie within calls, and the watchdog of any of them may have been the first.
                if (watchdog.hasBitten() || hung.get()) {
                    throw new OfficeFailure("The office hung for "
                            + patience.toSeconds() + " s while " + what + " and was killed. Its log ends:\n"
                            + process.workspace().logTail());
                }
                throw process.settle()
                        ? new OfficeFailure("Already closed in the office, while " + what, e)
                        : died(what, e);
            } catch (OfficeFailure e) {
                throw e;
            } catch (Exception e) {
                throw new OfficeFailure("Failed while " + what, e);
            }
        }
    }

    private void killHung() {
        hung.set(true);
        process.kill();
    }

    private OfficeFailure died(String what, @Nullable Throwable cause) {
        String message = "The office has died, before or while " + what + ". Its log ends:\n"
                + process.workspace().logTail();
        return cause == null ? new OfficeFailure(message) : new OfficeFailure(message, cause);
    }

    /**
     * A document that something else has opened.
     *
     * @param sheet the name of one of its sheets
     * @throws OfficeFailure if none is open that has it
     */
    public CalcDocument opened(String sheet) {
        return call("looking for the document with " + sheet, () -> {
            for (XComponent component : open()) {
                XSpreadsheetDocument document = UnoRuntime.queryInterface(XSpreadsheetDocument.class, component);
                if (document != null && document.getSheets().hasByName(sheet)) {
                    return new CalcDocument(this, component);
                }
            }
            throw new OfficeFailure("No open document has " + sheet);
        });
    }

    /**
     * The document that some work opens, such as a choice from a menu.
     *
     * @throws OfficeFailure if it opens none
     */
    public CalcDocument openedBy(Runnable work) {
        List<XComponent> before = open();
        work.run();
        return open().stream()
                .filter(now -> before.stream().noneMatch(known -> UnoRuntime.areSame(known, now)))
                .findFirst()
                .map(component -> new CalcDocument(this, component))
                .orElseThrow(() -> new OfficeFailure("No document was opened"));
    }

    private List<XComponent> open() {
        return call("looking at the open documents", () -> {
            List<XComponent> all = new ArrayList<>();
            XEnumeration each = service("com.sun.star.frame.Desktop", XDesktop.class)
                    .getComponents()
                    .createEnumeration();
            while (each.hasMoreElements()) {
                all.add(UnoRuntime.queryInterface(XComponent.class, each.nextElement()));
            }
            return all;
        });
    }

    private CalcDocument load(String url) {
        return load(url, setup.windows() && OwnProcess.hasScreen());
    }

    private CalcDocument load(String url, boolean seen) {
        return call("opening " + url, () -> {
            XComponentLoader loader = service("com.sun.star.frame.Desktop", XComponentLoader.class);
            PropertyValue[] how = {UnoObjects.argument("Hidden", !seen), UnoObjects.argument("OnMainThread", seen)};
            XComponent component = loader.loadComponentFromURL(url, "_blank", 0, how);
            if (component == null) {
                throw new OfficeFailure("The office cannot open " + url);
            }
            return new CalcDocument(this, component);
        });
    }

    /** The extensions in this profile, with what a user may do to them. */
    public Extensions extensions() {
        return new Extensions(this);
    }

    /**
     * Ends this office as a user does and starts another one on the same profile: only then a change of its extensions is
     * complete. This one is closed, and the other one owns the folder.
     *
     * @return the other one
     */
    public Office restart() {
        if (!closed.compareAndSet(false, true)) {
            throw new OfficeFailure("The office was closed before it could be started again");
        }
        if (process.isAlive()) {
            OfficeEnd.ask(process, context);
        }
        return connect(setup, process.again());
    }

    /** Asks the office to end, waits a while, ends it by force if need be, and removes its folder. */
    @Override
    public void close() {
        if (closed.compareAndSet(false, true)) {
            try {
                if (process.isAlive()) {
                    OfficeEnd.ask(process, context);
                }
            } finally {
                process.dispose();
            }
        }
    }
}
