package org.snugsheet.office.harness;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.StoreScope;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Hands one office, started once for each Java that runs tests, to every test that asks for it.
 *
 * <pre>{@code
 * @ExtendWith(SharedOffice.class)
 * class WrapIT {
 *     @Test
 *     void adds(Office office) { ... }
 *
 *     @Test
 *     void isUnknownWithoutUs(@WithoutExtension Office plain) { ... }
 * }
 * }</pre>
 *
 * <p>The first kind has the .oxt named by the system property {@code snugsheet.oxt} installed, the second has nothing.
 * Each is started when first asked for, closed at the end of the run, and started again if a test has broken it. Tests
 * must close the documents that they open, and must not close the office.
 *
 * <p>Where several Java programs share the test classes among them, each gets one class after the other, and JUnit takes each class for a run
 * of its own: hence the office belongs to what JUnit calls the session.
 */
public final class SharedOffice implements ParameterResolver {
    /** Names the packed extension; the build sets it. */
    public static final String OXT_PROPERTY = "snugsheet.oxt";

    private static final ExtensionContext.Namespace NAMESPACE = ExtensionContext.Namespace.create(SharedOffice.class);

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Office.class;
    }

    @Override
    public Office resolveParameter(ParameterContext parameter, ExtensionContext context) {
        boolean plain = parameter.isAnnotated(WithoutExtension.class);
        return context.getStore(StoreScope.LAUNCHER_SESSION, NAMESPACE)
                .getOrComputeIfAbsent(plain, key -> new Keeper(key), Keeper.class)
                .office();
    }

    /** For tests that need an office of their own, such as one with windows: with the extension of this build. */
    public static OfficeSetup withExtension() {
        Path oxt = Optional.ofNullable(System.getProperty(OXT_PROPERTY))
                .map(Path::of)
                .orElseThrow(() -> new OfficeFailure("Name the packed extension with -D" + OXT_PROPERTY
                        + "=/path/to/snugsheet.oxt; 'mvn verify' builds it and does so"));
        return OfficeSetup.plain().frugally().withExtension(oxt);
    }

    /** One office for the run; a start that failed once is not tried again, so that a broken build fails quickly. */
    private static final class Keeper implements AutoCloseable {
        private final boolean plain;
        private @Nullable Office office;
        private @Nullable OfficeFailure failure;

        private Keeper(boolean plain) {
            this.plain = plain;
        }

        private synchronized Office office() {
            if (failure != null) {
                throw failure;
            }
            Office present = office;
            if (present != null && present.isAlive()) {
                return present;
            }
            close();
            try {
                Office fresh = (plain ? OfficeSetup.plain().frugally() : withExtension()).start();
                office = fresh;
                return fresh;
            } catch (OfficeFailure e) {
                failure = e;
                throw e;
            }
        }

        @Override
        public synchronized void close() {
            if (office != null) {
                office.close();
            }
        }
    }
}
