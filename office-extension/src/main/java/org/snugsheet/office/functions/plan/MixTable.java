package org.snugsheet.office.functions.plan;

import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.lesson.Taps;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.office.words.Language;

/** The table that PLAN.MIX answers with. */
final class MixTable {

    private MixTable() {}

    static Object[][] of(Taps taps, Temperature hot, Language language) {
        Caution first = SafeStart.isForAdultsOnly(hot) ? Caution.HOT_TAP : Caution.ADULT_POURS;
        return new Object[][] {
            language.row(MixWords.WATER, MixWords.MILLILITRES),
            {language.words(MixWords.HOT), PlanCells.milliliters(taps.hot())},
            {language.words(MixWords.COLD), PlanCells.milliliters(taps.cold())},
            language.row(MixWords.CAUTION, first),
            language.row(MixWords.CAUTION, Caution.SCHOOL_RULES)
        };
    }
}
