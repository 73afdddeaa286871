package org.snugsheet.office.functions.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.fairness.FairTest;
import org.snugsheet.engine.fairness.UnseenError;
import org.snugsheet.engine.jar.Lid;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.words.Language;

/** The table that CHECK.FAIR answers with. */
final class FairTable {

    private FairTable() {}

    /**
     * The table.
     *
     * @param differences what differs
     * @param ifOpen by how many per cent the ratio would be off if one jar stood open; nothing if that cannot be told
     * @param lids what was said of the lids; empty if nothing was
     * @param unseen what errors that no reading shows would do
     * @param scale whose degrees they are counted in
     */
    static Object[][] of(
            List<FairTest.Difference> differences,
            Optional<Double> ifOpen,
            List<Lid> lids,
            List<UnseenError> unseen,
            Scale scale,
            Language language) {
        List<Object[]> rows = new ArrayList<>();
        rows.add(header(language));
        for (FairTest.Difference difference : differences) {
            rows.add(new Object[] {
                language.words(name(difference.kind())),
                difference.first(),
                difference.second(),
                difference.percent(),
                language.words(difference.matters() ? advice(difference.kind()) : FairWords.FAIR_ENOUGH)
            });
        }
        if (differences.stream().noneMatch(difference -> difference.kind() == FairTest.Kind.LID)) {
            String advice = lids.isEmpty() && ifOpen.isPresent()
                    ? language.say(FairWords.IF_ONE_STOOD_OPEN, Math.round(ifOpen.get()))
                    : language.words(FairWords.ASK_ABOUT_LID);
            rows.add(new Object[] {language.words(FairWords.LID), "", "", "", advice});
        }
        for (UnseenError error : unseen) {
            boolean both = error.cause() == UnseenError.Cause.SURROUNDINGS_WARM;
            rows.add(new Object[] {
                language.say(name(error.cause()), scale.symbol()),
                error.first(),
                error.second(),
                both ? error.ofRatioIfBoth() : error.first(),
                language.say(advice(error.cause()), tenths(error.ofRatioIfBoth()))
            });
        }
        return rows.toArray(Object[][]::new);
    }

    static Object[][] refused(InvalidInputException refusal, Language language) {
        return new Object[][] {
            header(language), {language.words(FairWords.READINGS), "", "", "", language.say(refusal.finding())}
        };
    }

    private static Object[] header(Language language) {
        return language.row(
                FairWords.WHAT, FairWords.FIRST_JAR, FairWords.SECOND_JAR, FairWords.BIAS, FairWords.WHAT_TO_DO);
    }

    private static FairWords name(FairTest.Kind kind) {
        return switch (kind) {
            case START -> FairWords.START;
            case SURROUNDINGS -> FairWords.SURROUNDINGS;
            case TIMES -> FairWords.TIMES;
            case VOLUME -> FairWords.VOLUME;
            case LID -> FairWords.LID_WATTS;
        };
    }

    private static FairWords advice(FairTest.Kind kind) {
        return switch (kind) {
            case START -> FairWords.START_MATTERS;
            case SURROUNDINGS -> FairWords.SURROUNDINGS_MATTER;
            case TIMES -> FairWords.TIMES_MATTER;
            case VOLUME -> FairWords.VOLUME_MATTERS;
            case LID -> FairWords.LID_MATTERS;
        };
    }

    /** Adding zero takes the sign from a zero. */
    private static double tenths(double percent) {
        return Math.rint(10 * percent) / 10 + 0.0;
    }

    private static FairWords name(UnseenError.Cause cause) {
        return switch (cause) {
            case SURROUNDINGS_WARM -> FairWords.IF_SURROUNDINGS_WARM;
            case THERMOMETER_HIGH -> FairWords.IF_THERMOMETER_HIGH;
            case FIRST_TOO_SOON -> FairWords.IF_FIRST_TOO_SOON;
            case READ_DOWN -> FairWords.IF_READ_DOWN;
        };
    }

    private static FairWords advice(UnseenError.Cause cause) {
        return switch (cause) {
            case SURROUNDINGS_WARM -> FairWords.UNSEEN_SURROUNDINGS;
            case THERMOMETER_HIGH -> FairWords.UNSEEN_THERMOMETER;
            case FIRST_TOO_SOON -> FairWords.UNSEEN_FIRST;
            case READ_DOWN -> FairWords.UNSEEN_DOWN;
        };
    }
}
