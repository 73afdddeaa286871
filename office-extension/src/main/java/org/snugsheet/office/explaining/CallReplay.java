package org.snugsheet.office.explaining;

import com.sun.star.beans.XPropertySet;
import com.sun.star.uno.Any;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.Families;
import org.snugsheet.office.words.Language;

/** Repeats a call in Java, with the values the office would hand over, to learn what it answers or why it is refused. */
final class CallReplay {

    private CallReplay() {}

    /**
     * How a call went: exactly one of the two is there.
     *
     * @param answer a number, a text or a table
     * @param refusal why there is no answer
     */
    record Result(Optional<Object> answer, Optional<InvalidInputException> refusal) {}

    /**
     * Makes a call.
     *
     * @param givens as many as the function has arguments, all known and without errors
     * @param language the language of answers in words
     * @return its answer or its refusal
     */
    static Result of(FunctionDeclaration function, List<ArgumentValue> givens, Language language) {
        Method method = function.method();
        List<Object> values = new ArrayList<>();
        Iterator<ArgumentValue> next = givens.iterator();
        for (Class<?> type : method.getParameterTypes()) {
            values.add(type == XPropertySet.class ? new LanguageOnly(language) : handedOver(next.next(), type));
        }
        try {
            Object family = Families.newService(method.getDeclaringClass());
            return new Result(Optional.of(method.invoke(family, values.toArray())), Optional.empty());
        } catch (InvocationTargetException thrown) {
            Optional<InvalidInputException> refusal = Answer.refusal(thrown.getTargetException());
            if (refusal.isEmpty()) {
                throw new IllegalStateException(thrown.getTargetException());
            }
            return new Result(Optional.empty(), refusal);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    // The office’s ways, see the package of the declarations: a lone blank cell is 0, but an empty text where texts are
    // asked for.
    private static Object handedOver(ArgumentValue given, Class<?> type) {
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
