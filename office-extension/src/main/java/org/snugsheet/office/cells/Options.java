package org.snugsheet.office.cells;

import com.sun.star.uno.Any;
import com.sun.star.uno.TypeClass;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.jar.Lid;
import org.snugsheet.engine.quantity.HeatCapacity;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;

/** Reads the value given for an option: void when left out, 0 for a blank cell, which counts as left out too. */
public final class Options {

    private Options() {}

    /**
     * The scale option.
     *
     * @param option what was given
     * @return the scale; Celsius when left out
     * @throws org.snugsheet.engine.InvalidInputException if it is no scale
     */
    public static Scale scale(@Nullable Object option) {
        return given(option).map(entry -> Scale.parse(entry.written())).orElse(Scale.CELSIUS);
    }

    /**
     * The mark option.
     *
     * @param option what was given
     * @param scale the scale it is counted on
     * @return the mark; the usual one of that scale when left out
     * @throws org.snugsheet.engine.InvalidInputException if it is no number above zero
     */
    public static Graduation mark(@Nullable Object option, Scale scale) {
        return degrees(option).map(degrees -> Graduation.of(degrees, scale)).orElseGet(() -> Graduation.usual(scale));
    }

    /**
     * The mark option in degrees, whatever their scale. A user who leaves it out and forgets its separator gives the scale in its
     * place.
     *
     * @param option what was given
     * @return the degrees; empty when left out
     * @throws InvalidInputException if it is no number
     */
    public static Optional<Double> degrees(@Nullable Object option) {
        return given(option).map(entry -> {
            try {
                return entry.asNumber(1);
            } catch (InvalidInputException notANumber) {
                throw InvalidInputException.of(Problem.MARK_NOT_A_NUMBER, entry.written());
            }
        });
    }

    /**
     * The unit option of an R-value.
     *
     * @param option what was given
     * @return the unit; m²·K/W when left out
     * @throws org.snugsheet.engine.InvalidInputException if it is no unit of an R-value
     */
    public static Unit resistanceUnit(@Nullable Object option) {
        Unit unit = given(option).map(entry -> Unit.parse(entry.written())).orElse(Unit.SQUARE_METER_KELVIN_PER_WATT);
        // Refuses a unit of another quantity before anything is worked out.
        Unit.SQUARE_METER_KELVIN_PER_WATT.from(1, unit);
        return unit;
    }

    /**
     * A surface resistance.
     *
     * @param option what was given
     * @param unit its unit
     * @return the resistance; none when left out
     * @throws org.snugsheet.engine.InvalidInputException if it is no number, or negative
     */
    public static ThermalResistance resistance(@Nullable Object option, Unit unit) {
        return given(option)
                .map(entry -> ThermalResistance.of(entry.asNumber(1), unit))
                .orElse(ThermalResistance.NONE);
    }

    /**
     * An option in words.
     *
     * @param option what was given
     * @return what was written; empty when left out
     * @throws org.snugsheet.engine.InvalidInputException if it is several cells
     */
    public static Optional<String> words(@Nullable Object option) {
        return given(option).map(Entry::written);
    }

    /**
     * An option that is a number.
     *
     * @param option what was given
     * @return the number; empty when left out
     * @throws org.snugsheet.engine.InvalidInputException if it is no number
     */
    public static Optional<Double> number(@Nullable Object option) {
        return given(option).map(entry -> entry.asNumber(1));
    }

    /**
     * An option that is a number, the usual value of which is not 0. A lone blank cell arrives as 0 too, so that nobody can
     * know which was meant: neither is taken for the usual value in silence.
     *
     * @param option what was given; the text {@code "0"} is 0
     * @return the number; empty when left out
     * @throws InvalidInputException if it is no number, or the number 0
     */
    public static Optional<Double> numberNotZero(@Nullable Object option) {
        return notZero(option).map(entry -> entry.asNumber(1));
    }

    /**
     * An option that is a temperature.
     *
     * @param option what was given
     * @param scale the scale of a number without one
     * @return the temperature; empty when left out, and for a plain 0, which a blank cell is too
     * @throws org.snugsheet.engine.InvalidInputException if it is no temperature
     */
    public static Optional<Temperature> temperature(@Nullable Object option, Scale scale) {
        return given(option).map(entry -> entry.asTemperature(1, scale));
    }

