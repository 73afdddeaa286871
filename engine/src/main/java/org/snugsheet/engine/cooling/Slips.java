package org.snugsheet.engine.cooling;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Mark;
import org.snugsheet.engine.reading.Reading;
import org.snugsheet.engine.reading.Readings;

/** What looks like a slip of the pen in readings that can be worked with all the same. */
public final class Slips {

    private Slips() {}

    /**
     * Looks for slips.
     *
     * @param readings the readings
     * @param mark the mark of the thermometer; smaller differences say nothing
     * @return what was found, in the order of the rows; empty if nothing was
     */
    public static List<Finding> in(Readings readings, Mark mark) {
        List<Finding> found = new ArrayList<>();
        if (looksLikeClockTimes(readings)) {
            found.add(Finding.of(Trouble.DAY_FRACTIONS));
        }
        found.addAll(steps(readings, mark));
        return found;
    }

    // A time-formatted cell holds the part of the day. A lesson shorter than a minute and read to the second does not
    // happen with a hand-held thermometer, while a lesson of up to six hours within a day gives just such numbers.
    private static boolean looksLikeClockTimes(Readings readings) {
        double minute = 60;
        return readings.size() > 1
                && readings.all().stream().allMatch(r -> r.seconds() >= 0 && r.seconds() < minute)
                && readings.span() < minute / 4;
    }

    private static List<Finding> steps(Readings readings, Mark mark) {
        List<Finding> found = new ArrayList<>();
        Scale scale = readings.scale();
        Reading last = readings.all().get(readings.size() - 1);
        boolean cools = readings.first().temperature().compareTo(last.temperature()) > 0;
        for (int i = 1; i < readings.size(); i++) {
            Reading before = readings.all().get(i - 1);
            Reading reading = readings.all().get(i);
            double warmed = reading.temperature().minus(before.temperature()).kelvins();
            if (cools && warmed > mark.graduation().kelvins()) {
                found.add(Finding.atRow(
                        reading.row(),
                        Trouble.WARMER_THAN_BEFORE,
                        reading.temperature().in(scale),
                        before.temperature().in(scale),
                        scale.symbol()));
            }
        }
        return found;
    }
}
