package org.snugsheet.office.cells;

import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.sheet.NoConvergenceException;
import java.util.Optional;
import java.util.function.Supplier;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.office.words.Language;

/** Carries the engine’s answer, or its refusal, back to the cell. */
public final class Answer {

    /** What every language says where nothing is wrong. */
    public static final String OK = "OK";

    private Answer() {}

    /**
     * The answer of an engine call.
     *
     * @param <T> the type of the answer
     * @param engineCall the call, with the reading of the cells
     * @return what it answers
     * @throws IllegalArgumentException if the engine refuses; the cell shows Err:502
     * @throws NoConvergenceException if no curve settles; the cell shows Err:523
     */
    public static <T> T of(Supplier<T> engineCall) throws IllegalArgumentException, NoConvergenceException {
        try {
            return finite(engineCall.get());
        } catch (InvalidInputException refusal) {
            if (refusal.problem() == Problem.NO_CONVERGENCE) {
                throw because(
                        refusal, new NoConvergenceException(refusal.finding().sentence()));
            }
            throw because(
                    refusal, new IllegalArgumentException(refusal.finding().sentence()));
        }
    }

    /** Lets an answer pass that a cell can show. */
    private static <T> T finite(T answer) {
        if (answer instanceof Double number && !Double.isFinite(number)) {
            throw InvalidInputException.of(Problem.ANSWER_TOO_LARGE);
        }
        if (answer instanceof Object[][] table) {
            for (Object[] row : table) {
                for (Object cell : row) {
                    finite(cell);
                }
            }
        }
        return answer;
    }

    /**
     * The engine’s refusal behind an exception of {@link #of}: it can be said in any language, the message only in English.
     *
     * @param thrown what a cell function threw
     * @return the refusal, if there was one
     */
    public static Optional<InvalidInputException> refusal(Throwable thrown) {
        return thrown.getCause() instanceof InvalidInputException refusal ? Optional.of(refusal) : Optional.empty();
    }

    // The office sees the exception, Java its cause too.
    private static <E extends Exception> E because(InvalidInputException refusal, E thrown) {
        thrown.initCause(refusal);
        return thrown;
    }

    /**
     * What a call would be refused for, in words.
     *
     * @param language the language to say it in
     * @param engineCall the call, with the reading of the cells
     * @return the sentence it answers, or that of its refusal
     */
    public static String inWords(Language language, Supplier<String> engineCall) {
        try {
            return engineCall.get();
        } catch (InvalidInputException refusal) {
            return language.say(refusal.finding());
        }
    }
}
