package org.snugsheet.office.menu;

import com.sun.star.awt.TextEvent;
import com.sun.star.awt.XTextComponent;
import com.sun.star.awt.XTextListener;
import com.sun.star.frame.XFrame;
import com.sun.star.lang.EventObject;
import com.sun.star.uno.XComponentContext;
import java.util.List;
import java.util.Optional;
import org.snugsheet.office.dialog.ErrorDisplay;
import org.snugsheet.office.dialog.Form;
import org.snugsheet.office.dialog.TypedValue;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;
import org.snugsheet.office.words.Language;

/** The window that asks how large a book is to be; what else there is to say is typed into the book. */
final class BookForm {

    private static final System.Logger LOG = System.getLogger(BookForm.class.getName());

    private BookForm() {}

    /** Asks until a book can be made of the answers or the window is cancelled; then there is none. */
    static Optional<BookPlan> ask(XComponentContext office, XFrame window, Language language, ErrorDisplay errorDisplay)
            throws com.sun.star.uno.Exception {
        try (Form form = new Form(office, language, BookWords.ASK)) {
            form.field("Jars", BookWords.JARS, String.valueOf(BookPlan.USUAL_JARS))
                    .field("Minutes", BookWords.MINUTES, String.valueOf(BookPlan.USUAL_MINUTES))
                    .field("Interval", BookWords.INTERVAL, usualInterval(BookPlan.USUAL_MINUTES))
                    .text(language.words(BookWords.HELP))
                    .ready();
            Uno.as(XTextComponent.class, form.control("Minutes")).addTextListener(new IntervalFollowsMinutes(form));
            return form.askUntil(window, errorDisplay, () -> answers(form));
        }
    }

    private static BookPlan answers(Form form) throws com.sun.star.uno.Exception {
        return new BookPlan(
                BookPlan.dealt(List.of(), TypedValue.whole(form.textOf("Jars"))),
                TypedValue.whole(form.textOf("Minutes")),
                TypedValue.whole(form.textOf("Interval")));
    }

    private static String usualInterval(int minutes) {
        return String.valueOf(BookPlan.usualInterval(minutes));
    }

    /** A change of the time to read offers another interval, unless one was typed. */
    private static final class IntervalFollowsMinutes implements XTextListener {

        private final Form form;
        private String offered = usualInterval(BookPlan.USUAL_MINUTES);

        IntervalFollowsMinutes(Form form) {
            this.form = form;
        }

        @Override
        public void textChanged(TextEvent typed) {
            try {
                if (form.textOf("Interval").equals(offered)) {
                    offered = usualInterval(TypedValue.whole(form.textOf("Minutes")));
                    form.write("Interval", offered);
                }
            } catch (DeclinedException unfinished) {
                // Half a number is no time yet.
            } catch (com.sun.star.uno.Exception gone) {
                // The field is the office’s: nothing may be thrown into it, and the interval can still be typed.
                LOG.log(System.Logger.Level.WARNING, "The usual interval was not offered", gone);
            }
        }

        @Override
        public void disposing(EventObject source) {
            // Nothing is kept.
        }
    }
}
