package org.snugsheet.office.fuzz;

import java.util.Optional;
import java.util.regex.Pattern;

/** What no call may do, whatever it was given. */
final class Fault {

    /**
     * Seconds of the processor, after which a call counts as one that does not end. The goal is one second on two idle cores; a build
     * server may be many times slower, so that is measured by hand with {@code -Dfuzz.seconds=1}.
     */
    private static final double MOST_SECONDS = Integer.getInteger("fuzz.seconds", 10);

    /** Traces of a programmer in a sentence. */
    private static final Pattern UNREADABLE =
            Pattern.compile("\\{\\d|\\bNaN\\b|Infinity|(?<!als )\\bnull\\b|\u221e|Exception|\\[Ljava|@[0-9a-f]{6,}");

    private Fault() {}

    /** What is wrong with the outcome of a call. */
    static Optional<String> in(Call call, Call.Outcome outcome) {
        return wrong(call, outcome).map(what -> what + ": " + call);
    }

    private static Optional<String> wrong(Call call, Call.Outcome outcome) {
        if (!outcome.isDeclared()) {
            return Optional.of("threw " + traced((Throwable) outcome.answer()));
        }
        if (outcome.seconds() > MOST_SECONDS) {
            return Optional.of("took " + outcome.seconds() + " s");
        }
        return outcome.answer() instanceof Exception refusal
                ? unreadable(call, String.valueOf(refusal.getMessage()))
                : unshown(call, outcome.answer());
    }

    private static Optional<String> unshown(Call call, Object answer) {
        if (answer instanceof Object[][] rows) {
            if (rows.length == 0) {
                return Optional.of("answered a table without rows");
            }
            for (Object[] row : rows) {
                if (row.length != rows[0].length) {
                    return Optional.of("answered a ragged table");
                }
                for (Object cell : row) {
                    Optional<String> found = unshown(call, cell);
                    if (found.isPresent()) {
                        return found;
                    }
                }
            }
            return Optional.empty();
        }
        if (answer instanceof Double number) {
            return Double.isFinite(number) ? Optional.empty() : Optional.of("answered " + number);
        }
        return answer instanceof String text
                ? unreadable(call, text)
                : Optional.of("answered what is neither number nor text: " + answer);
    }

    /** What somebody typed may come back in a sentence. */
    private static Optional<String> unreadable(Call call, String text) {
        return UNREADABLE
                        .matcher(text)
                        .results()
                        .map(found -> found.group())
                        .anyMatch(found -> !call.whole().contains(found))
                ? Optional.of("said “" + text + "”")
                : Optional.empty();
    }

    private static String traced(Throwable thrown) {
        StackTraceElement[] trace = thrown.getStackTrace();
        return thrown + (trace.length > 0 ? " at " + trace[0] : "");
    }
}
