package org.snugsheet.office.declare;

import com.sun.star.beans.XPropertySet;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * A cell function as declared, read from its annotated method.
 *
 * @param method the method
 * @param function its annotation
 * @param arguments its arguments in order
 */
public record FunctionDeclaration(Method method, CellFunction function, List<ArgumentDeclaration> arguments) {

    /**
     * One argument as declared.
     *
     * @param name its name
     * @param text what to give
     * @param optional whether it may be left out
     */
    public record ArgumentDeclaration(String name, String text, boolean optional) {

        static ArgumentDeclaration of(Parameter parameter) {
            Argument argument = parameter.getAnnotation(Argument.class);
            if (argument == null || !parameter.isNamePresent()) {
                throw new IllegalStateException("An argument without @Argument or without its name: " + parameter);
            }
            return new ArgumentDeclaration(parameter.getName(), argument.value(), parameter.getType() == Object.class);
        }
    }

    /** A declaration; options come last. */
    public FunctionDeclaration {
        arguments = List.copyOf(arguments);
        for (int i = 1; i < arguments.size(); i++) {
            if (arguments.get(i - 1).optional() && !arguments.get(i).optional()) {
                throw new IllegalStateException("An option before a needed argument: " + method);
            }
        }
    }

    static FunctionDeclaration of(Method method) {
        CellFunction function = method.getAnnotation(CellFunction.class);
        if (function == null) {
            throw new IllegalStateException("A method without @CellFunction: " + method);
        }
        return new FunctionDeclaration(
                method,
                function,
                Arrays.stream(method.getParameters())
                        .filter(parameter -> parameter.getType() != XPropertySet.class)
                        .map(ArgumentDeclaration::of)
                        .toList());
    }

    /**
     * The functions of a family, in their declared order.
     *
     * @param family an interface with {@link Family}
     * @return its functions
     * @throws IllegalStateException if the declared order has a gap or a method is not declared
     */
    public static List<FunctionDeclaration> of(Class<?> family) {
        List<FunctionDeclaration> functions = Arrays.stream(family.getDeclaredMethods())
                .map(FunctionDeclaration::of)
                .sorted(Comparator.comparingInt(f -> f.function().order()))
                .toList();
        for (int i = 0; i < functions.size(); i++) {
            if (functions.get(i).function().order() != i) {
                throw new IllegalStateException("No method with order " + i + " in " + family);
            }
        }
        return functions;
    }

    /**
     * The name people type.
     *
     * @return such as {@code COOL.RATE}
     */
    public String name() {
        return function.name();
    }

    /**
     * The name that files hold.
     *
     * @return such as {@code SNUGSHEET.COOL.RATE}
     */
    public String storedName() {
        String service = method.getDeclaringClass().getAnnotation(Family.class).service();
        return (service + "." + method.getName()).toUpperCase(Locale.ROOT);
    }

    /**
     * The function as it is typed, with its options in brackets.
     *
     * @return such as {@code TEMP.READ(text; [scale])}
     */
    public String signature() {
        StringBuilder signature = new StringBuilder(name()).append('(');
        for (int i = 0; i < arguments.size(); i++) {
            ArgumentDeclaration argument = arguments.get(i);
            signature.append(i == 0 ? "" : "; ");
            signature.append(argument.optional() ? "[" + argument.name() + "]" : argument.name());
        }
        return signature.append(')').toString();
    }
}
