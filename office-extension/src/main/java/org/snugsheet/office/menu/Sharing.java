package org.snugsheet.office.menu;

import com.sun.star.sheet.XSpreadsheetDocument;
import java.util.Optional;
import org.snugsheet.office.sharing.BringBack;
import org.snugsheet.office.sharing.CopyFile;
import org.snugsheet.office.uno.DocumentFile;

/** The lines of the menu for a copy to share and for the way back. */
final class Sharing {

    private Sharing() {}

    /** Makes a copy, as told by the arguments or asked for. */
    static Outcome share(MenuInvocation choice) throws com.sun.star.uno.Exception {
        XSpreadsheetDocument document = choice.document();
        Optional<String> target = text(choice, "Target");
        boolean isAsked = target.isEmpty() && !choice.isQuiet();
        Optional<Boolean> kind = isAsked ? Windows.askForKindOfCopy(choice) : Optional.of(isTrue(choice, "Living"));
        if (kind.isEmpty()) {
            return Outcome.seen("");
        }
        boolean isLiving = kind.get();
        Optional<String> file = isAsked ? Windows.askForFile(choice.office(), document, choice.language()) : target;
        if (file.isEmpty()) {
            return Outcome.seen("");
        }
        CopyFile.check(choice.office(), document, file.get());
        Optional<String> password = text(choice, "Password");
        if (password.isEmpty() && !choice.isQuiet() && DocumentFile.hasPassword(document)) {
            password = Windows.askForPassword(choice);
            if (password.isEmpty()) {
                return Outcome.seen("");
            }
        }
        try (BusyWindow working = BusyWindow.on(choice, MenuWords.COPY_TITLE)) {
            int formulas = CopyFile.of(choice.office(), document, file.get(), password, isLiving, working);
            MenuWords shared = isLiving ? MenuWords.SHARED_LIVING : MenuWords.SHARED;
            MenuWords said = formulas == 0 ? MenuWords.NOTHING_TO_SHARE : shared;
            return Outcome.said(choice.language().say(said, formulas, DocumentFile.written(file.get())));
        }
    }

    /** Brings the formulas back after showing which; a macro is not asked and gets only what is safe, as everybody does. */
    static Outcome bringBack(MenuInvocation choice) throws com.sun.star.uno.Exception {
        BringBack back = BringBack.proposed(choice.document());
        if (back.count() > 0 && !choice.isQuiet() && !Windows.mayBringBack(choice, back.told(choice.language()))) {
            return Outcome.seen("");
        }
        try (BusyWindow working = BusyWindow.on(choice, MenuWords.BRING_BACK)) {
            String said = back.carryOut(working, choice.language());
            return said.contains("\n") ? Outcome.toRead(MenuWords.BRING_BACK, said) : Outcome.said(said);
        }
    }

    private static boolean isTrue(MenuInvocation choice, String name) {
        return choice.argument(name).filter(Boolean.TRUE::equals).isPresent();
    }

    private static Optional<String> text(MenuInvocation choice, String name) {
        return choice.argument(name).map(String::valueOf);
    }
}
