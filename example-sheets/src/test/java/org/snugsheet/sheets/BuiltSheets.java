package org.snugsheet.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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
 * Builds the sheets into {@code target/sheets}, and hands one to every test that asks. Several Java programs that run tests share them: the
 * first one that needs a sheet builds it, others wait for it, and each works on copies of its own, for an office locks what it has open.
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

    /** All sheets; each is built when a test first asks for it, in one office for all that this program builds. */
    public static final class All implements AutoCloseable {
        private static final Duration PATIENCE = Duration.ofMinutes(5);

        /** Names the build that the tests belong to: sheets of another one are built anew. */
        private static final String BUILD = System.getProperty("snugsheet.build", "");

        private final Map<String, Sheet> sheets = new HashMap<>();
        private final Map<Paper, Path> folders = new EnumMap<>(Paper.class);
        private Optional<Office> office = Optional.empty();

        private All() throws IOException {
            Path folder = Path.of("target", "sheets").toAbsolutePath();
            folders.put(Paper.A4, Files.createDirectories(folder));
            folders.put(Paper.LETTER, Files.createDirectories(folder.resolve(Paper.LETTER.shortName())));
        }

        public synchronized Sheet named(String fileName) {
            return sheets.computeIfAbsent(fileName, this::built);
        }

        private Sheet built(String fileName) {
            Path folder = Objects.requireNonNull(folders.get(Paper.A4));
            Path results = folder.resolve(fileName + ".results");
            try (FileChannel channel = FileChannel.open(
                    folder.resolve(fileName + ".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
                // Until the channel is closed.
                channel.lock();
                List<String> known = Files.exists(results) ? Files.readAllLines(results) : List.of();
                if (known.isEmpty() || !known.get(0).equals(BUILD)) {
                    known = new ArrayList<>(List.of(BUILD));
                    known.addAll(build(fileName));
                    Files.write(results, known);
                }
                BuildSheets.Files files = copied(Paper.A4, fileName);
                BuildSheets.Files letter = copied(Paper.LETTER, fileName);
                return new Sheet(
                        List.copyOf(known.subList(1, known.size())),
                        files.ods(),
                        files.fods(),
                        files.pdf(),
                        letter.ods(),
                        letter.pdf());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private BuildSheets.Files copied(Paper paper, String fileName) throws IOException {
            Path from = Objects.requireNonNull(folders.get(paper));
            BuildSheets.Files built = BuildSheets.Files.in(from, fileName);
            Path own = Files.createDirectories(from.resolve(System.getProperty("snugsheet.run", "run-1")));
            for (Path file : built.all()) {
                Files.copy(file, own.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
            return BuildSheets.Files.in(own, fileName);
        }

        private List<String> build(String fileName) {
            WorkedSheet sheet = WorkedSheets.named(fileName).orElseThrow();
            return BuildSheets.build(sheet, builder(), folders).lines();
        }

        private Office builder() {
            Office present = office.orElseGet(() -> SharedOffice.withExtension().start());
            present.setPatience(PATIENCE);
            office = Optional.of(present);
            return present;
        }

        @Override
        public void close() {
            office.ifPresent(Office::close);
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
