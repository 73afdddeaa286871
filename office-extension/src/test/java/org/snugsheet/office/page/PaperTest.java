package org.snugsheet.office.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaperTest {

    /** As files round it; the last one is A3. */
    @ParameterizedTest
    @CsvSource({"21000,A4", "21001,A4", "21590,LETTER", "21587,LETTER", "29700,A4"})
    void somebodysPaperIsKnownByItsShortSide(int shortSide, Paper paper) {
        assertEquals(paper, Paper.withShortSide(shortSide));
    }
}
