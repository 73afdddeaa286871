package org.snugsheet.office.functions;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.fairness.FairTest;

/** The table that CHECK.FAIR answers with. */
final class FairTable {

    private FairTable() {}

    static Object[][] of(List<FairTest.Difference> differences) {
        List<Object[]> rows = new ArrayList<>();
        rows.add(header());
        for (FairTest.Difference difference : differences) {
            rows.add(new Object[] {
                name(difference.kind()),
                difference.first(),
                difference.second(),
                difference.percent(),
                difference.matters() ? advice(difference.kind()) : "Fair enough: less than the readings can tell."
            });
        }
        rows.add(new Object[] {"lid", "", "", "", "Numbers cannot tell. Give both jars the same lid, or both none."});
        return rows.toArray(Object[][]::new);
    }

    static Object[][] refused(Refusal refusal) {
        return new Object[][] {
            header(), {"readings", "", "", "", refusal.finding().sentence()}
        };
    }

    private static Object[] header() {
        return new Object[] {"What", "first jar", "second jar", "bias of the ratio, %", "What to do"};
    }

    private static String name(FairTest.Kind kind) {
        return switch (kind) {
            case START -> "start, degrees";
            case SURROUNDINGS -> "surroundings, degrees";
            case TIMES -> "time read, minutes";
            case VOLUME -> "water, ml";
        };
    }

    private static String advice(FairTest.Kind kind) {
        return switch (kind) {
            case START -> "It matters. Start both jars equally warm.";
            case SURROUNDINGS -> "It matters. Stand both jars in the same place.";
            case TIMES -> "It matters. Compare the same minutes of both jars.";
            case VOLUME -> "It matters. Fill both jars equally.";
        };
    }
}
