package org.snugsheet.engine.slips;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;

/**
 * A whole column on a different scale from the sheet, or the surroundings, or both.
 *
 * <p>A column in °F beside surroundings in °C is scored with the surroundings converted to °F: the readings keep their
 * numbers, so that noise and marks stay comparable. Where everything is on the other scale the laws cannot tell, since they
 * hold on any scale; only the usual temperatures of such jars can.
 */
final class WholeOnOtherScale implements SlipDetector {

    private static final double COST = 9;

    @Override
    public Stream<SlipHypothesis> hypotheses(Column column, RobustFit robust) {
        Scale given = column.scale();
        if (given == Scale.KELVIN || column.lines().stream().anyMatch(line -> line.scale() != given)) {
            return Stream.of();
        }
        Scale other = OneReadingOnOtherScale.other(given);
        Column readings = column.withAllFrom(0, line -> line.withScale(other));
        List<SlipHypothesis> hypotheses = new ArrayList<>();
        double before = Usual.cost(column, robust);
        if (column.knowsSurroundings()) {
            hypotheses.add(new SlipHypothesis(
                    SlipKind.COLUMN_ON_OTHER_SCALE,
                    Finding.of(Problem.COLUMN_ON_OTHER_SCALE, other.symbol(), given.symbol()),
                    column.withAllFrom(0, line -> line.withAround(backwards(line.around(), given))),
                    readings,
                    COST + Usual.cost(readings, robust) - before,
                    -1));
            Column around = column.withAllFrom(0, line -> line.withAround(forwards(line.around(), given)));
            hypotheses.add(new SlipHypothesis(
                    SlipKind.SURROUNDINGS_ON_OTHER_SCALE,
                    Finding.of(
                            Problem.SURROUNDINGS_ON_OTHER_SCALE,
                            rounded(number(column.at(0).around(), given)),
                            other.symbol()),
                    around,
                    around,
                    COST - 3 + Usual.cost(around, robust) - before,
                    -1));
        }
        Column both = readings.withAllFrom(0, line -> line.withAround(forwards(line.around(), given)));
        hypotheses.add(new SlipHypothesis(
                SlipKind.ALL_ON_OTHER_SCALE,
                Finding.of(Problem.ALL_ON_OTHER_SCALE, other.symbol(), given.symbol()),
                column,
                both,
                COST + 3 + Usual.cost(both, robust) - before,
                -1));
        return hypotheses.stream();
    }

    /** The number typed for the surroundings, taken to be on the other scale, in °C. */
    private static double forwards(double celsius, Scale given) {
        return given == Scale.FAHRENHEIT ? number(celsius, given) : (celsius - 32) * 5 / 9;
    }

    /**
     * Where surroundings on the given scale lie among readings on the other one that are taken for the given one: 10 °C is 50
     * °F, so it lies at 50.
     */
    private static double backwards(double celsius, Scale given) {
        return given == Scale.FAHRENHEIT ? (celsius - 32) * 5 / 9 : celsius * 9 / 5 + 32;
    }

    private static double number(double celsius, Scale scale) {
        return scale == Scale.FAHRENHEIT ? celsius * 9 / 5 + 32 : celsius;
    }

    private static double rounded(double number) {
        return Decimals.rounded(number, 3);
    }
}
