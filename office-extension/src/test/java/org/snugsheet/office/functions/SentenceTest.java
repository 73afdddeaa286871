package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.office.harness.CellResult;

/** COOL.SENTENCE beside the numbers it is made of. */
class SentenceTest {

    private final PlainSheet sheet = new PlainSheet();

    /** Temperatures of T(t) = Tₛ + A·e^(−k·t) with a known half-time, rounded to the mark. */
    @ParameterizedTest
    @CsvSource({"27, 10, 30", "5, 10, 30", "60, 21, 24"})
    void theHalfTimeThatReadingsWereMadeWithIsSaid(double halfTime, double surroundings, double amplitude) {
        readings(halfTime, surroundings, amplitude);
        String said = answer("COOL.SENTENCE(A1:A13;B1:B13;D1)").text();
        double value = number(said, "every ");
        double giveOrTake = number(said, "give or take ");

        assertTrue(said.startsWith("The jar loses half its extra warmth every "), said);
        assertEquals(halfTime, value, 3 * giveOrTake, said);
        assertEquals(answer("COOL.HALFTIME(A1:A13;B1:B13;D1)").number(), value, giveOrTake, said);
        double error = answer("COOL.HALFTIME.ERROR(A1:A13;B1:B13;D1)").number();
        // One digit of it: never off by more than half of what that digit counts.
        assertEquals(error, giveOrTake, error / 2, said);
        assertEquals(1, String.valueOf(giveOrTake).replaceAll("[0.]", "").length(), said);
    }

    @Test
    void aColdJarMakesUpWhatItLacks() {
        readings(20, 22, -18);
        String said = answer("COOL.SENTENCE(A1:A13;B1:B13;D1)").text();
        assertTrue(said.startsWith("The jar makes up half of what it is colder than its surroundings every "), said);
    }

    /** Whatever refuses the half-time refuses the sentence, with the same error. */
    @ParameterizedTest
    @CsvSource({"A1:A2;B1:B2;D1", "A1:A13;C1:C13;D1", "A1:A13;B1:B13;E1", "A1:A13;B1:B13;D1;-1", "A1:A13;B1:B12;D1"})
    void itRefusesTogetherWithTheHalfTime(String arguments) {
        readings(20, 10, 30);
        sheet.numbersDown("C1", 40, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40);
        int error = answer("COOL.HALFTIME(" + arguments + ")").error();
        assertTrue(error != 0);
        assertEquals(error, answer("COOL.SENTENCE(" + arguments + ")").error());
    }

    @Test
    void surroundingsThatTheReadingsContradictAreNamed() {
        readings(8, 10, 30);
        sheet.number("D1", 2);
        String said = answer("COOL.SENTENCE(A1:A13;B1:B13;D1)").text();
        assertTrue(said.contains("But the readings run towards ") && said.contains("°C"), said);
        assertEquals(10, number(said, "towards "), 1.5, said);
        sheet.number("D1", 10);
        said = answer("COOL.SENTENCE(A1:A13;B1:B13;D1)").text();
        assertEquals(-1, said.indexOf("But"), said);
    }

    @Test
    void surroundingsThatNobodyReadAreSaidOnlyWhereTheyAreUncertain() {
        readings(2.4, 10, 30);
        assertEquals(-1, answer("COOL.SENTENCE(A1:A13;B1:B13;\"fit\")").text().indexOf("Nobody"));
        // By another law they might stand at 5 °C.
        readings(8, 10, 30);
        assertTrue(answer("COOL.SENTENCE(A1:A13;B1:B13;\"fit\")").text().contains("Nobody read the surroundings"));
    }

    private void readings(double halfTime, double surroundings, double amplitude) {
        double[] minutes = new double[13];
        double[] temperatures = new double[13];
        for (int i = 0; i < minutes.length; i++) {
            minutes[i] = 3 * i;
            temperatures[i] = Math.round(surroundings + amplitude * Math.pow(0.5, minutes[i] / halfTime));
        }
        sheet.numbersDown("A1", minutes).numbersDown("B1", temperatures).number("D1", surroundings);
    }

    private CellResult answer(String formula) {
        return sheet.result(formula);
    }

    private static double number(String said, String before) {
        return Double.parseDouble(
                said.substring(said.indexOf(before) + before.length()).replaceFirst("(-?\\d+(\\.\\d+)?).*", "$1"));
    }
}
