package org.snugsheet.office.functions;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lang.Locale;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.Any;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.harness.ErrorCodes;
import org.snugsheet.office.words.Language;

/**
 * One call of a cell function in plain Java, given what an office would give it: see “What the office does” in {@code DEVELOPERS.md},
 * and {@code CellsIT}, which shows it.
 */
public final class PlainCall {

    /** An option that is not given. */
    static final Object LEFT_OUT = Any.VOID;

    /** To so many digits a number is written out where an argument takes texts. */
    private static final MathContext DIGITS = new MathContext(15);

    private PlainCall() {}

    /** Cells given by their address: a blank one is an empty text in a range, but 0 alone. */
    static final class Range {
        private final Object[][] values;
        private final boolean one;

        Range(Object[][] values, boolean one) {
            this.values = values;
            this.one = one;
        }

        Object[][] values() {
            return values;
        }

        boolean one() {
            return one;
        }
    }

    /** The cell shows an error. */
    static final class Failed extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final int error;

        Failed(int error) {
            this.error = error;
        }

        Failed(int error, Throwable cause) {
            super(cause);
            this.error = error;
        }

        int error() {
            return error;
        }
    }

    /** The document of a cell: all that a function asks of it is its language. */
    public static XPropertySet documentIn(Language language) {
        Locale locale = new Locale(language.code(), "", "");
        return (XPropertySet) Proxy.newProxyInstance(
                PlainCall.class.getClassLoader(),
                new Class<?>[] {XPropertySet.class},
                (proxy, method, arguments) -> locale);
    }

    static Object of(String name, List<Object> given, Language language) {
        FunctionDeclaration function = Families.functions().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new Failed(ErrorCodes.NAME));
        long needed = function.arguments().stream()
                .filter(argument -> !argument.optional())
                .count();
        if (given.size() < needed || given.size() > function.arguments().size()) {
            throw new Failed(ErrorCodes.PARAMETER_LIST);
        }
        return of(function.method(), given, language);
    }

    private static Object of(Method method, List<Object> given, Language language) {
        List<Object> values = new ArrayList<>();
        int next = 0;
        for (Class<?> type : method.getParameterTypes()) {
            if (type == XPropertySet.class) {
                values.add(documentIn(language));
            } else {
                values.add(handedOver(next < given.size() ? given.get(next) : LEFT_OUT, type));
                next++;
            }
        }
        try {
            return method.invoke(Families.newService(method.getDeclaringClass()), values.toArray());
        } catch (InvocationTargetException thrown) {
            throw failed(thrown.getTargetException());
        } catch (ReflectiveOperationException impossible) {
            throw new LinkageError(method.toString(), impossible);
        }
    }

    /** Any other exception is a mistake of ours. */
    private static Failed failed(Throwable thrown) {
        if (thrown instanceof IllegalArgumentException) {
            return new Failed(ErrorCodes.INVALID_ARGUMENT, thrown);
        }
        if (thrown instanceof NoConvergenceException) {
            return new Failed(ErrorCodes.NO_CONVERGENCE, thrown);
        }
        throw new AssertionError(thrown);
    }

    private static Object handedOver(Object given, Class<?> type) {
        if (given == LEFT_OUT) {
            return LEFT_OUT;
        }
        Object[][] cells = given instanceof Range range
                ? range.values()
                : given instanceof Object[][] array ? array : new Object[][] {{given}};
        if (type == String[][].class) {
            return Arrays.stream(cells)
                    .map(row -> Arrays.stream(row).map(PlainCall::written).toArray(String[]::new))
                    .toArray(String[][]::new);
        }
        boolean blank = given instanceof Range range && range.one() && "".equals(cells[0][0]);
        Object[][] handed = blank ? new Object[][] {{0.0}} : cells;
        boolean lone = !(given instanceof Object[][]) && !(given instanceof Range range && !range.one());
        return type == Object.class && lone ? handed[0][0] : handed;
    }

    private static String written(Object cell) {
        return cell instanceof Double number
                ? new BigDecimal(number).round(DIGITS).stripTrailingZeros().toString()
                : cell.toString();
    }
}
