package org.snugsheet.office.menu;

import com.sun.star.awt.MessageBoxButtons;
import com.sun.star.awt.MessageBoxType;
import com.sun.star.awt.XMessageBox;
import com.sun.star.awt.XMessageBoxFactory;
import com.sun.star.awt.XWindowPeer;
import com.sun.star.frame.XModel;
import com.sun.star.lang.XInitialization;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.ui.dialogs.ExecutableDialogResults;
import com.sun.star.ui.dialogs.TemplateDescription;
import com.sun.star.ui.dialogs.XFilePicker3;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.office.dialog.ErrorDisplay;
import org.snugsheet.office.dialog.Form;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;
import org.snugsheet.office.words.Language;

/** The windows in which the user is told and asked: the office’s own message box and file dialog. */
final class Windows {

    private static final String TITLE = "Snugsheet";
    private static final int LINES = 24;

    /** What a copy can be, as the window for a file offers it, with the endings; the first is chosen at first. */
    private static final List<Map.Entry<String, String>> KINDS = List.of(
            Map.entry("ODF (.ods)", ".ods"),
            Map.entry("Excel (.xlsx)", ".xlsx"),
            Map.entry("ODF, XML (.fods)", ".fods"));

    private static final String KIND = "kind";
    private static final String PASSWORD = "password";
    private static final String AGAIN = "again";

    private Windows() {}

    static void show(MenuInvocation choice, Outcome outcome) {
        try {
            // Of what is seen nothing more is said.
            if (outcome instanceof Outcome.Said said) {
                say(choice.office(), Uno.as(XWindowPeer.class, choice.window().getContainerWindow()), said.text());
            } else if (outcome instanceof Outcome.ToRead told) {
                read(choice, told);
            }
        } catch (com.sun.star.uno.Exception failed) {
            throw new IllegalStateException(failed);
        }
    }

    /** Tells what is wrong in front of the window that asks. */
    static ErrorDisplay errorDisplay(MenuInvocation choice) {
        return (above, sentence) -> say(choice.office(), above, sentence);
    }

    private static void say(XComponentContext office, XWindowPeer above, String sentence)
            throws com.sun.star.uno.Exception {
        XMessageBoxFactory boxes = Uno.as(XMessageBoxFactory.class, Uno.service(office, "com.sun.star.awt.Toolkit"));
        XMessageBox box =
                boxes.createMessageBox(above, MessageBoxType.INFOBOX, MessageBoxButtons.BUTTONS_OK, TITLE, sentence);
        box.execute();
    }

    private static void read(MenuInvocation choice, Outcome.ToRead told) throws com.sun.star.uno.Exception {
        try (Form form = new Form(choice.office(), choice.language(), told.title())) {
            form.reading(told.text(), LINES).ready().tell(choice.window());
        }
    }

    /** Shows what would be done, and asks whether to do it. */
    static boolean mayBringBack(MenuInvocation choice, String told) throws com.sun.star.uno.Exception {
        try (Form form = new Form(choice.office(), choice.language(), MenuWords.BRING_BACK)) {
            return form.text(choice.language().words(MenuWords.BRING_BACK_ASKED))
                    .reading(told, LINES)
                    .ready()
                    .askUntil(choice.window(), errorDisplay(choice), () -> true)
                    .isPresent();
        }
    }

    /** Asks whether a copy is to go on working. */
    static Optional<Boolean> askForKindOfCopy(MenuInvocation choice) throws com.sun.star.uno.Exception {
        Language language = choice.language();
        try (Form form = new Form(choice.office(), language, MenuWords.COPY_TITLE)) {
            form.text(language.words(MenuWords.COPY_KIND_ASKED))
                    .choice(
                            KIND,
                            MenuWords.COPY_KIND,
                            List.of(language.words(MenuWords.ANSWERS_ONLY), language.words(MenuWords.GOES_ON_WORKING)),
                            0)
                    .ready();
            return form.askUntil(choice.window(), errorDisplay(choice), () -> form.choiceOf(KIND) == 1);
        }
    }

    /** Asks for the password of a copy, twice. */
    static Optional<String> askForPassword(MenuInvocation choice) throws com.sun.star.uno.Exception {
        try (Form form = new Form(choice.office(), choice.language(), MenuWords.COPY_TITLE)) {
            form.text(choice.language().words(MenuWords.COPY_PASSWORD_ASKED))
                    .secret(PASSWORD, MenuWords.PASSWORD)
                    .secret(AGAIN, MenuWords.PASSWORD_AGAIN)
                    .ready();
            return form.askUntil(choice.window(), errorDisplay(choice), () -> {
                String password = form.textOf(PASSWORD);
                if (password.isEmpty()) {
                    form.again(PASSWORD, AGAIN);
                    throw new DeclinedException(MenuWords.PASSWORD_EMPTY);
                }
                if (!password.equals(form.textOf(AGAIN))) {
                    form.again(PASSWORD, AGAIN);
                    throw new DeclinedException(MenuWords.PASSWORDS_DIFFER);
                }
                return password;
            });
        }
    }

    static Optional<String> askForFile(XComponentContext office, XSpreadsheetDocument document, Language language)
            throws com.sun.star.uno.Exception {
        Object dialog =
                office.getServiceManager().createInstanceWithContext("com.sun.star.ui.dialogs.FilePicker", office);
        UnoRuntime.queryInterface(XInitialization.class, dialog)
                .initialize(new Object[] {TemplateDescription.FILESAVE_AUTOEXTENSION});
        XFilePicker3 picker = UnoRuntime.queryInterface(XFilePicker3.class, dialog);
        picker.setTitle(language.words(MenuWords.WHERE_TO));
        for (Map.Entry<String, String> kind : KINDS) {
            picker.appendFilter(kind.getKey(), "*" + kind.getValue());
        }
        picker.setCurrentFilter(KINDS.get(0).getKey());
        picker.setDefaultName(
                suggested(UnoRuntime.queryInterface(XModel.class, document).getURL(), language));
        if (picker.execute() != ExecutableDialogResults.OK) {
            return Optional.empty();
        }
        String file = picker.getFiles()[0];
        String chosen = picker.getCurrentFilter();
        String ending = KINDS.stream()
                .filter(kind -> kind.getKey().equals(chosen))
                .findFirst()
                .orElse(KINDS.get(0))
                .getValue();
        return Optional.of(hasAnEnding(file) ? file : file + ending);
    }

    /** Some systems’ windows add the ending that was chosen, others do not. */
    private static boolean hasAnEnding(String file) {
        return file.substring(file.lastIndexOf('/') + 1).matches(".+\\.\\p{Alpha}{3,5}");
    }

    private static String suggested(String address, Language language) {
        String name = address.substring(address.lastIndexOf('/') + 1).replaceFirst("\\.\\w+$", "");
        return language.say(MenuWords.COPY_NAME, name.isEmpty() ? language.words(MenuWords.SHEET) : name);
    }
}
