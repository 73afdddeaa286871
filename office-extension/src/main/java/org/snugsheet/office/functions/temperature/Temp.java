package org.snugsheet.office.functions.temperature;

import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.UnoTypes;
import org.snugsheet.office.functions.shared.Sources;
import org.snugsheet.office.functions.shared.Texts;

/** TEMP: scales and units. */
@Family(
        service = "snugsheet.Temp",
        texts = {Texts.class},
        title = "Scales and units")
public interface Temp extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(Temp.class);

    /** TEMP.CONVERT. */
    @CellFunction(
            order = 0,
            name = "TEMP.CONVERT",
            text = "Changes a temperature from one scale to another.",
            formula = "°C = (°F − 32)/1.8; K = °C + 273.15",
            source = Sources.UNITS,
            example = "TEMP.CONVERT(68;\"F\";\"C\")",
            answer = "20",
            refused = "TEMP.CONVERT(-300;\"C\";\"F\")",
            because = "colder than absolute zero")
    default Object convert(
            @Argument(Texts.VALUE) String[][] value,
            @Argument(Texts.FROM_SCALE) String[][] from,
            @Argument(Texts.TO_SCALE) String[][] to)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale source = Scale.parse(Cells.text(from));
            Scale target = Scale.parse(Cells.text(to));
            return Cells.each(
                    value, (row, entry) -> entry.asTemperature(row, source).in(target));
        });
    }

    /** TEMP.CHANGE. */
    @CellFunction(
            order = 1,
            name = "TEMP.CHANGE",
            text = "Changes a difference of temperatures from one scale to another; it is never shifted by 32.",
            formula = "Δ°C = Δ°F/1.8; ΔK = Δ°C",
            source = Sources.UNITS,
            example = "TEMP.CHANGE(5;\"C\";\"F\")",
            answer = "9",
            refused = "TEMP.CHANGE(5;\"C\";\"R\")",
            because = "not a temperature scale")
    default Object change(
            @Argument(Texts.CHANGE) String[][] value,
            @Argument(Texts.FROM_SCALE) String[][] from,
            @Argument(Texts.TO_SCALE) String[][] to)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale source = Scale.parse(Cells.text(from));
            Scale target = Scale.parse(Cells.text(to));
            return Cells.each(
                    value,
                    (row, entry) -> TemperatureDifference.of(entry.asNumber(row), source)
                            .in(target));
        });
    }

    /** TEMP.READ. */
    @CellFunction(
            order = 2,
            name = "TEMP.READ",
            text = "Turns what was typed for a reading into a number: 41,5 C, 95 °F or 36.6.",
            formula = "°C = (°F − 32)/1.8; K = °C + 273.15",
            source = Sources.UNITS,
            example = "TEMP.READ(\"95 °F\")",
            answer = "35",
            refused = "TEMP.READ(\"warm\")",
            because = "that is not a temperature")
    default Object read(@Argument(Texts.TYPED) String[][] text, @Argument(Texts.READ_SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            return Cells.each(text, (row, entry) -> entry.asTemperature(row, s).in(s));
        });
    }

    /** TEMP.ROUND. */
    @CellFunction(
            order = 3,
            name = "TEMP.ROUND",
            text = "Rounds a temperature to the nearest mark of a thermometer.",
            formula = "n·δ; |T − n·δ| ≤ δ/2; n ∈ ℤ",
            source = Sources.ROUNDING,
            example = "TEMP.ROUND(36.7;0.5)",
            answer = "36.5",
            refused = "TEMP.ROUND(36.7;0)",
            because = "a thermometer’s marks lie apart")
    default Object round(
            @Argument(Texts.VALUE) String[][] value,
            @Argument(Texts.ROUND_MARK) String[][] mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            Graduation graduation = Graduation.of(Cells.number(mark), s);
            return Cells.each(value, (row, entry) -> graduation.nearest(entry.asTemperature(row, s), s));
        });
    }

    /** TEMP.UNIT. */
    @CellFunction(
            order = 4,
            name = "TEMP.UNIT",
            text =
                    "Turns a value of one unit into another that measures the same: R-values, clo and tog, conductivities, lengths, volumes, heat, wind.",
            formula = "x·f₁/f₂; 1 clo = 0.155 m²·K/W; 1 tog = 0.1 m²·K/W",
            source = Sources.UNITS + "; " + "ISO 9920; BS 5335",
            example = "TEMP.UNIT(1;\"clo\";\"tog\")",
            answer = "1.55",
            refused = "TEMP.UNIT(1;\"clo\";\"mm\")",
            because = "clo is no length")
    default Object unit(
            @Argument(Texts.QUANTITY) String[][] value,
            @Argument(Texts.FROM_UNIT) String[][] from,
            @Argument(Texts.TO_UNIT) String[][] to)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Unit source = Unit.parse(Cells.text(from));
            Unit target = Unit.parse(Cells.text(to));
            // Asked once beforehand, so that units that do not match are refused even over blanks.
            target.from(1, source);
            return Cells.each(value, (row, entry) -> target.from(entry.asNumber(row), source));
        });
    }
}
