package org.snugsheet.office.menu;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.XController;
import com.sun.star.frame.XDispatchHelper;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.util.URL;
import com.sun.star.util.XURLTransformer;
import com.sun.star.view.XSelectionSupplier;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.MainThread;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.uno.Uno;

/** Chooses lines of the menu as the office does, by their address. */
public final class Menu {

    /** Nothing is said and nothing asked. */
    public static final PropertyValue QUIET = Uno.named("Quiet", true);

    private Menu() {}

    /**
     * Chooses a line, in the office’s main thread as a person does.
     *
     * @return what the user would be told
     */
    public static String choose(Office office, CalcDocument sheet, MenuItem item, PropertyValue... arguments) {
        return asAPerson(office, () -> call(office, sheet, item.address(), arguments));
    }

    /**
     * Makes a copy to share.
     *
     * @return what the user would be told
     */
    public static String share(Office office, CalcDocument sheet, Path copy) {
        return choose(
                office, sheet, MenuItem.SHARE, Uno.named("Target", copy.toUri().toString()), QUIET);
    }

    /**
     * Makes a copy that goes on working.
     *
     * @return what the user would be told
     */
    public static String shareLiving(Office office, CalcDocument sheet, Path copy) {
        return choose(
                office,
                sheet,
                MenuItem.SHARE,
                Uno.named("Target", copy.toUri().toString()),
                Uno.named("Living", true),
                QUIET);
    }

    /**
     * Calls an address of the menu, as the menu and the keys do.
     *
     * @return what the user would be told
     */
    public static String call(Office office, CalcDocument sheet, String address, PropertyValue... arguments) {
        XDispatchHelper helper = office.service("com.sun.star.frame.DispatchHelper", XDispatchHelper.class);
        return office.call("calling " + address, () -> {
            XDispatchProvider window =
                    Uno.as(XDispatchProvider.class, controller(sheet).getFrame());
            Object result = helper.executeDispatch(window, address, "_self", 0, arguments);
            return String.valueOf(((DispatchResultEvent) result).Result);
        });
    }

    /** Does something as the menu, the keyboard and the mouse do: in the office’s main thread. */
    public static <T> T asAPerson(Office office, Callable<T> work) {
        return MainThread.of(office, "waiting for the office’s main thread", work);
    }

    /**
     * Chooses a line that opens windows, beside the test that works them. In the office’s main thread, as a person would: of a window
     * that another thread opened the office makes its main thread wait, and does so for ever, and busily, once a second one opens above
     * it.
     */
    static CompletableFuture<String> chosenByAPerson(
            Office office, CalcDocument sheet, MenuItem item, PropertyValue... arguments) {
        return CompletableFuture.supplyAsync(() -> choose(office, sheet, item, arguments));
    }

    /** Whether anybody answers to an address in the window of this sheet, as it is now. */
    static boolean answers(Office office, CalcDocument sheet, String address) {
        return office.call("asking who answers to " + address, () -> {
            URL[] url = {new URL()};
            url[0].Complete = address;
            office.service("com.sun.star.util.URLTransformer", XURLTransformer.class)
                    .parseStrict(url);
            return Uno.as(XDispatchProvider.class, controller(sheet).getFrame()).queryDispatch(url[0], "_self", 0)
                    != null;
        });
    }

    /** Selects cells of the first sheet. */
    public static void select(Office office, CalcDocument sheet, String cells) {
        office.call(
                "selecting " + cells,
                () -> Uno.as(XSelectionSupplier.class, controller(sheet))
                        .select(Uno.sheets(sheet.uno()).get(0).getCellRangeByName(cells)));
    }

    /** Selects cells of another sheet. */
    static boolean selectOn(Office office, CalcDocument sheet, String page, String cells) {
        return office.call(
                "selecting " + cells,
                () -> Uno.as(XSelectionSupplier.class, controller(sheet))
                        .select(Uno.as(
                                        XSpreadsheet.class,
                                        sheet.uno().getSheets().getByName(page))
                                .getCellRangeByName(cells)));
    }

    /** Puts the cursor into a cell of the open sheet, as the name box does; in a cell that is selected Enter goes nowhere. */
    static boolean goTo(Office office, CalcDocument sheet, String cell) {
        XDispatchHelper helper = office.service("com.sun.star.frame.DispatchHelper", XDispatchHelper.class);
        return office.call("going to " + cell, () -> {
            XDispatchProvider window =
                    Uno.as(XDispatchProvider.class, controller(sheet).getFrame());
            helper.executeDispatch(window, ".uno:GoToCell", "", 0, new PropertyValue[] {Uno.named("ToPoint", cell)});
            return true;
        });
    }

    /** Whether the window shows this sheet, counted from 0: a new page is filled before it is opened. */
    static boolean isOpen(Office office, CalcDocument sheet, int index) {
        return office.call(
                "asking which sheet is open",
                () -> Uno.as(
                                        XCellRangeAddressable.class,
                                        Uno.as(XSpreadsheetView.class, controller(sheet))
                                                .getActiveSheet())
                                .getRangeAddress()
                                .Sheet
                        == index);
    }

    private static XController controller(CalcDocument sheet) {
        return Uno.as(XModel.class, sheet.uno()).getCurrentController();
    }
}
