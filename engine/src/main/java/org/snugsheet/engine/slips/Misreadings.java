package org.snugsheet.engine.slips;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

/** Readings that no story explains, named by what can be seen of them. */
final class Misreadings {

    private Misreadings() {}

    static List<Slip> in(Column column, RobustFit clues) {
        List<Slip> slips = new ArrayList<>();
        for (int i = 0; i < column.size(); i++) {
            // A reading that was mended has been named already, and its number is not one that anybody typed.
            if (clues.isMisread(i) && !column.at(i).mended()) {
                slips.add(slip(column, clues, i));
            }
        }
        return slips;
    }

    private static Slip slip(Column column, RobustFit clues, int i) {
        double certainty = certainty(clues, i);
        Line line = column.at(i);
        // In the number that was typed, and the scale it was typed on.
        Scale scale = line.scale();
        double read = line.typed();
        double pointedTo = roundedTo(column, scale, clues.fit().fitted(i));
        double mark = column.mark().graduation().kelvins();
        double side = Math.signum(clues.fit().difference());
        if (i == 0 && clues.isOnTheSideOfTheSurroundings(0)) {
            return new Slip(
                    SlipKind.NOT_SETTLED,
                    certainty,
                    Finding.atRow(line.row(), Problem.ROW_NOT_SETTLED, read, pointedTo, scale.symbol()));
        }
        if (column.knowsSurroundings() && (line.celsius() - line.around()) * side < -mark) {
            return new Slip(
                    SlipKind.BEYOND_SURROUNDINGS,
                    certainty,
                    Finding.atRow(
                            line.row(),
                            Problem.ROW_BEYOND_SURROUNDINGS,
                            read,
                            shown(line.around(), scale),
                            scale.symbol()));
        }
        if (i > 0
                && !column.at(i - 1).mended()
                && (line.celsius() - column.at(i - 1).celsius()) * side > mark) {
            return new Slip(
                    SlipKind.GOES_BACK,
                    certainty,
                    Finding.atRow(
                            line.row(),
                            side > 0 ? Problem.WARMER_THAN_BEFORE : Problem.COLDER_THAN_BEFORE,
                            read,
                            shown(column.at(i - 1).celsius(), scale),
                            scale.symbol()));
        }
        return new Slip(
                SlipKind.OFF_THE_CURVE,
                certainty,
                Finding.atRow(line.row(), Problem.ROW_OFF_THE_CURVE, read, pointedTo, scale.symbol()));
    }

    /** How sure it is that a reading is not its column’s own. */
    static double certainty(RobustFit clues, int i) {
        return SlipFinder.certainty(clues.surprise(i) - RobustFit.COST_OF_MISREADING);
    }

    private static double shown(double celsius, Scale scale) {
        return Math.rint(new Temperature(Math.max(celsius, -273)).in(scale) * 1000) / 1000;
    }

    /** What the others point to is no better known than to a mark. */
    private static double roundedTo(Column column, Scale scale, double celsius) {
        double mark = column.mark().graduation().in(scale);
        double degrees = new Temperature(Math.max(celsius, -273)).in(scale);
        return Math.rint(Math.rint(degrees / mark) * mark * 1000) / 1000;
    }
}
