package org.snugsheet.office.sheets.lessonbook.layout;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.office.words.DeclinedException;

/**
 * How large a book is, and what it begins with; the rest is typed on its first page.
 *
 * @param wraps what each jar is wrapped in, from the first to the last; a wrap named twice is two jars of it. Blank: to be typed later
 * @param minutes from the first reading to the last
 * @param interval minutes from one reading to the next
 */
public record BookPlan(List<String> wraps, int minutes, int interval) {

    /** Fewer are no comparison. */
    public static final int FEWEST_JARS = 2;

    /** As many columns as still have room for names on a page. */
    public static final int MOST_JARS = 12;

    /** As many groups as a class of two dozen makes (common practice, no source). */
    public static final int USUAL_JARS = 8;

    /** Shorter than this no jar cools by several marks. */
    public static final int SHORTEST = 5;

    /** A school day. */
    public static final int LONGEST = 360;

    /** A lesson without its beginning and its end (common practice, no source). */
    public static final int USUAL_MINUTES = 30;

    /** As many a class takes without haste in any time (common practice, no source). */
    private static final int USUAL_READINGS = 13;

    /** A curve has two unknowns at least, and one more reading shows whether it fits. */
    private static final int FEWEST_READINGS = 3;

    /** One a minute for half an hour: as many rows as fit on a page. */
    private static final int MOST_READINGS = 31;

    /** Steps a class can follow on a clock. */
    private static final List<Integer> STEPS = List.of(1, 2, 3, 5, 10, 15, 20, 30);

    /**
     * A plan.
     *
     * @throws DeclinedException if no book can be made of it
     */
    public BookPlan {
        wraps = List.copyOf(wraps);
        if (wraps.size() < FEWEST_JARS || wraps.size() > MOST_JARS) {
            throw new DeclinedException(BookWords.HOW_MANY_JARS, FEWEST_JARS, MOST_JARS);
        }
        if (minutes < SHORTEST || minutes > LONGEST) {
            throw new DeclinedException(BookWords.HOW_MANY_MINUTES, SHORTEST, LONGEST);
        }
        int readings = interval < 1 ? 0 : 1 + minutes / interval;
        if (readings < FEWEST_READINGS || readings > MOST_READINGS) {
            throw new DeclinedException(BookWords.HOW_OFTEN, minutes, FEWEST_READINGS, MOST_READINGS);
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
     * Wraps as they are typed, one per line or separated by semicolons.
     *
     * @param typed what was typed
     * @return the wraps
     */
    public static List<String> wraps(String typed) {
        return typed.lines()
                .flatMap(line -> List.of(line.split(";")).stream())
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
    }

    /**
     * So many jars, to which wraps are dealt out by turns.
     *
     * @param wraps the wraps
     * @param jars how many jars
     * @return the wrap of each jar
     */
    public static List<String> dealt(List<String> wraps, int jars) {
        List<String> all = new ArrayList<>();
        for (int jar = 0; jar < jars; jar++) {
            all.add(wraps.isEmpty() ? "" : wraps.get(jar % wraps.size()));
        }
        return List.copyOf(all);
    }

    /** The same with other wraps. */
    public BookPlan with(List<String> others) {
        return new BookPlan(others, minutes, interval);
    }

    /** How many jars there is room for. */
    public int jars() {
        return wraps.size();
    }

    /** How many readings of each jar there is room for. */
    public int readings() {
        return 1 + minutes / interval;
    }
}
