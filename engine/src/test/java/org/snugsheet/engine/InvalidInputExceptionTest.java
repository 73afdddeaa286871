package org.snugsheet.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class InvalidInputExceptionTest {

    @Test
    void itSaysItsSentenceInEnglish() {
        InvalidInputException refusal = InvalidInputException.of(Problem.UNKNOWN_UNIT, "furlong");
        assertEquals("“furlong” is not a unit known here. Use one such as mm, US, clo or tog.", refusal.getMessage());
        assertSame(Problem.UNKNOWN_UNIT, refusal.problem());
        assertEquals(OptionalInt.empty(), refusal.row());
    }

    @Test
    void itNamesItsLayerAndTheNumberIsTheFirstValueOfTheSentence() {
        InvalidInputException refusal =
                InvalidInputException.atItem(4, Problem.LAYER_NOT_POSITIVE, QuantityName.THICKNESS, -2.5);
        assertEquals(
                "Layer 4: the thickness must be more than zero, but it is -2.5. Check that cell.",
                refusal.getMessage());
        assertEquals(OptionalInt.of(4), refusal.row());
        assertEquals(List.of(4, QuantityName.THICKNESS, -2.5), refusal.finding().arguments());
    }

    @Test
    void itSaysTheSameInAnotherLanguageWithThatLanguageSNumbers() {
        Finding finding = InvalidInputException.atItem(4, Problem.LAYER_NOT_POSITIVE, QuantityName.THICKNESS, -2.5)
                .finding();
        assertEquals(
                "Schicht 4: Die Dicke ist -2,5.",
                finding.sentence(
                        any -> any instanceof Problem ? "Schicht {0}: Die {1} ist {2}." : "Dicke", Locale.GERMANY));
        assertEquals("-2.5 (4)", finding.sentence(any -> "{2} ({0})", Locale.US));
    }

    @Test
    void whatSomebodyTypedIsNeverTakenForAPattern() {
        String odd = "it's {0} or {9} {";
        assertEquals(
                "“it's {0} or {9} {” is not a unit known here. Use one such as mm, US, clo or tog.",
                InvalidInputException.of(Problem.UNKNOWN_UNIT, odd).getMessage());
    }

    @Test
    void aFindingAndTheRefusalMadeOfItAgree() {
        Finding finding = Finding.atRow(2, Problem.LAYER_NOT_A_NUMBER, QuantityName.THICKNESS);
        InvalidInputException refusal = new InvalidInputException(finding);
        assertEquals(finding, refusal.finding());
        assertEquals(finding.sentence(), refusal.getMessage());
        assertEquals(
                finding,
                InvalidInputException.atRow(2, Problem.LAYER_NOT_A_NUMBER, QuantityName.THICKNESS)
                        .finding());
    }

    @Test
    void aNumberThatNoCellCanHoldIsNotTold() {
        String tooLarge = Problem.ANSWER_TOO_LARGE.english();
        assertEquals(
                tooLarge,
                Finding.of(Problem.LESSON_TOO_LONG, Double.POSITIVE_INFINITY, 1440.0)
                        .sentence());
        assertEquals(
                tooLarge,
                Finding.of(Problem.LESSON_TOO_LONG, Double.NaN, 1440.0).sentence());
    }

    /** A limit that is not there is infinite, and no sentence is given up for one that it does not tell of. */
    @Test
    void onlyNumbersThatASentenceSaysMustBeWritable() {
        MessageFormat second = new MessageFormat("at most {1,number,0.0}", Locale.ENGLISH);
        assertTrue(Sentences.canBeWritten(second, Double.NaN, 2.5, Double.POSITIVE_INFINITY));
        assertFalse(Sentences.canBeWritten(second, 2.5, Double.POSITIVE_INFINITY));
        assertEquals(
                Finding.of(Problem.WATER_FROZEN, -1.0, 30.2).sentence(),
                Finding.of(Problem.WATER_FROZEN, -1.0, 30.2, Double.NaN).sentence());
    }
}
