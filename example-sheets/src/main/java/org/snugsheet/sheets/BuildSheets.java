package org.snugsheet.sheets;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.sheets.builder.Book;

/**
 * Builds the worked sheets in a real office with the extension installed: as .ods, as .fods to be read and compared as text,
 * and as .pdf to be printed. Then it opens each .ods anew, calculates everything anew, and prints the results and the paths.
 *
 * <p>After {@code mvn package}, at the top of the project:
 *
 * <pre>{@code
 * java -jar example-sheets/target/build-sheets.jar office-extension/target/snugsheet-0.1.0.oxt example-sheets/target/sheets
 * }</pre>
 *
 * <p>The profile of the office is a private one that is gone afterwards; an office that is already open is left alone.
 */
public final class BuildSheets {

    private static final List<WorkedSheet> SHEETS =
            List.of(new WindowsillJars(), new DesignAWrap(), new PlanTheLesson(), new TypeYourReadings());

    private BuildSheets() {}

    /**
     * Builds all sheets.
     *
     * @param arguments the packed extension, and the folder to build into
     * @throws IOException if the folder cannot be made
     */
    public static void main(String[] arguments) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        if (arguments.length != 2) {
            out.println("Name the packed extension (.oxt) and a folder for the sheets.");
            System.exit(2);
        }
        for (Built built : into(Path.of(arguments[1]), Path.of(arguments[0]))) {
            built.lines().forEach(out::println);
            out.println();
            built.files().forEach(out::println);
        }
    }

    /**
     * What was built of one sheet.
     *
     * @param lines its results, as text
     * @param files the files
     */
    record Built(List<String> lines, List<Path> files) {}

    static List<Built> into(Path folder, Path oxt) throws IOException {
        Files.createDirectories(folder);
        List<Built> all = new ArrayList<>();
        try (Office office = Office.startWith(oxt)) {
            for (WorkedSheet sheet : SHEETS) {
                all.add(build(sheet, office, folder.toAbsolutePath().normalize()));
            }
        }
        return all;
    }

    private static Built build(WorkedSheet sheet, Office office, Path folder) {
        Path ods = file(folder, sheet, FileFormat.ODS);
        Path fods = file(folder, sheet, FileFormat.FODS);
        Path pdf = file(folder, sheet, FileFormat.PDF);
        try (CalcDocument document = office.newDocument()) {
            office.call("building " + sheet.fileName(), () -> {
                Book book = Book.in(office, document);
                sheet.fill(book);
                book.save(ods, FileFormat.ODS);
                book.save(fods, FileFormat.FODS);
                return book;
            });
        }
        try (CalcDocument document = office.open(ods)) {
            document.calculateAll().saveAs(pdf, FileFormat.PDF);
            return new Built(ResultsTable.lines(document.all(sheet.results())), List.of(ods, fods, pdf));
        }
    }

    private static Path file(Path folder, WorkedSheet sheet, FileFormat format) {
        return folder.resolve(sheet.fileName() + "." + format.extension());
    }
}
