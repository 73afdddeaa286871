package org.snugsheet.engine.summary;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Location;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Block;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;
import org.snugsheet.engine.reading.TimeColumn;

/**
 * What was typed for one jar.
 *
 * @param name its name; empty for columns without one
 * @param minutes what was typed for the times, one for each row
 * @param temperatures what was typed for the readings
 * @param surroundings what was typed for the surroundings: one temperature, one for each row, or the word {@code fit}
 * @param mark the mark of its thermometer
 * @param scale the scale of its thermometer
 */
public record TypedJar(
        Optional<String> name,
        List<Entry> minutes,
        List<Entry> temperatures,
        List<Entry> surroundings,
        Graduation mark,
        Scale scale) {

    /** Problems with a time, or with the surroundings at a time: cells that the jars of a block share. */
    private static final Set<Problem> OF_ALL_JARS = EnumSet.of(
            Problem.ROW_NOT_A_NUMBER,
            Problem.TIME_NOT_LATER,
            Problem.ROW_MINUTES_SKIPPED,
            Problem.ROW_MINUTES_REPEATED,
            Problem.ROW_TIME_WRONG,
            Problem.SURROUNDINGS_MISSING);

    /** A reading each second for an hour, and some more; common practice, no source. */
    private static final int MOST = 5000;

    /** More jars than a school has; common practice, no source. */
    private static final int MOST_JARS = 200;

    /** Six jars read each second for a quarter of an hour, and some more; common practice, no source. */
    private static final int MOST_OF_BLOCK = 6000;

    /**
     * What was typed; the lists are copied.
     *
     * @throws InvalidInputException if a column has more than {@value #MOST} cells that are not blank
     */
    public TypedJar {
        minutes = few(minutes);
        temperatures = few(temperatures);
        surroundings = few(surroundings);
    }

    private static List<Entry> few(List<Entry> column) {
        requireFew(typed(column), MOST);
        return List.copyOf(column);
    }

    private static long typed(List<Entry> column) {
        return column.stream()
                .filter(entry -> !(entry instanceof Entry.Missing))
                .count();
    }

    private static void requireFew(long typed, int most) {
        if (typed > most) {
            throw InvalidInputException.of(Problem.TOO_MANY_CELLS, typed, most);
        }
    }

    /**
     * The jars of a block. A jar whose heading names a scale was read on that scale; the surroundings and a typed mark are on
     * the common scale.
     *
     * @param block the block
     * @param called the name of each jar
     * @param surroundings what was typed for the surroundings of all
     * @param mark the mark of the thermometers; empty for the usual one of each jar’s scale
     * @param common the scale of jars whose headings name none
     * @return the jars, in the order of the block
     * @throws InvalidInputException if the block has more than {@value #MOST_JARS} jars or {@value #MOST_OF_BLOCK} readings
     */
    public static List<TypedJar> of(
            Block block,
            Function<Block.Jar, String> called,
            List<Entry> surroundings,
            Optional<Graduation> mark,
            Scale common) {
        if (block.jars().size() > MOST_JARS) {
            throw InvalidInputException.of(Problem.TOO_MANY_JARS, block.jars().size(), MOST_JARS);
        }
        requireFew(
                block.jars().stream()
                        .mapToLong(jar -> typed(jar.temperatures()))
                        .sum(),
                MOST_OF_BLOCK);
        List<Entry> around =
                surroundings.stream().map(entry -> entry.onScale(common)).toList();
        return block.jars().stream()
                .map(jar -> {
                    Scale own = jar.heading().scale().orElse(common);
                    return new TypedJar(
                            Optional.of(called.apply(jar)),
                            block.times(),
                            jar.temperatures(),
                            around,
                            mark.orElseGet(() -> Graduation.usual(own)),
                            own);
                })
                .toList();
    }

    /**
     * Whether nobody typed a reading yet.
     *
     * @return true if every reading is a gap
     */
    public boolean isWaiting() {
        return temperatures.stream().allMatch(Entry.Missing.class::isInstance);
    }

    /**
     * Its readings.
     *
     * @return the readings, perhaps none
     * @throws InvalidInputException as {@link Readings#ofMinutes} does, with the place
     */
    public Readings readings() {
        return located(() -> Readings.ofMinutes(minutes, temperatures, scale));
    }

    /**
     * Its surroundings.
     *
     * @return the surroundings
     * @throws InvalidInputException as {@link Surroundings#of} does, with the place
     */
    public Surroundings around() {
        return located(() -> Surroundings.of(surroundings, minutes, scale));
    }

    /** The result of a call; an exception that names a row then also names the minute and the jar. */
    <T> T located(Supplier<T> call) {
        try {
            return call.get();
        } catch (InvalidInputException refusal) {
            throw new InvalidInputException(located(refusal.finding()));
        }
    }

    /** A finding about these readings, with the minute and the jar. */
    Finding located(Finding finding) {
        return places().apply(finding);
    }

    /** The same for many findings: the times are read once for all of them. */
    UnaryOperator<Finding> places() {
        List<Entry> read = TimeColumn.of(minutes).minutes();
        return finding -> {
            boolean ofAllJars = OF_ALL_JARS.contains(finding.problem());
            return finding.located(there -> new Location(
                    there.row(),
                    minute(read, there.row()),
                    ofAllJars ? Optional.empty() : name,
                    ofAllJars && name.isPresent()));
        };
    }

    private static OptionalDouble minute(List<Entry> read, int row) {
        return row <= read.size() && read.get(row - 1) instanceof Entry.Value minute
                ? OptionalDouble.of(minute.value())
                : OptionalDouble.empty();
    }
}
