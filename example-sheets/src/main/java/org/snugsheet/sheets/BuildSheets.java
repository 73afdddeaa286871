package org.snugsheet.sheets;

import static java.nio.file.Files.createDirectories;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.sheets.WorkedSheets;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.Setting;
import org.snugsheet.office.sheets.builder.WorkedSheet;

/**
 * Builds the worked sheets in a real office with the extension installed: as .ods, as .fods to be read and compared as text,
 * and as .pdf to be printed. Then it opens the .ods again, recalculates everything, and prints the results and the paths.
 *
 * <p>After {@code mvn package}, at the top of the project:
 *
 * <pre>{@code
 * java -jar example-sheets/target/build-sheets.jar office-extension/target/snugsheet-0.1.0.oxt example-sheets/target/sheets
 * }</pre>
 *
 * <p>They are set up to be printed on A4; with {@code letter} behind the folder on US Letter, and with {@code a4 letter} once
 * for each. Those for Letter go into a folder of that name.
 *
 * <p>The profile of the office is a private one that is gone afterwards; an office that is already open is left alone.
 */
public final class BuildSheets {

    // A sheet is filled by thousands of calls; on a busy machine that takes a while.
    private static final Duration PATIENCE = Duration.ofMinutes(5);

    private BuildSheets() {}

    /**
     * Builds all sheets.
     *
     * @param arguments the packed extension, the folder to build into, and for which papers
     * @throws IOException if the folder cannot be made
     */
    public static void main(String[] arguments) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        if (arguments.length < 2) {
            out.println("Name the packed extension (.oxt), a folder for the sheets, and a4 (if left out) or letter or"
                    + " both.");
            System.exit(2);
        }
        List<Paper> papers = arguments.length == 2
                ? List.of(Paper.A4)
                : Arrays.stream(arguments).skip(2).map(Paper::named).toList();
        for (Built built : into(Path.of(arguments[1]), Path.of(arguments[0]), papers)) {
            built.lines().forEach(out::println);
            out.println();
            built.files().values().forEach(files -> files.all().forEach(out::println));
        }
    }

    /**
     * The files of one sheet for one paper.
     *
     * @param ods the document
     * @param fods the same as one XML text
     * @param pdf the same as printed
     */
    record Files(Path ods, Path fods, Path pdf) {
        static Files in(Path folder, String name) {
            return new Files(
                    file(folder, name, FileFormat.ODS),
                    file(folder, name, FileFormat.FODS),
                    file(folder, name, FileFormat.PDF));
        }

        List<Path> all() {
            return List.of(ods, fods, pdf);
        }
    }

    /**
     * What was built of one sheet.
     *
     * @param name of its files
     * @param lines its results, as text
     * @param files the files for each paper
     */
    record Built(String name, List<String> lines, Map<Paper, Files> files) {
        Files on(Paper paper) {
            return Optional.ofNullable(files.get(paper)).orElseThrow();
        }
    }

    static List<Built> into(Path folder, Path oxt, List<Paper> papers) throws IOException {
        Map<Paper, Path> folders = new EnumMap<>(Paper.class);
        for (Paper paper : papers) {
            Path whole = folder.toAbsolutePath().normalize();
            folders.put(paper, createDirectories(paper == Paper.A4 ? whole : whole.resolve(paper.shortName())));
        }
        List<Built> all = new ArrayList<>();
        try (Office office = Office.startWith(oxt)) {
            office.setPatience(PATIENCE);
            for (WorkedSheet sheet : WorkedSheets.all()) {
                all.add(build(sheet, office, folders));
            }
        }
        return all;
    }

    static Built build(WorkedSheet sheet, Office office, Map<Paper, Path> folders) {
        Map<Paper, Files> files = new EnumMap<>(Paper.class);
        folders.forEach((paper, folder) -> files.put(paper, Files.in(folder, sheet.fileName())));
        try (CalcDocument document = office.newDocument()) {
            office.call("building " + sheet.fileName(), () -> {
                Book book = Book.filled(office.uno(), document.uno(), sheet, Setting.USUAL);
                book.calculate();
                for (Map.Entry<Paper, Files> each : files.entrySet()) {
                    book.printOn(each.getKey());
                    document.saveAs(each.getValue().ods(), FileFormat.ODS);
                    new FirstView(book).addTo(each.getValue().ods(), office.uno());
                    document.saveAs(each.getValue().fods(), FileFormat.FODS);
                    document.saveAs(each.getValue().pdf(), FileFormat.PDF);
                }
                return book;
            });
        }
        Path first = files.values().iterator().next().ods();
        try (CalcDocument document = office.open(first)) {
            List<String> lines = ResultsTable.lines(document.calculateAll().all(sheet.results()));
            return new Built(sheet.fileName(), lines, files);
        }
    }

    private static Path file(Path folder, String name, FileFormat format) {
        return folder.resolve(name + "." + format.extension());
    }
}
