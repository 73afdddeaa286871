package org.snugsheet.office.fuzz;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lang.Locale;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.Any;
import java.lang.management.ManagementFactory;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.Families;

/** A call of a cell function as the office makes it, in plain Java. */
record Call(FormulaText formula, String language) {

    /** An option that nobody gave. */
    static final Object LEFT_OUT = Any.VOID;

    private static final Map<String, FunctionDeclaration> FUNCTIONS = Families.functions().stream()
            .collect(Collectors.toUnmodifiableMap(FunctionDeclaration::name, Function.identity()));

    private static final Map<Class<?>, Object> SERVICES = new ConcurrentHashMap<>();

    /** As many digits as the office writes. */
    private static final MathContext DIGITS = new MathContext(15);

    /** What came of a call, and the seconds of the processor it took. */
    record Outcome(Object answer, double seconds) {

        boolean isRefused() {
            return answer instanceof Exception;
        }

        boolean isDeclared() {
            return !(answer instanceof Throwable)
                    || answer instanceof IllegalArgumentException
                    || answer instanceof NoConvergenceException;
        }

        /** The same for two calls with the same answer. */
        String said() {
            return answer instanceof Object[][] rows ? Arrays.deepToString(rows) : String.valueOf(answer);
        }
    }

    static Call of(String formula) {
        return new Call(FormulaText.parse(formula), "en");
    }

    static FunctionDeclaration function(String name) {
        FunctionDeclaration function = FUNCTIONS.get(name);
        if (function == null) {
            throw new AssertionError("no function " + name);
        }
        return function;
    }

    /** Makes the call; whatever is thrown becomes the answer. */
    Outcome made() {
        Method method = function(formula.name()).method();
        List<Object> values = new ArrayList<>();
        int next = 0;
        for (Class<?> type : method.getParameterTypes()) {
            if (type == XPropertySet.class) {
                values.add(documentIn(language));
            } else {
                values.add(
                        next < formula.arguments().size()
                                ? handedOver(formula.arguments().get(next), type)
                                : LEFT_OUT);
                next++;
            }
        }
        Object service = SERVICES.computeIfAbsent(method.getDeclaringClass(), Families::newService);
        Object[] given = values.toArray();
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Object answer;
        try {
            answer = method.invoke(service, given);
        } catch (InvocationTargetException thrown) {
            answer = thrown.getTargetException();
        } catch (IllegalAccessException impossible) {
            throw new LinkageError(formula.name(), impossible);
        }
        return new Outcome(answer, (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) * 1e-9);
    }

    private static Object handedOver(Object given, Class<?> type) {
        if (type == Object.class) {
            return given;
        }
        Object[][] cells = given instanceof Object[][] many ? many : new Object[][] {{given == LEFT_OUT ? 0.0 : given}};
        if (type == Object[][].class) {
            return cells;
        }
        if (type != String[][].class) {
            throw new AssertionError("an argument of a type that no function had: " + type);
        }
        String[][] written = new String[cells.length][];
        for (int row = 0; row < cells.length; row++) {
            // A whole column may be the same blank row again and again.
            written[row] = row > 0 && cells[row] == cells[row - 1]
                    ? written[row - 1]
                    : Arrays.stream(cells[row]).map(Call::written).toArray(String[]::new);
        }
        return written;
    }

    private static String written(Object cell) {
        if (!(cell instanceof Double number)) {
            return cell.toString();
        }
        BigDecimal rounded = new BigDecimal(number, DIGITS).stripTrailingZeros();
        // Of the largest numbers, which 15 digits would round up beyond all numbers, the office writes more.
        return Double.isInfinite(rounded.doubleValue()) ? number.toString() : rounded.toString();
    }

    private static XPropertySet documentIn(String language) {
        Locale locale = new Locale(language, "", "");
        return (XPropertySet) Proxy.newProxyInstance(
                Call.class.getClassLoader(), new Class<?>[] {XPropertySet.class}, (proxy, method, given) -> locale);
    }

    /** All of the formula, however long. */
    String whole() {
        return formula.toString();
    }

    @Override
    public String toString() {
        String written = whole();
        return written.length() > 2000
                ? written.substring(0, 2000) + " … (" + written.length() + " characters)"
                : written;
    }
}
