package org.snugsheet.engine.slips;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

/** Readings that no hypothesis explains, described by how they differ from the others. */
final class Misreadings {

    private Misreadings() {}

    static List<Slip> in(Column column, RobustFit robust) {
        List<Slip> slips = new ArrayList<>();
        for (int i = 0; i < column.size(); i++) {
            // A corrected reading has been reported already, and its number is not one that anybody typed.
            if (robust.isMisread(i) && !column.at(i).corrected()) {
                slips.add(slip(column, robust, i));
            }
        }
        return slips;
    }

    private static Slip slip(Column column, RobustFit robust, int i) {
        double certainty = certainty(robust, i);
        Line line = column.at(i);
        // In terms of the number typed, on the scale it was typed in.
        Scale scale = line.scale();
        double read = line.typed();
        double pointedTo = roundedTo(column, scale, robust.fit().fitted(i));
        double mark = column.mark().graduation().kelvins();
        double side = Math.signum(robust.fit().difference());
        if (i == 0 && robust.isOnTheSideOfTheSurroundings(0)) {
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
                && !column.at(i - 1).corrected()
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

    /** How certain it is that a reading does not belong to its column. */
    static double certainty(RobustFit robust, int i) {
        return SlipFinder.certainty(robust.surprise(i) - RobustFit.COST_OF_MISREADING);
    }

    private static double shown(double celsius, Scale scale) {
        return Decimals.rounded(new Temperature(Math.max(celsius, -273)).in(scale), 3);
    }

    /** The value that the others point to is known only to one mark. */
    private static double roundedTo(Column column, Scale scale, double celsius) {
        double mark = column.mark().graduation().in(scale);
        double degrees = new Temperature(Math.max(celsius, -273)).in(scale);
        double marks = Math.rint(degrees / mark);
        return Double.isInfinite(marks) ? degrees : Decimals.rounded(marks * mark, 3);
    }
}
