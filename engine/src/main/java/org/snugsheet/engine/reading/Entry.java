package org.snugsheet.engine.reading;

import java.math.BigDecimal;
import java.util.Optional;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

/**
 * The content of one cell, before it is interpreted.
 *
 * <pre>{@code
 * Entry.of("41,5 °F").asTemperature(3, Scale.CELSIUS); // 41.5 °F, whatever the sheet’s scale
 * Entry.of("-");                                       // a gap: nobody read the thermometer
 * Entry.of("warm").asTemperature(3, Scale.CELSIUS);    // refused, naming row 3
 * }</pre>
 */
public sealed interface Entry {

    /** Nothing was written here. */
    record Missing() implements Entry {}

    /**
     * A number.
     *
     * @param value the number
     */
    record Value(double value) implements Entry {}

    /**
     * Text that is not a gap.
     *
     * @param text the text, as typed
     */
    record Text(String text) implements Entry {}

    /**
     * The entry for a number.
     *
     * @param value the number
     * @return the entry
     */
    static Entry of(double value) {
        return new Value(value);
    }

    /**
     * The entry for a text: blank text and a lone dash of any kind are a gap.
     *
     * @param text the text, as typed
     * @return the entry
     */
    static Entry of(String text) {
        return TypedNumber.isGap(text) ? new Missing() : new Text(text);
    }

    /**
     * The entry for text that a sheet produced from a number or a text: a plain number becomes a number again.
     *
     * @param written what was written
     * @return the entry
     */
    static Entry ofWritten(String written) {
        return TypedNumber.parse(written)
                .filter(typed -> typed.scale().isEmpty())
                .map(typed -> of(typed.value()))
                .orElseGet(() -> of(written));
    }

    /**
     * This entry as a temperature. A text may carry its own scale.
     *
     * @param row its row, for the message
     * @param scale the scale of a number without one
     * @return the temperature
     * @throws InvalidInputException if it is a gap, or not a temperature
     */
    default Temperature asTemperature(int row, Scale scale) {
        try {
            if (this instanceof Value number) {
                return Temperature.of(number.value(), scale);
            }
            if (this instanceof Text text) {
                TypedNumber typed = TypedNumber.parse(text.text())
                        .orElseThrow(() -> InvalidInputException.atRow(row, Problem.NOT_A_TEMPERATURE, text.text()));
                return Temperature.of(typed.value(), typed.scale().orElse(scale));
            }
        } catch (InvalidInputException refusal) {
            if (refusal.problem() == Problem.BELOW_ABSOLUTE_ZERO) {
                throw InvalidInputException.atRow(
                        row,
                        Problem.ROW_BELOW_ABSOLUTE_ZERO,
                        refusal.finding().arguments().toArray());
            }
            throw refusal;
        }
        throw InvalidInputException.atRow(row, Problem.BLANK);
    }

    /**
     * The scale that was typed after the number.
     *
     * @return the scale; empty if none was typed or this is not a number
     */
    default Optional<Scale> ownScale() {
        return this instanceof Text text
                ? TypedNumber.parse(text.text()).flatMap(TypedNumber::scale)
                : Optional.empty();
    }

    /**
     * This entry with a scale after its number, unless it has one already or is not a number.
     *
     * @param scale the scale
     * @return the entry, which is the same temperature on any sheet
     */
    default Entry onScale(Scale scale) {
        if (this instanceof Value number && Double.isFinite(number.value())) {
            return new Text(number.value() + " " + scale.symbol());
        }
        if (this instanceof Text text
                && TypedNumber.parse(text.text()).isPresent()
                && ownScale().isEmpty()) {
            return new Text(text.text() + " " + scale.symbol());
        }
        return this;
    }

    /**
     * This entry as it would be typed: a whole number has no decimals.
     *
     * @return the text; empty for a gap
     */
    default String written() {
        if (this instanceof Text text) {
            return text.text();
        }
        if (this instanceof Value number) {
            return Double.isFinite(number.value())
                    ? BigDecimal.valueOf(number.value()).stripTrailingZeros().toPlainString()
                    : String.valueOf(number.value());
        }
        return "";
    }

    /**
     * This entry as a plain number, such as minutes or millimeters.
     *
     * @param row its row, for the message
     * @return the number
     * @throws InvalidInputException if it is a gap, or not a number
     */
    default double asNumber(int row) {
        if (this instanceof Value number && Double.isFinite(number.value())) {
            return number.value();
        }
        if (this instanceof Missing) {
            throw InvalidInputException.atRow(row, Problem.BLANK);
        }
        return TypedNumber.parse(written())
                .filter(typed -> typed.scale().isEmpty())
                .orElseThrow(() -> InvalidInputException.atRow(row, Problem.ROW_NOT_A_NUMBER, written()))
                .value();
    }
}
