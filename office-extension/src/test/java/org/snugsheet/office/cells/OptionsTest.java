package org.snugsheet.office.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.sun.star.uno.Any;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.reading.Graduation;

class OptionsTest {

    @Test
    void leftOutAndBlankAreTheDefault() {
        for (Object nothing : new Object[] {Any.VOID, 0.0, "", " "}) {
            assertEquals(Scale.CELSIUS, Options.scale(nothing));
            assertEquals(Graduation.of(2, Scale.FAHRENHEIT), Options.mark(nothing, Scale.FAHRENHEIT));
            assertEquals(Unit.SQUARE_METER_KELVIN_PER_WATT, Options.resistanceUnit(nothing));
            assertEquals(ThermalResistance.NONE, Options.resistance(nothing, Unit.CLO));
        }
        assertEquals(Scale.CELSIUS, Options.scale(null));
    }

    /** A typed 0 and a lone blank cell arrive alike; neither may become the usual value in silence, and “0” in quotes is 0. */
    @Test
    void aNoughtIsNotTheUsualValueInSilence() {
        assertEquals(
                Problem.OPTION_ZERO,
                assertThrows(InvalidInputException.class, () -> Options.numberNotZero(0.0))
                        .problem());
        assertEquals(Optional.of(0.0), Options.numberNotZero("0"));
        assertEquals(Optional.of(0.1), Options.numberNotZero(0.1));
        for (Object nothing : new Object[] {Any.VOID, "", new Object[][] {{""}}}) {
            assertEquals(Optional.empty(), Options.numberNotZero(nothing));
            assertEquals(Optional.empty(), Options.temperatureNotZero(nothing, Scale.CELSIUS));
        }
        assertEquals(
                Problem.OPTION_ZERO,
                assertThrows(InvalidInputException.class, () -> Options.temperatureNotZero(0.0, Scale.FAHRENHEIT))
                        .problem());
        assertEquals(Optional.of(new Temperature(0)), Options.temperatureNotZero("0", Scale.CELSIUS));
        assertEquals(Optional.of(new Temperature(0)), Options.temperatureNotZero(32.0, Scale.FAHRENHEIT));
    }

    @Test
    void whatIsGivenCounts() {
        assertEquals(Scale.FAHRENHEIT, Options.scale("f"));
        assertEquals(Scale.FAHRENHEIT, Options.scale(new Object[][] {{"F"}}));
        assertEquals(Graduation.of(0.5, Scale.CELSIUS), Options.mark(0.5, Scale.CELSIUS));
        assertEquals(Graduation.of(0.5, Scale.CELSIUS), Options.mark("0,5", Scale.CELSIUS));
        assertEquals(0.155, Options.resistance(1.0, Unit.CLO).squareMeterKelvinsPerWatt(), 1e-15);
    }

    @Test
    void whatMakesNoSenseIsRefused() {
        assertThrows(InvalidInputException.class, () -> Options.scale(3.0));
        assertThrows(InvalidInputException.class, () -> Options.scale(new Object[][] {{"F", "C"}}));
        assertThrows(InvalidInputException.class, () -> Options.mark(-1.0, Scale.CELSIUS));
        assertEquals(
                Problem.MARK_NOT_A_NUMBER,
                assertThrows(InvalidInputException.class, () -> Options.mark("C", Scale.CELSIUS))
                        .problem());
        assertThrows(InvalidInputException.class, () -> Options.resistance(-1.0, Unit.CLO));
        assertThrows(InvalidInputException.class, () -> Options.resistanceUnit("mile per hour"));
    }
}
