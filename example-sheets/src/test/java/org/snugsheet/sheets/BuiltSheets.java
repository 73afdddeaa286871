package org.snugsheet.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.snugsheet.office.harness.SharedOffice;

/** Builds all sheets into {@code target/sheets}, once for the test run, and hands them to every test that asks. */
final class BuiltSheets implements ParameterResolver {
    private static final ExtensionContext.Namespace NAMESPACE = ExtensionContext.Namespace.create(BuiltSheets.class);

    /**
     * One sheet.
     *
     * @param lines its results, as printed
     * @param ods the document
     * @param fods the same as one XML text
     * @param pdf the same as printed
     */
    record Sheet(List<String> lines, Path ods, Path fods, Path pdf) {}

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Sheet.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return context.getRoot().getStore(NAMESPACE).getOrComputeIfAbsent("sheet", key -> build(), Sheet.class);
    }

    private static Sheet build() {
        try {
            Path oxt = Path.of(System.getProperty(SharedOffice.OXT_PROPERTY));
            BuildSheets.Built built =
                    BuildSheets.into(Path.of("target", "sheets"), oxt).get(0);
            return new Sheet(
                    built.lines(),
                    built.files().get(0),
                    built.files().get(1),
                    built.files().get(2));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
