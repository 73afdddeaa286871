package org.snugsheet.office.harness;

import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Hands an office to the tests of one class whose windows stay open until somebody answers them, with the extension of this build
 * installed.
 *
 * <pre>{@code
 * @ExtendWith(OfficeWithWindows.class)
 * class WindowsIT {
 *     private final Office office;
 *
 *     WindowsIT(Office office) { ... }
 * }
 * }</pre>
 *
 * <p>Each class has an office of its own: what a test leaves in its windows, its clipboard or its list of steps is met by no other
 * class. It is started for the first test that asks and closed after the last one of the class.
 */
public final class OfficeWithWindows implements ParameterResolver {
    private static final ExtensionContext.Namespace NAMESPACE =
            ExtensionContext.Namespace.create(OfficeWithWindows.class);

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Office.class;
    }

    @Override
    public Office resolveParameter(ParameterContext parameter, ExtensionContext context) {
        ExtensionContext ofClass = context;
        while (ofClass.getTestMethod().isPresent()) {
            ofClass = ofClass.getParent().orElseThrow();
        }
        return ofClass.getStore(NAMESPACE)
                .getOrComputeIfAbsent(
                        Office.class,
                        key -> SharedOffice.withExtension().withWindows().start(),
                        Office.class);
    }
}
