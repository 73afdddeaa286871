package org.snugsheet.engine.slips;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;

/** One reading typed in °F in a column of °C, or the other way round. */
final class OneReadingOnOtherScale implements SlipDetector {

    private static final double COST = 5;

    @Override
    public Stream<SlipHypothesis> hypotheses(Column column, RobustFit robust) {
        return IntStream.range(0, column.size())
                .filter(i -> robust.isMisread(i)
                        && !column.at(i).corrected()
                        && column.at(i).scale() == column.scale())
                .mapToObj(i -> of(column, i));
    }

    private static SlipHypothesis of(Column column, int i) {
        Line line = column.at(i);
        Scale other = other(line.scale());
        return SlipHypothesis.ofReading(
                SlipKind.READING_ON_OTHER_SCALE,
                Finding.atRow(
                        line.row(),
                        Problem.ROW_ON_OTHER_SCALE,
                        line.typed(),
                        other.symbol(),
                        line.scale().symbol()),
                column.with(i, l -> l.withOwnScale(other)),
                COST,
                i);
    }

    /** The scale a class may mix up with another. */
    static Scale other(Scale scale) {
        return scale == Scale.FAHRENHEIT ? Scale.CELSIUS : Scale.FAHRENHEIT;
    }
}
