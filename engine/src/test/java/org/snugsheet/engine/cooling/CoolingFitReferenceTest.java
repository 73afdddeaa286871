package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.PublishedTable;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/**
 * Real readings, published openly (newton-cooling.csv names their sources), against SciPy’s curve_fit (scipy-fits.csv) and
 * against the answers printed with them.
 */
class CoolingFitReferenceTest {

    /** Finer than any residual here, so that the residual variance sets the errors as it does in SciPy. */
    private static final Graduation FINE = Graduation.of(0.01, Scale.CELSIUS);

    static List<Map<String, String>> fits() {
        return PublishedTable.rows(CoolingFitReferenceTest.class, "scipy-fits.csv");
    }

    @ParameterizedTest
    @MethodSource("fits")
    void startRateErrorsAndMisfitAgreeWithSciPy(Map<String, String> row) {
        // Exact, for curve_fit is given the room as a constant without an error; what its error adds is checked
        // elsewhere.
        CoolingFit fit = CoolingFit.of(
                readings(row),
                new Surroundings.Constant(Temperature.of(number(row, "room"), Scale.CELSIUS), true),
                FINE);

        same(number(row, "rate"), fit.constant().perMinute(), 1e-8);
        same(number(row, "start"), fit.start().celsius(), 1e-8);
        // SciPy counts each reading as its own. So do we, unless they wander together, as those of mugs left in still
        // air do.
        double[][] influence = fit.solution().influence();
        double variance = fit.sumOfSquares() / fit.degreesOfFreedom();
        same(number(row, "rate_error"), 60 * Math.sqrt(variance * squares(influence[1])), 1e-6);
        if (fit.isWandering()) {
            assertTrue(fit.constantError().perMinute() > number(row, "rate_error"));
            assertTrue(fit.startError().kelvins() > number(row, "start_error"));
        } else {
            same(number(row, "rate_error"), fit.constantError().perMinute(), 1e-6);
            same(number(row, "start_error"), fit.startError().kelvins(), 1e-6);
        }
        same(number(row, "misfit"), fit.misfit().kelvins(), 1e-8);
        same(Math.log(2) / number(row, "rate"), fit.constant().halfTime() / 60, 1e-8);
    }

    @ParameterizedTest
    @MethodSource("fits")
    void aRoomThatIsFittedTooAgreesWithSciPy(Map<String, String> row) {
        CoolingFit fit = new FittedSurroundings().fit(readings(row), FINE);

        same(number(row, "free_start"), fit.start().celsius(), 1e-6);
        same(number(row, "free_rate"), fit.constant().perMinute(), 1e-6);
        same(number(row, "free_room"), fit.surroundings().celsius(), 1e-6);
        double[][] influence = fit.solution().influence();
        double variance = fit.sumOfSquares() / fit.degreesOfFreedom();
        same(number(row, "free_rate_error"), 60 * Math.sqrt(variance * squares(influence[2])), 1e-5);
        same(number(row, "free_room_error"), Math.sqrt(variance * squares(influence[0])), 1e-5);
        if (!fit.isWandering()) {
            same(number(row, "free_start_error"), fit.startError().kelvins(), 1e-5);
            same(number(row, "free_rate_error"), fit.constantError().perMinute(), 1e-5);
            same(number(row, "free_room_error"), fit.surroundingsError().kelvins(), 1e-5);
        }
    }

    /**
     * Real mugs in real rooms (AlekseyLobanov/cooling-down, 2017; S. Wagon’s CoolingWater; Palm’s porcelain mug at 20.0 °C): by Newton’s
     * law their rooms would be at 44.9, 35.5, 33.9, 17.4 and 27.0 °C. Heat that is lost ever more slowly fits them better, or as well.
     */
    @ParameterizedTest
    @CsvSource({
        "mugs2017, 1, SURROUNDINGS_OR_LAW",
        "mugs2017, 3, SURROUNDINGS_OR_LAW",
        "mugs2017, 4, SURROUNDINGS_OR_LAW",
        "coffee-palm, 1, SURROUNDINGS_OUT_OF_REACH",
        "CoolingWater, 1, SURROUNDINGS_OR_LAW"
    })
    void noRealMugTellsItsRoom(String set, String vessel, Problem said) {
        Readings seen = readings(Map.of("set", set, "vessel", vessel));

        for (double mark : new double[] {0.1, 0.5, 1}) {
            InvalidInputException refusal = assertThrows(
                    InvalidInputException.class,
                    () -> CoolingFit.of(seen, new Surroundings.Unknown(), Graduation.of(mark, Scale.CELSIUS)));
            assertEquals(said, refusal.problem(), "mark " + mark);
        }
    }

