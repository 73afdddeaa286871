package org.snugsheet.sheets;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.sheets.WorkedSheets;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.Setting;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.words.Language;

/**
 * Prints worked sheets to PDF in every language they have, on the paper and scale that go with it, so that each page can be looked at:
 * {@code example-sheets/pictures/contact.sh} makes pictures of them.
 */
public final class ContactSheet {

    private ContactSheet() {}

    /**
     * Prints them.
     *
     * @param arguments the packed extension, a folder, the names of the sheets, and settings such as {@code de-a4-c} or {@code en-letter-f}
     * @throws IOException if the folder cannot be made
     */
    public static void main(String[] arguments) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        Path folder = Files.createDirectories(Path.of(arguments[1]).toAbsolutePath());
        List<String> rest = Arrays.asList(arguments).subList(2, arguments.length);
        List<WorkedSheet> sheets =
                rest.stream().flatMap(name -> WorkedSheets.named(name).stream()).toList();
        List<String> settings =
                rest.stream().filter(name -> name.matches("[a-z]{2}-.*")).toList();
        try (Office office = Office.startWith(Path.of(arguments[0]))) {
            for (WorkedSheet sheet : sheets) {
                for (String written : settings) {
                    Setting setting = setting(written);
                    if (sheet.languages().contains(setting.language())) {
                        out.println(print(office, sheet, setting, folder.resolve(sheet.fileName() + "-" + written)));
                    }
                }
            }
        }
    }

    private static Setting setting(String written) {
        String[] parts = written.split("-");
        return new Setting(Language.of(parts[0]), Scale.parse(parts[2]), Paper.named(parts[1]));
    }

    private static Path print(Office office, WorkedSheet sheet, Setting setting, Path file) {
        try (CalcDocument document = office.newDocument()) {
            office.call("filling " + sheet.fileName(), () -> {
                org.snugsheet.office.uno.Uno.set(
                        document.uno(),
                        "CharLocale",
                        new com.sun.star.lang.Locale(
                                setting.language().code(), setting.scale() == Scale.FAHRENHEIT ? "US" : "", ""));
                Book.filled(office.uno(), document.uno(), sheet, setting).calculate();
                document.saveAs(Path.of(file + ".ods"), FileFormat.ODS);
                document.saveAs(Path.of(file + ".pdf"), FileFormat.PDF);
                return true;
            });
        }
        return Path.of(file + ".pdf");
    }
}
