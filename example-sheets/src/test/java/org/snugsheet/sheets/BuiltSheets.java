package org.snugsheet.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.page.Paper;

/** Builds all sheets into {@code target/sheets}, once for the test run, and hands one to every test that asks. */
final class BuiltSheets implements ParameterResolver {
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
    record Sheet(List<String> lines, Path ods, Path fods, Path pdf, Path letter, Path letterPdf) {}

    /**
     * All sheets, in the order in which they are built.
     *
     * @param sheets the sheets
     */
    record All(List<Sheet> sheets) {
        Sheet named(String fileName) {
            return sheets.stream()
                    .filter(sheet -> sheet.ods().endsWith(fileName + ".ods"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /**
     * The sheet {@link DesignAWrap}.
     *
     * @param sheet the sheet
     */
    record Design(Sheet sheet) {}

    /**
     * The sheet {@link PlanTheLesson}.
     *
     * @param sheet the sheet
     */
    record Lesson(Sheet sheet) {}

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        Class<?> type = parameter.getParameter().getType();
        return type == Sheet.class || type == All.class || type == Design.class || type == Lesson.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        All all = context.getRoot().getStore(NAMESPACE).getOrComputeIfAbsent("sheets", key -> build(), All.class);
        Class<?> type = parameter.getParameter().getType();
        if (type == All.class) {
            return all;
        }
        if (type == Design.class) {
            return new Design(all.named(new DesignAWrap().fileName()));
        }
        return type == Lesson.class
                ? new Lesson(all.named(new PlanTheLesson().fileName()))
                : all.named(new WindowsillJars().fileName());
    }

    private static All build() {
        try {
            Path oxt = Path.of(System.getProperty(SharedOffice.OXT_PROPERTY));
            List<Sheet> sheets = new ArrayList<>();
            List<Paper> papers = List.of(Paper.values());
            for (BuildSheets.Built built : BuildSheets.into(Path.of("target", "sheets"), oxt, papers)) {
                BuildSheets.Files files = built.on(Paper.A4);
                BuildSheets.Files letter = built.on(Paper.LETTER);
                sheets.add(
                        new Sheet(built.lines(), files.ods(), files.fods(), files.pdf(), letter.ods(), letter.pdf()));
            }
            return new All(List.copyOf(sheets));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
