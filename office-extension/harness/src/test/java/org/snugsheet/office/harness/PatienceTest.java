package org.snugsheet.office.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PatienceTest {

    @ParameterizedTest
    @CsvSource({"-0.5, 20", "0, 20", "1, 20", "3.5, 70", "10, 200", "400, 200"})
    void aBusyMachineIsGivenMoreTime(double programsForEachProcessor, int seconds) {
        assertEquals(Duration.ofSeconds(seconds), Patience.scaled(Duration.ofSeconds(20), programsForEachProcessor));
    }
}
