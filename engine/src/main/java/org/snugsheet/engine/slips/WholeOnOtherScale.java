package org.snugsheet.engine.slips;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;

/**
 * A whole column on another scale than the sheet’s, or the surroundings, or both.
 *
 * <p>A column in °F beside surroundings in °C is weighed with the surroundings turned into °F: the readings stay the numbers they
 * are, so that noise and marks compare. Where all is on the other scale the laws cannot tell, since they hold on any scale; only
 * how warm such jars usually are can.
 */
final class WholeOnOtherScale implements SlipDetector {

    private static final double COST = 9;

    @Override
    public Stream<SlipHypothesis> stories(Column column, RobustFit clues) {
        Scale given = column.scale();
        if (given == Scale.KELVIN || column.lines().stream().anyMatch(line -> line.scale() != given)) {
            return Stream.of();
        }
        Scale other = OneReadingOnOtherScale.other(given);
        Column readings = column.withAllFrom(0, line -> line.withScale(other));
        List<SlipHypothesis> stories = new ArrayList<>();
        double before = Usual.cost(column, clues);
        if (column.knowsSurroundings()) {
            stories.add(new SlipHypothesis(
                    SlipKind.COLUMN_ON_OTHER_SCALE,
                    Finding.of(Problem.COLUMN_ON_OTHER_SCALE, other.symbol(), given.symbol()),
                    column.withAllFrom(0, line -> line.withAround(backwards(line.around(), given))),
                    readings,
                    COST + Usual.cost(readings, clues) - before,
                    -1));
            Column around = column.withAllFrom(0, line -> line.withAround(forwards(line.around(), given)));
            stories.add(new SlipHypothesis(
                    SlipKind.SURROUNDINGS_ON_OTHER_SCALE,
                    Finding.of(
                            Problem.SURROUNDINGS_ON_OTHER_SCALE,
                            rounded(number(column.at(0).around(), given)),
                            other.symbol()),
                    around,
                    around,
                    COST - 3 + Usual.cost(around, clues) - before,
                    -1));
        }
        Column both = readings.withAllFrom(0, line -> line.withAround(forwards(line.around(), given)));
        stories.add(new SlipHypothesis(
                SlipKind.ALL_ON_OTHER_SCALE,
                Finding.of(Problem.ALL_ON_OTHER_SCALE, other.symbol(), given.symbol()),
                column,
                both,
                COST + 3 + Usual.cost(both, clues) - before,
                -1));
        return stories.stream();
    }

    /** What the number typed for surroundings means if it is on the other scale, in °C. */
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
        return Math.rint(number * 1000) / 1000;
    }
}