    /** Palm, Introduction to MATLAB for Engineers, Example 6.1-1: slope of log₁₀(T − 68 °F) is −1.5557e−4 per second. */
    @Test
    void thePorcelainMugReaches120FahrenheitAfterAbout1112Seconds() {
        NewtonCooling published = new NewtonCooling(
                Temperature.of(68 + 77.4469, Scale.FAHRENHEIT),
                Temperature.of(68, Scale.FAHRENHEIT),
                new CoolingConstant(1.5557e-4 * Math.log(10)));

        assertEquals(1112, published.timeTo(Temperature.of(120, Scale.FAHRENHEIT)), 0.5);
    }

    /** The book fits the logarithms and we the temperatures: the two agree as well as the data allow. */
    @Test
    void thePorcelainMugIsFittedAsInTheBook() {
        Map<String, String> row = fits().get(3);
        Surroundings room = Surroundings.constant(Temperature.of(68, Scale.FAHRENHEIT));
        CoolingFit fit = CoolingFit.of(readings(row), room, FINE);

        double published = 1.5557e-4 * Math.log(10);
        assertEquals(
                published, fit.constant().perSecond(), 2 * fit.constantError().perSecond());
        assertEquals(
                68 + 77.4469,
                fit.start().in(Scale.FAHRENHEIT),
                2 * fit.startError().in(Scale.FAHRENHEIT));
        assertTrue(fit.constantError().perSecond() < 0.02 * published);
    }

    @Test
    void theReadingsInFahrenheitGiveTheSameRate() {
        Map<String, String> row = fits().get(1);
        Readings celsius = readings(row);
        List<Entry> minutes = new ArrayList<>();
        List<Entry> fahrenheit = new ArrayList<>();
        celsius.all().forEach(r -> {
            minutes.add(Entry.of(r.seconds() / 60));
            fahrenheit.add(Entry.of(r.temperature().in(Scale.FAHRENHEIT)));
        });
        Surroundings room = Surroundings.constant(Temperature.of(25, Scale.CELSIUS));

        CoolingFit one = CoolingFit.of(celsius, room, FINE);
        CoolingFit other = CoolingFit.of(Readings.ofMinutes(minutes, fahrenheit, Scale.FAHRENHEIT), room, FINE);

        same(one.constant().perSecond(), other.constant().perSecond(), 1e-10);
        TemperatureDifference misfit = other.misfit();
        same(one.misfit().in(Scale.CELSIUS) * 1.8, misfit.in(Scale.FAHRENHEIT), 1e-9);
    }

    private static Readings readings(Map<String, String> fit) {
        List<Entry> minutes = new ArrayList<>();
        List<Entry> temperatures = new ArrayList<>();
        for (Map<String, String> row : PublishedTable.rows(CoolingFitReferenceTest.class, "newton-cooling.csv")) {
            if (text(row, "set").equals(text(fit, "set")) && text(row, "vessel").equals(text(fit, "vessel"))) {
                minutes.add(Entry.of(number(row, "t_min")));
                temperatures.add(
                        Entry.of(text(row, "temperature") + (text(row, "unit").equals("degF") ? " °F" : " °C")));
            }
        }
        return Readings.ofMinutes(minutes, temperatures, Scale.CELSIUS);
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(text(row, column));
    }

    private static String text(Map<String, String> row, String column) {
        return Objects.requireNonNull(row.get(column), column);
    }

    private static void same(double expected, double actual, double relative) {
        assertEquals(expected, actual, relative * Math.abs(expected));
    }

    /** The entry of a parameter in {@code (JᵀJ)⁻¹}, from its row of {@code (JᵀJ)⁻¹Jᵀ}. */
    private static double squares(double[] influence) {
        return Arrays.stream(influence).map(x -> x * x).sum();
    }
}
