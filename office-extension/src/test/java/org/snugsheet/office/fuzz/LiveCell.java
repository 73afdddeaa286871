package org.snugsheet.office.fuzz;

import java.util.Optional;
import java.util.Set;
import org.snugsheet.office.harness.ErrorCodes;

/**
 * A formula in a cell, and what the cell must show.
 *
 * @param call the same call in plain Java
 * @param formula as it is typed
 * @param errors one of which the office must show without asking us; none if the answer is that of plain Java
 */
record LiveCell(Call call, String formula, Set<Integer> errors) {

    /** The office’s Java may compile a formula to other instructions than this one. */
    private static final double WITHIN = 1e-9;

    LiveCell {
        errors = Set.copyOf(errors);
    }

    /** What is wrong with what a cell shows: a number, a text, or the number of an error other than 0. */
    Optional<String> fault(Object shown, int error) {
        if (!errors.isEmpty()) {
            return errors.contains(error) ? Optional.empty() : Optional.of(saying("one of " + errors, shown, error));
        }
        Call.Outcome plain = call.made();
        Optional<String> fault = Fault.in(call, plain);
        if (fault.isPresent()) {
            return fault;
        }
        Object answer = plain.answer() instanceof Object[][] table ? table[0][0] : plain.answer();
        boolean same = plain.isRefused() ? error == code(plain.answer()) : error == 0 && isAlike(answer, shown);
        return same ? Optional.empty() : Optional.of(saying(String.valueOf(answer), shown, error));
    }

    static boolean isAlike(Object one, Object other) {
        if (one instanceof Double number && other instanceof Double same) {
            return number.equals(same) || Math.abs(number - same) <= WITHIN * Math.abs(number);
        }
        return one.equals(other);
    }

    private static int code(Object refusal) {
        return refusal instanceof com.sun.star.sheet.NoConvergenceException
                ? ErrorCodes.NO_CONVERGENCE
                : ErrorCodes.INVALID_ARGUMENT;
    }

    private String saying(String wanted, Object shown, int error) {
        return (error == 0 ? "shows “" + shown + "”" : "shows error " + error) + " instead of “" + wanted + "”: "
                + formula + "\n   in " + call.language() + ", which is " + call;
    }
}
