package org.snugsheet.office.menu;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XFrame;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.office.sharing.BringBack;
import org.snugsheet.office.sharing.CopyFile;
import org.snugsheet.office.sharing.SharingRefused;

/** Does what a line of the menu stands for, in one window, and tells the user how it went. */
final class Chosen {

    private static final String SHARED =
            "The copy is saved as {1}. {0} formulas are now values; each is kept in a note and on the page “How this was worked out”.";
    private static final String NOTHING_TO_SHARE =
            "This document has none of our formulas. Share it as it is. The file {1} is a plain copy.";
    private static final String BROUGHT_BACK = "{0} formulas are back in their cells. Save the document to keep them.";
    private static final String FAILED = "That did not work: {0}";
    private static final String NO_SHEET = "Open a spreadsheet first.";

    private final XComponentContext office;
    private final XFrame window;
    private final Optional<String> target;
    private final boolean quiet;

    private Chosen(XComponentContext office, XFrame window, Optional<String> target, boolean quiet) {
        this.office = office;
        this.window = window;
        this.target = target;
        this.quiet = quiet;
    }

    static Chosen in(XComponentContext office, XFrame window, PropertyValue[] arguments) {
        return new Chosen(
                office,
                window,
                argument(arguments, "Target").map(String::valueOf),
                argument(arguments, "Quiet").isPresent());
    }

    void run(MenuItem item) {
        try {
            if (item == MenuItem.CAUTIONS) {
                say(cautions());
            } else {
                withDocument(item);
            }
        } catch (SharingRefused refused) {
            say(String.valueOf(refused.getMessage()));
        } catch (com.sun.star.uno.Exception | RuntimeException failed) {
            // Whatever the office threw, the user is to hear of it rather than to wonder.
            say(inWords(FAILED, String.valueOf(failed.getMessage())));
        }
    }

    private void withDocument(MenuItem item) throws com.sun.star.uno.Exception {
        XSpreadsheetDocument document = UnoRuntime.queryInterface(
                XSpreadsheetDocument.class, window.getController().getModel());
        if (document == null) {
            say(NO_SHEET);
        } else if (item == MenuItem.SHARE) {
            share(document);
        } else {
            say(inWords(BROUGHT_BACK, BringBack.into(document)));
        }
    }

    private void share(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        Optional<String> file = target.isPresent() ? target : Windows.askForFile(office, document);
        if (file.isPresent()) {
            int formulas = CopyFile.of(office, document, file.get());
            say(inWords(formulas == 0 ? NOTHING_TO_SHARE : SHARED, formulas, file.get()));
        }
    }

    private void say(String sentence) {
        if (!quiet) {
            Windows.say(office, window, sentence);
        }
    }

    private static String cautions() {
        return Arrays.stream(Caution.values())
                .filter(Caution::isOfEveryLesson)
                .map(Caution::english)
                .collect(Collectors.joining("\n\n"));
    }

    private static Optional<Object> argument(PropertyValue[] arguments, String name) {
        return Arrays.stream(arguments)
                .filter(argument -> name.equals(argument.Name))
                .<@Nullable Object>map(argument -> argument.Value)
                .findFirst();
    }

    private static String inWords(String pattern, Object... values) {
        return new MessageFormat(pattern, Locale.ENGLISH).format(values);
    }
}
