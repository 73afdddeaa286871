package org.snugsheet.engine.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;

class EntryTest {

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "-", " - ", "–", "—", "−", "\u00a0", "\u202f-\u00a0"})
    void aBlankOrADashIsAGap(String text) {
        assertInstanceOf(Entry.Missing.class, Entry.of(text));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "41.5 °F; 41.5; FAHRENHEIT",
                "41,5 C; 41.5; CELSIUS",
                "41.5; 41.5; CELSIUS",
                "41,5; 41.5; CELSIUS",
                "-3°C; -3; CELSIUS",
                "−3 °C; -3; CELSIUS",
                "+7; 7; CELSIUS",
                ".5; 0.5; CELSIUS",
                "98.6f; 98.6; FAHRENHEIT",
                "98.6 ºF; 98.6; FAHRENHEIT",
                "300 K; 300; KELVIN",
                "20 Celsius; 20; CELSIUS",
                "1E-05; 0.00001; CELSIUS",
                "2,5e+1; 25; CELSIUS",
                ",5; 0.5; CELSIUS",
                "'\u00a0\u202f40 °F'; 40; FAHRENHEIT",
            })
    void aTypedTemperatureKeepsItsOwnScale(String text, double degrees, Scale scale) {
        assertEquals(degrees, Entry.of(text).asTemperature(1, Scale.CELSIUS).in(scale), 1e-12);
    }

    @Test
    void aTextWithoutScaleHasTheScaleOfTheSheet() {
        assertEquals(20, Entry.of("68").asTemperature(1, Scale.FAHRENHEIT).celsius(), 1e-12);
        assertEquals(20, Entry.of(68).asTemperature(1, Scale.FAHRENHEIT).celsius(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "warm",
                "40 X",
                "4o",
                "40 41",
                "1.2.3",
                "1,234.5",
                "--3",
                "40 °",
                "°C",
                "40 min",
                "1e999 °C x",
                "--",
                "+",
                ",",
                "−x"
            })
    void anythingElseIsRefusedByItsRow(String text) {
        InvalidInputException refusal =
                assertThrows(InvalidInputException.class, () -> Entry.of(text).asTemperature(7, Scale.CELSIUS));

        assertEquals(Problem.NOT_A_TEMPERATURE, refusal.problem());
        assertEquals(OptionalInt.of(7), refusal.row());
        assertTrue(refusal.finding().sentence().contains(text));
    }

    @Test
    void colderThanAnythingIsRefusedByItsRow() {
        InvalidInputException refusal =
                assertThrows(InvalidInputException.class, () -> Entry.of(-300).asTemperature(2, Scale.CELSIUS));

        assertEquals(Problem.ROW_BELOW_ABSOLUTE_ZERO, refusal.problem());
        assertEquals(
                "Row 2: -300 °C is colder than anything can be. Check that reading and its scale.",
                refusal.finding().sentence());
    }

    @Test
    void aNumberWrittenOutIsANumberAgain() {
        assertEquals(Entry.of(0.04), Entry.ofWritten("0.04"));
        assertEquals(Entry.of(0.04), Entry.ofWritten("0,04"));
        assertEquals(Entry.of(1.5e-7), Entry.ofWritten("1.5E-07"));
        assertEquals(Entry.of("wool"), Entry.ofWritten("wool"));
        // As LibreOffice 26.8 writes them; 7.4 writes an exponent.
        assertEquals(Entry.of(6.93147180559945E-13), Entry.ofWritten("0.000000000000693147180559945"));
        assertEquals(Entry.of(2.72848410531878E-12), Entry.ofWritten("2.72848410531878E-12"));
        assertEquals(Entry.of("40 °C"), Entry.ofWritten("40 °C"));
        assertInstanceOf(Entry.Missing.class, Entry.ofWritten(""));
    }

    @Test
    void aGapIsNeverZero() {
        assertEquals(
                Problem.BLANK,
                assertThrows(InvalidInputException.class, () -> Entry.of("").asNumber(3))
                        .problem());
        assertEquals(
                Problem.BLANK,
                assertThrows(InvalidInputException.class, () -> Entry.of("-").asTemperature(3, Scale.CELSIUS))
                        .problem());
    }

    @ParameterizedTest
    @ValueSource(strings = {"five", "5 °C", "9:05"})
    void whatIsNoPlainNumberIsRefused(String text) {
        assertEquals(
                Problem.ROW_NOT_A_NUMBER,
                assertThrows(InvalidInputException.class, () -> Entry.of(text).asNumber(3))
                        .problem());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
    void whatIsNoFiniteNumberIsRefused(double value) {
        assertThrows(InvalidInputException.class, () -> Entry.of(value).asNumber(1));
        assertThrows(InvalidInputException.class, () -> Entry.of(value).asTemperature(1, Scale.CELSIUS));
    }
}
