package org.snugsheet.office.packaging;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.declare.UnoTypes;

/** An interface in the office’s interface language (UNOIDL), which the office reads as text. */
final class InterfaceText {

    private InterfaceText() {}

    static String of(Class<?> family, List<FunctionDeclaration> functions) {
        String[] modules = family.getPackageName().split("\\.");
        StringBuilder text = new StringBuilder("// Generated from " + family.getName() + "\n");
        for (String module : modules) {
            text.append("module ").append(module).append(" {\n");
        }
        text.append("interface ").append(family.getSimpleName()).append(" : com::sun::star::uno::XInterface {\n");
        functions.forEach(
                function -> text.append("    ").append(method(function)).append('\n'));
        text.append("};\n").append("};\n".repeat(modules.length));
        return text.toString();
    }

    private static String method(FunctionDeclaration function) {
        Method method = function.method();
        String parameters = Arrays.stream(method.getParameters())
                .map(p -> "[in] " + UnoTypes.nameOf(p.getType()) + " " + p.getName())
                .collect(Collectors.joining(", "));
        String raises = Arrays.stream(method.getExceptionTypes())
                .map(e -> e.getName().replace(".", "::"))
                .collect(Collectors.joining(", "));
        return UnoTypes.nameOf(method.getReturnType()) + " " + method.getName() + "(" + parameters + ")"
                + (raises.isEmpty() ? "" : " raises (" + raises + ")") + ";";
    }
}
