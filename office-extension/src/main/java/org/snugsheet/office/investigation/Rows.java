package org.snugsheet.office.investigation;

import org.snugsheet.engine.lesson.Caution;

/** In which row each part begins, counted from 1. */
record Rows(
        int cautions,
        int readings,
        int head,
        int lastReading,
        int surroundings,
        int checks,
        int checkLines,
        int results,
        int ranking,
        int chart,
        int end) {

    private static final int CHART_ROWS = 20;
    private static final int FEWEST_CHECK_LINES = 6;

    static Rows of(Investigation plan) {
        int jars = plan.jars();
        int cautions = 3;
        int lines = 1 + Caution.ofEveryLesson().size();
        int readings = cautions + lines + 1;
        int head = readings + 1;
        int lastReading = head + plan.times().size();
        int surroundings = lastReading + 1;
        int checks = surroundings + 3;
        int checkLines = Math.max(jars, FEWEST_CHECK_LINES);
        int results = checks + checkLines + 2;
        int ranking = results + jars + 2;
        int chart = ranking + jars + 4;
        return new Rows(
                cautions,
                readings,
                head,
                lastReading,
                surroundings,
                checks,
                checkLines,
                results,
                ranking,
                chart,
                chart + CHART_ROWS - 1);
    }
}
