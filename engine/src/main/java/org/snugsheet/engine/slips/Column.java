package org.snugsheet.engine.slips;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Graduation;

/**
 * The readings of one jar while slips are looked for, with the corrections tried so far. A correction makes a new column;
 * what was typed stays as it is.
 *
 * @param lines the rows that hold a reading
 * @param mark the mark of the thermometer
 * @param scale the scale of the sheet
 */
record Column(List<Line> lines, Graduation mark, Scale scale) {

    Column {
        lines = List.copyOf(lines);
    }

    int size() {
        return lines.size();
    }

    Line at(int index) {
        return lines.get(index);
    }

    boolean knowsSurroundings() {
        return lines.stream().noneMatch(line -> Double.isNaN(line.around()));
    }

    /** The column with one row changed. */
    Column with(int index, UnaryOperator<Line> change) {
        List<Line> changed = new ArrayList<>(lines);
        changed.set(index, change.apply(lines.get(index)));
        return new Column(changed, mark, scale);
    }

    /** The column with all rows changed from one on. */
    Column withAllFrom(int index, UnaryOperator<Line> change) {
        List<Line> changed = new ArrayList<>(lines);
        for (int i = index; i < changed.size(); i++) {
            changed.set(i, change.apply(lines.get(i)));
        }
        return new Column(changed, mark, scale);
    }

    /** The column without one row. */
    Column without(int index) {
        List<Line> left = new ArrayList<>(lines);
        left.remove(index);
        return new Column(left, mark, scale);
    }

    /** The first row whose time is not later than that of the row before; −1 if all times rise. */
    int firstNotLater() {
        for (int i = 1; i < size(); i++) {
            if (!(at(i).minute() > at(i - 1).minute())) {
                return i;
            }
        }
        return -1;
    }
}
