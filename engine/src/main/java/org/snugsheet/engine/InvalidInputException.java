package org.snugsheet.engine;

import java.util.OptionalInt;

/**
 * The one way the engine says that it cannot answer.
 *
 * <p>The message is the {@linkplain Finding#sentence() plain sentence} of a {@link Finding}: what is wrong, in which row,
 * and what to do.
 *
 * <pre>{@code
 * throw InvalidInputException.of(Problem.TOO_FEW_READINGS, 3, 2);
 * throw InvalidInputException.atRow(4, Problem.TIME_NOT_LATER, 5.0, 6.0);
 * }</pre>
 */
public final class InvalidInputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Finding finding;

    /**
     * A refusal because of a finding.
     *
     * @param finding what is wrong
     */
    public InvalidInputException(Finding finding) {
        super(finding.sentence());
        this.finding = finding;
    }

    /**
     * A refusal that concerns the whole of what was given.
     *
     * @param problem what is wrong
     * @param arguments the values for {@code {0}}, {@code {1}}, … of its sentence
     * @return the refusal, to be thrown
     */
    public static InvalidInputException of(Problem problem, Object... arguments) {
        return new InvalidInputException(Finding.of(problem, arguments));
    }

    /**
     * A refusal that concerns one row of what was given.
     *
     * @param row the row, counted from 1 within the cells given; its {@link Location} is {@code {0}} in the sentence
     * @param problem what is wrong
     * @param arguments the values for {@code {1}}, {@code {2}}, … of its sentence
     * @return the refusal, to be thrown
     */
    public static InvalidInputException atRow(int row, Problem problem, Object... arguments) {
        return new InvalidInputException(Finding.atRow(row, problem, arguments));
    }

    /**
     * A refusal that concerns one of several things that are counted, such as the layers of a wrap.
     *
     * @param number which, counted from 1; it is {@code {0}} in the sentence
     * @param problem what is wrong
     * @param arguments the values for {@code {1}}, {@code {2}}, … of its sentence
     * @return the refusal, to be thrown
     */
    public static InvalidInputException atItem(int number, Problem problem, Object... arguments) {
        return new InvalidInputException(Finding.atItem(number, problem, arguments));
    }

    /**
     * What was found wrong, ready to be said in any language.
     *
     * @return the finding
     */
    public Finding finding() {
        return finding;
    }

    /**
     * What is wrong, apart from any language.
     *
     * @return the trouble
     */
    public Problem problem() {
        return finding.problem();
    }

    /**
     * The row that is to blame.
     *
     * @return the row, counted from 1 within the cells given; empty when the trouble is not one row’s
     */
    public OptionalInt row() {
        return finding.row();
    }
}
