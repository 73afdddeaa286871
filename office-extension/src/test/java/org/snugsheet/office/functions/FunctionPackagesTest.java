package org.snugsheet.office.functions;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Method;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.declare.FunctionDeclaration;

/** Each family of functions keeps to itself, and each function is declared and answered in one place. */
class FunctionPackagesTest {

    private static final String OFFICE = "org.snugsheet.office";
    private static final String FUNCTIONS = OFFICE + ".functions";

    private static final JavaClasses CLASSES =
            new ClassFileImporter(List.of(new ImportOption.DoNotIncludeTests())).importPackages(OFFICE);

    @ParameterizedTest
    @ValueSource(strings = {"temperature", "cooling", "wrap", "cold", "plan", "check"})
    void aFamilyKnowsNoOtherFamily(String family) {
        classes()
                .that()
                .resideInAPackage(FUNCTIONS + "." + family)
                .should()
                .onlyDependOnClassesThat(resideOutsideOfPackage(FUNCTIONS + "..")
                        .or(resideInAnyPackage(FUNCTIONS + "." + family, FUNCTIONS + ".shared")))
                .check(CLASSES);
    }

    @Test
    void whatFamiliesShareKnowsNoFamily() {
        classes()
                .that()
                .resideInAPackage(FUNCTIONS + ".shared")
                .should()
                .onlyDependOnClassesThat(
                        resideOutsideOfPackage(FUNCTIONS + "..").or(resideInAnyPackage(FUNCTIONS + ".shared")))
                .check(CLASSES);
    }

    @Test
    void functionsKnowNothingOfMenusAndPages() {
        classes()
                .that()
                .resideInAPackage(FUNCTIONS + "..")
                .should()
                .onlyDependOnClassesThat(resideOutsideOfPackage(OFFICE + "..")
                        .or(resideInAnyPackage(
                                FUNCTIONS + "..", OFFICE + ".cells", OFFICE + ".declare", OFFICE + ".words")))
                .check(CLASSES);
    }

    /** Whoever wants a function asks the index; of the families only phrases are known elsewhere. */
    @Test
    void othersKnowTheIndexAlone() {
        noClasses()
                .that()
                .resideOutsideOfPackage(FUNCTIONS + "..")
                .should()
                .dependOnClassesThat(resideInAnyPackage(FUNCTIONS + ".*").and(not(assignableTo(Phrase.class))))
                .check(CLASSES);
    }

    @Test
    void everyFunctionIsAnsweredWhereItIsDeclared() throws NoSuchMethodException {
        for (FunctionDeclaration function : Families.functions()) {
            Method declared = function.method();
            assertTrue(declared.isDefault(), function.name());
            Method answered = Families.newService(declared.getDeclaringClass())
                    .getClass()
                    .getMethod(declared.getName(), declared.getParameterTypes());
            assertEquals(declared, answered, "a service adds nothing");
        }
    }
}
