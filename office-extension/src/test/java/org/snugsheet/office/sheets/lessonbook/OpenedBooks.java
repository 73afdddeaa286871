package org.snugsheet.office.sheets.lessonbook;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.Setting;

/**
 * Lesson books for tests, each filled once and then opened from its file, as a teacher opens it again: from outside the office filling
 * takes many times as long.
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
        if (known != null && Files.exists(known)) {
            return office.open(known);
        }
        CalcDocument filled = office.newDocument().locale(setting.language().code());
        office.call("filling it", () -> Book.filled(office.uno(), filled.uno(), book, setting));
        Path file = office.folder().resolve("lesson-book-" + FILES.size() + ".ods");
        FILES.put(kind, filled.saveAs(file, FileFormat.ODS));
        return filled;
    }
}
