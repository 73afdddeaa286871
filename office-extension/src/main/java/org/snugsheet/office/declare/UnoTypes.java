package org.snugsheet.office.declare;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lib.uno.typeinfo.MethodTypeInfo;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import java.lang.reflect.Method;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The type information that the office’s bridge to Java expects in a field {@code UNOTYPEINFO} of each interface. */
public final class UnoTypes {

    // The only types a declared function may have, each as the office’s interface language spells it. A plain array as
    // a
    // parameter would be listed by the office and then fail on every call, without a word.
    private static final Map<Class<?>, String> NAMES = Map.of(
            double.class, "double",
            String.class, "string",
            Object.class, "any",
            XPropertySet.class, "com::sun::star::beans::XPropertySet",
            Object[][].class, "sequence< sequence< any > >",
            String[][].class, "sequence< sequence< string > >");

    private UnoTypes() {}

    /**
     * The type information of a family.
     *
     * @param family an interface whose methods are declared with {@link CellFunction}
     * @return one entry for each method, in the declared order
     */
    public static TypeInfo[] of(Class<?> family) {
        // A family is loaded when its first cell is answered; to take all arguments apart would be most of that time.
        List<Method> methods = FunctionDeclaration.methods(family);
        return IntStream.range(0, methods.size())
                .mapToObj(i -> new MethodTypeInfo(methods.get(i).getName(), i, 0))
                .toArray(TypeInfo[]::new);
    }

    /**
     * A type in the spelling of the office’s interface language.
     *
     * @param type the Java type of a parameter or of an answer
     * @return its name there
     * @throws IllegalStateException if a cell function cannot have it
     */
    public static String nameOf(Class<?> type) {
        String name = NAMES.get(type);
        if (name == null) {
            throw new IllegalStateException("A cell function cannot have the type " + type);
        }
        return name;
    }
}
