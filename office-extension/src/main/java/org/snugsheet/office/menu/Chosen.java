package org.snugsheet.office.menu;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XFrame;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.office.sharing.BringBack;
import org.snugsheet.office.sharing.CopyFile;
import org.snugsheet.office.sharing.SharingRefused;
import org.snugsheet.office.words.Language;
import org.snugsheet.office.words.OfficeLanguage;

/** Does what a line of the menu stands for, in one window, and tells the user how it went. */
final class Chosen {

    private final XComponentContext office;
    private final XFrame window;
    private final Language language;
    private final Optional<String> target;
    private final boolean quiet;

    private Chosen(XComponentContext office, XFrame window, Optional<String> target, boolean quiet) {
        this.office = office;
        this.window = window;
        this.language = OfficeLanguage.of(office);
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
            say(refused.sentence(language));
        } catch (com.sun.star.uno.Exception | RuntimeException failed) {
            // Whatever the office threw, the user is to hear of it rather than to wonder.
            say(language.say(MenuWords.FAILED, String.valueOf(failed.getMessage())));
        }
    }

    private void withDocument(MenuItem item) throws com.sun.star.uno.Exception {
        XSpreadsheetDocument document = UnoRuntime.queryInterface(
                XSpreadsheetDocument.class, window.getController().getModel());
        if (document == null) {
            say(language.words(MenuWords.NO_SHEET));
        } else if (item == MenuItem.SHARE) {
            share(document);
        } else {
            say(language.say(MenuWords.BROUGHT_BACK, BringBack.into(document)));
        }
    }

    private void share(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        Optional<String> file = target.isPresent() ? target : Windows.askForFile(office, document, language);
        if (file.isPresent()) {
            int formulas = CopyFile.of(office, document, file.get());
            say(language.say(formulas == 0 ? MenuWords.NOTHING_TO_SHARE : MenuWords.SHARED, formulas, file.get()));
        }
    }

    private void say(String sentence) {
        if (!quiet) {
            Windows.say(office, window, sentence);
        }
    }

    private String cautions() {
        return Arrays.stream(Caution.values())
                .filter(Caution::isOfEveryLesson)
                .map(language::words)
                .collect(Collectors.joining("\n\n"));
    }

    private static Optional<Object> argument(PropertyValue[] arguments, String name) {
        return Arrays.stream(arguments)
                .filter(argument -> name.equals(argument.Name))
                .<@Nullable Object>map(argument -> argument.Value)
                .findFirst();
    }
}
