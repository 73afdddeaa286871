package org.snugsheet.engine;

import java.util.OptionalInt;

/**
 * The only exception with which the engine reports input that it cannot use.
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
     * An exception for a finding.
     *
     * @param finding what is wrong
     */
    public InvalidInputException(Finding finding) {
        super(finding.sentence());
        this.finding = finding;
    }

    /**
     * An exception that concerns the input as a whole.
     *
     * @param problem what is wrong
     * @param arguments the values for {@code {0}}, {@code {1}}, … of its sentence
     * @return the exception, to be thrown
     */
    public static InvalidInputException of(Problem problem, Object... arguments) {
        return new InvalidInputException(Finding.of(problem, arguments));
    }

    /**
     * An exception that concerns one row of the input.
     *
     * @param row the row, counted from 1 within the cells given; its {@link Location} is {@code {0}} in the sentence
     * @param problem what is wrong
     * @param arguments the values for {@code {1}}, {@code {2}}, … of its sentence
     * @return the exception, to be thrown
     */
    public static InvalidInputException atRow(int row, Problem problem, Object... arguments) {
        return new InvalidInputException(Finding.atRow(row, problem, arguments));
    }

    /**
     * An exception that concerns one of several numbered items, such as the layers of a wrap.
     *
     * @param number which, counted from 1; it is {@code {0}} in the sentence
     * @param problem what is wrong
     * @param arguments the values for {@code {1}}, {@code {2}}, … of its sentence
     * @return the exception, to be thrown
     */
    public static InvalidInputException atItem(int number, Problem problem, Object... arguments) {
        return new InvalidInputException(Finding.atItem(number, problem, arguments));
    }

    /**
     * What is wrong, ready to be stated in any language.
     *
     * @return the finding
     */
    public Finding finding() {
        return finding;
    }

    /**
     * What is wrong, independent of any language.
     *
     * @return the trouble
     */
    public Problem problem() {
        return finding.problem();
    }

    /**
     * The row concerned.
     *
     * @return the row, counted from 1 within the cells given; empty if the problem does not concern a single row
     */
    public OptionalInt row() {
        return finding.row();
    }
}
