package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.ErrorCodes;
import org.snugsheet.office.harness.FunctionWizard;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.words.Language;

/** Every declared function in a real office: its two examples, and what the function wizard says of it. */
@ExtendWith(SharedOffice.class)
class CatalogueIT {

    /** What the office says of all its functions is asked once: there are hundreds. */
    private static final Map<Office, FunctionWizard> WIZARDS = new HashMap<>();

    static Stream<Arguments> functions() {
        return Families.functions().stream().map(function -> Arguments.of(function.name(), function));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("functions")
    void theExampleAnswersAsDeclared(String name, FunctionDeclaration declaration, Office office) {
        CellResult result = office.evaluate(declaration.function().example());

        String answer = declaration.function().answer();
        if (result instanceof CellResult.OfNumber number) {
            int digits = answer.contains(".") ? answer.length() - answer.indexOf('.') - 1 : 9;
            assertEquals(Double.parseDouble(answer), number.number(), 0.5001 * Math.pow(10, -digits));
        } else {
            assertEquals(answer, result.text());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("functions")
    void theRefusedExampleIsACellError(String name, FunctionDeclaration declaration, Office office) {
        String refused = declaration.function().refused();
        // Only a function that says in words what is wrong, or is asked nothing, can always answer.
        boolean always = name.startsWith("CHECK.") || declaration.arguments().isEmpty();
        assertEquals(always, refused.isEmpty());
        if (!refused.isEmpty()) {
            assertEquals(ErrorCodes.INVALID_ARGUMENT, office.evaluate(refused).error());
            assertFalse(declaration.function().because().isEmpty());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("functions")
    void theFileHoldsTheStoredName(String name, FunctionDeclaration declaration, Office office) {
        String stored = declaration.storedName();
        String example = declaration.function().example();
        CellResult typed = office.evaluate(example);
        CellResult fromFile = office.evaluate(stored + example.substring(name.length()));

        assertEquals(typed, fromFile);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("functions")
    void theWizardSaysWhatIsDeclared(String name, FunctionDeclaration declaration, Office office) {
        FunctionWizard.Function shown = WIZARDS.computeIfAbsent(office, Office::functionWizard)
                .find(name)
                .orElseThrow();

        assertEquals(FunctionWizard.Category.ADD_IN, shown.category());
        assertEquals(declaration.description(Language.ENGLISH), shown.description());
        List<FunctionWizard.Argument> declared = declaration.arguments().stream()
                .map(a -> new FunctionWizard.Argument(a.name(), a.text(), a.optional()))
                .toList();
        assertEquals(declared, shown.arguments());
        assertTrue(shown.arguments().stream().noneMatch(a -> a.description().isBlank()));
    }
}
