package org.snugsheet.office.packaging;

import java.util.List;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.words.Language;

/** The reference of all functions for people to read, in Markdown. */
final class FunctionReference {

    private static final String HEAD = """
            # Cell functions

            Generated from the declarations in `office-extension/src/main/java/org/snugsheet/office/functions`: change them
            there. Arguments in `[ ]` may be left out. An answer that cannot be given is a cell error, never a wrong number. In
            examples with `{ }` a `;` stands between cells and a `|` between rows, as files hold them; cells of a sheet do as well.
            A table is answered to an array formula, or cell by cell with `INDEX`; its first cell is shown here.
            """;

    private FunctionReference() {}

    static String of(List<Class<?>> families) {
        StringBuilder text = new StringBuilder(HEAD);
        for (Class<?> family : families) {
            List<FunctionDeclaration> functions = FunctionDeclaration.of(family);
            text.append("\n## ")
                    .append(family.getAnnotation(Family.class).title())
                    .append('\n');
            functions.forEach(function -> append(text, function));
        }
        return text.toString();
    }

    private static void append(StringBuilder text, FunctionDeclaration declaration) {
        CellFunction function = declaration.function();
        text.append("\n### ").append(declaration.signature(Language.ENGLISH)).append("\n\n");
        text.append(function.text()).append("\n\n");
        for (FunctionDeclaration.ArgumentDeclaration argument : declaration.arguments()) {
            text.append("- `")
                    .append(argument.name())
                    .append("` – ")
                    .append(argument.text())
                    .append('\n');
        }
        text.append(declaration.arguments().isEmpty() ? "" : "\n");
        text.append("`=")
                .append(function.example())
                .append("` → ")
                .append(function.answer())
                .append('\n');
        if (!function.refused().isEmpty()) {
            text.append("\nRefused: `=").append(function.refused()).append("` – ");
            text.append(function.because()).append(".\n");
        }
        text.append("\nStored in files as `").append(declaration.storedName()).append("`.\n");
    }
}
