package org.snugsheet.office.explaining;

import com.sun.star.beans.XPropertySet;
import com.sun.star.uno.Any;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.Refusal;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.FunctionDeclaration;

/** Makes a call once more in Java, with the values the office would hand over, to learn why it is refused. */
final class Rerun {

    private Rerun() {}

    /**
     * Why a call is refused.
     *
     * @param givens as many as the function has arguments, all known and without errors
     * @return the refusal; empty if there is none
     */
    static Optional<Refusal> refusal(FunctionDeclaration function, List<Given> givens, XPropertySet document) {
        Method method = function.method();
        List<Object> values = new ArrayList<>();
        Iterator<Given> next = givens.iterator();
        for (Class<?> type : method.getParameterTypes()) {
            values.add(type == XPropertySet.class ? document : handedOver(next.next(), type));
        }
        try {
            Object family = method.getDeclaringClass()
                    .getAnnotation(Family.class)
                    .implementation()
                    .getDeclaredConstructor()
                    .newInstance();
            method.invoke(family, values.toArray());
            return Optional.empty();
        } catch (InvocationTargetException thrown) {
            return Answer.refusal(thrown.getTargetException());
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    // The office’s ways, see the package of the declarations: a lone blank cell is 0, but an empty text where texts are
    // asked for.
    private static Object handedOver(Given given, Class<?> type) {
        if (given.isLeftOut()) {
            return Any.VOID;
        }
        if (type == String[][].class) {
            return given.rows().stream()
                    .map(row -> row.stream().map(String::valueOf).toArray(String[]::new))
                    .toArray(String[][]::new);
        }
        Object[][] rows = given.rows().stream()
                .map(row -> row.stream()
                        .map(value -> given.oneCell() ? zeroIfBlank(value) : value)
                        .toArray())
                .toArray(Object[][]::new);
        return type == Object.class && given.oneCell() ? rows[0][0] : rows;
    }

    private static Object zeroIfBlank(Object value) {
        return value.equals("") ? (Object) 0.0 : value;
    }
}
