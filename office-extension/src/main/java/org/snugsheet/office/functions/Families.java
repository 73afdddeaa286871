package org.snugsheet.office.functions;

import java.util.List;
import org.snugsheet.office.declare.FunctionDeclaration;

/** The list of families: the one place to add a new one. A family with many functions has several interfaces. */
public final class Families {

    private static final List<Class<?>> ALL = List.of(
            Temp.class,
            Cool.class,
            CoolCurves.class,
            CoolCompare.class,
            CoolHeat.class,
            Wrap.class,
            WrapJar.class,
            WrapMeasured.class,
            Cold.class,
            PlanWater.class,
            PlanReadings.class,
            Check.class);

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
        return ALL.stream()
                .flatMap(family -> FunctionDeclaration.of(family).stream())
                .toList();
    }
}
