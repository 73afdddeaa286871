package org.snugsheet.office.declare;

import com.sun.star.beans.XPropertySet;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snugsheet.office.words.Language;

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
     * @param key what the text is called in the translations
     * @param text what to give
     * @param optional whether it may be left out
     * @param temperature what it asks the temperature of, if it asks for one
     */
    public record ArgumentDeclaration(
            String name, String key, String text, boolean optional, Optional<TemperatureOf> temperature) {

        static ArgumentDeclaration of(Parameter parameter, Map<String, TextKeys.Constant> keys) {
            Argument argument = parameter.getAnnotation(Argument.class);
            if (argument == null || !parameter.isNamePresent()) {
                throw new IllegalStateException("An argument without @Argument or without its name: " + parameter);
            }
            TextKeys.Constant constant = keys.get(argument.value());
            if (constant == null) {
                throw new IllegalStateException("A text that is no constant of its family’s texts: " + parameter);
            }
            return new ArgumentDeclaration(
                    parameter.getName(),
                    constant.key(),
                    argument.value(),
                    parameter.getType() == Object.class,
                    constant.temperature());
        }

        /**
         * Whether it asks for the temperature of something.
         *
         * @param matter of what
         * @return true if so
         */
        public boolean asksFor(TemperatureOf.Matter matter) {
            return temperature.filter(one -> one.value() == matter).isPresent();
        }

        /**
         * Its name in a language.
         *
         * @param language the language
         * @return one word or two
         */
        public String name(Language language) {
            return language.declared("argument." + name, name);
        }

        /**
         * What to give, in a language.
         *
         * @param language the language
         * @return a sentence or two
         */
        public String text(Language language) {
            return language.declared(key, text);
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

    /** An interface also has what its functions share, and what the compiler makes of lambdas: both are private. */
    private static boolean isCalledByTheOffice(Method method) {
        return Modifier.isPublic(method.getModifiers()) && !Modifier.isStatic(method.getModifiers());
    }

    /** The methods of a family in their declared order, of which the arguments are not looked at. */
    static List<Method> methods(Class<?> family) {
        return Arrays.stream(family.getDeclaredMethods())
                .filter(FunctionDeclaration::isCalledByTheOffice)
                .sorted(Comparator.comparingInt(method -> declared(method).order()))
                .toList();
    }

    private static CellFunction declared(Method method) {
        CellFunction function = method.getAnnotation(CellFunction.class);
        if (function == null) {
            throw new IllegalStateException("A method without @CellFunction: " + method);
        }
        return function;
    }

    private static FunctionDeclaration of(Method method, Map<String, TextKeys.Constant> keys) {
        return new FunctionDeclaration(
                method,
                declared(method),
                Arrays.stream(method.getParameters())
                        .filter(parameter -> parameter.getType() != XPropertySet.class)
                        .map(parameter -> ArgumentDeclaration.of(parameter, keys))
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
        Map<String, TextKeys.Constant> keys = TextKeys.of(family);
        List<FunctionDeclaration> functions =
                methods(family).stream().map(method -> of(method, keys)).toList();
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
     * What it does, in a language.
     *
     * @param language the language
     * @return a sentence with the unit of the answer
     */
    public String text(Language language) {
        return language.declared(name(), function.text());
    }

    /**
     * Whether it answers with a table, which needs more cells than one.
     *
     * @return true for a table
     */
    public boolean isTable() {
        return method.getReturnType() == Object[][].class;
    }

    /**
     * What it does and, for a table, how it is entered, in a language.
     *
     * @param language the language
     * @return two sentences or more for a table, otherwise {@link #text}
     */
    public String description(Language language) {
        return isTable() ? text(language) + " " + language.words(TableHint.HOW) : text(language);
    }

    /**
     * What its example answers in a document of a language.
     *
     * @param language the language
     * @return a number in English spelling, or words of that language
     */
    public String answer(Language language) {
        return language.declared(name() + ".answer", function.answer());
    }

    /**
     * Why its second example is refused, in a language.
     *
     * @param language the language
     * @return the reason in a few words; empty for a function that never refuses
     */
    public String because(Language language) {
        return language.declared(name() + ".because", function.because());
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
     * Where the page of the reference describes it: what follows the # in the address.
     *
     * @return such as {@code cool-rate}
     */
    public String anchor() {
        return name().toLowerCase(Locale.ROOT).replace('.', '-');
    }

    /**
     * The function as it is typed, with its options in brackets.
     *
     * @param language the language of the arguments’ names
     * @return such as {@code TEMP.READ(text; [scale])}
     */
    public String signature(Language language) {
        return name()
                + arguments.stream()
                        .map(argument ->
                                argument.optional() ? "[" + argument.name(language) + "]" : argument.name(language))
                        .collect(Collectors.joining("; ", "(", ")"));
    }
}
