package org.snugsheet.office.menu;

import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.dialog.TypedValue;
import org.snugsheet.office.sheets.lessonbook.LessonBook;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;

/** The line that starts a lesson book: as large as it is asked for, in the language, scale and paper of the office. */
final class BookLine {

    private BookLine() {}

    /** Opens it. A macro may name Jars, Materials (one per line), Minutes, Interval and Scale. */
    static Outcome open(MenuInvocation choice) throws com.sun.star.uno.Exception {
        Optional<BookPlan> plan = choice.isQuiet()
                ? Optional.of(planned(choice))
                : BookForm.ask(choice.office(), choice.window(), choice.language(), Windows.errorDisplay(choice));
        if (plan.isEmpty()) {
            return Outcome.seen("");
        }
        return SheetLine.opened(
                choice,
                LessonBook.of(plan.get()),
                choice.argument("Scale").map(String::valueOf).map(Scale::parse));
    }

    private static BookPlan planned(MenuInvocation choice) {
        List<String> wraps = choice.argument("Materials")
                .map(String::valueOf)
                .map(BookPlan::wraps)
                .orElse(List.of());
        int minutes = whole(choice, "Minutes").orElse(BookPlan.USUAL_MINUTES);
        return new BookPlan(
                BookPlan.dealt(
                        wraps, whole(choice, "Jars").orElse(wraps.isEmpty() ? BookPlan.USUAL_JARS : wraps.size())),
                minutes,
                whole(choice, "Interval").orElseGet(() -> BookPlan.usualInterval(minutes)));
    }

    private static Optional<Integer> whole(MenuInvocation choice, String name) {
        return choice.argument(name).map(String::valueOf).map(TypedValue::whole);
    }
}
