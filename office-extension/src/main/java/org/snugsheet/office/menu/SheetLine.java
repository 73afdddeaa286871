package org.snugsheet.office.menu;

import com.sun.star.awt.XToolkitExperimental;
import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.document.MacroExecMode;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XController;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.util.XCloseable;
import com.sun.star.view.DocumentZoomType;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.WorkedSheets;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.Setting;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.sheets.builder.Zoom;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;
import org.snugsheet.office.words.DocumentLanguage;
import org.snugsheet.office.words.Language;

/**
 * The lines below “Worked sheets” in the menu, one for each: a new document, in the language, scale and paper of the office, not saved
 * anywhere.
 */
public final class SheetLine {

    static final String ADDRESS = MenuItem.PROTOCOL + "sheet?name=";

    private SheetLine() {}

    /**
     * What the office calls when the line of a sheet is chosen.
     *
     * @param sheet the sheet
     * @return such as {@code org.snugsheet:sheet?name=weather-diary}
     */
    public static String address(WorkedSheet sheet) {
        return ADDRESS + sheet.fileName();
    }

    /**
     * What the line says in a language.
     *
     * @param sheet the sheet
     * @param language the language of the menu
     * @return its title and what it is for
     */
    public static String title(WorkedSheet sheet, Language language) {
        return language.words(sheet.menuLine());
    }

    /** The name of the sheet that an address asks for, whether there is such a sheet or not. */
    static Optional<String> asked(String address) {
        return address.startsWith(ADDRESS) ? Optional.of(address.substring(ADDRESS.length())) : Optional.empty();
    }

    /** Opens it. */
    static Outcome open(MenuInvocation choice, String name) throws com.sun.star.uno.Exception {
        WorkedSheet sheet = WorkedSheets.named(name)
                .orElseThrow(() -> new DeclinedException(
                        MenuWords.NO_SUCH_WORKED_SHEET,
                        name,
                        WorkedSheets.all().stream().map(WorkedSheet::fileName).collect(Collectors.joining(", "))));
        return opened(choice, sheet, Optional.empty());
    }

    /** Fills a new document and shows it, or shows nothing. A macro may name a Language other than the office’s, such as es-US. */
    static Outcome opened(MenuInvocation choice, WorkedSheet sheet, Optional<Scale> scale)
            throws com.sun.star.uno.Exception {
        try (BusyWindow working = BusyWindow.on(choice, MenuWords.OPENING)) {
            working.at(0, 1);
            // As the office’s own New: otherwise 26.8 says on top of it that macros, of which it has none, are
            // disabled.
            PropertyValue[] how = {Uno.named("Hidden", true), Uno.named("MacroExecutionMode", MacroExecMode.USE_CONFIG)
            };
            Object loaded = Uno.as(XComponentLoader.class, Uno.service(choice.office(), "com.sun.star.frame.Desktop"))
                    .loadComponentFromURL("private:factory/scalc", "_blank", 0, how);
            XSpreadsheetDocument document = Uno.as(XSpreadsheetDocument.class, loaded);
            boolean isShown = false;
            try {
                choice.argument("Language")
                        .map(String::valueOf)
                        .ifPresent(tag -> DocumentLanguage.set(Uno.as(XPropertySet.class, document), tag));
                Setting usual = Setting.of(document);
                Book book = Book.filled(
                        choice.office(), document, sheet, scale.map(usual::on).orElse(usual));
                show(choice, Uno.as(XModel.class, document).getCurrentController(), book);
                isShown = true;
            } finally {
                if (!isShown) {
                    Uno.as(XCloseable.class, document).close(true);
                }
            }
        }
        return Outcome.seen(title(sheet, choice.language()));
    }

    private static void show(MenuInvocation choice, XController controller, Book book)
            throws com.sun.star.uno.Exception {
        book.calculate();
        Uno.set(controller, "ShowGrid", false);
        Uno.set(controller, "ZoomType", DocumentZoomType.BY_VALUE);
        Uno.set(controller, "ZoomValue", (short) Zoom.of(book.firstPage()));
        XSpreadsheetView view = Uno.as(XSpreadsheetView.class, controller);
        view.setActiveSheet(book.firstPage().sheet());
        controller.getFrame().getContainerWindow().setVisible(true);
        MenuInvocation there = new MenuInvocation(choice.office(), controller.getFrame(), choice.arguments());
        for (Map.Entry<Page, String> cursor : book.cursors().entrySet()) {
            view.setActiveSheet(cursor.getKey().sheet());
            Pages.goTo(there, cursor.getValue());
        }
        view.setActiveSheet(book.firstPage().sheet());
        Pages.goTo(there, book.firstCell());
        // How it is looked at counts as a change, and so does a chart that is drawn for the first time, once the office
        // comes to it.
        Uno.as(XToolkitExperimental.class, Uno.service(choice.office(), "com.sun.star.awt.Toolkit"))
                .processEventsToIdle();
        book.setUnchanged();
    }
}
