package org.snugsheet.office.investigation;

import java.util.List;
import org.snugsheet.engine.lesson.Caution;

/** In which row each part begins, counted from 1. */
record Rows(
        int cautions,
        int readings,
        int names,
        int surroundings,
        int start,
        int head,
        int lastReading,
        int results,
        int ranking,
        int chart,
        int end) {

    /**
     * The cautions, line by line; the first follows the limit for the start. There is room for no more on a first screen: those of
     * materials for adults and of weather are in the menu’s window.
     */
    static final List<List<Caution>> CAUTIONS = List.of(
            List.of(Caution.SCALD),
            List.of(Caution.SCHOOL_RULES, Caution.ICE),
            List.of(Caution.ADULT_POURS, Caution.WET_FLOOR),
            List.of(Caution.GLASS),
            List.of(Caution.THERMOMETER),
            List.of(Caution.WRAPS),
            List.of(Caution.LOW_PLACE));

    private static final int CHART_ROWS = 20;

    static Rows of(Investigation plan) {
        int jars = plan.jars();
        int cautions = 3;
        int lines = CAUTIONS.size();
        int readings = cautions + lines + 1;
        int names = readings + 1;
        int surroundings = names + jars;
        int start = surroundings + 2;
        int head = start + 1;
        int lastReading = head + plan.times().size();
        int results = lastReading + 2;
        int ranking = results + jars + 2;
        int chart = ranking + jars + 4;
        return new Rows(
                cautions,
                readings,
                names,
                surroundings,
                start,
                head,
                lastReading,
                results,
                ranking,
                chart,
                chart + CHART_ROWS - 1);
    }

    /** The row with the name of a jar, counted from 0, and its finding. */
    int name(int jar) {
        return names + jar;
    }
}
