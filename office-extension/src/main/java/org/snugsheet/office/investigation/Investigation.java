package org.snugsheet.office.investigation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Surroundings;
import org.snugsheet.office.drawing.Curves;
import org.snugsheet.office.words.DeclinedException;

/**
 * What a teacher plans.
 *
 * @param jars how many jars
 * @param materials what they are wrapped in, in turn: more jars than materials are several of each, and of more materials than
 *     jars only the first are used
 * @param minutes how long the thermometers are read
 * @param interval minutes from one reading to the next; empty for about a dozen readings
 * @param scale the scale of the thermometers
 * @param mark degrees from one mark to the next
 * @param surroundings what is typed for the surroundings; empty to type it on the day
 */
public record Investigation(
        int jars,
        List<String> materials,
        int minutes,
        Optional<Integer> interval,
        Scale scale,
        double mark,
        String surroundings) {

    /** Fewer are no comparison. */
    public static final int FEWEST_JARS = 2;

    /** Shorter than this no jar cools by several marks. */
    public static final int SHORTEST = 5;

    /** A lesson without its beginning and its end (common practice, no source). */
    public static final int USUAL_MINUTES = 30;

    /** A school day. */
    public static final int LONGEST = 360;

    /** As many a class takes without haste in any time (common practice, no source). */
    private static final int USUAL_READINGS = 13;

    /** A curve has two unknowns at least, and one more reading shows whether it fits. */
    private static final int FEWEST_READINGS = 3;

    /** One a minute for an hour. */
    private static final int MOST_READINGS = 61;

    /** Steps a class can follow on a clock. */
    private static final List<Integer> STEPS = List.of(1, 2, 3, 5, 10, 15, 20, 30);

    /**
     * A plan.
     *
     * @throws DeclinedException if it cannot be laid out
     * @throws org.snugsheet.engine.InvalidInputException if the mark is not above zero, or the surroundings are no temperature
     */
    public Investigation {
        materials = List.copyOf(materials);
        if (materials.isEmpty()) {
            throw new DeclinedException(InvestigationWords.NO_MATERIALS);
        }
        if (jars < FEWEST_JARS || jars > Curves.MOST_JARS) {
            throw new DeclinedException(InvestigationWords.HOW_MANY_JARS, FEWEST_JARS, Curves.MOST_JARS);
        }
        if (minutes < SHORTEST || minutes > LONGEST) {
            throw new DeclinedException(InvestigationWords.HOW_MANY_MINUTES, SHORTEST, LONGEST);
        }
        int step = interval.orElseGet(() -> usualInterval(minutes));
        int readings = step < 1 ? 0 : 1 + minutes / step;
        if (readings < FEWEST_READINGS || readings > MOST_READINGS) {
            throw new DeclinedException(InvestigationWords.HOW_OFTEN, minutes, FEWEST_READINGS, MOST_READINGS);
        }
        Graduation.of(mark, scale);
        if (!surroundings.isBlank()) {
            Surroundings.of(List.of(Entry.ofWritten(surroundings)), List.of(), scale);
        }
    }

    /**
     * How often to read if nobody says it.
     *
     * @param minutes how long the thermometers are read
     * @return minutes from one reading to the next
     */
    public static int usualInterval(int minutes) {
        return STEPS.stream()
                .filter(one -> minutes / one < USUAL_READINGS)
                .findFirst()
                .orElse(STEPS.get(STEPS.size() - 1));
    }

    /**
     * Materials as they are typed, one per line or separated by semicolons.
     *
     * @param typed what was typed
     * @return the materials
     */
    public static List<String> materials(String typed) {
        return typed.lines()
                .flatMap(line -> List.of(line.split(";")).stream())
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
    }

    /** The heading over each jar. */
    List<String> names() {
        List<String> names = new ArrayList<>();
        for (int jar = 0; jar < jars; jar++) {
            names.add(materials.get(jar % materials.size()));
        }
        return List.copyOf(names);
    }

    /** When to read, in minutes. */
    List<Integer> times() {
        int step = interval.orElseGet(() -> usualInterval(minutes));
        List<Integer> times = new ArrayList<>();
        for (int time = 0; time <= minutes; time += step) {
            times.add(time);
        }
        return List.copyOf(times);
    }
}
