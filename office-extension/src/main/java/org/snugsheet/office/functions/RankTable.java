package org.snugsheet.office.functions;

import java.util.stream.Collectors;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.comparison.RankedMaterial;
import org.snugsheet.engine.comparison.Ranking;

/** The table that COOL.RANK answers with. */
final class RankTable {

    private RankTable() {}

    static Object[][] of(Ranking ranking) {
        Object[][] table = new Object[ranking.materials().size() + 1][];
        table[0] = new Object[] {
            "Place",
            "Material",
            "jars",
            "constant, 1/min",
            "95 % from",
            "95 % to",
            "half-time, min",
            "not told apart from"
        };
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
                rate.value() > 0 ? (Object) (Math.log(2) / rate.value()) : "no limit",
                ties
            };
        }
        return table;
    }
}
