package org.snugsheet.office.functions;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snugsheet.office.declare.FunctionDeclaration;

/**
 * The index of families. Each service is listed here, and lists its interfaces in its {@code implements} clause.
 */
public final class Families {

    private static final List<Class<? extends FamilyService>> SERVICES = List.of(
            TempFunctions.class,
            CoolFunctions.class,
            WrapFunctions.class,
            ColdFunctions.class,
            PlanFunctions.class,
            CheckFunctions.class);

    private static final List<Class<?>> ALL = SERVICES.stream()
            .flatMap(service -> FamilyService.families(service).stream())
            .toList();

    private Families() {}

    /**
     * The interfaces of all families.
     *
     * @return the interfaces, in the order of the reference
     */
    public static List<Class<?>> all() {
        return ALL;
    }

    /**
     * All declared functions.
     *
     * @return the functions, family by family
     */
    public static List<FunctionDeclaration> functions() {
        return Declared.FUNCTIONS;
    }

    /** Read once, when somebody asks: Java takes the annotations of all methods apart again each time. */
    private static final class Declared {
        static final List<FunctionDeclaration> FUNCTIONS = ALL.stream()
                .flatMap(family -> FunctionDeclaration.of(family).stream())
                .toList();
    }

    /**
     * What the office registers.
     *
     * @return for each service its class, by the name that files store
     */
    public static Map<String, Class<?>> services() {
        Map<String, Class<?>> services = new LinkedHashMap<>();
        SERVICES.forEach(service -> services.put(FamilyService.name(service), service));
        return services;
    }

    /**
     * A service to call in plain Java.
     *
     * @param family one of the interfaces
     * @return a new object that implements it
     */
    public static Object newService(Class<?> family) {
        Class<? extends FamilyService> service =
                SERVICES.stream().filter(family::isAssignableFrom).findFirst().orElseThrow();
        try {
            return service.getDeclaredConstructor().newInstance();
        } catch (ReflectiveOperationException impossible) {
            throw new LinkageError(service.getName(), impossible);
        }
    }
}
