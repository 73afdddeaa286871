package org.snugsheet.office.functions.cooling;

import java.util.List;
import java.util.stream.Collectors;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.comparison.RankedMaterial;
import org.snugsheet.engine.comparison.Ranking;
import org.snugsheet.engine.comparison.Verdict;
import org.snugsheet.engine.summary.JarRanking;
import org.snugsheet.engine.summary.JarSummary;
import org.snugsheet.office.functions.shared.Minutes;
import org.snugsheet.office.words.Language;

/** The table that COOL.RANK answers with: the jars that can be ranked, and below them, without a place, those held back. */
final class RankTable {

    private RankTable() {}

    /** A single jar stands for its wrap only if the spread between jars is counted in. */
    private static TableWords speaksOf(JarRanking jars) {
        List<RankedMaterial> materials = jars.ranking().materials();
        if (jars.spread() > 0 || materials.stream().noneMatch(one -> one.jars().isSingleJar())) {
            return TableWords.MATERIAL;
        }
        return materials.stream().allMatch(one -> one.jars().isSingleJar())
                ? TableWords.JAR
                : TableWords.MATERIAL_OR_JAR;
    }

    static Object[][] of(JarRanking jars, Language language) {
        Ranking ranking = jars.ranking();
        int ranked = ranking.materials().size();
        Object[][] table = new Object[1 + ranked + jars.heldBack().size()][];
        table[0] = language.row(
                TableWords.PLACE,
                speaksOf(jars),
                TableWords.JARS,
                TableWords.CONSTANT_PER_MINUTE,
                TableWords.FROM_95,
                TableWords.TO_95,
                TableWords.HALF_TIME_MINUTES,
                TableWords.NOT_TOLD_APART_FROM);
        for (int i = 0; i < ranked; i++) {
            RankedMaterial material = ranking.materials().get(i);
            Estimate rate = material.estimate();
            Interval limits = rate.interval(Verdict.CONFIDENCE);
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
                jars.halfTime(material)
                        .found()
                        .map(seconds -> (Object) Minutes.of(seconds))
                        .orElseGet(() -> language.words(TableWords.HARDLY_COOLS)),
                ties
            };
        }
        for (int i = 0; i < jars.heldBack().size(); i++) {
            JarSummary jar = jars.heldBack().get(i);
            String reason = jar.isWaiting()
                    ? language.words(TableWords.WAITING)
                    : Finding.whatIsWrong(language.say(jar.heldBackBecause().orElseThrow()));
            table[1 + ranked + i] = new Object[] {"", SheetTable.name(jar), "", "", "", "", "", reason};
        }
        return table;
    }
}
