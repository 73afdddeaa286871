package org.snugsheet.office.sheets.lessonbook;

import com.sun.star.beans.PropertyValue;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.Setting;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.uno.Uno;

/**
 * Lesson books for tests, each filled once and then opened from its file, as a teacher opens it again. They are filled by the menu, inside
 * the office: from outside that takes many times as long.
 */
public final class OpenedBooks {

    private record Kind(LessonBook book, Setting setting) {}

    private static final Map<Kind, Path> FILES = new HashMap<>();

    private OpenedBooks() {}

    /**
     * A book that nobody has changed.
     *
     * @param office where it is opened
     * @param book the book
     * @param setting how it is written
     * @return the open book, whose formulas may not be worked out yet
     */
    public static CalcDocument open(Office office, LessonBook book, Setting setting) {
        Kind kind = new Kind(book, setting);
        Path known = FILES.get(kind);
        // An office that broke took its folder with it.
        if (known == null || !Files.exists(known)) {
            known = office.folder().resolve("lesson-book-" + FILES.size() + ".ods");
            try (CalcDocument filled = canBeChosen(kind) ? chosen(office, kind) : filled(office, kind)) {
                FILES.put(kind, filled.saveAs(known, FileFormat.ODS));
            }
        }
        return office.open(known);
    }

    /** A region says the scale and the paper, and the menu knows no jar without a name among others with one. */
    private static boolean canBeChosen(Kind kind) {
        boolean isUsual = kind.setting.paper() == (isAmerican(kind) ? Paper.LETTER : Paper.A4);
        long named = kind.book.plan().wraps().stream()
                .filter(wrap -> !wrap.isEmpty())
                .count();
        return isUsual && (named == 0 || named == kind.book.plan().wraps().size());
    }

    private static boolean isAmerican(Kind kind) {
        return kind.setting.scale() == Scale.FAHRENHEIT;
    }

    private static CalcDocument chosen(Office office, Kind kind) {
        PropertyValue language =
                Uno.named("Language", kind.setting.language().code() + (isAmerican(kind) ? "-US" : ""));
        BookPlan plan = kind.book.plan();
        try (CalcDocument window = office.newDocument()) {
            if (kind.book.isExample()) {
                Menu.call(office, window, "org.snugsheet:sheet?name=" + kind.book.fileName(), Menu.QUIET, language);
            } else {
                Menu.choose(
                        office,
                        window,
                        MenuItem.BOOK,
                        Menu.QUIET,
                        language,
                        Uno.named("Jars", plan.wraps().size()),
                        Uno.named("Materials", String.join("\n", plan.wraps())),
                        Uno.named("Minutes", plan.minutes()),
                        Uno.named("Interval", plan.interval()));
            }
        }
        return office.opened(kind.setting.language().words(BookWords.START_PAGE));
    }

    private static CalcDocument filled(Office office, Kind kind) {
        CalcDocument filled =
                office.newDocument().locale(kind.setting.language().code());
        office.call("filling it", () -> Book.filled(office.uno(), filled.uno(), kind.book, kind.setting));
        return filled;
    }
}
