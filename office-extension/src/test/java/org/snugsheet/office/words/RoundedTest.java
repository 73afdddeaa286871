package org.snugsheet.office.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers as far as they are known. */
class RoundedTest {

    /**
     * The first four are examples of J. R. Taylor, An Introduction to Error Analysis (1997), section 2.2, or after them (from
     * memory): 9.82 ± 0.02385 is 9.82 ± 0.02, 6051.78 ± 30 is 6050 ± 30, 92.81 with an error of 0.3, 3 and 30.
     */
    @ParameterizedTest
    @CsvSource({
        "9.82, 0.02385, 9.82, 0.02",
        "6051.78, 30, 6050, 30",
        "92.81, 0.3, 92.8, 0.3",
        "92.81, 3, 93, 3",
        "92.81, 30, 90, 30",
        "17.50607, 0.680295, 17.5, 0.7",
        "2.96, 0.96, 3, 1",
        "-0.004, 0.02, 0.00, 0.02"
    })
    void roundedToTheFirstDigitOfTheError(double value, double error, String number, String giveOrTake) {
        Rounded rounded = new Rounded(value, error);
        assertEquals(number, rounded.number(Language.ENGLISH));
        assertEquals(giveOrTake, rounded.giveOrTake(Language.ENGLISH));
    }

    @Test
    void writtenAsTheLanguageWritesNumbers() {
        assertEquals("17,5", new Rounded(17.50607, 0.68).number(Language.GERMAN));
        assertEquals("0,49", Rounded.about(0.4944, 2, Language.FRENCH));
        assertEquals("1200", Rounded.about(1234, 2, Language.ENGLISH));
    }
}
