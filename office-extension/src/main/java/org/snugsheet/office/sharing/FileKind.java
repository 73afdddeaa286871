package org.snugsheet.office.sharing;

import java.util.Locale;
import org.snugsheet.office.words.DeclinedException;

/** The kinds of file that a copy can be. */
enum FileKind {
    ODS("calc8"),
    FODS("OpenDocument Spreadsheet Flat XML"),
    XLSX("Calc MS Excel 2007 XML");

    private final String filter;

    FileKind(String filter) {
        this.filter = filter;
    }

    /** The office’s own name of the filter that writes it. */
    String filter() {
        return filter;
    }

    /** The end of its names, such as {@code .ods}. */
    String ending() {
        return "." + name().toLowerCase(Locale.ROOT);
    }

    /**
     * The kind of a file by its name.
     *
     * @throws DeclinedException if a copy cannot be of this kind
     */
    static FileKind of(String file) {
        for (FileKind kind : values()) {
            if (file.toLowerCase(Locale.ROOT).endsWith(kind.ending())) {
                return kind;
            }
        }
        throw new DeclinedException(SharingWords.OTHER_ENDING);
    }
}
