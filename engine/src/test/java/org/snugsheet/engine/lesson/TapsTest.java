package org.snugsheet.engine.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.heat.Mixing;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;

/**
 * A sum by hand, and a property: mixed water has the heat of its parts, as {@code water.csv} (IAPWS) gives it. What taps can give is
 * common practice, no source.
 */
class TapsTest {

    /**
     * The school formula with equal specific heats, {@code m₁·(T₁ − T) = m₂·(T − T₂)} (OpenStax College Physics, section 14.2):
     * a liter of 40 °C from 60 °C and 10 °C takes 0.6 and 0.4 kg. Real water differs from it by its density, 1.7 % at 60 °C.
     */
    @Test
    void a_liter_is_mixed_as_at_school() {
        Taps taps =
                Taps.mixing(new Temperature(60), new Temperature(10), new Temperature(40), Volume.of(1, Unit.LITER));
        assertEquals(600, Unit.MILLILITER.from(taps.hot().cubicMeters(), Unit.CUBIC_METER), 10);
        assertEquals(400, Unit.MILLILITER.from(taps.cold().cubicMeters(), Unit.CUBIC_METER), 5);
    }

    @RepeatedTest(50)
    void what_is_mixed_ends_at_the_start_wanted(RepetitionInfo seed) {
        Random random = new Random(seed.getCurrentRepetition());
        Temperature cold = new Temperature(4 + 15 * random.nextDouble());
        Temperature hot = new Temperature(44 + 26 * random.nextDouble());
        Temperature start = new Temperature(20 + 23 * random.nextDouble());
        Taps taps = Taps.mixing(hot, cold, start, Volume.of(1, Unit.LITER));
        Temperature end = Mixing.endTemperature(WaterBody.of(taps.hot(), hot), WaterBody.of(taps.cold(), cold));
        assertEquals(start.celsius(), end.celsius(), 1e-9);
    }

    @Test
    void what_no_tap_can_give_is_refused() {
        Volume liter = Volume.of(1, Unit.LITER);
        assertEquals(
                Problem.NOT_BETWEEN_THE_TAPS,
                assertThrows(
                                InvalidInputException.class,
                                () -> Taps.mixing(new Temperature(38), new Temperature(10), new Temperature(40), liter))
                        .problem());
        assertEquals(
                Problem.START_TOO_HOT,
                assertThrows(
                                InvalidInputException.class,
                                () -> Taps.mixing(new Temperature(60), new Temperature(10), new Temperature(50), liter))
                        .problem());
    }
}
