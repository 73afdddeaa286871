package org.snugsheet.engine.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.quantity.Scale;

/**
 * A whole sheet of readings: a header row, times down the first column, one more column for each jar.
 *
 * <p>A header that ends in a scale, such as {@code wool °F} or {@code bare (C)}, says on which scale its column was read; C, F and
 * K without the degree sign count only in brackets.
 *
 * @param times what was typed for the times, one for each row below the header
 * @param jars the jars, in the order of their columns
 */
public record Block(List<Entry> times, List<Jar> jars) {

    private static final Pattern OWN_SCALE =
            Pattern.compile("(.*?)\\s*(?:\\(\\s*([°º]?\\s*[CFK])\\s*\\)|([°º]\\s*[CF]))\\s*", Pattern.CASE_INSENSITIVE);

    /**
     * One jar of the block.
     *
     * @param name its name, without the scale
     * @param scale the scale its header names; empty if it names none
     * @param temperatures what was typed for its readings
     */
    public record Jar(String name, Optional<Scale> scale, List<Entry> temperatures) {

        /** A jar; its readings are copied. */
        public Jar {
            temperatures = List.copyOf(temperatures);
        }
    }

    /** A block; its lists are copied. */
    public Block {
        times = List.copyOf(times);
        jars = List.copyOf(jars);
    }

    /**
     * Reads a block.
     *
     * @param rows the rows, all of one length; the first is the header
     * @return the block; a column with neither a header nor readings is left out
     * @throws Refusal if there is no row below the header or no jar beside the times
     */
    public static Block of(List<List<Entry>> rows) {
        if (rows.size() < 2 || rows.get(0).size() < 2) {
            throw Refusal.of(Trouble.NO_BLOCK);
        }
        List<Jar> jars = new ArrayList<>();
        for (int column = 1; column < rows.get(0).size(); column++) {
            List<Entry> readings = column(rows, column);
            Entry header = rows.get(0).get(column);
            boolean unused = header instanceof Entry.Gap && readings.stream().allMatch(Entry.Gap.class::isInstance);
            if (!unused) {
                jars.add(jar(header, column, readings));
            }
        }
        if (jars.isEmpty()) {
            throw Refusal.of(Trouble.NO_BLOCK);
        }
        return new Block(column(rows, 0), jars);
    }

    private static List<Entry> column(List<List<Entry>> rows, int column) {
        return rows.stream().skip(1).map(row -> row.get(column)).toList();
    }

    private static Jar jar(Entry header, int column, List<Entry> readings) {
        String text = header instanceof Entry.Text written
                ? written.text().strip()
                : header instanceof Entry.Value number ? String.valueOf(number.value()) : "";
        Matcher matcher = OWN_SCALE.matcher(text);
        Optional<Scale> scale = Optional.empty();
        if (matcher.matches()) {
            String sign = matcher.group(2) == null ? matcher.group(3) : matcher.group(2);
            scale = Scale.find(sign.replace(" ", ""));
            text = matcher.group(1).strip();
        }
        return new Jar(text.isEmpty() ? "jar " + column : text, scale, readings);
    }
}
