package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/** Each law against the numerical solution of its differential equation by Commons Math’s Dormand–Prince integrator. */
class ModelsTest {

    private static final double[] MINUTES = {0, 4, 9, 15, 20, 26, 33, 41, 50};
    private static final Graduation FINE = Graduation.of(0.01, Scale.CELSIUS);

    /** A bath that warms, levels off and is cooled again by fresh snow. */
    private static final double[] BATH = {0, 1.5, 2.5, 4, 4, 4.5, 2, 2.5, 3};

    static List<OneRateModel> models() {
        return List.of(
                new ConstantSurroundings(new Temperature(3), false),
                new ChangingSurroundings(
                        new Surroundings.Measured(Readings.ofMinutes(entries(MINUTES), entries(BATH), Scale.CELSIUS))),
                new ClosedPair(new Temperature(2), 0.4),
                new FreeConvection(new Temperature(3)));
    }

    @ParameterizedTest
    @MethodSource("models")
    void theFormulaSolvesItsEquation(OneRateModel model) {
        for (double perMinute : new double[] {0.002, 0.03, 0.4}) {
            double[] solved = solve(model, 40, perMinute);
            for (int i = 0; i < MINUTES.length; i++) {
                OneRateModel.At at = model.at(0, 60 * MINUTES[i], perMinute / 60);
                double amplitude = 40 - model.around(0);
                assertEquals(
                        solved[i],
                        at.offset() + amplitude * at.shape(),
                        1e-8,
                        model.law().english());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("models")
    void theSlopesAreThoseOfTheFormula(OneRateModel model) {
        for (double rate : new double[] {1e-9, 1e-5, 5e-4, 5e-3}) {
            double step = 1e-4 * rate;
            for (double minutes : MINUTES) {
                OneRateModel.At at = model.at(0, 60 * minutes, rate);
                OneRateModel.At above = model.at(0, 60 * minutes, rate + step);
                OneRateModel.At below = model.at(0, 60 * minutes, rate - step);
                double size = 60 * minutes + 1e-9;
                assertEquals((above.shape() - below.shape()) / (2 * step), at.shapeSlope(), 1e-4 * size + 1e-15 / step);
                assertEquals(
                        (above.offset() - below.offset()) / (2 * step), at.offsetSlope(), 1e-4 * size + 1e-14 / step);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("models")
    void readingsOfALawGiveItsConstantBack(OneRateModel model) {
        CoolingFit fit = model.fit(readings(solve(model, 40, 0.03)), FINE);

        assertEquals(0.03, fit.constant().perMinute(), 1e-8);
        assertEquals(40, fit.start().celsius(), 1e-6);
        assertEquals(0, fit.misfit().kelvins(), 1e-7);
        boolean readAgain = model instanceof ChangingSurroundings;
        // JCGM 100:2008, 4.3.7: a/√12. The bath was read at seven marks, at two of them twice: √(5 + 2·4)/9 of it.
        double rounding = FINE.graduation().kelvins() / Math.sqrt(12);
        assertEquals(
                readAgain ? rounding * Math.sqrt(13) / 9 : rounding,
                fit.surroundingsError().kelvins(),
                1e-12);
    }

    @Test
    void surroundingsThatNobodyReadAreFound() {
        double[] celsius =
                Arrays.stream(MINUTES).map(t -> 6 + 34 * Math.exp(-0.05 * t)).toArray();
        CoolingFit fit = CoolingFit.of(readings(celsius), new Surroundings.Unknown(), FINE);

        assertEquals(0.05, fit.constant().perMinute(), 1e-9);
        assertEquals(6, fit.surroundings().celsius(), 1e-7);
        assertTrue(fit.surroundingsError().kelvins() > 0);
    }

    @Test
    void readingsThatDoNotBendTellNoSurroundings() {
        double[] falling = Arrays.stream(MINUTES).map(t -> 40 - 0.2 * t).toArray();
        double[] bentAway = Arrays.stream(MINUTES).map(t -> 40 - 0.004 * t * t).toArray();

        for (double[] celsius : List.of(falling, bentAway)) {
            InvalidInputException refusal = assertThrows(
                    InvalidInputException.class,
                    () -> CoolingFit.of(readings(celsius), new Surroundings.Unknown(), FINE));
            assertEquals(Problem.SURROUNDINGS_OUT_OF_REACH, refusal.problem());
        }
    }

    @Test
    void aReadingOutsideTheMeasuredSurroundingsIsRefusedByItsRow() {
        List<Entry> around = List.of(Entry.of(3), Entry.of(3), Entry.of("-"));
        List<Entry> minutes = entries(new double[] {0, 5, 10});
        Surroundings measured = Surroundings.of(around, minutes, Scale.CELSIUS);
        Readings jar = Readings.ofMinutes(minutes, entries(new double[] {40, 35, 31}), Scale.CELSIUS);

        InvalidInputException refusal =
                assertThrows(InvalidInputException.class, () -> CoolingFit.of(jar, measured, FINE));
        assertEquals(Problem.SURROUNDINGS_MISSING, refusal.problem());
        assertEquals(3, refusal.row().orElseThrow());
    }

    @Test
    void twoStagesAreToldApart() {
        SplittableRandom random = new SplittableRandom(9);
        double[] minutes = new double[31];
        double[] celsius = new double[31];
        for (int i = 0; i < minutes.length; i++) {
            minutes[i] = 2 * i;
            celsius[i] = 3
                    + 25 * Math.exp(-0.02 * minutes[i])
                    + 12 * Math.exp(-0.3 * minutes[i])
                    + random.nextDouble(-0.02, 0.02);
        }
        Readings readings = Readings.ofMinutes(entries(minutes), entries(celsius), Scale.CELSIUS);
        TwoStageFit fit = new TwoStage(new Temperature(3)).fit(readings, FINE);

        assertEquals(0.02, fit.slow().perMinute(), 0.0005);
        assertEquals(0.3, fit.fast().perMinute(), 0.02);
        assertThrows(
                InvalidInputException.class, () -> new TwoStage(new Temperature(3)).fit(readings(celsius, 7), FINE));
    }

    /** The temperatures of the equation’s numerical solution at the times above. */
    private static double[] solve(OneRateModel model, double start, double perMinute) {
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-6, 0.05, 1e-12, 1e-12);
        double[] state = {start, model.around(0)};
        double[] solved = new double[MINUTES.length];
        solved[0] = start;
        for (int i = 1; i < MINUTES.length; i++) {
            integrator.integrate(equation(model, start, perMinute), MINUTES[i - 1], state, MINUTES[i], state);
            solved[i] = state[0];
        }
        return solved;
    }

    private static FirstOrderDifferentialEquations equation(OneRateModel model, double start, double perMinute) {
        return new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 2;
            }

            @Override
            public void computeDerivatives(double minutes, double[] y, double[] slope) {
                double around = model instanceof ClosedPair ? y[1] : model.around(60 * minutes);
                double difference = y[0] - around;
                double power =
                        model instanceof FreeConvection ? Math.pow(difference / (start - model.around(0)), 0.25) : 1;
                slope[0] = -perMinute * difference * power;
                slope[1] = model instanceof ClosedPair pair ? -slope[0] * pair.capacityRatio() : 0;
            }
        };
    }

    private static Readings readings(double[] celsius) {
        return readings(celsius, MINUTES.length);
    }

    private static Readings readings(double[] celsius, int count) {
        return Readings.ofMinutes(
                entries(Arrays.copyOf(MINUTES, count)), entries(Arrays.copyOf(celsius, count)), Scale.CELSIUS);
    }

    private static List<Entry> entries(double[] values) {
        return Arrays.stream(values).mapToObj(Entry::of).toList();
    }

    /** The clock started half an hour before; the two constants come out as they were put in, from eight readings on. */
    @Test
    void twoStagesAreFoundWhateverTheClock() {
        int n = 8;
        double[] minutes = new double[n];
        double[] exact = new double[n];
        for (int i = 0; i < n; i++) {
            minutes[i] = 30 + 6 * i;
            exact[i] = 5 + 28 * Math.exp(-0.02 * 6 * i) + 7 * Math.exp(-0.2 * 6 * i);
        }
        TwoStage law = new TwoStage(new Temperature(5));
        TwoStageFit fit = law.fit(Readings.ofMinutes(minutes, exact, Scale.CELSIUS), Graduation.of(0.1, Scale.CELSIUS));

        assertEquals(CoolingLaw.TWO_STAGE, law.law());
        assertEquals(0.02, fit.slow().perMinute(), 1e-8);
        assertEquals(0.2, fit.fast().perMinute(), 1e-7);
        assertEquals(0, fit.sumOfSquares(), 1e-12);
        assertEquals(8, fit.size());
        InvalidInputException few = assertThrows(
                InvalidInputException.class,
                () -> law.fit(
                        Readings.ofMinutes(Arrays.copyOf(minutes, 7), Arrays.copyOf(exact, 7), Scale.CELSIUS),
                        Graduation.of(0.1, Scale.CELSIUS)));
        assertEquals(Problem.TOO_FEW_READINGS, few.problem());
        assertEquals(List.of(8, 7), few.finding().arguments());
    }

    /**
     * A bath that warms by 1 K a second lags by {@code ∫ e^(−kτ) dτ}, whose slope by k is {@code −∫ τ·e^(−kτ) dτ}: by Commons Math’s
     * quadrature, for rates on both sides of where the closed form would lose its digits.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-7, 1e-4, 9e-4, 1.1e-3, 1e-2, -9e-4})
    void theSlopeInAWarmingBathIsExactHoweverSlowTheJar(double rate) {
        ChangingSurroundings bath = new ChangingSurroundings(new Surroundings.Measured(
                Readings.ofMinutes(new double[] {0, 1.0 / 60}, new double[] {4, 5}, Scale.CELSIUS)));
        double integral = new IterativeLegendreGaussIntegrator(12, 1e-14, 1e-18)
                .integrate(10_000, tau -> tau * Math.exp(-rate * tau), 0, 1);

        assertEquals(integral, bath.at(0, 1, rate).offsetSlope(), 2e-12 + (Math.abs(rate) < 1e-3 ? 0 : 1e-9));
    }

    /** Before the first and after the last reading of the room it is what it was then. */
    @Test
    void aRoomThatIsReadNoMoreStaysAsItWas() {
        ChangingSurroundings bath = new ChangingSurroundings(
                new Surroundings.Measured(Readings.ofMinutes(entries(MINUTES), entries(BATH), Scale.CELSIUS)));

        assertEquals(0, bath.around(-600));
        assertEquals(1.5, bath.around(4 * 60), 1e-12);
        assertEquals(3, bath.around(50 * 60), 1e-12);
        assertEquals(3, bath.around(90 * 60));
        // An hour after the bath has settled a quick jar is at its temperature.
        assertEquals(3, bath.at(0, 110 * 60, 0.4 / 60).offset(), 1e-9);
    }

    /** Backwards in time a jar in still air was infinitely warm once, {@code 4/k} before: there is no temperature then or earlier. */
    @Test
    void stillAirHasABeginning() {
        FreeConvection law = new FreeConvection(new Temperature(3));

        assertTrue(law.at(0, -3999, 0.001).shape() > 1e12);
        for (double seconds : new double[] {-4000, -5000}) {
            assertEquals(
                    new OneRateModel.At(Double.NaN, Double.NaN, Double.NaN, Double.NaN), law.at(0, seconds, 0.001));
        }
    }

    /** How many readings two stages need is said, even where there are too few for Newton’s law as well. */
    @Test
    void twoStagesSayHowManyReadingsTheyNeed() {
        InvalidInputException refusal = assertThrows(
                InvalidInputException.class,
                () -> new TwoStage(new Temperature(3))
                        .fit(Readings.ofMinutes(new double[] {0, 5}, new double[] {40, 30}, Scale.CELSIUS), FINE));
        assertEquals(Problem.TOO_FEW_READINGS, refusal.problem());
        assertEquals(List.of(8, 2), refusal.finding().arguments());
    }
}
