package org.snugsheet.office.menu;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XFrame;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snugsheet.office.words.DeclinedException;
import org.snugsheet.office.words.Language;
import org.snugsheet.office.words.OfficeLanguage;

/**
 * One choice from the menu: where it was made, and with which arguments.
 *
 * @param office the office’s context
 * @param window the window
 * @param arguments what a macro gave; the menu gives none
 */
record MenuInvocation(XComponentContext office, XFrame window, List<PropertyValue> arguments) {

    MenuInvocation {
        arguments = List.copyOf(arguments);
    }

    /** The language of menus and windows. */
    Language language() {
        return OfficeLanguage.of(office);
    }

    /**
     * The spreadsheet in the window.
     *
     * @throws DeclinedException if there is none
     */
    XSpreadsheetDocument document() {
        XSpreadsheetDocument document = UnoRuntime.queryInterface(
                XSpreadsheetDocument.class, window.getController().getModel());
        if (document == null) {
            throw new DeclinedException(MenuWords.NO_SHEET);
        }
        return document;
    }

    /** Whether to say and ask nothing. */
    boolean isQuiet() {
        return argument("Quiet").isPresent();
    }

    /** The value of an argument. */
    Optional<Object> argument(String name) {
        return arguments.stream()
                .filter(argument -> name.equals(argument.Name))
                .<@Nullable Object>map(argument -> argument.Value)
                .findFirst();
    }
}
