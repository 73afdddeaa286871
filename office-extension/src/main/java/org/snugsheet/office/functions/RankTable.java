package org.snugsheet.office.functions;

import java.util.stream.Collectors;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.comparison.RankedMaterial;
import org.snugsheet.engine.comparison.Ranking;
import org.snugsheet.office.words.Language;

/** The table that COOL.RANK answers with. */
final class RankTable {

    private RankTable() {}

    static Object[][] of(Ranking ranking, Language language) {
        Object[][] table = new Object[ranking.materials().size() + 1][];
        table[0] = language.row(
                TableWords.PLACE,
                TableWords.MATERIAL,
                TableWords.JARS,
                TableWords.CONSTANT_PER_MINUTE,
                TableWords.FROM_95,
                TableWords.TO_95,
                TableWords.HALF_TIME_MINUTES,
                TableWords.NOT_TOLD_APART_FROM);
        for (int i = 0; i < ranking.materials().size(); i++) {
            RankedMaterial material = ranking.materials().get(i);
            Estimate rate = material.estimate();
            Interval limits = rate.interval(ReportTable.CONFIDENCE);
            String ties = ranking.notToldApartFrom(i).stream()
                    .map(RankedMaterial::name)
                    .collect(Collectors.joining(", "));
            table[i + 1] = new Object[] {
                (double) material.place(),
                material.name(),
                (double) material.jars().jars().size(),
                rate.value(),
                Math.max(0, limits.low()),
                limits.high(),
                rate.value() > 0 ? (Object) (Math.log(2) / rate.value()) : language.words(TableWords.NO_LIMIT),
                ties
            };
        }
        return table;
    }
}
