package org.snugsheet.office.sheets.lessonbook;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.sheets.MenuSheets;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.Setting;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.uno.Uno;

/**
 * Lesson books for tests, filled by the menu, inside the office: from outside that takes many times as long. Saving and opening one takes less
 * than filling it again only where it is opened more than twice.
 */
public final class OpenedBooks {

    private record Kind(LessonBook book, Setting setting) {}

    private static final Map<Kind, Path> FILES = new HashMap<>();

    /** Numbers the files: of a book that had to be filled again too, or it would take the name of another one. */
    private static int saved;

    private OpenedBooks() {}

    /**
     * A book as the menu opens it, filled for this test alone: for one that is needed once or twice.
     *
     * @param office where it is opened
     * @param book the book
     * @param setting how it is written
     * @return the open book, whose formulas may not be worked out yet
     */
    public static CalcDocument fresh(Office office, LessonBook book, Setting setting) {
        Kind kind = new Kind(book, setting);
        return canBeChosen(kind) ? chosen(office, kind) : filled(office, kind);
    }

    /**
     * A book that nobody has changed, filled once and then opened from its file, as a teacher opens it again: for one that many tests need.
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
            saved++;
            known = office.folder().resolve("lesson-book-" + saved + ".ods");
            try (CalcDocument filled = fresh(office, book, setting)) {
                FILES.put(kind, filled.saveAs(known, FileFormat.ODS));
            }
        }
        return office.open(known);
    }

    /** The menu knows no jar without a name among others with one. */
    private static boolean canBeChosen(Kind kind) {
        long named = kind.book.plan().wraps().stream()
                .filter(wrap -> !wrap.isEmpty())
                .count();
        return MenuSheets.canBeChosen(kind.setting)
                && (named == 0 || named == kind.book.plan().wraps().size());
    }

    private static CalcDocument chosen(Office office, Kind kind) {
        if (kind.book.isExample()) {
            return MenuSheets.opened(office, kind.book, kind.setting);
        }
        BookPlan plan = kind.book.plan();
        try (CalcDocument window = office.newDocument()) {
            return office.openedBy(() -> Menu.choose(
                    office,
                    window,
                    MenuItem.BOOK,
                    Menu.QUIET,
                    MenuSheets.language(kind.setting),
                    Uno.named("Jars", plan.wraps().size()),
                    Uno.named("Materials", String.join("\n", plan.wraps())),
                    Uno.named("Minutes", plan.minutes()),
                    Uno.named("Interval", plan.interval())));
        }
    }

    private static CalcDocument filled(Office office, Kind kind) {
        CalcDocument filled =
                office.newDocument().locale(kind.setting.language().code());
        office.call("filling it", () -> Book.filled(office.uno(), filled.uno(), kind.book, kind.setting));
        return filled;
    }
}
