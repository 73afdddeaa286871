package org.snugsheet.office.menu;

import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.task.XStatusIndicator;
import com.sun.star.task.XStatusIndicatorFactory;
import com.sun.star.uno.UnoRuntime;
import java.util.Optional;
import org.snugsheet.office.sharing.BringBack;
import org.snugsheet.office.sharing.CopyFile;
import org.snugsheet.office.sharing.Progress;
import org.snugsheet.office.uno.DocumentFile;

/** The lines of the menu for a copy to share and for the way back. */
final class Sharing {

    /** Often enough for an eye. */
    private static final int STEPS = 50;

    private Sharing() {}

    /** Makes a copy, as told by the arguments or asked for. */
    static Outcome share(Choice choice) throws com.sun.star.uno.Exception {
        XSpreadsheetDocument document = choice.document();
        Optional<String> target = text(choice, "Target");
        Optional<String> file = target.isPresent() || choice.isQuiet()
                ? target
                : Windows.askForFile(choice.office(), document, choice.language());
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
        try (Bar bar = new Bar(choice, MenuWords.COPY_TITLE)) {
            int formulas = CopyFile.of(choice.office(), document, file.get(), password, bar);
            MenuWords said = formulas == 0 ? MenuWords.NOTHING_TO_SHARE : MenuWords.SHARED;
            return Outcome.said(choice.language().say(said, formulas, DocumentFile.written(file.get())));
        }
    }

    /** Brings the formulas back after showing which; a macro is not asked and gets only what is safe, as everybody does. */
    static Outcome bringBack(Choice choice) throws com.sun.star.uno.Exception {
        BringBack back = BringBack.proposed(choice.document());
        if (back.count() > 0 && !choice.isQuiet() && !Windows.mayBringBack(choice, back.told(choice.language()))) {
            return Outcome.seen("");
        }
        try (Bar bar = new Bar(choice, MenuWords.BRING_BACK)) {
            String said = back.carryOut(bar, choice.language());
            return said.contains("\n") ? Outcome.toRead(said) : Outcome.said(said);
        }
    }

    private static Optional<String> text(Choice choice, String name) {
        return choice.argument(name).map(String::valueOf);
    }

    /** The bar at the foot of the window. */
    private static final class Bar implements Progress, AutoCloseable {

        private final Optional<XStatusIndicator> bar;
        private final String words;
        private int shown = -1;

        Bar(Choice choice, MenuWords words) {
            this.words = choice.language().words(words);
            XStatusIndicatorFactory factory = UnoRuntime.queryInterface(XStatusIndicatorFactory.class, choice.window());
            this.bar = choice.isQuiet()
                    ? Optional.empty()
                    : Optional.ofNullable(factory).map(XStatusIndicatorFactory::createStatusIndicator);
        }

        @Override
        public void at(int done, int all) {
            int step = done * STEPS / Math.max(1, all);
            if (bar.isEmpty() || step == shown) {
                return;
            }
            if (shown < 0) {
                bar.get().start(words, STEPS);
            }
            shown = step;
            bar.get().setValue(step);
        }

        @Override
        public Optional<XStatusIndicator> bar() {
            return bar;
        }

        @Override
        public void close() {
            bar.ifPresent(XStatusIndicator::end);
        }
    }
}