    /**
     * An option that is a temperature, the usual value of which is not 0: as for {@link #numberNotZero}, the number 0 is not
     * taken for the usual value in silence.
     *
     * @param option what was given; the text {@code "0"} is 0
     * @param scale the scale of a number without one
     * @return the temperature; empty when left out
     * @throws InvalidInputException if it is no temperature, or the number 0
     */
    public static Optional<Temperature> temperatureNotZero(@Nullable Object option, Scale scale) {
        return notZero(option).map(entry -> entry.asTemperature(1, scale));
    }

    private static Optional<Entry> notZero(@Nullable Object option) {
        Optional<Entry> given = given(option);
        if (given.isEmpty() && option instanceof Number) {
            throw InvalidInputException.of(Problem.OPTION_ZERO);
        }
        return given;
    }

    /**
     * The heat capacity of a vessel.
     *
     * @param option what was given, in J/K
     * @return the heat capacity; none when left out
     * @throws org.snugsheet.engine.InvalidInputException if it is no number, or negative
     */
    public static HeatCapacity heatCapacity(@Nullable Object option) {
        return given(option).map(entry -> new HeatCapacity(entry.asNumber(1))).orElse(HeatCapacity.NONE);
    }

    /**
     * How much water one vessel holds beside another.
     *
     * @param amount what was given for the one
     * @param other what was given for the other
     * @return their ratio; empty when both are left out
     * @throws org.snugsheet.engine.InvalidInputException if only one is given, or it is no number
     */
    public static Optional<Double> ratio(@Nullable Object amount, @Nullable Object other) {
        Optional<Entry> one = given(amount);
        Optional<Entry> two = given(other);
        if (one.isEmpty() && two.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(needed(one) / needed(two));
    }

    /**
     * The amounts of water in two vessels.
     *
     * @param amount what was given for the one, in milliliters
     * @param other what was given for the other
     * @return both volumes; none when both are left out
     * @throws org.snugsheet.engine.InvalidInputException if only one is given, or it is no number above zero
     */
    public static List<Volume> volumes(@Nullable Object amount, @Nullable Object other) {
        Optional<Entry> one = given(amount);
        Optional<Entry> two = given(other);
        if (one.isEmpty() && two.isEmpty()) {
            return List.of();
        }
        return List.of(Volume.of(needed(one), Unit.MILLILITER), Volume.of(needed(two), Unit.MILLILITER));
    }

    /**
     * The lids of two vessels.
     *
     * @param lid what was given for the one: a word, or the R-value of its cover in m²·K/W
     * @param other what was given for the other
     * @return both lids; none when both are left out
     * @throws org.snugsheet.engine.InvalidInputException if only one is given, or it is neither
     */
    public static List<Lid> lids(@Nullable Object lid, @Nullable Object other) {
        Optional<Entry> one = given(lid);
        Optional<Entry> two = given(other);
        if (one.isEmpty() && two.isEmpty()) {
            return List.of();
        }
        return List.of(lid(one), lid(two));
    }

    private static Lid lid(Optional<Entry> entry) {
        return entry.filter(Entry.Text.class::isInstance).isPresent()
                ? Lid.parse(entry.orElseThrow().written())
                : new Lid.Closed(new ThermalResistance(needed(entry)));
    }

    private static double needed(Optional<Entry> entry) {
        return entry.orElseGet(Entry.Missing::new).asNumber(1);
    }

    private static boolean isLeftOut(@Nullable Object option) {
        return option == null || (option instanceof Any any && any.getType().getTypeClass() == TypeClass.VOID);
    }

    /**
     * Whatever was given for an option.
     *
     * @param option what was given
     * @return its entry; empty when left out
     * @throws org.snugsheet.engine.InvalidInputException if it is several cells
     */
    public static Optional<Entry> given(@Nullable Object option) {
        if (isLeftOut(option)) {
            return Optional.empty();
        }
        Entry entry =
                option instanceof Object[][] cells ? Cells.single(cells) : Cells.entry(Objects.requireNonNull(option));
        boolean leftOut =
                entry instanceof Entry.Missing || (entry instanceof Entry.Value number && number.value() == 0);
        return leftOut ? Optional.empty() : Optional.of(entry);
    }
}
