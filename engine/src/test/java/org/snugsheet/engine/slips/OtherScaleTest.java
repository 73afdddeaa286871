package org.snugsheet.engine.slips;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Graduation;

/** Columns or surroundings on the other scale: what was typed and what it would mean, by NIST SP 811: 50 °F are 10 °C, and 9 °F of difference 5 K. */
class OtherScaleTest {

    /**
     * A column taken for the other scale is weighed in the numbers that were typed, as far from its surroundings in these as it would be in
     * truth: a difference of 9 °F is one of 5 K.
     */
    @ParameterizedTest
    @CsvSource({
        // typed on a sheet in °C: 104 … are °F, and 10 °C around are 50 °F
        "CELSIUS, 104, 10, 40, 1.8",
        "CELSIUS, 86, -5, 30, 1.8",
        // typed on a sheet in °F: 40 … are °C, and 50 °F around are 10 °C
        "FAHRENHEIT, 40, 10, 40, 0.5555555555555556",
        "FAHRENHEIT, 25, -10, 25, 0.5555555555555556"
    })
    void aColumnIsWeighedInItsOwnNumbers(Scale sheet, double typed, double around, double meant, double factor) {
        SlipHypothesis readings = hypothesis(column(sheet, typed, around), SlipKind.COLUMN_ON_OTHER_SCALE);

        assertEquals(meant, readings.corrected().at(0).celsius(), 1e-9);
        assertEquals(around, readings.corrected().at(0).around(), 1e-9);
        assertEquals(typed, readings.weighed().at(0).typed());
        assertEquals(sheet, readings.weighed().at(0).scale());
        assertEquals(
                factor * (meant - around),
                readings.weighed().at(0).celsius() - readings.weighed().at(0).around(),
                1e-9);
    }

    /** Surroundings typed as 50 on a sheet in °C are 10 °C; typed as 10 on a sheet in °F, where they were read as −12.2 °C, they are too. */
    @ParameterizedTest
    @CsvSource({"CELSIUS, 41, 50, 50", "FAHRENHEIT, 104, -12.222222222222221, 10"})
    void surroundingsMayBeOnTheOtherScale(Scale sheet, double typed, double around, double number) {
        Column column = column(sheet, typed, around);
        SlipHypothesis surroundings = hypothesis(column, SlipKind.SURROUNDINGS_ON_OTHER_SCALE);

        assertEquals(10, surroundings.corrected().at(0).around(), 1e-9);
        assertEquals(10, surroundings.weighed().at(2).around(), 1e-9);
        assertEquals(number, (double) surroundings.finding().arguments().get(0), 1e-9);
        assertEquals(typed, surroundings.corrected().at(0).typed());
        assertEquals(sheet, surroundings.corrected().at(0).scale());
        // And both.
        SlipHypothesis both = hypothesis(column, SlipKind.ALL_ON_OTHER_SCALE);
        assertEquals(10, both.corrected().at(0).around(), 1e-9);
        assertEquals(OneReadingOnOtherScale.other(sheet), both.corrected().at(0).scale());
        assertEquals(around, both.weighed().at(0).around(), 1e-9);
    }

    /**
     * What is likelier by how usual the temperatures are: 47.5 °C around are halfway to an oven, which costs 8, and 47.5 °F are a cool day,
     * which costs nothing. Readings of 104 °C are steam, which costs 40, and 104 °F are warm water. Before that 9 for a column, three less
     * for surroundings, which are one cell, and three more for both (all common practice, no source).
     */
    @Test
    void whatIsUsualIsLikelier() {
        Column oven = column(Scale.CELSIUS, 41, 47.5);
        assertEquals(
                6 - 8, hypothesis(oven, SlipKind.SURROUNDINGS_ON_OTHER_SCALE).cost(), 1e-9);
        Column steam = column(Scale.CELSIUS, 104, 10);
        assertEquals(9 - 40, hypothesis(steam, SlipKind.COLUMN_ON_OTHER_SCALE).cost(), 1e-9);
        // Of both: 10 °F are −12.2 °C, a winter’s day.
        assertEquals(12 - 40, hypothesis(steam, SlipKind.ALL_ON_OTHER_SCALE).cost(), 1e-9);
        // 41 °F are 5 °C, too cold for a jar that is to cool, which costs 10, and the last, 21 °F, are ice.
        Column plain = column(Scale.CELSIUS, 41, 4);
        assertEquals(
                9 + 10 + 40, hypothesis(plain, SlipKind.COLUMN_ON_OTHER_SCALE).cost(), 1e-9);
        assertEquals(6, hypothesis(plain, SlipKind.SURROUNDINGS_ON_OTHER_SCALE).cost(), 1e-9);
    }

    /** Where nobody read the surroundings only all can be on the other scale; kelvins and mixed columns are left alone. */
    @Test
    void onlyWhatWasTypedCanBeOnTheOtherScale() {
        Column unread = column(Scale.CELSIUS, 104, Double.NaN);
        assertEquals(
                List.of(SlipKind.ALL_ON_OTHER_SCALE),
                hypotheses(unread).stream().map(SlipHypothesis::kind).toList());
        Column column = column(Scale.CELSIUS, 104, 10);
        assertEquals(List.of(), hypotheses(column.with(2, line -> line.withScale(Scale.FAHRENHEIT))));
        assertEquals(List.of(), hypotheses(column(Scale.KELVIN, 313, 10)));
    }

    private static List<SlipHypothesis> hypotheses(Column column) {
        Law law = column.knowsSurroundings() ? Law.NEWTON : Law.LEVEL;
        return new WholeOnOtherScale()
                .hypotheses(column, RobustFit.byOneLaw(column, law))
                .toList();
    }

    private static SlipHypothesis hypothesis(Column column, SlipKind kind) {
        return hypotheses(column).stream()
                .filter(hypothesis -> hypothesis.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    /** Six readings that fall to the surroundings; the first is given, as it was typed. */
    private static Column column(Scale sheet, double first, double around) {
        double start = new Line(1, 0, 0, first, sheet, around, 0, false, false).celsius();
        double level = Double.isNaN(around) ? 0 : around;
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            double celsius = level + (start - level) * Math.exp(-0.15 * i);
            double typed = i == 0
                    ? first
                    : sheet == Scale.FAHRENHEIT
                            ? celsius * 9 / 5 + 32
                            : sheet == Scale.KELVIN ? celsius + 273.15 : celsius;
            lines.add(new Line(i + 1, 5 * i, 5 * i, typed, sheet, around, 0, false, false));
        }
        return new Column(lines, Graduation.of(1, Scale.CELSIUS), sheet);
    }
}
