package org.snugsheet.office.investigation;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Mark;
import org.snugsheet.office.drawing.Curves;
import org.snugsheet.office.words.Declined;

/**
 * What a teacher plans.
 *
 * @param jars how many jars
 * @param materials what they are wrapped in, in turn: more jars than materials are several of each
 * @param minutes how long the thermometers are read
 * @param scale the scale of the thermometers
 * @param mark degrees from one mark to the next
 * @param surroundings what is typed for the surroundings; empty to type it on the day
 */
public record Investigation(
        int jars, List<String> materials, int minutes, Scale scale, double mark, String surroundings) {

    /** Fewer are no comparison. */
    public static final int FEWEST_JARS = 2;

    /** Shorter than this no jar cools by several marks. */
    public static final int SHORTEST = 5;

    /** A lesson without its beginning and its end (common practice, no source). */
    public static final int USUAL_MINUTES = 30;

    /** A school day. */
    public static final int LONGEST = 360;

    /** More readings than these do not fit on the page. */
    private static final int MOST_READINGS = 13;

    /** Steps a class can follow on a clock. */
    private static final List<Integer> STEPS = List.of(1, 2, 3, 5, 10, 15, 20, 30);

    /**
     * A plan.
     *
     * @throws Declined if it cannot be laid out
     * @throws org.snugsheet.engine.Refusal if the mark is not above zero
     */
    public Investigation {
        materials = List.copyOf(materials);
        if (jars < FEWEST_JARS || jars > Curves.MOST_JARS) {
            throw new Declined(InvestigationWords.HOW_MANY_JARS, FEWEST_JARS, Curves.MOST_JARS);
        }
        if (materials.isEmpty() || materials.size() > jars) {
            throw new Declined(InvestigationWords.HOW_MANY_MATERIALS, materials.size(), jars);
        }
        if (minutes < SHORTEST || minutes > LONGEST) {
            throw new Declined(InvestigationWords.HOW_MANY_MINUTES, SHORTEST, LONGEST);
        }
        Mark.of(mark, scale);
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

    /** What stands over each jar. */
    List<String> names() {
        List<String> names = new ArrayList<>();
        for (int jar = 0; jar < jars; jar++) {
            names.add(materials.get(jar % materials.size()));
        }
        return List.copyOf(names);
    }

    /** When to read, in minutes: about a dozen times (common practice, no source). */
    List<Integer> times() {
        int step = STEPS.stream()
                .filter(one -> minutes / one < MOST_READINGS)
                .findFirst()
                .orElseThrow();
        List<Integer> times = new ArrayList<>();
        for (int time = 0; time <= minutes; time += step) {
            times.add(time);
        }
        return List.copyOf(times);
    }
}
