package org.snugsheet.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.StoreScope;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.sheets.WorkedSheets;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.sheets.designawrap.DesignAWrap;

/**
 * Builds the sheets into {@code target/sheets}, each once for each Java that runs tests, and hands one to every test that asks. Each of these
 * programs has a folder of its own there, by its number.
 */
public final class BuiltSheets implements ParameterResolver {
    private static final ExtensionContext.Namespace NAMESPACE = ExtensionContext.Namespace.create(BuiltSheets.class);

    /**
     * One sheet.
     *
     * @param lines its results, as printed
     * @param ods the document
     * @param fods the same as one XML text
     * @param pdf the same as printed
     * @param letter the document for US Letter
     * @param letterPdf the same as printed on it
     */
    public record Sheet(List<String> lines, Path ods, Path fods, Path pdf, Path letter, Path letterPdf) {}

    /** All sheets; each is built when a test first asks for it, in one office for all of them. */
    public static final class All implements AutoCloseable {
        private static final Duration PATIENCE = Duration.ofMinutes(5);

        private final Map<String, Sheet> sheets = new HashMap<>();
        private final Map<Paper, Path> folders = new EnumMap<>(Paper.class);
        private final Office office;

        private All() throws IOException {
            Path folder = Path.of("target", "sheets", System.getProperty("snugsheet.run", "run-1"))
                    .toAbsolutePath();
            folders.put(Paper.A4, Files.createDirectories(folder));
            folders.put(Paper.LETTER, Files.createDirectories(folder.resolve(Paper.LETTER.shortName())));
            office = Office.startWith(Path.of(System.getProperty(SharedOffice.OXT_PROPERTY)));
            office.setPatience(PATIENCE);
        }

        public synchronized Sheet named(String fileName) {
            return sheets.computeIfAbsent(fileName, this::build);
        }

        private Sheet build(String fileName) {
            WorkedSheet sheet = WorkedSheets.all().stream()
                    .filter(each -> each.fileName().equals(fileName))
                    .findFirst()
                    .orElseThrow();
            BuildSheets.Built built = BuildSheets.build(sheet, office, folders);
            BuildSheets.Files files = built.on(Paper.A4);
            BuildSheets.Files letter = built.on(Paper.LETTER);
            return new Sheet(built.lines(), files.ods(), files.fods(), files.pdf(), letter.ods(), letter.pdf());
        }

        @Override
        public void close() {
            office.close();
        }
    }

    /**
     * The sheet {@link DesignAWrap}.
     *
     * @param sheet the sheet
     */
    public record Design(Sheet sheet) {}

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        Class<?> type = parameter.getParameter().getType();
        return type == All.class || type == Design.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        All all = context.getStore(StoreScope.LAUNCHER_SESSION, NAMESPACE)
                .getOrComputeIfAbsent("sheets", key -> begin(), All.class);
        Class<?> type = parameter.getParameter().getType();
        return type == Design.class ? new Design(all.named(new DesignAWrap().fileName())) : all;
    }

    private static All begin() {
        try {
            return new All();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
