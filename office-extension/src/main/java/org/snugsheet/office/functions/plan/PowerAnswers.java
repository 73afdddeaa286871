package org.snugsheet.office.functions.plan;

import java.util.function.Supplier;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.lesson.Power;
import org.snugsheet.office.functions.shared.Memo;

/**
 * What PLAN.POWER and PLAN.REPEATS were asked lately, and what came of it: each question takes some 20 ms, one that is refused more, and a sheet
 * asks the same ones again whenever all of it is worked out.
 */
final class PowerAnswers {

    /** More than the sheets that a teacher has open ask. */
    private static final int REMEMBERED = 64;

    private record Share(Power power, int jars) {}

    private record Jars(Power power, double often) {}

    private static final Memo<Share, Supplier<Double>> SHARES =
            new Memo<>(REMEMBERED, share -> known(() -> share.power().of(share.jars())));

    private static final Memo<Jars, Supplier<Integer>> JARS =
            new Memo<>(REMEMBERED, jars -> known(() -> jars.power().jarsFor(jars.often())));

    private PowerAnswers() {}

    /** How often so many jars of each wrap are told apart: {@link Power#of}. */
    static double share(Power power, int jars) {
        return SHARES.get(new Share(power, jars)).get();
    }

    /** The fewest jars of each wrap that are told apart often enough: {@link Power#jarsFor}. */
    static int jarsFor(Power power, double often) {
        return JARS.get(new Jars(power, often)).get();
    }

    /** An answer or a refusal, each given again without being worked out again. */
    private static <T> Supplier<T> known(Supplier<T> question) {
        try {
            T answer = question.get();
            return () -> answer;
        } catch (InvalidInputException refusal) {
            Finding finding = refusal.finding();
            return () -> {
                throw new InvalidInputException(finding);
            };
        }
    }
}
