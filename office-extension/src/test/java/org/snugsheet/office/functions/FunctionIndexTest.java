package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.declare.FunctionDeclaration;

class FunctionIndexTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=COOL.RATE(A1:A5;B1:B5;C1)",
                "=cool.rate (A1:A5;B1:B5;C1)",
                "=1+SNUGSHEET.COOL.RATE(A1:A5;B1:B5;C1)",
                "=IF(A1;\"COOL.START(\";COOL.RATE.ERROR(A1:A5;B1:B5;C1))"
            })
    void aCallIsFound(String formula) {
        assertTrue(FunctionIndex.in(formula));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=\"COOL.RATE(1)\"",
                "=COOL.RATE+1",
                "=MY.COOL.RATE(1)",
                "=XCOOL.RATE(1)",
                "=COOL.RATES(1)",
                "=SUM(A1:A5)",
                ""
            })
    void whatOnlyLooksLikeOneIsNot(String formula) {
        assertFalse(FunctionIndex.in(formula));
    }

    @Test
    void eachFunctionIsToldOnceInTheOrderOfTheReference() {
        List<String> called =
                FunctionIndex.calledBy("=COOL.START(A1)+SNUGSHEET.COOL.RATE(B1)+cool.start(C1)+SUM(A1)").stream()
                        .map(FunctionDeclaration::name)
                        .toList();
        assertEquals(List.of("COOL.RATE", "COOL.START"), called);
    }

    @Test
    void aFormulaIsShownAsItIsTyped() {
        assertEquals(
                "=SUM(A1)+COOL.RATE (A1:A5)+COOL.RATE.ERROR(1)+X.SNUGSHEET.COOL.RATE(1)",
                FunctionIndex.asTyped(
                        "=SUM(A1)+SNUGSHEET.COOL.RATE (A1:A5)+snugsheet.cool.rateError(1)+X.SNUGSHEET.COOL.RATE(1)"));
    }
}
