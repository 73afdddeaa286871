package org.snugsheet.sheets;

import com.sun.star.lang.Locale;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.sheets.WorkedSheets;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.Setting;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/**
 * Packs the worked sheets of a release into one zip beside the extension: a folder for each language, and one for classes in the US with
 * degrees Fahrenheit and Letter paper.
 *
 * <pre>{@code
 * java -cp example-sheets/target/build-sheets.jar org.snugsheet.sheets.ReleaseSheets office-extension/target/snugsheet-0.1.0.oxt
 * }</pre>
 */
public final class ReleaseSheets {

    private static final Duration PATIENCE = Duration.ofMinutes(5);

    // The same zip for the same sheets: a time that every zip can hold.
    private static final FileTime ALWAYS = FileTime.fromMillis(315_532_800_000L);

    /**
     * A folder of the zip.
     *
     * @param name its name
     * @param country the country of its documents
     * @param setting how its sheets are written
     */
    record Folder(String name, String country, Setting setting) {}

    private ReleaseSheets() {}

    /**
     * Packs them.
     *
     * @param arguments the packed extension, and if not all sheets are wanted, the names of some
     * @throws IOException if the zip cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        Path oxt = Path.of(arguments[0]);
        List<String> names = List.of(arguments).subList(1, arguments.length);
        List<WorkedSheet> sheets = WorkedSheets.all().stream()
                .filter(sheet -> names.isEmpty() || names.contains(sheet.fileName()))
                .toList();
        try (Office office = Office.startWith(oxt)) {
            office.setPatience(PATIENCE);
            Path zip = beside(oxt);
            pack(office, sheets, zip);
            new PrintStream(System.out, true, StandardCharsets.UTF_8).println(zip);
        }
    }

    /** The zip that belongs to an extension. */
    static Path beside(Path oxt) {
        String name = oxt.getFileName().toString().replaceFirst("\\.oxt$", "");
        return oxt.resolveSibling(name + "-sheets.zip");
    }

    static List<Folder> folders() {
        Paper a4 = Paper.A4;
        return List.of(
                new Folder("en-US", "US", new Setting(Language.ENGLISH, Scale.FAHRENHEIT, Paper.LETTER)),
                new Folder("en", "GB", new Setting(Language.ENGLISH, Scale.CELSIUS, a4)),
                new Folder("es", "", new Setting(Language.SPANISH, Scale.CELSIUS, a4)),
                new Folder("fr", "", new Setting(Language.FRENCH, Scale.CELSIUS, a4)),
                new Folder("de", "", new Setting(Language.GERMAN, Scale.CELSIUS, a4)));
    }

    static void pack(Office office, List<WorkedSheet> sheets, Path zip) throws IOException {
        Path file = Files.createTempFile("sheet", ".ods");
        try (OutputStream out = Files.newOutputStream(zip);
                ZipOutputStream packed = new ZipOutputStream(out)) {
            for (Folder folder : folders()) {
                for (WorkedSheet sheet : sheets) {
                    if (sheet.languages().contains(folder.setting().language())) {
                        write(office, sheet, folder, file);
                        ZipEntry entry = new ZipEntry(folder.name() + "/" + sheet.fileName() + ".ods");
                        entry.setLastModifiedTime(ALWAYS);
                        packed.putNextEntry(entry);
                        Files.copy(file, packed);
                    }
                }
            }
        } finally {
            Files.delete(file);
        }
    }

    private static void write(Office office, WorkedSheet sheet, Folder folder, Path file) {
        try (CalcDocument document = office.newDocument()) {
            office.call("filling " + sheet.fileName(), () -> {
                Uno.set(
                        document.uno(),
                        "CharLocale",
                        new Locale(folder.setting().language().code(), folder.country(), ""));
                Book book = Book.filled(office.uno(), document.uno(), sheet, folder.setting());
                book.calculate();
                document.saveAs(file, FileFormat.ODS);
                new FirstView(book).addTo(file, office.uno());
                return book;
            });
        }
    }
}
