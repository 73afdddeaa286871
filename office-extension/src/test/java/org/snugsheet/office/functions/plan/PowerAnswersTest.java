package org.snugsheet.office.functions.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.sun.star.uno.Any;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.lesson.Power;
import org.snugsheet.engine.lesson.ReadingPlan;

/** What is remembered is what the engine answers, each time it is asked. */
class PowerAnswersTest {

    private static final Power APART = power(0.05, 0.03, 0.1);

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 2})
    void sharesAreThoseOfTheEngine(int jars) {
        assertEquals(APART.of(jars), PowerAnswers.share(APART, jars));
        assertEquals(APART.of(jars), PowerAnswers.share(power(0.05, 0.03, 0.1), jars));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.8, 0.5})
    void jarsAreThoseOfTheEngine(double often) {
        assertEquals(APART.jarsFor(often), PowerAnswers.jarsFor(APART, often));
        assertEquals(APART.jarsFor(often), PowerAnswers.jarsFor(power(0.05, 0.03, 0.1), often));
    }

    @Test
    void whatDiffersInOneThingIsAnotherQuestion() {
        for (Power other : List.of(power(0.05, 0.04, 0.1), power(0.06, 0.03, 0.1), power(0.05, 0.03, 0.2))) {
            PowerAnswers.share(APART, 3);
            assertEquals(other.of(3), PowerAnswers.share(other, 3));
        }
    }

    @Test
    void aRefusalIsGivenAgainInTheSameWords() {
        Power alike = power(0.05, 0.0499, 0.1);
        String said = refusal(() -> alike.jarsFor(0.8));
        assertEquals(said, refusal(() -> PowerAnswers.jarsFor(alike, 0.8)));
        assertEquals(said, refusal(() -> PowerAnswers.jarsFor(alike, 0.8)));
    }

    private static String refusal(Runnable question) {
        return assertThrows(InvalidInputException.class, question::run)
                .finding()
                .sentence();
    }

    private static Power power(double rate, double otherRate, double spread) {
        return new Power(plan(rate), plan(otherRate), spread);
    }

    private static ReadingPlan plan(double rate) {
        return PlanCells.filling(cell(rate), cell(40), cell(5), cell(30), cell(3), Any.VOID, Any.VOID, Any.VOID);
    }

    private static String[][] cell(double number) {
        return new String[][] {{String.valueOf(number)}};
    }
}
